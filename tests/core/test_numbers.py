"""Whatever is typed gives a value or a refusal; whatever is shown reads back as what is shown."""

import random
import time
from math import inf, isfinite

import pytest

from core.errors import Refused
from core.quantities import LEAST, MOST
from core.units import System, number, read, show, typed, unit_of

NAMES = (
    *("width_m", "area_m2", "label_l", "net_g", "air_c", "wet_um", "wait_s", "density_g_ml"),
    *("loss_ratio", "parts_count", "spread_g_m2", ""),
)
DIGITS = "0123456789"
MARKS = (
    "",
    ".",
    ",",
    ".5",
    ",25",
    " 1/2",
    "-1/2",
    "½",
    "⅞",
    "'",
    "' 6",
    ' ft 6 1/2"',
    ":30",
    " h 5",
)
UNITS = (
    *(
        "",
        "m",
        "cm",
        "mm",
        "ft",
        "in",
        "'",
        '"',
        "m²",
        "sq ft",
        "l",
        "ml",
        "gal",
        "fl oz",
        "g",
        "kg",
    ),
    *("lb", "oz", "°C", "F", "µm", "mil", "h", "min", "s", "g/mL", "lb/gal", "%", "day"),
)
JUNK = (
    *".,'\"/-+ :%_²³°−′″μ٣١🙂İß\ud800\x00\n\xa0\u202f\u2019\u2044\uff11",
    *("1,250", "1 250", "99999999999", "0.0000001", "nan", "inf", "e3", "0x1f", "--", "None"),
)
SEED = 20260
AT_ONCE_S = 0.5  # a busy machine stalls for as long; a parser that blows up takes minutes


def value_or_refusal(name: str, text: str, system: System) -> float | None:
    try:
        return read(name, text, system)
    except Refused as refusal:
        facts = refusal
    assert facts.name == name
    assert facts.value == text or isinstance(facts.value, float)
    return None


def holds_its_value(name: str, value: float, system: System) -> None:
    """Check that what is shown or prefilled, typed again, is the same."""
    assert read(name, typed(name, value, system), system) == value
    for digits in (None, 0, 3):
        shown = show(name, value, system, digits)
        again = read(name, shown, system) if readable(name, value, system, digits) else value
        assert show(name, again, system, digits) == shown


def readable(name: str, value: float, system: System, digits: int | None) -> bool:
    """Say whether what is shown has digits left, and no more than a person could type."""
    return len(show(name, value, system, digits)) <= 40 and value < MOST / 10


def some_text(chance: random.Random) -> str:
    """Make up a text: half of the time from anything, half of it much like a quantity."""
    if chance.random() < 0.5:
        return "".join(chance.choices((*DIGITS, *MARKS, *UNITS, *JUNK), k=chance.randint(0, 7)))
    number = "".join(chance.choices(DIGITS, k=chance.randint(1, 4)))
    return number + chance.choice(MARKS) + chance.choice(("", " ")) + chance.choice(UNITS)


def test_twenty_thousand_strings_give_a_value_or_a_refusal() -> None:
    chance = random.Random(SEED)
    values = 0
    for _ in range(20_000):
        text = some_text(chance)
        name, system = chance.choice(NAMES), chance.choice(list(System))
        value = value_or_refusal(name, text, system)
        if value is not None:
            values += 1
            assert isfinite(value)
            assert value == 0 or LEAST <= abs(value) <= MOST
            holds_its_value(name, value, system)
    assert values > 1_000  # or the strings are too wild to say anything


def test_five_thousand_floats_are_typed_and_shown_without_loss() -> None:
    chance = random.Random(SEED)
    for _ in range(5_000):
        name, system = chance.choice(NAMES), chance.choice(list(System))
        value = chance.choice((1.0, chance.random())) * 10 ** chance.uniform(-3, 5)
        value = chance.choice((value, round(value, 2), float(int(value))))
        holds_its_value(name, value, system)


def test_readings_below_zero_are_typed_and_shown_without_loss() -> None:
    for name, value in (("air_c", -17.3), ("air_c", -40.0), ("reads_g", -0.1), ("reads_g", -38.0)):
        for system in System:
            holds_its_value(name, value, system)


def test_no_number_is_refused_with_the_typed_text() -> None:
    with pytest.raises(Refused) as refusal:
        read("width_m", "12 ft wide")
    facts = refusal.value
    assert (facts.name, facts.value, facts.low, facts.high) == ("width_m", "12 ft wide", -inf, inf)


def test_a_number_out_of_range_is_refused_with_its_value() -> None:
    with pytest.raises(Refused) as refusal:
        read("wait_s", "-5 min")
    assert (refusal.value.value, refusal.value.low) == (-300.0, 0.0)


@pytest.mark.parametrize(
    "text",
    ["9" * 100_000, "1" * 39 + "/" + "9" * 100_000, "1 " * 50_000, "(" * 100_000, "½" * 100_000],
    ids=["digits", "fraction", "groups", "brackets", "halves"],
)
def test_a_huge_text_is_refused_at_once(text: str) -> None:
    before = time.perf_counter()
    with pytest.raises(Refused):
        read("width_m", text)
    assert time.perf_counter() - before < AT_ONCE_S


@pytest.mark.parametrize("text", ["1 " * 20, "1," * 20, "1/" * 20, "111 " * 10, "1 ft " * 8])
def test_a_text_made_to_slow_the_parser_down_is_refused_at_once(text: str) -> None:
    before = time.perf_counter()
    with pytest.raises(Refused):
        read("width_m", text)
    assert time.perf_counter() - before < AT_ONCE_S


def test_a_number_without_a_unit_is_in_the_unit_that_the_field_says() -> None:
    for name in NAMES:
        for system in System:
            unit = unit_of(name, system)
            assert read(name, f"12.5 {unit}".rstrip(), system) == read(name, "12.5", system)


def test_number_is_what_show_shows_without_its_unit() -> None:
    for name in NAMES:
        for system in System:
            shown = show(name, 1234.5678, system, 2)
            assert shown == f"{number(name, 1234.5678, system, 2)} {unit_of(name, system)}".rstrip()


def test_masses_are_in_grams_whatever_the_system() -> None:
    assert show("net_g", 77.3, System.US) == show("net_g", 77.3, System.METRIC) == "77.3 g"
