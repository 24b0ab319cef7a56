"""The over gauge: what the scale reads against the band, grams apart that a bucket can't show."""

from dataclasses import dataclass
from math import ceil, floor

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import box, crossed, drawn, filled, path, rounded, spoken, written

WINDOW_G, MORE = 15.0, 1.25
HIGH, OVER, TICKS = 28.0, 11.0, 30.0
STEPS_G = (1, 5, 10, 50, 100, 500, 1000, 5000, 10000)
TICKS_MOST = 30
TEXT_APART = 44.0


@dataclass(frozen=True, slots=True)
class Reading:
    """What the scale should read, between which limits, what it reads, and the paint's colour."""

    target_g: float
    low_g: float
    high_g: float
    reads_g: float | None
    color: str
    target: str  # the target as it is shown
    sign: str = ""  # before each figure, where all readings are less than nothing


def window(reading: Reading) -> tuple[float, float]:
    """Find the grams at both ends: 15 g about the target, more where the reading is far out.

    Nothing is drawn below zero: no scale reads that of a cup.
    """
    reads_g = reading.target_g if reading.reads_g is None else reading.reads_g
    far_g = max(abs(reads_g - reading.target_g), reading.high_g - reading.target_g) * MORE
    half_g = max(WINDOW_G / 2, far_g)
    begins = floor(reading.target_g - half_g + 0.5)
    ends = begins + max(WINDOW_G, ceil(2 * half_g))
    begins = max(begins, 0)
    return begins, max(ends, begins + WINDOW_G)


def step_g(begins: float, ends: float) -> int:
    """Find the grams from tick to tick: one, or more in a wide window."""
    return next((one for one in STEPS_G if (ends - begins) / one <= TICKS_MOST), STEPS_G[-1])


def tick_shapes(reading: Reading, width: float, ends: tuple[float, float]) -> list[cv.Shape]:
    """Draw the ticks; every fifth is longer and says its grams."""
    begins, stops = ends
    step = step_g(begins, stops)
    foot = HIGH + OVER + 4
    short, long, shapes = [], [], list[cv.Shape]()
    target_x = width * (reading.target_g - begins) / (stops - begins)
    style = t.style(t.CAPTION, t.SOFT)
    for count in range(ceil(begins / step), floor(stops / step) + 1):
        x = width * (count * step - begins) / (stops - begins)
        if count % 5:
            short.append(((x, foot), (x, foot + 6)))
            continue
        long.append(((x, foot), (x, foot + 11)))
        if abs(x - target_x) > TEXT_APART and TEXT_APART / 2 < x < width - TEXT_APART / 2:
            at = (x, foot + 14)
            grams = f"{reading.sign if count else ''}{count * step}"
            shapes.append(written(grams, at, style, ft.Alignment.TOP_CENTER))
    target = t.style(t.CAPTION, t.GOOD, t.STRONG)
    at = (min(max(target_x, TEXT_APART / 2), width - TEXT_APART / 2), foot + 14)
    said = f"{reading.sign}{reading.target}"
    shapes.append(written(said, at, target, ft.Alignment.TOP_CENTER))
    pen = drawn(t.EDGE, 1.5)
    elements = [[cv.Path.MoveTo(*a), cv.Path.LineTo(*b)] for a, b in (*short, *long)]
    return [cv.Path([part for pair in elements for part in pair], pen), *shapes]


def gauge_shapes(reading: Reading, color: str, width: float) -> list[cv.Shape]:
    """Draw the bar: paint solid to the band, the band a box, crossed beyond it."""
    begins, stops = window(reading)

    def at(grams: float) -> float:
        return width * min(max((grams - begins) / (stops - begins), 0.0), 1.0)

    top, foot = OVER, OVER + HIGH
    low, high, target = at(reading.low_g), at(reading.high_g), at(reading.target_g)
    shapes = tick_shapes(reading, width, (begins, stops))
    shapes.append(cv.Path([rounded(0, top, width, foot, 6)], filled(t.RAISED)))
    if reading.reads_g is not None:
        reads = at(reading.reads_g)
        solid = cv.Path([rounded(0, top, max(min(reads, low - 2), 1), foot, 6)], filled(color))
        shapes.append(solid)
        if reads > high:
            beyond = box(high + 2, top, reads, foot)
            shapes += [path((beyond,), filled(t.BOARD)), crossed(beyond, t.TOO_LATE)]
    band = rounded(low, top - 9, max(high, low + 6), foot + 9, 4)
    shapes += [
        cv.Path([band], filled(t.GROUND)),
        cv.Path([band], drawn(t.GOOD, 3)),
        cv.Line(target, top, target, foot, paint=drawn(t.GOOD, 3.5)),
    ]
    if reading.reads_g is not None:
        reads = at(reading.reads_g)
        gap = box(reads - 3.75, top, reads + 3.75, foot)
        shapes += [
            path((gap,), filled(t.GROUND)),
            cv.Line(reads, top - 9, reads, foot + 9, paint=drawn(t.TEXT, 3.5)),
        ]
    return shapes


@ft.component
def _OverGauge(reading: Reading, words: str, width: float, *, key: str | None = None) -> ft.Control:
    look = ft.use_context(t.LOOK).name
    shapes = gauge_shapes(reading, t.paint(reading.color or "#8A939F", look), width)
    return spoken(words, shapes, width, HIGH + 2 * OVER + TICKS)


OverGauge = ft.memo(_OverGauge)
