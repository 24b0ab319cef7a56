"""What stands on a wall's drawing, and what is said of it."""

from core.walls.shape import Wall as Shape
from mobile.parts.elevation import Dimensions
from mobile.session.view import View
from mobile.words import walls as words


def dimensions(shape: Shape, view: View) -> Dimensions:
    """Write the three measures of a wall."""
    left = view.show("height_m", shape.left_height_m)
    right = view.show("height_m", shape.right_height_m)
    return Dimensions(view.show("width_m", shape.width_m), left, right)


def spoken(name: str, shape: Shape, view: View) -> str:
    """Say what the drawing shows."""
    says = dimensions(shape, view)
    heights = says.left if says.left == says.right else f"{says.left} and {says.right}"
    holes = sum(opening.count for opening in shape.openings)
    return words.spoken(name, says.width, heights, holes)
