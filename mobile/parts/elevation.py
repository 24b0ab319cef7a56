"""A wall's elevation, to scale, with its openings and dimension lines."""

from dataclasses import dataclass
from math import pi

import flet as ft
import flet.canvas as cv

from core.walls.shape import Opening, Wall
from mobile import theme as t
from mobile.parts.drawing import Point, Points, box, drawn, filled, path, spoken, written
from mobile.parts.measure import text_width

SIDE, FOOT, TOP = 34.0, 30.0, 6.0  # room for the dimension lines, dp
DOOR_M, SILL_M = 1.8, 0.9
PEN, DIMENSION, END = 2.5, 1.5, 5.0
OPENINGS_MOST = 24


@dataclass(frozen=True, slots=True)
class Dimensions:
    """What stands on the dimension lines, and what the whole drawing says."""

    width: str
    left: str
    right: str
    spoken: str


def top_m(wall: Wall, x_m: float) -> float:
    """Find how high the wall is at a place along its foot, m."""
    share = x_m / wall.width_m
    return wall.left_height_m + (wall.right_height_m - wall.left_height_m) * share


def opening_box(wall: Wall, opening: Opening, middle_m: float) -> Points:
    """Place an opening about a middle, m from the left and up: doors stand, windows have a sill."""
    wide = min(opening.width_m, wall.width_m)
    left = min(max(middle_m - wide / 2, 0.0), wall.width_m - wide)
    ceiling = min(top_m(wall, left), top_m(wall, left + wide))
    high = min(opening.height_m, ceiling)
    sill = 0.0 if opening.height_m >= DOOR_M else min(SILL_M, max((ceiling - high) / 2, 0.0))
    return box(left, sill + high, left + wide, sill)


def opening_boxes(wall: Wall) -> tuple[Points, ...]:
    """Lay openings out along the wall, the tallest at its higher side; places are not measured."""
    single = [one for one in wall.openings for _ in range(one.count)][:OPENINGS_MOST]
    single.sort(key=lambda one: one.height_m, reverse=wall.left_height_m > wall.right_height_m)
    free_m = max(wall.width_m - sum(one.width_m for one in single), 0.0) / (len(single) + 1)
    at_m, boxes = free_m, []
    for one in single:
        boxes.append(opening_box(wall, one, at_m + one.width_m / 2))
        at_m += one.width_m + free_m
    return tuple(boxes)


def outline(wall: Wall) -> Points:
    """Give the corners of a wall, m from the left and up, from the foot's left."""
    return (
        (0.0, 0.0),
        (0.0, wall.left_height_m),
        (wall.width_m, wall.right_height_m),
        (wall.width_m, 0.0),
    )


def scale_of(wall: Wall, width: float, height: float) -> float:
    """Find the dp a metre that lets the wall and its dimension lines fit."""
    high_m = max(wall.left_height_m, wall.right_height_m)
    sides = SIDE if wall.left_height_m == wall.right_height_m else 2 * SIDE
    return min((width - sides - PEN) / wall.width_m, (height - FOOT - TOP) / high_m)


def dimension(start: Point, end: Point, words: str, size: float = t.SMALL) -> list[cv.Shape]:
    """Draw a dimension line, with its words in a gap in the middle."""
    (x, y), (to_x, to_y) = start, end
    upright = x == to_x
    length = abs(to_y - y) + abs(to_x - x)
    gap = min(text_width(words, size) / 2 + 8, length / 2)
    middle = ((x + to_x) / 2, (y + to_y) / 2)
    style = t.style(size, t.TEXT, t.STRONG)
    elements: list[cv.Path.PathElement] = []
    for (end_x, end_y), sign in ((start, -1), (end, 1)):
        near = (x, middle[1] + sign * gap) if upright else (middle[0] + sign * gap, y)
        across = (END, 0.0) if upright else (0.0, END)
        elements += [
            cv.Path.MoveTo(end_x, end_y),
            cv.Path.LineTo(*near),
            cv.Path.MoveTo(end_x - across[0], end_y - across[1]),
            cv.Path.LineTo(end_x + across[0], end_y + across[1]),
        ]
    label = written(words, middle, style, ft.Alignment.CENTER)
    label.rotate = -pi / 2 if upright else 0
    return [cv.Path(elements, drawn(t.EDGE, DIMENSION)), label]


def elevation_shapes(
    wall: Wall, says: Dimensions, color: str, width: float, height: float
) -> list[cv.Shape]:
    """Draw the wall, its openings and its dimension lines."""
    scale = scale_of(wall, width, height)
    foot_y = height - FOOT
    left_x = SIDE + (width - SIDE - wall.width_m * scale - PEN) / 2
    if wall.left_height_m != wall.right_height_m:
        left_x -= SIDE / 2

    def placed(shape: Points) -> Points:
        return tuple((left_x + x * scale, foot_y - y * scale) for x, y in shape)

    corners = placed(outline(wall))
    holes = tuple(placed(one) for one in opening_boxes(wall))
    right_x = corners[3][0]
    shapes: list[cv.Shape] = [path((corners,), filled(color))]
    if holes:
        shapes += [path(holes, filled(t.GROUND)), path(holes, drawn(t.EDGE, PEN))]
    shapes.append(path((corners,), drawn(t.EDGE, PEN)))
    shapes += dimension((left_x - 18, corners[1][1]), (left_x - 18, foot_y), says.left)
    if wall.left_height_m != wall.right_height_m:
        shapes += dimension((right_x + 18, corners[2][1]), (right_x + 18, foot_y), says.right)
    return shapes + dimension((left_x, foot_y + 16), (right_x, foot_y + 16), says.width)


@ft.component
def _Elevation(
    wall: Wall,
    says: Dimensions,
    size: tuple[float, float],
    color: str = "",
    *,
    key: str | None = None,
) -> ft.Control:
    look = ft.use_context(t.LOOK).name
    fill = t.paint(color, look) if color else t.RAISED
    return spoken(says.spoken, elevation_shapes(wall, says, fill, *size), *size)


Elevation = ft.memo(_Elevation)
