"""Conversions against the whole registry of Pint and the constants of SciPy."""

from typing import Any

import pytest

pint = pytest.importorskip("pint")
constants = pytest.importorskip("scipy.constants")

from core.quantities import SPELLED  # noqa: E402
from core.units import System, number, read  # noqa: E402

IN_PINT = {  # our symbol: the name that it has there
    "m": "meter", "cm": "centimeter", "mm": "millimeter", "ft": "foot", "in": "inch",
    "m²": "meter ** 2", "cm²": "centimeter ** 2", "ft²": "foot ** 2", "in²": "inch ** 2",
    "L": "liter", "mL": "milliliter", "gal": "US_liquid_gallon", "qt": "US_liquid_quart",
    "pt": "US_pint", "fl oz": "US_fluid_ounce", "g": "gram", "kg": "kilogram", "oz": "ounce",
    "lb": "pound", "°C": "degree_Celsius", "°F": "degree_Fahrenheit", "µm": "micrometer",
    "mil": "thou", "s": "second", "min": "minute", "h": "hour", "d": "day",
    "g/mL": "gram / milliliter", "kg/L": "kilogram / liter", "g/cm³": "gram / centimeter ** 3",
    "g/m²": "gram / meter ** 2", "oz/ft²": "ounce / foot ** 2", "m²/L": "meter ** 2 / liter",
    "ft²/gal": "foot ** 2 / US_liquid_gallon",
    "kg/m³": "kilogram / meter ** 3", "lb/gal": "pound / US_liquid_gallon", "%": "percent",
}  # fmt: skip
NAMES = {
    "width_m": ("m", ("m", "cm", "mm", "ft", "in")),
    "area_m2": ("m²", ("m²", "cm²", "ft²", "in²")),
    "label_l": ("L", ("L", "mL", "gal", "qt", "pt", "fl oz")),
    "net_g": ("g", ("g", "kg", "oz", "lb")),
    "air_c": ("°C", ("°C", "°F")),
    "wet_um": ("µm", ("µm", "mm", "mil")),
    "wait_s": ("s", ("s", "min", "h", "d")),
    "rate_g_m2": ("g/m²", ("g/m²", "oz/ft²")),
    "spread_m2_l": ("m²/L", ("m²/L", "ft²/gal")),
    "density_g_ml": ("g/mL", ("g/mL", "kg/L", "g/cm³", "kg/m³", "lb/gal")),
}
CASES = [(name, si, unit) for name, (si, units) in NAMES.items() for unit in units]
SAME = 1e-14  # both are exact but for the rounding of floats


@pytest.fixture(scope="module")
def whole() -> Any:
    return pint.UnitRegistry()


@pytest.mark.parametrize(("name", "si", "unit"), CASES)
def test_a_unit_is_worth_what_the_whole_registry_says(
    whole: Any, name: str, si: str, unit: str
) -> None:
    for amount in (1.0, 0.375, 212.0):
        theirs = whole.Quantity(amount, IN_PINT[unit]).to(IN_PINT[si]).magnitude
        ours = read(name, f"{amount} {SPELLED[unit][0]}")
        assert ours == pytest.approx(theirs, rel=SAME, abs=1e-12)


def test_every_unit_that_can_be_typed_is_checked() -> None:
    checked = {unit for _, units in NAMES.values() for unit in units} | {"%"}
    assert checked == set(SPELLED) == set(IN_PINT)


def test_constants_agree_with_scipy() -> None:
    ours = {
        constants.foot: read("width_m", "1 ft"),
        constants.inch: read("width_m", "1 in"),
        constants.mil: read("wet_um", "1 mil") / 1e6,
        constants.gallon: read("label_l", "1 gal") / 1e3,
        constants.fluid_ounce: read("label_l", "1 fl oz") / 1e3,
        constants.pound: read("net_g", "1 lb") / 1e3,
        constants.oz: read("net_g", "1 oz") / 1e3,
        constants.hour: read("wait_s", "1 h"),
        constants.day: read("wait_s", "1 d"),
    }
    for theirs, mine in ours.items():
        assert mine == pytest.approx(theirs, rel=SAME)


def test_temperatures_agree_with_scipy() -> None:
    for fahrenheit in (-40.0, 0.0, 32.0, 60.0, 77.0, 212.0):
        theirs = constants.convert_temperature(fahrenheit, "Fahrenheit", "Celsius")
        assert read("air_c", str(fahrenheit), System.US) == pytest.approx(theirs, abs=1e-12)


def test_showing_goes_the_same_way_back() -> None:
    assert float(number("area_m2", 1.0, System.US, 9)) == pytest.approx(1 / constants.foot**2)
    assert float(number("label_l", 1.0, System.US, 9)) == pytest.approx(1e-3 / constants.gallon)
