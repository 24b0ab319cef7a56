"""The coat schedule on its plumb line: solid inside a visit, dotted between; its bob is the end."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Literal

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts import icons
from mobile.parts.drawing import canvas, drawn, filled, path
from mobile.parts.tap import grow, tap

LINE, WIDE = 4.0, 24.0
HIGH = {"done": 18.0, "now": 23.0, "to come": 18.0, "hand-over": 23.0}
MIDDLE = 3 + 10.3  # of a name under the row's top, dp, at the phone's usual text size
DAY_WIDE = 62.0
LONELY = 22.0


@dataclass(frozen=True, slots=True)
class Stop:
    """A step of the schedule: its day where a visit begins, the wait after it, its hour."""

    key: str
    name: str
    state: Literal["done", "now", "to come", "hand-over"] = "to come"
    wait: str = ""
    at: str = ""
    day: str = ""
    ends_visit: bool = False


@ft.component
def _Disc(state: str) -> ft.Control:
    x, y = WIDE / 2, HIGH[state] / 2
    shapes: list[cv.Shape]
    if state == "done":
        tick = icons.shape("check", 12, drawn(t.GROUND, 2.5), x - 6, y - 6)
        shapes = [cv.Circle(x, y, 9, filled(t.GOOD)), tick]
    elif state == "now":
        ring = cv.Circle(x, y, 10, drawn(t.TEXT, 3))
        shapes = [ring, cv.Circle(x, y, 4.5, filled(t.TEXT))]
    elif state == "hand-over":
        bob = ((x - 9, 0.0), (x + 9, 0.0), (x + 7, 10.0), (x, 23.0), (x - 7, 10.0))
        shapes = [path((bob,), filled(t.TEXT))]
    else:
        shapes = [cv.Circle(x, y, 7.5, drawn(t.EDGE, 3))]
    return canvas(shapes, WIDE, HIGH[state])


Disc = ft.memo(_Disc)


def thread(dotted: bool, height: float | None = None) -> ft.Control:
    """Draw a piece of the line; dotted pieces stand between visits."""
    if not dotted:
        return ft.Container(width=LINE, height=height, bgcolor=t.EDGE, expand=height is None)
    dots = ft.LinearGradient(
        begin=ft.Alignment.TOP_CENTER,
        end=ft.Alignment(0, -0.6),
        colors=[t.EDGE, t.EDGE, t.CLEAR, t.CLEAR],
        stops=[0, 0.5, 0.5, 1],
        tile_mode=ft.GradientTileMode.REPEATED,
    )
    return ft.Container(width=LINE - 1, height=height, gradient=dots, expand=height is None)


def stop_row(
    stop: Stop, before: Stop | None, on_tap: Callable[[str], Any] | None, text_ratio: float
) -> ft.Control:
    """Show a step: its day, its disc on the line, its name over the wait, its hour."""
    strong = t.STRONG if stop.state in {"now", "hand-over"} else t.MEDIUM
    stub = max(MIDDLE * text_ratio - HIGH[stop.state] / 2, 0)
    above = thread(before.ends_visit, stub) if before else ft.Container(height=stub)
    below = [thread(stop.ends_visit)] if stop.state != "hand-over" else []
    rail = ft.Column(
        [above, Disc(stop.state), *below],
        spacing=0,
        width=WIDE + 8,
        horizontal_alignment=ft.CrossAxisAlignment.CENTER,
    )
    day = t.say(stop.day, t.SMALL + 1, weight=t.STRONG)
    name: list[ft.Control] = [t.say(stop.name, t.NAME - 1, weight=strong)]
    at = t.say_right(stop.at, t.SMALL + 1, weight=strong)
    stacked = text_ratio >= t.STACKED_FROM
    words = [*([day] if stacked and stop.day else []), *name, *([at] if stacked else [])]
    if stop.wait:
        words.append(t.say(stop.wait, t.CAPTION, t.SOFT))
    texts = ft.Column(words, spacing=1, tight=True)
    under = 5.0 if stop.wait or on_tap is None else LONELY  # a name alone is no target
    middle = grow(ft.Container(texts, padding=ft.Padding(8, 3, 0, under)))
    cells: list[ft.Control] = [rail, middle]
    if not stacked:
        left = ft.Container(day, width=DAY_WIDE * text_ratio, padding=ft.Padding(4, 3, 0, 0))
        cells = [left, rail, middle, ft.Container(at, padding=ft.Padding(4, 3, 4, 0))]
    line = ft.Row(
        cells,
        spacing=0,
        intrinsic_height=True,
        vertical_alignment=ft.CrossAxisAlignment.STRETCH,
    )
    face = ft.Container(line)
    if on_tap is None:
        return face
    return tap(face, lambda: on_tap(stop.key), key=f"stop {stop.key}")


def schedule(
    stops: tuple[Stop, ...],
    on_tap: Callable[[str], Any] | None = None,
    text_ratio: float = 1.0,
) -> ft.Control:
    """Hang the steps on one line, from the first to the hand-over."""
    befores = (None, *stops[:-1])
    pairs = zip(stops, befores, strict=True)
    rows = [stop_row(one, before, on_tap, text_ratio) for one, before in pairs]
    return ft.Column(
        rows, spacing=0, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )
