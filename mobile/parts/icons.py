"""The app's own line icons, drawn on a square of 28.

A drawing is a line of small commands: `M x y` move, `L x y` line, `Q x y x y` curve,
`O x y w h` oval, `R x y w h r` box with round corners, `Z` close.
"""

from functools import cache
from itertools import pairwise

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.drawing import canvas, drawn

SQUARE = 28.0

ICONS = {
    # the five places
    "coats": "M3 7 L17 7 M2 14 L24 14 M3 21 L13 21 "
    "M21 1 L21 4 M21 8 L21 11 M21 17 L21 20 M21 24 L21 27",
    "mix": "M4 4 L24 4 L21 24 L7 24 Z M5 11 L23 11 M6 17.5 L22 17.5",
    "cans": "O 6 3.5 16 6 M6 6.5 L6 21.5 Q6 24.5 14 24.5 Q22 24.5 22 21.5 L22 6.5 "
    "M6 14 Q6 17 14 17 Q22 17 22 14",
    "walls": "M3 25 L3 12 L25 3 L25 25 Z M14 25 L14 16 L20 16 L20 25",
    "job": "O 4 3 6 6 O 4 11 6 6 M7 1 L7 3 M7 9 L7 11 M7 17 L7 20 M4.5 21 L9.5 21 L7 26 Z "
    "M14 6 L25 6 M14 14 L22 14 M14 22 L25 22",
    # signs
    "back": "M17 5 L9 14 L17 23",
    "next": "M11 5 L19 14 L11 23",
    "check": "M4 15 L11 22 L24 6",
    "close": "M6 6 L22 22 M22 6 L6 22",
    "plus": "M14 4 L14 24 M4 14 L24 14",
    "minus": "M4 14 L24 14",
    "up": "M14 25 L14 4 M5 13 L14 4 L23 13",
    "down": "M14 3 L14 24 M5 15 L14 24 L23 15",
    "left": "M25 14 L4 14 M13 5 L4 14 L13 23",
    "warning": "M14 3 L26 24 L2 24 Z M14 11 L14 16.5 M14 20 L14 20.6",
    "lock": "R 4 12 20 13 3 M8.5 12 L8.5 8.5 Q8.5 3 14 3 Q19.5 3 19.5 8.5 L19.5 12",
    "bell": "M5 21 Q8 18 8 12 Q8 5 14 5 Q20 5 20 12 Q20 18 23 21 Z M14 2.5 L14 5 "
    "M11.5 24 Q14 26.5 16.5 24",
    "silent": "M5 21 Q8 18 8 12 Q8 5 14 5 Q20 5 20 12 Q20 18 23 21 Z M4 3 L25 26",
    "backspace": "M10 5 L26 5 L26 23 L10 23 L2 14 Z M13 10 L21 18 M21 10 L13 18",
    "download": "M14 3 L14 18 M8 12 L14 18 L20 12 M4 20 L4 25 L24 25 L24 20",
    "upload": "M14 18 L14 3 M8 9 L14 3 L20 9 M4 20 L4 25 L24 25 L24 20",
    "gear": "O 9.5 9.5 9 9 O 5.5 5.5 17 17 M14 2 L14 5.5 M14 22.5 L14 26 M2 14 L5.5 14 "
    "M22.5 14 L26 14 M5.5 5.5 L8 8 M20 20 L22.5 22.5 M22.5 5.5 L20 8 M8 20 L5.5 22.5",
    "clock": "O 3 3 22 22 M14 8 L14 14 L18.5 17",
    "drop": "M14 3 Q22 13 22 18 Q22 25 14 25 Q6 25 6 18 Q6 13 14 3 Z",
    "pencil": "M4 24 L6 17 L19 4 L24 9 L11 22 Z M16 7 L21 12",
    "bin": "M5 8 L23 8 M8 8 L9.5 25 L18.5 25 L20 8 M11 8 L11 4 L17 4 L17 8",
    # what the job holds
    "site": "M11 17 L11 6 Q11 3 14 3 Q17 3 17 6 L17 17 Q20 19 20 21 Q20 26 14 26 Q8 26 8 21 "
    "Q8 19 11 17 Z M14 10 L14 21",
    "lamps": "M3 6 L25 6 L25 12 L3 12 Z M10 16 L8.5 22 M14 16 L14 24 M18 16 L19.5 22",
    "crew": "O 6.5 3.5 9 9 O 18 8 6 6 M2 25 Q2 16 11 16 Q20 16 20 25 M21 18 Q26 18 26.5 25",
    "quote": "M6 3 L22 3 L22 25 L18 22 L14 25 L10 22 L6 25 Z M10 9 L18 9 M10 14 L18 14",
    "paper": "M6 3 L17 3 L22 8 L22 25 L6 25 Z M17 3 L17 8 L22 8 M10 14 L18 14 M10 19 L18 19",
    "photo": "R 3 8 22 16 3 M9 8 L11 4 L17 4 L19 8 O 9.5 11.5 9 9",
    "lamp": "O 6 3 16 16 M10 22 L18 22 M11.5 26 L16.5 26",
    "day": "O 9 9 10 10 M14 2 L14 5 M14 23 L14 26 M2 14 L5 14 M23 14 L26 14",
}

SIZES = {"M": 2, "L": 2, "Q": 4, "O": 4, "R": 5, "Z": 0}


@cache
def commands(name: str) -> tuple[tuple[str, tuple[float, ...]], ...]:
    """Read an icon's drawing."""
    text = "".join(f" {sign} " if sign in SIZES else sign for sign in ICONS[name]).split()
    starts = [at for at, word in enumerate(text) if word in SIZES] + [len(text)]
    return tuple(
        (text[start], tuple(map(float, text[start + 1 : end]))) for start, end in pairwise(starts)
    )


def element(sign: str, numbers: tuple[float, ...]) -> cv.Path.PathElement:
    """Turn one command into an element of a path."""
    kinds = {
        "M": cv.Path.MoveTo,
        "L": cv.Path.LineTo,
        "Q": cv.Path.QuadraticTo,
        "O": cv.Path.Oval,
        "R": cv.Path.Rect,
    }
    return kinds[sign](*numbers) if sign in kinds else cv.Path.Close()


def shape(name: str, size: float, pen: ft.Paint, left: float = 0.0, top: float = 0.0) -> cv.Path:
    """Draw an icon as one path, its square's corner at (left, top)."""
    share = size / SQUARE
    elements = []
    for sign, numbers in commands(name):
        moved = [value * share for value in numbers]
        if moved:
            moved[0], moved[1] = moved[0] + left, moved[1] + top
        if sign == "Q":
            moved[2], moved[3] = moved[2] + left, moved[3] + top
        elements.append(element(sign, tuple(moved)))
    return cv.Path(elements, pen)


def icon(
    name: str, size: float = SQUARE, color: ft.ColorValue = t.EDGE, heavy: bool = False
) -> ft.Control:
    """Draw an icon; what it stands on says what it means, so it has no label of its own."""
    pen = drawn(color, (2.8 if heavy else 2.2) * max(size, 20) / SQUARE)
    return canvas([shape(name, size, pen)], size, size)
