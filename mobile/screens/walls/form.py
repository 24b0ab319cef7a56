"""What is typed of a wall, and how it is read."""

from dataclasses import dataclass

from core.errors import Refused
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.session.view import View
from mobile.store.records import Wall
from mobile.words import walls as words

ONE, TWO = "one", "two"


@dataclass(frozen=True, slots=True)
class WallForm:
    """What has been typed, untouched; an opening is name, width, height, how many."""

    name: str = ""
    width: str = ""
    left: str = ""
    right: str = ""
    heights: str = ONE
    openings: tuple[tuple[str, ...], ...] = ()

    def shape(self, view: View) -> Shape:
        """Read the form; raise `Refused` at the first field that gives no number."""
        width_m = view.read("width_m", self.width)
        one = self.heights == ONE
        left_m = view.read("height_m" if one else "left_height_m", self.left)
        right_m = left_m if one else view.read("right_height_m", self.right)
        return Shape(width_m, left_m, right_m, tuple(_opening(o, view) for o in self.openings))


def _opening(row: tuple[str, ...], view: View) -> Opening:
    name, width, height, count = row
    count_read = view.read("opening_count", count or "1")
    if count_read != int(count_read):
        raise Refused("opening_count", count, 1, 1000)
    width_m, height_m = view.read("opening_width_m", width), view.read("opening_height_m", height)
    return Opening(name.strip() or words.OPENING.lower(), width_m, height_m, int(count_read))


def form_of(wall: Wall | None, view: View) -> WallForm:
    """Write a kept wall as one would type it."""
    if wall is None:
        return WallForm()
    shape = wall.shape
    same = shape.left_height_m == shape.right_height_m
    return WallForm(
        wall.name,
        view.typed("width_m", shape.width_m),
        view.typed("left_height_m", shape.left_height_m),
        "" if same else view.typed("right_height_m", shape.right_height_m),
        ONE if same else TWO,
        tuple(
            (
                opening.name,
                view.typed("opening_width_m", opening.width_m),
                view.typed("opening_height_m", opening.height_m),
                str(opening.count),
            )
            for opening in shape.openings
        ),
    )
