"""The bucket in cross-section: a frustum, its layers by shares of its height (never by eye)."""

from dataclasses import dataclass, replace
from typing import Literal

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts import icons
from mobile.parts.drawing import (
    Points,
    drawn,
    faded,
    filled,
    hatched,
    lines,
    path,
    spoken,
    written,
)
from mobile.parts.measure import text_width

CUP_TOP, CUP_FOOT, CUP_HIGH = 217.0, 171.0, 176.0  # 84, 66 and 68 mm
LIP, ROUND, SIDE = 12.0, 9.0, 4.0
LABEL_GAP, LABEL_MOST = 50.0, 6
LEADER, BEND = 36.0, 18.0
SIGN, CUP_SHARE = 36.0, 0.3  # tick or arrow with its gap; of the width, the least for the cup


@dataclass(frozen=True, slots=True)
class Layer:
    """One layer of the cup, between two shares of its height; `label` stands beside it."""

    low_ratio: float
    high_ratio: float
    color: str
    state: Literal["in", "pour now", "to come"]
    label: str = ""


@dataclass(frozen=True, slots=True)
class Cup:
    """The drawn cup: its height, dp, and whether labels stand beside it."""

    high: float = CUP_HIGH
    labels: bool = True
    width: float = 380.0


def cup_slice(low_ratio: float, high_ratio: float, high: float = CUP_HIGH) -> Points:
    """Give the corners of a slice of the cup, between two shares of its height."""
    low, top = (min(max(share, 0.0), 1.0) for share in (low_ratio, high_ratio))
    scale = high / CUP_HIGH
    ends = []
    for share in (low, top):
        inset, y = scale * (CUP_TOP - CUP_FOOT) / 2 * (1 - share), high * (1 - share)
        ends.append(((inset, y), (scale * CUP_TOP - inset, y)))
    (low_left, low_right), (high_left, high_right) = ends
    return low_left, high_left, high_right, low_right


def moved(shape: Points, left: float, top: float) -> Points:
    """Move a shape."""
    return tuple((x + left, y + top) for x, y in shape)


def layer_shapes(layer: Layer, color: str, shape: Points) -> list[cv.Shape]:
    """Draw a layer: solid in the cup, hatched to pour now, a dashed line where it will stand."""
    if layer.state == "in":
        return [path((shape,), filled(color))]
    surface = [cv.Line(*shape[1], *shape[2], paint=drawn(t.TEXT, 3))]
    if layer.state == "pour now":
        return [path((shape,), filled(faded(color, 0.4))), hatched(shape, color), *surface]
    dashed = cv.Line(*shape[1], *shape[2], paint=drawn(t.EDGE, 2, [7, 5]))
    return [path((shape,), filled(t.BOARD)), dashed]


def sides(high: float, left: float, top: float) -> cv.Path:
    """Draw the cup itself: two lips, two sides, a foot with round corners."""
    foot_left, rim_left, rim_right, foot_right = moved(cup_slice(0, 1, high), left, top)
    lip, bend = LIP * high / CUP_HIGH, ROUND * high / CUP_HIGH
    elements: list[cv.Path.PathElement] = [
        cv.Path.MoveTo(rim_left[0] - lip, rim_left[1]),
        cv.Path.LineTo(*rim_left),
        cv.Path.LineTo(foot_left[0] - bend * 0.13, foot_left[1] - bend),
        cv.Path.QuadraticTo(*foot_left, foot_left[0] + bend, foot_left[1]),
        cv.Path.LineTo(foot_right[0] - bend, foot_right[1]),
        cv.Path.QuadraticTo(*foot_right, foot_right[0] + bend * 0.13, foot_right[1] - bend),
        cv.Path.LineTo(*rim_right),
        cv.Path.LineTo(rim_right[0] + lip, rim_right[1]),
    ]
    return cv.Path(elements, drawn(t.EDGE, max(2.5, SIDE * high / CUP_HIGH)))


def label_heights(middles: tuple[float, ...], high: float) -> tuple[float, ...]:
    """Find where labels stand beside layers, from the foot up: apart, and none outside."""
    gap = min(LABEL_GAP, high / max(len(middles), 1))
    heights: list[float] = []
    for at, middle in enumerate(middles):
        lowest = high - gap / 2 - at * gap
        highest = gap / 2 + (len(middles) - 1 - at) * gap
        below = heights[-1] - gap if heights else lowest
        heights.append(max(min(middle, below, lowest), highest))
    return tuple(heights)


def labelled(layers: tuple[Layer, ...]) -> tuple[Layer, ...]:
    """Choose which layers get a label: all, or those around the one to pour now."""
    named = tuple(layer for layer in layers if layer.label)
    now = next((at for at, layer in enumerate(named) if layer.state == "pour now"), 0)
    first = max(0, min(now - LABEL_MOST // 2, len(named) - LABEL_MOST))
    return named[first : first + LABEL_MOST]


def label_shapes(layers: tuple[Layer, ...], cup: Cup, left: float, top: float) -> list[cv.Shape]:
    """Write the labels on bent leaders; a tick is in, an arrow is now."""
    chosen, size = labelled(layers), label_size(layers, cup)
    slices = [
        moved(cup_slice(one.low_ratio, one.high_ratio, cup.high), left, top) for one in chosen
    ]
    middles = [(shape[2][1] + shape[3][1]) / 2 for shape in slices]
    heights = label_heights(tuple(middle - top for middle in middles), cup.high)
    bend = left + CUP_TOP * cup.high / CUP_HIGH + LIP
    words_at = bend + BEND + 6
    leaders: list[Points] = []
    shapes: list[cv.Shape] = []
    for one, shape, middle, height in zip(chosen, slices, middles, heights, strict=True):
        leaders.append(
            (
                ((shape[2][0] + shape[3][0]) / 2, middle),
                (bend, middle),
                (bend + BEND, height + top),
            )
        )
        color = t.SOFT if one.state == "to come" else t.TEXT
        style = ft.TextStyle(size=size, weight=t.STRONG, color=color, height=1.0)
        at = (words_at, height + top)
        shapes.append(written(one.label, at, style, ft.Alignment.CENTER_LEFT))
        sign_at = words_at + text_width(one.label, size) + 12
        if one.state != "to come":
            name, pen = (
                ("check", drawn(t.GOOD, 3.5)) if one.state == "in" else ("left", drawn(t.TEXT, 3.5))
            )
            shapes.append(icons.shape(name, 24, pen, sign_at, height + top - 12))
    return [lines(leaders, drawn(t.EDGE, 1.5)), *shapes]


def longest(layers: tuple[Layer, ...], size: float) -> float:
    """Find how wide the widest label runs, dp."""
    return max((text_width(one.label, size) for one in labelled(layers)), default=0.0)


def label_size(layers: tuple[Layer, ...], cup: Cup) -> float:
    """Find the size of the labels: the usual one, or what leaves the cup its least share."""
    room = cup.width * (1 - CUP_SHARE) - (2 * LIP + 2 + BEND + 6 + SIGN)
    return min(t.FACT, room / max(longest(layers, 1.0), 1.0))


def beside(layers: tuple[Layer, ...], size: float = t.FACT) -> float:
    """Find the room that labels, their leaders and signs take beside the cup, dp."""
    return LIP + BEND + 6 + longest(layers, size) + SIGN


def cup_high(layers: tuple[Layer, ...], cup: Cup) -> float:
    """Find how high the cup is: lower where its labels would not fit beside it."""
    if not cup.labels:
        return cup.high
    room = cup.width - beside(layers, label_size(layers, cup)) - LIP - 2
    return min(cup.high, max(room, CUP_SHARE * cup.width) * CUP_HIGH / CUP_TOP)


@ft.component
def _Bucket(
    layers: tuple[Layer, ...],
    words: str,
    cup: Cup = Cup(),
    *,
    key: str | None = None,
) -> ft.Control:
    look = ft.use_context(t.LOOK).name
    cup = replace(cup, high=cup_high(layers, cup))
    left, top = LIP * cup.high / CUP_HIGH + 2, 2.0
    shapes: list[cv.Shape] = []
    for layer in layers:
        shape = moved(cup_slice(layer.low_ratio, layer.high_ratio, cup.high), left, top)
        shapes += layer_shapes(layer, t.paint(layer.color or "#8A939F", look), shape)
    shapes.append(sides(cup.high, left, top))
    width = CUP_TOP * cup.high / CUP_HIGH + 2 * left
    if cup.labels:
        shapes += label_shapes(layers, cup, left, top)
        width = cup.width
    return spoken(words, shapes, width, cup.high + top + SIDE)


Bucket = ft.memo(_Bucket)
