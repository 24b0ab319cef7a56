"""Laws of what is needed and when it is done, over generated cases."""

from dataclasses import replace
from itertools import product

import pytest

pytest.importorskip("hypothesis")

from hypothesis import given, settings
from hypothesis import strategies as st

from core.coats.need import Coats, HoldUp, Kit, Patch, need
from core.coats.rate import goes_over_m2, rate_of_film, rate_of_spreading
from core.errors import Refused
from core.mixing.loads import loads
from core.waits.hand_over import HandOver, Task, hand_over
from core.waits.pair import PairWait, Wait

LATEST = 7  # in the schedules that are tried out one by one
TASKS = st.lists(st.integers(0, 2), min_size=1, max_size=4).map(
    lambda works: tuple(Task(str(i), float(work)) for i, work in enumerate(works))
)
FROM = st.sampled_from(["end", "start"])


@st.composite
def schedules(draw: st.DrawFn) -> tuple[tuple[Task, ...], tuple[PairWait, ...]]:
    tasks = draw(TASKS)
    ids = st.sampled_from([task.id for task in tasks])
    least, most = st.integers(0, 2).map(float), st.integers(0, 4).map(float)
    wait = st.builds(Wait, least, st.one_of(st.none(), most), FROM, FROM)
    pair = st.builds(PairWait, ids, ids, wait)
    pairs = draw(st.lists(pair.filter(lambda p: p.after != p.before), max_size=5))
    return tasks, tuple(pairs)


def keeps(tasks: tuple[Task, ...], pairs: tuple[PairWait, ...], starts: tuple[float, ...]) -> bool:
    """Tell whether these starts keep every wait."""
    at = {task.id: (start, task.work_s) for task, start in zip(tasks, starts, strict=True)}
    for pair in pairs:
        (first, work), (then, _) = at[pair.after], at[pair.before]
        waited = {"end": then - first - work, "start": then - first}
        wait, most = pair.wait, pair.wait.maximum_s
        if waited[wait.minimum_from] < wait.minimum_s - 1e-9:
            return False
        if most is not None and waited[wait.maximum_from] > most + 1e-9:
            return False
    return True


def tried_out(tasks: tuple[Task, ...], pairs: tuple[PairWait, ...]) -> float | None:
    """Find the earliest hand-over by trying every whole start there is; None if none keeps all."""
    ends = [
        max(start + task.work_s for task, start in zip(tasks, starts, strict=True))
        for starts in product(map(float, range(LATEST + 1)), repeat=len(tasks))
        if keeps(tasks, pairs, starts)
    ]
    return min(ends, default=None)


def found(tasks: tuple[Task, ...], pairs: tuple[PairWait, ...]) -> HandOver | None:
    try:
        return hand_over(tasks, pairs)
    except Refused as refusal:
        if refusal.name == "impossible_pair" and 0 <= int(refusal.value) < len(pairs):
            return None
        raise


@given(schedules())
@settings(max_examples=300, deadline=None)
def test_the_hand_over_is_what_trying_all_starts_finds(
    schedule: tuple[tuple[Task, ...], tuple[PairWait, ...]],
) -> None:
    tasks, pairs = schedule
    plan = found(tasks, pairs)
    if plan is None:
        assert tried_out(tasks, pairs) is None
        return
    assert keeps(tasks, pairs, plan.starts_s)
    if max(plan.starts_s) <= LATEST:
        assert plan.hand_over_s == tried_out(tasks, pairs)


@given(schedules(), st.integers(0, 4), st.floats(0.1, 5))
def test_a_longer_wait_never_brings_the_hand_over_forward(
    schedule: tuple[tuple[Task, ...], tuple[PairWait, ...]], at: int, more_s: float
) -> None:
    tasks, pairs = schedule
    if at >= len(pairs):
        return
    old = pairs[at]
    longer = replace(old, wait=replace(old.wait, minimum_s=old.wait.minimum_s + more_s))
    plan, later = found(tasks, pairs), found(tasks, (*pairs[:at], longer, *pairs[at + 1 :]))
    if plan and later:
        assert later.hand_over_s >= plan.hand_over_s - 1e-9


@given(schedules())
def test_one_crew_is_never_sooner_than_many_hands(
    schedule: tuple[tuple[Task, ...], tuple[PairWait, ...]],
) -> None:
    tasks, pairs = schedule
    plan = found(tasks, pairs)
    if plan is None:
        return
    try:
        alone = hand_over(tasks, pairs, one_after_another=True)
    except Refused:
        return
    assert alone.hand_over_s >= plan.hand_over_s - 1e-9
    for sooner, later, task in zip(alone.starts_s, alone.starts_s[1:], tasks, strict=False):
        assert later >= sooner + task.work_s - 1e-6


AREAS = st.floats(0, 500)
RATES = st.floats(1, 400)
HOLD_UPS = st.lists(
    st.builds(HoldUp, st.just("tool"), st.floats(0, 100), st.integers(0, 5)), max_size=4
).map(tuple)


@given(AREAS, RATES, st.integers(1, 4), HOLD_UPS)
def test_a_need_is_its_parts_and_grows_with_each(
    area_m2: float, g_m2: float, count: int, kept: tuple[HoldUp, ...]
) -> None:
    coats = Coats((Patch(area_m2, count),), g_m2)
    bare, whole = need(coats, 1.1), need(coats, 1.1, kept, Kit(cling_g=7.0))
    assert whole.need_g == pytest.approx(whole.wall_g + whole.kept_g + whole.kit_g)
    assert bare.need_g == bare.wall_g <= whole.need_g
    wider = need(Coats((Patch(area_m2 * 1.1, count),), g_m2), 1.1, kept, Kit(cling_g=7.0))
    assert wider.need_g >= whole.need_g


@given(st.floats(1, 500), st.floats(0.6, 2), st.floats(0.05, 1), st.floats(0, 0.6))
def test_more_loss_never_needs_less_paint_and_both_ways_to_a_rate_agree(
    dft_um: float, density_g_ml: float, solids_ratio: float, loss_ratio: float
) -> None:
    rate = rate_of_film(dft_um, density_g_ml, solids_ratio, loss_ratio)
    assert rate.g_m2 >= rate_of_film(dft_um, density_g_ml, solids_ratio).g_m2
    spread_m2_l = 1000 * solids_ratio / dft_um
    if 0.1 <= spread_m2_l <= 100:
        other = rate_of_spreading(spread_m2_l, density_g_ml, loss_ratio)
        assert other.g_m2 == pytest.approx(rate.g_m2)
    assert goes_over_m2(rate.g_m2, rate.g_m2) == pytest.approx(1.0)


@given(st.floats(0.1, 90_000), st.floats(100, 20_000))
def test_loads_fit_the_scale_and_none_is_short(need_g: float, capacity_g: float) -> None:
    split = loads(need_g, capacity_g)
    assert split.load_g <= capacity_g
    assert split.batch_g >= need_g - 1e-6
    assert split.batch_g < need_g + split.loads_count + 1
    assert (split.loads_count - 1) * int(capacity_g) < need_g
