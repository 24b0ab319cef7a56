"""Laws of what happens at the bucket: bands, let-downs, spills, strays, corrections."""

import pytest

pytest.importorskip("hypothesis")

from hypothesis import assume, given
from hypothesis import strategies as st

linprog = pytest.importorskip("scipy.optimize").linprog

from core.colours.look import Lab, difference_de, lab_of  # noqa: E402
from core.colours.mixture import Looks, mixed  # noqa: E402
from core.mixing.band import SIDE_BY_SIDE_DE, WIDEST_RATIO, bands  # noqa: E402
from core.mixing.correct import Lack, correct  # noqa: E402
from core.mixing.cups import cups_g, more_of_it  # noqa: E402
from core.mixing.least import batch_for_g, least_part_g, let_down  # noqa: E402
from core.mixing.limit import limit  # noqa: E402
from core.mixing.plan import Plan, Pour  # noqa: E402
from core.mixing.portions import Portion  # noqa: E402
from core.mixing.spill import spilt  # noqa: E402
from core.mixing.stray import stray  # noqa: E402
from core.mixing.use_up import use_up  # noqa: E402
from core.paints.recipe import Part, shares  # noqa: E402

CHANNEL = st.floats(0.0, 1.0)
LIGHTS = st.tuples(CHANNEL, CHANNEL, CHANNEL)
LOOKS = st.builds(Looks, LIGHTS, LIGHTS, st.floats(0.02, 0.9))
MASSES = st.floats(1.0, 900.0)
COUNTS = st.integers(-3, 3)


def portions_of(masses: list[float]) -> tuple[Portion, ...]:
    return tuple(Portion(str(at), mass) for at, mass in enumerate(masses))


@given(st.lists(st.tuples(MASSES, LOOKS), min_size=2, max_size=5))
def test_a_slip_within_its_band_stays_within_the_budget(parts: list[tuple[float, Looks]]) -> None:
    masses, looks = [mass for mass, _ in parts], tuple(look for _, look in parts)
    found = bands(portions_of(masses), looks)

    def seen(grams: list[float]) -> tuple[Lab, Lab]:
        day, lamp = mixed(tuple(g / sum(grams) for g in grams), looks)
        return lab_of(day), lab_of(lamp)

    for at, ratio in enumerate(found.parts_ratio):
        assert 0 < ratio <= WIDEST_RATIO
        slipped = [g * (1 + ratio * (i == at)) for i, g in enumerate(masses)]
        both = zip(seen(masses), seen(slipped), strict=True)
        # The band follows the slope at the mark; a slip of 5 % bends off it by less than a tenth.
        assert max(difference_de(a, b) for a, b in both) <= SIDE_BY_SIDE_DE * 1.1 + 1e-6


@given(st.lists(MASSES, min_size=1, max_size=5))
def test_without_looks_the_band_is_one_percent(masses: list[float]) -> None:
    assert set(bands(portions_of(masses), (None,) * len(masses)).parts_ratio) == {0.01}


@given(st.floats(0.05, 8.0), st.floats(1.0, 900.0), st.sampled_from((0.01, 0.1, 1.0)))
def test_a_let_down_brings_the_same_grams_and_both_weighings_are_large_enough(
    part_g: float, carrier_g: float, step_g: float
) -> None:
    least_g = least_part_g(step_g)
    assume(part_g < least_g <= part_g + carrier_g)
    found = let_down(part_g, carrier_g, least_g)
    share = found.use_g / (found.tint_g + found.carrier_g)
    assert found.tint_g * share == pytest.approx(part_g)
    assert found.carrier_g * share + found.carrier_left_g == pytest.approx(carrier_g)
    assert min(found.tint_g, found.use_g) >= least_g - 1e-9
    assert found.carrier_left_g >= -1e-9


@given(st.lists(MASSES, min_size=2, max_size=5), st.floats(0.01, 80.0))
def test_the_bigger_pot_has_no_part_under_the_least(masses: list[float], least_g: float) -> None:
    whole = sum(masses)
    batch_g = batch_for_g(portions_of(masses), least_g)
    assert batch_g >= whole
    smallest = min(masses) / whole * batch_g
    assert smallest >= least_g - 1e-6
    assert batch_g == whole or smallest == pytest.approx(least_g)


@given(st.lists(MASSES, min_size=1, max_size=5), st.floats(0.0, 1.0))
def test_a_spill_keeps_the_mass(masses: list[float], ratio: float) -> None:
    poured = tuple(Pour(str(at), mass) for at, mass in enumerate(masses))
    found = spilt(poured, ratio * sum(masses))
    left = [one.net_g for one in found.left]
    assert sum(left) + found.lost_g == pytest.approx(sum(masses))
    for mass, one in zip(masses, left, strict=True):
        assert one == pytest.approx(mass * ratio)


@given(st.lists(MASSES, min_size=1, max_size=4), st.floats(0.1, 50.0))
def test_in_the_bigger_batch_nobody_sees_the_stray(masses: list[float], stray_g: float) -> None:
    plan = Plan(portions_of(masses))
    found = stray(plan, (), stray_g, None)
    assert stray_g / found.hidden_g <= 0.01 + 1e-9
    assert found.extra_g >= -1e-6
    assert found.factor_ratio >= 1 - 1e-9
    assert found.factor_ratio * sum(masses) + stray_g == pytest.approx(found.hidden_g)


@given(st.lists(st.tuples(MASSES, COUNTS, COUNTS), min_size=2, max_size=5))
def test_a_correction_is_the_least_addition(parts: list[tuple[float, int, int]]) -> None:
    in_pot = portions_of([mass for mass, _, _ in parts])
    lacks = tuple(Lack(day, lamp) for _, day, lamp in parts)
    times = {tuple(sorted((abs(a.day_count), abs(a.lamp_count)))) for a in lacks}
    assume(len({(a.day_count, a.lamp_count) for a in lacks}) > 1 and times != {(0, 0)})
    try:
        found = correct(in_pot, lacks)
    except ValueError:
        assume(False)
    count = len(in_pot)
    wanted = [part.parts_count for part in found.parts]
    # Unknowns: the factor, then what is added of each; factor x wanted - added = in the pot.
    equal = [
        [want, *(-1.0 if at == j else 0.0 for j in range(count))] for at, want in enumerate(wanted)
    ]
    best = linprog([0.0, *[1.0] * count], A_eq=equal, b_eq=[one.net_g for one in in_pot])
    assert best.status == 0
    assert sum(add.net_g for add in found.adds) == pytest.approx(best.fun, abs=1e-5)
    assert all(add.net_g >= 0 for add in found.adds)


@given(st.lists(st.tuples(MASSES, st.floats(0.0, 5000.0)), min_size=1, max_size=5))
def test_no_can_is_asked_for_more_than_it_has(parts: list[tuple[float, float]]) -> None:
    recipe = tuple(Part(str(at), mass) for at, (mass, _) in enumerate(parts))
    found = limit(recipe, tuple(has for _, has in parts))
    assert found.most_g is not None
    takes = [share * found.most_g for share in shares(recipe)]
    assert all(take <= has + 1e-6 for take, (_, has) in zip(takes, parts, strict=True))
    assert any(take == pytest.approx(has) for take, (_, has) in zip(takes, parts, strict=True))


@given(st.integers(100, 90000).map(lambda n: n / 10), st.lists(MASSES, min_size=1, max_size=5))
def test_cups_close_to_the_pot(in_pot_g: float, weights: list[float]) -> None:
    assume(min(weights) / sum(weights) * in_pot_g > 0.2)
    assert sum(cups_g(in_pot_g, tuple(weights), 0.1)) == pytest.approx(in_pot_g)


@given(st.lists(MASSES, min_size=1, max_size=5), st.floats(0.1, 900.0))
def test_more_of_it_keeps_the_proportion(masses: list[float], add_g: float) -> None:
    found = more_of_it(portions_of(masses), add_g)
    assert sum(one.net_g for one in found) == pytest.approx(add_g)
    for one, mass in zip(found, masses, strict=True):
        assert one.net_g / add_g == pytest.approx(mass / sum(masses))


@given(
    st.lists(st.tuples(MASSES, st.floats(0.1, 50.0)), min_size=1, max_size=5),
    st.floats(0.0, 2000.0),
)
def test_a_leftover_is_used_up_as_far_as_a_linear_programme_finds(
    parts: list[tuple[float, float]], has_g: float
) -> None:
    batch = portions_of([mass for mass, _ in parts])
    leftover = portions_of([mass for _, mass in parts])
    found = use_up(batch, leftover, has_g)
    whole = sum(one.net_g for one in leftover)
    shares_of = [one.net_g / whole for one in leftover]
    best = linprog(
        [-1.0],
        A_ub=[[share] for share in shares_of],
        b_ub=[one.net_g for one in batch],
        bounds=[(0.0, has_g)],
    )
    assert best.status == 0
    assert found.used_g == pytest.approx(-best.fun, abs=1e-6)
    for one, share, rest in zip(batch, shares_of, found.rest, strict=True):
        assert rest.net_g + found.used_g * share == pytest.approx(one.net_g, abs=1e-6)
