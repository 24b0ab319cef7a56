"""Geometry of the drawings, as laws: nothing leaves what it is drawn in, order stays order."""

from itertools import pairwise
from math import isclose

import flet as ft
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.walls.shape import Opening, Wall
from mobile import theme as t
from mobile.parts.bucket import (
    CUP_HIGH,
    CUP_TOP,
    LABEL_MOST,
    Cup,
    Layer,
    beside,
    cup_high,
    cup_slice,
    label_heights,
    labelled,
)
from mobile.parts.can import LARGE_CAN, LID, SMALL_CAN, level_top
from mobile.parts.drawing import (
    CROSS,
    HATCH,
    Points,
    box,
    canvas,
    chords,
    cut,
    hatched,
    stripes,
    written,
)
from mobile.parts.elevation import opening_boxes, outline, scale_of, top_m
from mobile.parts.figure import LEAST, advance, figure_size
from mobile.parts.icons import ICONS, SQUARE, commands
from mobile.parts.waits import MOST_S, Clock, Strip, axis_of, strip_shares

HOUR = 3600.0
share = st.floats(0, 1)
instants = st.floats(0, 40 * HOUR)


def area(shape: Points) -> float:
    pairs = zip(shape, shape[1:] + shape[:1], strict=True)
    return abs(sum(x * b - a * y for (x, y), (a, b) in pairs)) / 2


# --- the cup ---------------------------------------------------------------------------------


@given(share, share, st.floats(20, 250))
def test_a_layer_never_leaves_the_cup(one: float, other: float, high: float) -> None:
    low, top = sorted((one, other))
    for x, y in cup_slice(low, top, high):
        level = 1 - y / high
        inset = (CUP_TOP - 171.0) / 2 * high / CUP_HIGH * (1 - level)
        assert -1e-9 <= y <= high + 1e-9
        assert inset - 1e-6 <= x <= CUP_TOP * high / CUP_HIGH - inset + 1e-6


@given(st.lists(share, min_size=2, max_size=8, unique=True))
def test_layers_fill_the_cup_without_gap_or_overlap(cuts: list[float]) -> None:
    edges = sorted(cuts)
    whole = area(cup_slice(edges[0], edges[-1]))
    parts = [area(cup_slice(*pair)) for pair in pairwise(edges)]
    assert sum(parts) == pytest.approx(whole, abs=1e-6)


@given(st.lists(st.floats(0, CUP_HIGH), min_size=1, max_size=LABEL_MOST))
def test_labels_keep_their_order_apart_and_inside(middles: list[float]) -> None:
    heights = label_heights(tuple(sorted(middles, reverse=True)), CUP_HIGH)
    gap = min(50.0, CUP_HIGH / len(heights))
    for lower, upper in pairwise(heights):
        assert lower - upper >= gap - 1e-9
    assert all(gap / 2 - 1e-9 <= height <= CUP_HIGH - gap / 2 + 1e-9 for height in heights)
    assert gap >= 26


@given(st.integers(1, 12), st.integers(0, 11))
def test_the_part_to_pour_now_always_has_its_label(parts: int, now: int) -> None:
    assume(now < parts)
    layers = tuple(
        Layer(
            at / parts, (at + 1) / parts, "#FF0000", "pour now" if at == now else "in", f"can {at}"
        )
        for at in range(parts)
    )
    shown = labelled(layers)
    assert layers[now] in shown
    assert len(shown) == min(parts, LABEL_MOST)


@given(st.floats(256, 700))
def test_the_cup_leaves_room_for_its_labels(width: float) -> None:
    layers = (Layer(0, 0.5, "#FF0000", "in", "can 12"),)
    high = cup_high(layers, Cup(width=width))
    assert CUP_TOP * high / CUP_HIGH + beside(layers) <= width + 1e-6 or high < 70
    assert high <= CUP_HIGH


@given(share)
def test_a_can_is_as_full_as_it_is(level: float) -> None:
    for size in (SMALL_CAN, LARGE_CAN):
        assert LID <= level_top(size, level) <= size[1]
    assert level_top(LARGE_CAN, level) <= level_top(LARGE_CAN, level * 0.5)


# --- patterns --------------------------------------------------------------------------------

side = st.floats(4, 300)


@given(side, side, st.sampled_from([HATCH, CROSS]), st.sampled_from([1, -1]))
def test_stripes_stay_in_their_shape(
    width: float, height: float, measure: tuple[float, float], lean: int
) -> None:
    shape = box(3, 5, 3 + width, 5 + height)
    drawn = tuple(stripes(shape, measure, lean))
    for x, y in (corner for stripe in drawn for corner in stripe):
        assert 3 - 1e-6 <= x <= 3 + width + 1e-6
        assert 5 - 1e-6 <= y <= 5 + height + 1e-6
    covered = sum(area(stripe) for stripe in drawn)
    assert covered <= area(shape) + 1e-6
    if min(width, height) > 60:
        assert covered / area(shape) == pytest.approx(measure[0] / measure[1], rel=0.12)


@given(side, side, st.sampled_from([1, -1]))
def test_a_cross_s_lines_go_from_edge_to_edge(width: float, height: float, lean: int) -> None:
    left, top, right, foot = 3.0, 5.0, 3 + width, 5 + height
    drawn = tuple(chords(box(left, top, right, foot), CROSS[1], lean))
    assert len(drawn) <= (width + height) / (CROSS[1] * 2**0.5) + 1
    for chord in drawn:
        assert len(chord) == 2
        for x, y in chord:
            assert min(abs(x - left), abs(x - right), abs(y - top), abs(y - foot)) < 1e-6
            assert left - 1e-6 <= x <= right + 1e-6
            assert top - 1e-6 <= y <= foot + 1e-6


@given(side, side)
def test_a_drawing_of_another_build_is_a_new_one(width: float, other: float) -> None:
    one, two = (hatched(box(0, 0, wide, 26), "#FFB627") for wide in (width, other))
    same = [type(step) for step in one.elements] == [type(step) for step in two.elements]
    kept = canvas([one], 300, 26).key == canvas([two], 300, 26).key
    assert kept == same


@given(st.floats(-50, 400))
def test_a_cut_keeps_the_whole(level: float) -> None:
    shape = box(0, 0, 120, 60)
    both = [cut(shape, 1, level, side) for side in (1, -1)]
    assert sum(area(one) for one in both if one) == pytest.approx(area(shape))


# --- waits -----------------------------------------------------------------------------------


@given(instants, st.floats(0, 10 * HOUR), st.floats(0, 10 * HOUR), instants)
def test_a_strip_s_shares_are_in_order(
    finished: float, dries: float, lasts: float, now: float
) -> None:
    strip = Strip(finished, finished + dries, None, finished + dries + lasts)
    begins, ready, late = strip_shares(strip, axis_of((strip,), now))
    assert 0 <= begins <= ready <= late <= 1


@given(st.lists(st.tuples(instants, st.floats(60, 8 * HOUR)), max_size=5), instants)
def test_the_axis_holds_now_and_at_most_six_hours_before_it(
    waits: list[tuple[float, float]], now: float
) -> None:
    strips = tuple(Strip(at, at + dries) for at, dries in waits)
    axis = axis_of(strips, now)
    assert axis.holds(now)
    assert axis.ends_s - axis.begins_s <= MOST_S + 1e-6
    assert axis.ends_s > axis.begins_s


def test_the_axis_is_that_of_the_design() -> None:
    """From the earliest finish − 15 min to the last limit + 30 min (`axis` rule of the design)."""
    strips = (Strip(0, HOUR, late_s=3 * HOUR), Strip(1.05 * HOUR, 1.5 * HOUR))
    axis = axis_of(strips, 1.2 * HOUR)
    assert (axis.begins_s, axis.ends_s) == (-900.0, 3.5 * HOUR)
    clock = Clock(axis, 1.2 * HOUR, 375.0)
    assert isclose(clock.left(axis.begins_s), 0)
    assert isclose(clock.left(axis.ends_s), 375)


def test_a_wait_without_a_limit_is_ready_to_the_end() -> None:
    strip = Strip(0, HOUR)
    assert strip_shares(strip, axis_of((strip,), 0))[2] == pytest.approx(1.0)


def test_what_is_written_on_a_drawing_is_in_the_app_s_own_font() -> None:
    style = written("…", (0, 0), ft.TextStyle(size=20)).style
    assert style is not None
    assert style.font_family == t.FONT


# --- figures ---------------------------------------------------------------------------------


@given(st.integers(1, 5), st.booleans(), st.sampled_from(["", "g"]), st.booleans())
def test_a_big_figure_fits_and_can_be_read_from_the_bucket(
    digits: int, point: bool, unit: str, caret: bool
) -> None:
    text = "8" * digits + (".8" if point else "")
    for width in (288.0, 380.0, 720.0):
        size = figure_size(text, unit, width, 176.0, caret)
        assert advance(text, size) <= width
        assert size >= LEAST or len(text) > 5
        longer = figure_size(f"8{text}", unit, width, 176.0, caret)
        assert longer <= size


# --- the wall --------------------------------------------------------------------------------

opening = st.builds(
    Opening, st.just("o"), st.floats(0.2, 1.5), st.floats(0.2, 2.2), st.integers(1, 2)
)
walls = st.builds(
    Wall,
    st.floats(1.5, 20),
    st.floats(1.0, 6),
    st.floats(1.0, 6),
    st.lists(opening, max_size=4).map(tuple),
)


@given(walls)
def test_openings_stay_inside_the_wall(wall: Wall) -> None:
    for corners in opening_boxes(wall):
        for x, y in corners:
            assert -1e-9 <= x <= wall.width_m + 1e-9
            assert -1e-9 <= y <= top_m(wall, min(max(x, 0), wall.width_m)) + 1e-6


@given(walls)
def test_openings_do_not_cover_each_other_where_they_fit(wall: Wall) -> None:
    wide = sum(one.width_m * one.count for one in wall.openings)
    assume(wide <= wall.width_m)
    spans = [(corners[0][0], corners[1][0]) for corners in opening_boxes(wall)]
    for (_, ends), (begins, _) in pairwise(spans):
        assert ends <= begins + 1e-9


@given(walls, st.floats(288, 720), st.floats(120, 400))
def test_the_wall_fits_its_drawing_and_keeps_its_proportions(
    wall: Wall, width: float, height: float
) -> None:
    scale = scale_of(wall, width, height)
    wide = max(x for x, _ in outline(wall)) * scale
    high = max(y for _, y in outline(wall)) * scale
    assert 0 < wide <= width
    assert 0 < high <= height


# --- icons -----------------------------------------------------------------------------------


@pytest.mark.parametrize("name", ICONS)
def test_an_icon_stays_in_its_square(name: str) -> None:
    for sign, numbers in commands(name):
        if sign in {"O", "R"}:
            left, top, wide, high = numbers[:4]
            points = [left, top, left + wide, top + high]
        else:
            points = list(numbers)
        assert all(0 <= value <= SQUARE for value in points), (sign, numbers)
