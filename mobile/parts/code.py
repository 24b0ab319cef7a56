"""A QR code on the screen: black on white in every look, or no camera reads it."""

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import filled, spoken

QUIET = 4  # modules of white about it, ISO/IEC 18004
WHITE, BLACK = "#FFFFFF", "#000000"


def code(signs: tuple[tuple[bool, ...], ...], side: float, said: str) -> ft.Control:
    """Draw the signs so large that they fill a square with their white margin."""
    count = len(signs) + 2 * QUIET
    module = side / count
    dark: list[cv.Path.PathElement] = []
    for y, row in enumerate(signs):
        for x, sign in enumerate(row):
            if sign:
                left, top = (QUIET + x) * module, (QUIET + y) * module
                dark.append(cv.Path.Rect(left, top, module, module))
    shapes: list[cv.Shape] = [
        cv.Rect(0, 0, side, side, t.GAP, filled(WHITE)),
        cv.Path(dark, filled(BLACK)),
    ]
    return spoken(said, shapes, side, side)
