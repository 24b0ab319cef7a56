"""Laws of portions, the weigh-out, the over-pour and the cup, over generated cases."""

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

pytest.importorskip("hypothesis")

from hypothesis import assume, given
from hypothesis import strategies as st

from core.errors import Refused
from core.mixing.over_pour import answers
from core.mixing.plan import Plan, Pour
from core.mixing.portions import Portion, portions, pouring_order
from core.mixing.pot import Cup, contents, holds_l, level_ratio, levels, total_g
from core.mixing.restart import offset_after_restart
from core.mixing.scale import band_g, shown_g, steps_count
from core.mixing.weigh_out import next_pour, over, poured_g
from core.paints.blend import blend
from core.paints.recipe import Part, shares

COUNTS = st.integers(1, 400).map(lambda n: n / 4)
RECIPES = st.lists(COUNTS, min_size=1, max_size=6).map(
    lambda counts: tuple(Part(f"paint {i}", count) for i, count in enumerate(counts))
)
STEPS_G = st.sampled_from((0.01, 0.1, 0.5, 1.0))
BATCHES_G = st.integers(100, 9000).map(float)
CUPS = st.builds(
    Cup,
    bottom_m=st.floats(0.03, 0.3),
    top_m=st.floats(0.03, 0.3),
    height_m=st.floats(0.03, 0.3),
)


@st.composite
def plans(draw: st.DrawFn) -> Plan:
    """Make up a plan that the scale can weigh."""
    step_g, batch_g = draw(STEPS_G), draw(BATCHES_G)
    try:
        split = portions(draw(RECIPES), batch_g, step_g)
    except Refused:
        assume(False)
    offset_g = shown_g(draw(st.sampled_from((0.0, 21.4, -3.0))), step_g)
    return Plan(pouring_order(split, batch_g), 1.0, step_g, offset_g)


def weighed(plan: Plan, poured: tuple[Pour, ...] = ()) -> tuple[Pour, ...]:
    """Pour on the mark until all is in."""
    for _ in range(100):
        target = next_pour(plan, poured)
        if target is None:
            return poured
        assert target.net_g > 0
        assert target.low_g < target.reads_g < target.high_g
        poured = (*poured, Pour(target.paint, target.net_g))
    raise AssertionError("a weigh-out without an end")


def in_cup_g(poured: tuple[Pour, ...], paint: str) -> float:
    return sum(pour.net_g for pour in poured if pour.paint == paint)


@given(RECIPES, BATCHES_G, STEPS_G)
def test_portions_close_to_the_batch_on_the_scale(
    parts: tuple[Part, ...], batch_g: float, step_g: float
) -> None:
    if min(shares(parts)) * batch_g < step_g:
        return  # too small for the scale: refused, or rounded up to one step
    found = portions(parts, batch_g, step_g)
    steps = [steps_count(portion.net_g, step_g) for portion in found]
    assert sum(steps) == steps_count(batch_g, step_g)
    for portion, share in zip(found, shares(parts), strict=True):
        assert portion.net_g == shown_g(portion.net_g, step_g) > 0
        assert abs(portion.net_g - share * batch_g) < step_g + 1e-9


@given(RECIPES, BATCHES_G, STEPS_G)
def test_a_bigger_part_never_gets_less(
    parts: tuple[Part, ...], batch_g: float, step_g: float
) -> None:
    try:
        found = portions(parts, batch_g, step_g)
    except Refused:
        return
    by_count = sorted(zip(parts, found, strict=True), key=lambda pair: pair[0].parts_count)
    for (less, less_g), (more, more_g) in pairwise(by_count):
        assert less_g.net_g <= more_g.net_g or less.parts_count == more.parts_count


def test_of_equal_remainders_the_first_listed_is_rounded_up() -> None:
    thirds = tuple(Part(name, 1.0) for name in "abc")
    assert [p.net_g for p in portions(thirds, 100.0, 1.0)] == [34.0, 33.0, 33.0]
    assert [p.net_g for p in portions(thirds, 101.0, 1.0)] == [34.0, 34.0, 33.0]


@given(plans())
def test_pouring_order_is_a_rearrangement_and_ascends(plan: Plan) -> None:
    batch_g = sum(portion.net_g for portion in plan.portions)
    again = pouring_order(tuple(reversed(plan.portions)), batch_g)
    assert sorted(again, key=lambda p: p.paint) == sorted(plan.portions, key=lambda p: p.paint)
    assert [p.net_g for p in again] == sorted(p.net_g for p in again)


@given(plans())
def test_on_the_mark_every_part_takes_one_pour_and_the_batch_is_there(plan: Plan) -> None:
    poured = weighed(plan)
    assert [pour.paint for pour in poured] == [portion.paint for portion in plan.portions]
    assert total_g(poured) == pytest.approx(sum(p.net_g for p in plan.portions), abs=1e-6)
    assert over(plan, poured) is None


@given(plans(), st.lists(st.floats(0.2, 1.6), max_size=12))
def test_paint_is_never_to_be_taken_out_and_none_is_lost(plan: Plan, slips: list[float]) -> None:
    poured: tuple[Pour, ...] = ()
    for slip in slips:
        target = next_pour(plan, poured)
        if target is None:
            break
        assert target.net_g > 0
        assert target.reads_g > plan.offset_g + total_g(poured)
        reads_g = shown_g(plan.offset_g + total_g(poured) + target.net_g * slip, plan.scale_step_g)
        net_g = poured_g(plan, poured, reads_g)
        before_g = total_g(poured)
        poured = (*poured, Pour(target.paint, net_g))
        assert total_g(poured) == pytest.approx(before_g + net_g, abs=1e-9)
        assert plan.offset_g + total_g(poured) == pytest.approx(reads_g, abs=1e-5)
    assert total_g(poured) == pytest.approx(sum(p.net_g for p in contents(poured)))
    after = weighed(plan, poured)
    for portion in plan.portions:
        short_g = portion.net_g - in_cup_g(after, portion.paint)
        assert short_g <= band_g(portion.net_g, plan.scale_step_g) + 1e-5


@given(plans(), st.data())
def test_made_bigger_the_ratio_is_exact_and_no_part_is_over(
    plan: Plan, data: st.DataObject
) -> None:
    parts = data.draw(st.lists(st.floats(0.0, 1.5), min_size=6, max_size=6))
    poured = tuple(
        Pour(p.paint, shown_g(p.net_g * part, plan.scale_step_g))
        for p, part in zip(plan.portions, parts, strict=False)
    )
    assume(over(plan, poured) is not None)
    prices = tuple(None for _ in plan.portions)
    make = answers(plan, poured, prices, None).make
    for portion, add in zip(plan.portions, make.adds, strict=True):
        assert add.net_g >= 0
        whole_g = in_cup_g(poured, portion.paint) + add.net_g
        assert whole_g == pytest.approx(portion.net_g * make.factor_ratio, rel=1e-9)
    assert min(add.net_g for add in make.adds) == pytest.approx(0, abs=1e-9)  # so none is smaller
    bigger = replace(plan, factor_ratio=make.factor_ratio)
    assert over(bigger, poured) is None
    done = weighed(bigger, poured)
    assert over(bigger, done) is None
    for portion in plan.portions:
        target_g = portion.net_g * make.factor_ratio
        allowed_g = band_g(target_g, plan.scale_step_g) + plan.scale_step_g
        assert abs(in_cup_g(done, portion.paint) - target_g) <= allowed_g


@given(plans(), st.floats(1.03, 3.0))
def test_a_kept_over_pour_is_passed_over_and_the_rest_goes_on(plan: Plan, slip: float) -> None:
    first = plan.portions[0]
    poured = (Pour(first.paint, shown_g(first.net_g * slip + 1, plan.scale_step_g)),)
    assume(over(plan, poured) is not None)
    keep = answers(plan, poured, tuple(None for _ in plan.portions), None).keep
    assert keep.paint == first.paint
    assert over(plan, poured, kept=(first.paint,)) is None
    done = weighed(plan, poured)
    assert in_cup_g(done, first.paint) == poured[0].net_g
    assert total_g(done) == pytest.approx(keep.total_g, abs=1e-5)
    assert in_cup_g(done, first.paint) / total_g(done) == pytest.approx(keep.share_ratio, rel=1e-6)


@given(plans(), st.integers(0, 6), st.floats(0.0, 0.9), st.floats(5.0, 400.0), st.booleans())
def test_a_scale_that_went_off_loses_nothing(
    plan: Plan, done: int, part: float, cup_g: float, tared_full: bool
) -> None:
    """What is in the cup afterwards, by the log and what was missed, is what really is in it."""
    logged = weighed(plan)[: min(done, len(plan.portions) - 1)]
    target = next_pour(plan, logged)
    assert target is not None
    step_g = plan.scale_step_g
    cup_g = shown_g(cup_g, step_g)
    assume(abs(cup_g - plan.offset_g) > 3 * step_g)
    missed_g = 0.0 if tared_full else shown_g(target.net_g * part, step_g)
    really_g = total_g(logged) + missed_g
    reads_g = 0.0 if tared_full else cup_g + really_g
    kept_zero = abs(reads_g - plan.offset_g - total_g(logged)) <= 2 * step_g
    assume(not kept_zero and (tared_full or abs(reads_g) > 2 * step_g))
    restart = offset_after_restart(plan, logged, reads_g, cup_g)
    logged = (*logged, Pour(target.paint, restart.missed_g))
    assert total_g(logged) == pytest.approx(really_g, abs=step_g + 1e-5)
    going_on = replace(plan, offset_g=restart.offset_g)
    then = next_pour(going_on, logged)
    assert then is None or then.reads_g == pytest.approx(
        restart.offset_g + total_g(logged) + then.net_g, abs=1e-5
    )
    assert restart.offset_g + total_g(logged) == pytest.approx(reads_g, abs=step_g + 1e-5)


@given(plans(), st.integers(0, 6))
def test_a_scale_that_kept_its_zero_changes_nothing(plan: Plan, done: int) -> None:
    logged = weighed(plan)[:done]
    reads_g = plan.offset_g + total_g(logged)
    restart = offset_after_restart(plan, logged, reads_g, 500.0)
    assert restart.offset_g == plan.offset_g
    assert restart.missed_g == 0


@given(RECIPES, st.data())
def test_a_blend_is_no_denser_than_its_densest_paint(
    parts: tuple[Part, ...], data: st.DataObject
) -> None:
    some = st.lists(st.floats(0.5, 3.0), min_size=len(parts), max_size=len(parts))
    densities = tuple(data.draw(some))
    mix = blend(parts, densities, 1000.0)
    assert min(densities) * (1 - 1e-9) <= mix.density_g_ml <= max(densities) * (1 + 1e-9)
    apart_l = sum(
        share * 1000.0 / density / 1000
        for share, density in zip(shares(parts), densities, strict=True)
    )
    assert mix.volume_l == pytest.approx(apart_l, rel=1e-9)


@given(CUPS, st.floats(0.0, 1.0))
def test_a_level_is_where_a_hundred_thin_slices_put_it(cup: Cup, height: float) -> None:
    slices = 2000
    filled_l = 0.0
    for i in range(slices):
        middle = height * (i + 0.5) / slices
        across_m = cup.bottom_m + (cup.top_m - cup.bottom_m) * middle
        filled_l += 3.141592653589793 / 4 * across_m**2 * cup.height_m * height / slices * 1000
    assume(filled_l <= holds_l(cup))
    assert level_ratio(cup, filled_l) == pytest.approx(height, abs=1e-5)


@given(CUPS, st.lists(st.floats(0.01, 1.0), min_size=1, max_size=5))
def test_layers_rise_to_the_height_of_the_whole(cup: Cup, parts: list[float]) -> None:
    each_g = holds_l(cup) * 1000 * 1.2 / sum(parts)
    layers = tuple(Portion(str(i), each_g * part * 0.9) for i, part in enumerate(parts))
    tops = levels(layers, (1.2,) * len(layers), cup).tops_ratio
    assert list(tops) == sorted(tops)
    assert tops[-1] == pytest.approx(level_ratio(cup, holds_l(cup) * 0.9), abs=1e-9)
    assert 0 < tops[0] <= tops[-1] < 1


@given(st.integers(-10_000, 10_000), STEPS_G)
def test_what_the_scale_shows_it_shows_again(count: int, step_g: float) -> None:
    mass_g = float(count * Fraction(repr(step_g)))
    assert shown_g(mass_g, step_g) == mass_g
    assert shown_g(mass_g + step_g / 4, step_g) == mass_g
