"""Pattern before colour: shapes cut into stripes, and every drawing with its spoken label.

Hatched is drying or pour now, solid is ready or in the cup, crossed is too late or too much, dashed
is to come.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from math import sqrt

import flet as ft
import flet.canvas as cv

from mobile import theme as t

Point = tuple[float, float]
Points = tuple[Point, ...]

HATCH = 4.6, 7.0  # width and pitch of a stripe
CROSS = 1.5, 5.7  # 8 across
DASHES = [6.0, 5.0]


def box(left: float, top: float, right: float, foot: float) -> Points:
    """Give the corners of an upright box."""
    return (left, top), (right, top), (right, foot), (left, foot)


def cut(shape: Points, lean: int, level: float, side: int) -> Points:
    """Keep what lies on one side of the line x + lean * y = level."""
    kept: list[Point] = []
    for (x, y), (to_x, to_y) in zip(shape, shape[1:] + shape[:1], strict=True):
        here, there = side * (x + lean * y - level), side * (to_x + lean * to_y - level)
        if here >= 0:
            kept.append((x, y))
        if here * there < 0:
            share = here / (here - there)
            kept.append((x + share * (to_x - x), y + share * (to_y - y)))
    return tuple(kept)


def stripes(shape: Points, measure: tuple[float, float], lean: int) -> Iterator[Points]:
    """Cut a convex shape into stripes at 45 degrees; lean 1 rises to the right, -1 falls."""
    if len(shape) < 3:  # noqa: PLR2004  nothing has fewer corners than a triangle
        return
    wide, pitch = (sqrt(2) * value for value in measure)
    levels = [x + lean * y for x, y in shape]
    level = min(levels) // pitch * pitch
    while level < max(levels):
        if stripe := cut(cut(shape, lean, level, 1), lean, level + wide, -1):
            yield stripe
        level += pitch


def filled(color: ft.ColorValue) -> ft.Paint:
    """Give a brush that fills."""
    return ft.Paint(color=color)


def drawn(color: ft.ColorValue, width: float, dashes: list[float] | None = None) -> ft.Paint:
    """Give a pen, with round ends where its line is whole."""
    return ft.Paint(
        color=color,
        stroke_width=width,
        style=ft.PaintingStyle.STROKE,
        stroke_cap=ft.StrokeCap.BUTT if dashes else ft.StrokeCap.ROUND,
        stroke_join=ft.StrokeJoin.ROUND,
        stroke_dash_pattern=list[ft.Number](dashes) if dashes else None,
    )


def path(shapes: Iterable[Points], paint: ft.Paint) -> cv.Path:
    """Draw polygons in one go: the worker pays by the path."""
    elements: list[cv.Path.PathElement] = []
    for (x, y), *rest in shapes:
        elements += [cv.Path.MoveTo(x, y), *(cv.Path.LineTo(*point) for point in rest)]
        elements.append(cv.Path.Close())
    return cv.Path(elements, paint)


def lines(strokes: Iterable[Points], paint: ft.Paint) -> cv.Path:
    """Draw open lines in one go."""
    elements: list[cv.Path.PathElement] = []
    for (x, y), *rest in strokes:
        elements += [cv.Path.MoveTo(x, y), *(cv.Path.LineTo(*point) for point in rest)]
    return cv.Path(elements, paint)


def hatched(shape: Points, color: ft.ColorValue) -> cv.Path:
    """Hatch a convex shape."""
    return path(stripes(shape, HATCH, 1), filled(color))


def chords(shape: Points, pitch: float, lean: int) -> Iterator[Points]:
    """Cut a convex shape along lines at 45 degrees; each has the two points where it leaves."""
    levels = [x + lean * y for x, y in shape]
    step = sqrt(2) * pitch
    level = (min(levels) // step + 1) * step
    while level < max(levels):
        ends = [
            (x + share * (to_x - x), y + share * (to_y - y))
            for (x, y), (to_x, to_y) in zip(shape, shape[1:] + shape[:1], strict=True)
            for here, there in ((x + lean * y, to_x + lean * to_y),)
            if min(here, there) <= level < max(here, there)
            for share in ((level - here) / (there - here),)
        ]
        yield tuple(ends)
        level += step


def crossed(shape: Points, color: ft.ColorValue) -> cv.Points:
    """Cross a convex shape with single lines: thin stripes in one path were filled in patches."""
    wide, pitch = CROSS
    both = (*chords(shape, pitch, 1), *chords(shape, pitch, -1))
    ends: list[ft.Offset | tuple[ft.Number, ft.Number]] = []
    ends += [ft.Offset(x, y) for chord in both for x, y in chord]
    pen = ft.Paint(color=color, stroke_width=wide, style=ft.PaintingStyle.STROKE)
    return cv.Points(ends, cv.PointMode.LINES, pen)


def rounded(left: float, top: float, right: float, foot: float, radius: float) -> cv.Path.Rect:
    """Give a box with round corners as an element of a path."""
    return cv.Path.Rect(left, top, right - left, foot - top, radius)


def written(
    words: str, at: Point, style: ft.TextStyle, anchor: ft.Alignment | None = None
) -> cv.Text:
    """Write on a drawing; the text keeps its size, whatever the phone's text size.

    Without a font's name the browser looks a sign such as "…" or "−" up elsewhere.
    """
    named = replace(style, font_family=t.FONT)
    return cv.Text(*at, words, style=named, alignment=anchor or ft.Alignment.TOP_LEFT)


def spoken(words: str, shapes: list[cv.Shape], width: float, height: float) -> ft.Control:
    """Put a drawing on the screen; its text is never read, so the label says it all."""
    content = canvas(shapes, width, height)
    return ft.Semantics(label=words, image=True, container=True, content=content)


def canvas(shapes: list[cv.Shape], width: float, height: float) -> cv.Canvas:
    """Put shapes on a canvas; shapes of another build get a new one.

    Flet amends a drawing step by step, and takes equal steps (every `Close` equals every other) for
    one that has moved, even to another path: the page's drawing would no longer be ours.
    """
    return cv.Canvas(shapes, width=width, height=height, key=f"{hash(build_of(shapes)):x}")


def build_of(shapes: list[cv.Shape]) -> str:
    """Write of what kinds of shapes and steps a drawing is built, in order."""
    return " ".join(f"{_kind(shape)}{_steps(shape)}" for shape in shapes)


def _steps(shape: cv.Shape) -> str:
    if isinstance(shape, cv.Points):
        return str(len(shape.points or ()))
    return "".join(map(_kind, shape.elements)) if isinstance(shape, cv.Path) else ""


def _kind(step: object) -> str:
    return type(step).__name__[:2]


def faded(color: str, share: float) -> str:
    """Thin a colour: 1 is itself, 0 is nothing."""
    return f"{color},{share}"


def ink_of(color: str) -> str:
    """Choose black or white to write on a paint, whichever stands out more."""
    return max("#000000", "#FFFFFF", key=lambda ink: t.contrast(color, ink))
