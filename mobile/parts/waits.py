"""One clock for all walls: every strip of a screen has the same axis, so now is one plumb line."""

from dataclasses import dataclass

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import (
    Points,
    box,
    canvas,
    crossed,
    drawn,
    filled,
    hatched,
    path,
    rounded,
    spoken,
    written,
)
from mobile.parts.measure import text_width
from mobile.parts.tap import grow_loosely

STRIP_HIGH, OVER, BOB = 26.0, 10.0, 13.0
NOW_WIDE, GAP = 3.5, 2.0
BEFORE_S, AFTER_S, MOST_S, LEAST_S = 15 * 60.0, 30 * 60.0, 6 * 3600.0, 3600.0
AXIS_HIGH, PILL_HIGH = 44.0, 29.0
MOVE = ft.Animation(400, ft.AnimationCurve.EASE_OUT)


@dataclass(frozen=True, slots=True)
class Axis:
    """The time axis of a screen, between two instants, s."""

    begins_s: float
    ends_s: float

    def share(self, at_s: float) -> float:
        """Find where an instant stands, 0 to 1; what is outside stands at the end."""
        return min(max((at_s - self.begins_s) / (self.ends_s - self.begins_s), 0.0), 1.0)

    def holds(self, at_s: float) -> bool:
        """Tell whether an instant is on the axis."""
        return self.begins_s <= at_s <= self.ends_s


@dataclass(frozen=True, slots=True)
class Strip:
    """A coat's wait: when its rolling ended, the label's end, when it is ready and too late."""

    finished_s: float
    ready_s: float
    label_s: float | None = None
    late_s: float | None = None


@dataclass(frozen=True, slots=True)
class Clock:
    """The one clock of a screen: its axis, now, and how wide its strips are, dp."""

    axis: Axis
    now_s: float
    width: float

    def left(self, at_s: float) -> float:
        """Find where an instant stands, dp from the left."""
        return self.width * self.axis.share(at_s)


@dataclass(frozen=True, slots=True)
class Tick:
    """A mark of the axis; with words it is a whole hour."""

    at_s: float
    words: str = ""


def axis_of(strips: tuple[Strip, ...], now_s: float) -> Axis:
    """Find the one axis: from the earliest finish − 15 min to the last limit + 30 min, at most 6 h.

    A strip without a limit asks for room up to its ready. Now is always on the axis: where six
    hours don't hold everything, they end later rather than leave now out.
    """
    begins_s = min((one.finished_s for one in strips), default=now_s) - BEFORE_S
    ends_s = max((one.late_s or one.ready_s for one in strips), default=now_s) + AFTER_S
    begins_s = min(max(begins_s, now_s - MOST_S + AFTER_S), now_s)
    ends_s = max(min(ends_s, begins_s + MOST_S), begins_s + LEAST_S, now_s)
    return Axis(begins_s, ends_s)


def strip_shares(strip: Strip, axis: Axis) -> tuple[float, float, float]:
    """Find where drying begins, ready begins and too late begins, in this order, 0 to 1."""
    begins = axis.share(strip.finished_s)
    ready = max(begins, axis.share(strip.ready_s))
    late = 1.0 if strip.late_s is None else max(ready, axis.share(strip.late_s))
    return begins, ready, late


def piece(left: float, right: float) -> Points:
    """Give the corners of a piece of the strip, nothing where it is empty."""
    return box(left, 0, right, STRIP_HIGH) if right - left > 1 else ()


def strip_shapes(strip: Strip, axis: Axis, width: float) -> list[cv.Shape]:
    """Draw a wait: hatched while drying, solid when ready, crossed when too late."""
    begins, ready, late = (width * share for share in strip_shares(strip, axis))
    shapes: list[cv.Shape] = [cv.Path([rounded(0, 0, width, STRIP_HIGH, 6)], filled(t.RAISED))]
    if drying := piece(begins, ready - 1):
        shapes.append(hatched(drying, t.DRYING))
    if solid := piece(ready, late):
        shapes.append(path((solid,), filled(t.READY)))
    if too_late := piece(late + 1, width):
        shapes += [path((too_late,), filled(t.BOARD)), crossed(too_late, t.TOO_LATE)]
    if strip.label_s is not None and axis.holds(strip.label_s):
        x = width * axis.share(strip.label_s)
        shapes += [
            path((box(x - 3, 0, x + 3, STRIP_HIGH),), filled(t.BOARD)),
            cv.Line(x, 1, x, STRIP_HIGH, paint=drawn(t.TEXT, 2.5, [4, 3])),
        ]
    return shapes


@ft.component
def _Bar(strip: Strip, axis: Axis, width: float, words: str) -> ft.Control:
    return spoken(words, strip_shapes(strip, axis, width), width, STRIP_HIGH)


Bar = ft.memo(_Bar)


def plumb(left: float, last: bool, still: bool) -> list[ft.Control]:
    """Hang now through the strip; under the last strip hangs the bob."""
    high = STRIP_HIGH + 2 * OVER
    move = None if still else MOVE
    core = ft.Container(width=NOW_WIDE, height=high, bgcolor=t.TEXT, border_radius=2)
    line = ft.Container(
        core,
        left=left - NOW_WIDE / 2 - GAP,
        top=0,
        padding=ft.Padding(GAP, 0, GAP, 0),
        bgcolor=t.BOARD,
        animate_position=move,
    )
    if not last:
        return [line]
    shape = ((0.0, 0.0), (13.0, 0.0), (11.0, 6.0), (6.5, BOB), (2.0, 6.0))
    bob = cv.Canvas([path((shape,), filled(t.TEXT))], width=13, height=BOB)
    return [line, ft.Container(bob, left=left - 6.5, top=high, animate_position=move)]


@ft.component
def _WaitStrip(
    strip: Strip, clock: Clock, words: str, last: bool = False, *, key: str | None = None
) -> ft.Control:
    shown = ft.use_context(t.LOOK)
    high = STRIP_HIGH + 2 * OVER + (BOB if last else 0)
    bar = ft.Container(Bar(strip, clock.axis, clock.width, words), left=0, top=OVER)
    here = clock.axis.holds(clock.now_s)
    now = plumb(clock.left(clock.now_s), last, shown.still) if here else []
    return ft.Stack([bar, *now], width=clock.width, height=high, clip_behavior=ft.ClipBehavior.NONE)


WaitStrip = ft.memo(_WaitStrip)


@ft.component
def _TimeAxis(clock: Clock, ticks: tuple[Tick, ...], now_words: str) -> ft.Control:
    now = clock.left(clock.now_s)
    half = (text_width(now_words, t.SMALL) + 18) / 2
    middle = min(max(now, half), clock.width - half)  # a canvas cuts what sticks out
    style = t.style(t.CAPTION, t.SOFT)
    marks: list[cv.Path.PathElement] = []
    shapes: list[cv.Shape] = []
    for tick in ticks:
        if not clock.axis.holds(tick.at_s):
            continue
        x = clock.left(tick.at_s)
        marks += [cv.Path.MoveTo(x, 36 if tick.words else 39), cv.Path.LineTo(x, 43)]
        if tick.words and abs(x - middle) > half + 22:
            shapes.append(written(tick.words, (x, 18), style, ft.Alignment.CENTER))
    pill = rounded(middle - half, 3, middle + half, 3 + PILL_HIGH, 8)
    bold = t.style(t.SMALL, t.GROUND, t.STRONG)
    stem = cv.Rect(now - NOW_WIDE / 2, PILL_HIGH, NOW_WIDE, AXIS_HIGH - PILL_HIGH)
    stem.paint = filled(t.TEXT)
    shapes = [
        cv.Path(marks, drawn(t.EDGE, 1.5)),
        *shapes,
        cv.Path([pill], filled(t.TEXT)),
        stem,
        written(now_words, (middle, 3 + PILL_HIGH / 2), bold, ft.Alignment.CENTER),
    ]
    return spoken(now_words, shapes, clock.width, AXIS_HIGH)


TimeAxis = ft.memo(_TimeAxis)


@ft.component
def _PatternKey(pattern: str) -> ft.Control:
    square = box(0, 0, 13, 13)
    shapes: dict[str, list[cv.Shape]] = {
        "label": [cv.Line(2, 0, 2, 13, paint=drawn(t.TEXT, 2.5, [4, 2]))],
        "drying": [hatched(square, t.DRYING)],
        "ready": [path((square,), filled(t.READY))],
        "too late": [crossed(square, t.TOO_LATE)],
    }
    width = 4 if pattern == "label" else 13
    return canvas(shapes[pattern], width, 13)


PatternKey = ft.memo(_PatternKey)


def wait_fact(value: str, pattern: str, caption: str) -> ft.Control:
    """Show a wait's figure over its caption, which repeats the pattern: "label", "drying", ..."""
    caption_text = grow_loosely(t.say(caption, t.CAPTION, t.SOFT))
    under = ft.Row([PatternKey(pattern), caption_text], spacing=6, tight=True)
    return ft.Column([t.say(value, t.FACT), under], spacing=3, tight=True)
