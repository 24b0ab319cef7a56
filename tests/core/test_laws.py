"""Laws of walls, cans, waits and the schedule, over generated cases."""

from dataclasses import replace

import pytest

pytest.importorskip("hypothesis")

from hypothesis import given
from hypothesis import strategies as st

from core.cans.ledger import balance, gap
from core.cans.weighing import fill, net, tare_from_unopened, volume
from core.coats.places import Coat, coats_left
from core.errors import Refused
from core.units import System, read
from core.waits.pair import Wait, after, state
from core.walls.area import painted_area
from core.walls.shape import Opening, Wall

OPENINGS = st.lists(
    st.builds(
        Opening,
        st.just("opening"),
        st.floats(0.05, 2.0),
        st.floats(0.05, 2.0),
        st.integers(1, 2),
    ),
    max_size=4,
).map(tuple)
WALLS = st.builds(Wall, st.floats(16.0, 60.0), st.floats(2.1, 9.0), st.floats(2.1, 9.0), OPENINGS)
THRESHOLDS_M2 = st.floats(0.0, 4.0)
WAITS = st.tuples(st.floats(0, 2e5), st.floats(0, 2e5), st.booleans()).map(
    lambda w: Wait(w[0], w[0] + w[1] if w[2] else None)
)
INSTANTS_S = st.floats(1.6e9, 2.0e9)
TACKY = st.lists(st.tuples(INSTANTS_S, st.floats(0, 7200)), max_size=5).map(tuple)
MASSES_G = st.floats(0, 5000)


@given(WALLS, THRESHOLDS_M2)
def test_net_area_lies_between_nothing_and_the_whole_wall(wall: Wall, above_m2: float) -> None:
    area = painted_area(wall, above_m2)
    assert 0 <= area.net_m2 <= area.gross_m2
    assert area.net_m2 + area.deducted_m2 == pytest.approx(area.gross_m2)


@given(WALLS, THRESHOLDS_M2, THRESHOLDS_M2)
def test_a_higher_threshold_never_takes_off_more(wall: Wall, one_m2: float, two_m2: float) -> None:
    low, high = sorted((one_m2, two_m2))
    assert painted_area(wall, low).net_m2 <= painted_area(wall, high).net_m2 + 1e-9


@given(WALLS)
def test_a_wall_and_its_mirror_image_are_equal(wall: Wall) -> None:
    mirrored = replace(wall, left_height_m=wall.right_height_m, right_height_m=wall.left_height_m)
    assert painted_area(wall).net_m2 == pytest.approx(painted_area(mirrored).net_m2)


@given(WALLS, st.floats(0.1, 0.9))
def test_a_wall_cut_in_two_has_the_same_area(wall: Wall, at: float) -> None:
    bare = replace(wall, openings=())
    middle_m = wall.left_height_m + (wall.right_height_m - wall.left_height_m) * at
    left = Wall(wall.width_m * at, wall.left_height_m, middle_m)
    right = Wall(wall.width_m * (1 - at), middle_m, wall.right_height_m)
    both_m2 = painted_area(left).net_m2 + painted_area(right).net_m2
    assert both_m2 == pytest.approx(painted_area(bare).net_m2)


def test_the_order_of_openings_does_not_matter() -> None:
    door, vent = Opening("door", 0.8, 1.82), Opening("vent", 0.4, 0.3)
    there = painted_area(Wall(5.62, 2.8, 2.8, (door, vent)))
    back = painted_area(Wall(5.62, 2.8, 2.8, (vent, door)))
    assert there.net_m2 == back.net_m2


@given(INSTANTS_S, WAITS, TACKY)
def test_a_wait_is_never_shorter_than_the_label_says(
    finished_at_s: float, wait: Wait, tacky: tuple[tuple[float, float], ...]
) -> None:
    coat = after(finished_at_s, wait, tacky)
    assert coat.ready_at_s >= coat.label_ready_at_s
    assert coat.label_ready_at_s - finished_at_s == pytest.approx(wait.minimum_s, abs=1e-5)
    assert coat.late_at_s is None or coat.late_at_s >= coat.label_ready_at_s


@given(INSTANTS_S, WAITS, TACKY, INSTANTS_S, st.floats(0, 7200))
def test_tacky_never_makes_a_coat_ready_sooner(
    finished_at_s: float,
    wait: Wait,
    tacky: tuple[tuple[float, float], ...],
    said_at_s: float,
    more_s: float,
) -> None:
    before = after(finished_at_s, wait, tacky)
    later = after(finished_at_s, wait, (*tacky, (said_at_s, more_s)))
    assert later.ready_at_s >= before.ready_at_s
    assert later.ready_at_s >= said_at_s + more_s
    assert later.late_at_s == before.late_at_s


@given(INSTANTS_S, WAITS, TACKY, st.lists(INSTANTS_S, min_size=2, max_size=20))
def test_a_coat_only_ever_moves_on(
    finished_at_s: float,
    wait: Wait,
    tacky: tuple[tuple[float, float], ...],
    instants_s: list[float],
) -> None:
    coat = after(finished_at_s, wait, tacky)
    order = ["rolling", "drying", "ready", "too late"]
    seen = [order.index(state(coat, now_s)) for now_s in sorted(instants_s)]
    assert seen == sorted(seen)


@given(st.floats(0.01, 60), st.floats(0.5, 3.0), st.floats(0, 500), st.floats(0, 1))
def test_tare_and_net_make_the_gross(
    label_l: float, density_g_ml: float, can_g: float, used: float
) -> None:
    full_g = label_l * density_g_ml * 1000
    if full_g + can_g > 9e4:
        return
    tare_g = tare_from_unopened(full_g + can_g, label_l, density_g_ml).tare_g
    assert tare_g == pytest.approx(can_g, abs=1e-6)
    left_g = net(tare_g + full_g * used, tare_g).net_g
    assert left_g == pytest.approx(full_g * used, abs=1e-6)
    assert fill(left_g, label_l, density_g_ml).full_ratio == pytest.approx(used, abs=1e-6)
    assert volume(left_g, density_g_ml).volume_l == pytest.approx(label_l * used, abs=1e-6)


@given(MASSES_G, st.lists(MASSES_G, max_size=20).map(tuple))
def test_a_ledger_without_a_leak_has_no_gap(net_g: float, poured_g: tuple[float, ...]) -> None:
    before_g = net_g + sum(poured_g)
    should_be_g = balance(before_g, poured_g).should_be_g if before_g <= 1e5 else None
    if should_be_g is not None:
        assert gap(net_g, should_be_g).gap_g == pytest.approx(0, abs=1e-6)


@given(st.integers(0, 12), st.sets(st.integers(0, 11)))
def test_what_is_left_comes_after_all_that_is_finished(count: int, done: set[int]) -> None:
    coats = tuple(Coat(str(i), "w", "w") for i in range(count))
    found = coats_left(coats, frozenset((str(i), "w") for i in done), "w")
    laid = [i for i in done if i < count]
    assert [int(coat.step) for coat in found] == list(range(max(laid, default=-1) + 1, count))


@given(st.text(max_size=60), st.sampled_from(("width_m", "air_c", "wait_s", "label_l", "net_g")))
def test_any_text_at_all_gives_a_value_or_a_refusal(text: str, name: str) -> None:
    for system in System:
        try:
            value = read(name, text, system)
        except Refused:
            continue
        assert -1e12 <= value <= 1e12
