"""A can, as full as it is, with its number."""

from dataclasses import dataclass

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import drawn, filled, rounded, spoken, written

SMALL_CAN, LARGE_CAN = (54.0, 64.0), (86.0, 116.0)
LID, WALL = 8.0, 4.0
DISC = 0.68  # of the width


@dataclass(frozen=True, slots=True)
class CanFace:
    """A can's number, its paint's colour (empty while unknown), and how full it is, 0 to 1."""

    number: int
    color: str
    level_ratio: float | None


def level_top(size: tuple[float, float], level_ratio: float) -> float:
    """Find how far down the paint begins, dp."""
    inside = size[1] - LID - WALL
    return LID + inside * (1 - min(max(level_ratio, 0.0), 1.0))


@ft.component
def _Can(face: CanFace, words: str, large: bool = False, *, key: str | None = None) -> ft.Control:
    look = ft.use_context(t.LOOK).name
    size = LARGE_CAN if large else SMALL_CAN
    wide, high = size
    shapes: list[cv.Shape] = []
    if face.level_ratio is not None:
        top = level_top(size, face.level_ratio)
        color = t.paint(face.color, look) if face.color else t.EDGE
        paint = rounded(WALL, top, wide - WALL, high - WALL / 2, 3)
        shapes.append(cv.Path([paint], filled(color)))
    sides = rounded(WALL / 2, LID / 2, wide - WALL / 2, high - WALL / 2, 6)
    dashes = None if face.level_ratio is not None else [5.0, 4.0]
    shapes += [
        cv.Path([sides], drawn(t.EDGE, WALL if dashes is None else 2, dashes)),
        cv.Path([rounded(0, 0, wide, LID, 3)], filled(t.EDGE)),
        cv.Circle(wide / 2, high / 2 + LID / 2, wide * DISC / 2, filled(t.GROUND)),
    ]
    digits = len(str(face.number))
    number = min(t.FACT if not large else t.STATE, wide * DISC / (0.62 * max(digits, 1.4)))
    style = ft.TextStyle(size=number, weight=t.STRONG, color=t.TEXT, height=1.0)
    middle = (wide / 2, high / 2 + LID / 2)
    shapes.append(written(str(face.number), middle, style, ft.Alignment.CENTER))
    return spoken(words, shapes, wide, high)


Can = ft.memo(_Can)
