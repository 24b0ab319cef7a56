"""The big figure: as large as the width allows, whatever the phone's text size."""

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import filled, spoken, written

DIGIT, POINT, CAPS, BASE = 0.6, 0.298, 0.698, 0.788  # of the font, em; BASE from a line's top
TRACK = -0.04
UNIT, UNIT_LEAST, UNIT_GAP = 0.24, 26.0, 0.07
CARET, CARET_GAP = 5.0, 6.0
LEAST = 72.0


def advance(text: str, size: float) -> float:
    """Find how wide a figure runs, dp."""
    return sum((POINT if sign in ".," else DIGIT) + TRACK for sign in text) * size


def figure_size(text: str, unit: str, width: float, most: float, caret: bool = False) -> float:
    """Find the largest size that fits the width with its unit, at most `most`."""
    digits = max(sum(sign not in ".," for sign in text), 1)
    marks = max(len(text) - digits, 1)  # room for a point to come, so that nothing jumps
    share = digits * (DIGIT + TRACK) + marks * (POINT + TRACK) + UNIT_GAP
    room = width - (CARET + CARET_GAP + 10 if caret else 0)
    broad = len(unit) * DIGIT
    return min(most, room / (share + broad * UNIT), (room - broad * UNIT_LEAST) / share)


@ft.component
def _BigFigure(
    text: str, unit: str, width: float, most: float = t.READS, caret: bool = False
) -> ft.Control:
    size = figure_size(text, unit, width, most, caret)
    base = size * (CAPS + 0.06)
    style = ft.TextStyle(
        size=size, weight=t.STRONG, color=t.TEXT, height=1.0, letter_spacing=TRACK * size
    )
    shapes: list[cv.Shape] = [written(text, (0, base - size * BASE), style)]
    at = advance(text, size) + (0 if caret else UNIT_GAP * size)
    if caret:
        at += CARET_GAP
        bar = filled(t.EDGE)
        shapes.append(cv.Rect(at, base - size * 0.76, CARET, size * 0.8, 2, bar))
        at += CARET + 10
    small = max(UNIT_LEAST, UNIT * size)
    unit_style = ft.TextStyle(size=small, weight=t.MEDIUM, color=t.SOFT, height=1.0)
    shapes.append(written(unit, (at, base - small * BASE), unit_style))
    return spoken(f"{text} {unit}".strip(), shapes, width, base + 0.08 * size)


BigFigure = ft.memo(_BigFigure)
