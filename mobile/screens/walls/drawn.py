"""What stands on a wall's drawing, and what is said of it."""

from core.walls.shape import Wall as Shape
from mobile import theme as t
from mobile.parts.elevation import Dimensions
from mobile.session.view import View
from mobile.words import walls as words

AROUND, LEAST, MOST = 110.0, 150.0, 300.0  # what stands about a drawing, and its bounds, dp
BOARD = 35.0  # padding and rim of a board at both sides, dp


def dimensions(name: str, shape: Shape, view: View) -> Dimensions:
    """Write the three measures of a wall, and say what the drawing shows."""
    left = view.show("height_m", shape.left_height_m)
    right = view.show("height_m", shape.right_height_m)
    width = view.show("width_m", shape.width_m)
    heights = left if left == right else f"{left} and {right}"
    holes = sum(opening.count for opening in shape.openings)
    return Dimensions(width, left, right, words.spoken(name, width, heights, holes))


def drawn_wide(view: View) -> float:
    """Give the width inside a board, dp."""
    return view.width - 2 * t.MARGIN - BOARD


def drawn_high(walls: int, room: float) -> float:
    """Share the room of a screen among the drawings of its walls, dp."""
    return min(max(room / max(walls, 1) - AROUND, LEAST), MOST)
