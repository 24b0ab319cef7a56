"""The two-light chip: a split disc, by day on the left, under the lamp on the right."""

from math import pi

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import drawn, filled, spoken

PARTING = 3.0
GLOW = (0.0, 0.5, 1.0)  # where the glow is whole, still whole, gone


def half(size: float, right: bool) -> list[cv.Path.PathElement]:
    """Give half of a disc, a little apart from the other."""
    left = PARTING / 2 if right else -PARTING / 2
    inner = size - PARTING
    start = -pi / 2 if right else pi / 2
    arc = cv.Path.Arc(PARTING / 2 + left, PARTING / 2, inner, inner, start, pi)
    return [arc, cv.Path.Close()]


def glow(lamp: str, size: float) -> ft.Paint:
    """Give the brush of the lamp's side: the glow, fading to black at the rim."""
    return ft.Paint(
        gradient=ft.PaintRadialGradient(
            (size / 2, size / 2), size / 2, [lamp, lamp, "#000000"], color_stops=list(GLOW)
        )
    )


@ft.component
def _TwoLight(
    day: str, lamp: str, words: str, size: float = 40, *, key: str | None = None
) -> ft.Control:
    look = ft.use_context(t.LOOK).name
    unknown = drawn(t.EDGE, 1.5, [4, 3])
    left = cv.Path(half(size, False), filled(t.paint(day, look)) if day else unknown)
    shapes: list[cv.Shape] = [left]
    if lamp:
        shapes.append(cv.Path(half(size, True), glow(t.paint(lamp, look), size)))
    shapes.append(cv.Path(half(size, True), drawn(t.EDGE, 1.2) if lamp else unknown))
    return spoken(words, shapes, size, size)


TwoLight = ft.memo(_TwoLight)
