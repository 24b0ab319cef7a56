"""What is typed of a wall, and how it is read."""

from dataclasses import dataclass

from core.errors import Refused
from core.walls.area import HEIGHT_M, HIGHER_M, OPENING_M, OPENINGS_COUNT, WIDTH_M
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.session.view import Limits, View
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


def limits(form: WallForm, view: View) -> dict[str, Limits]:
    """Give the least and the most for each measure: an opening is no larger than its wall."""
    heights = (form.left,) if form.heights == ONE else (form.left, form.right)
    return {
        "width_m": WIDTH_M,
        "height_m": HIGHER_M,
        "left_height_m": HEIGHT_M,
        "right_height_m": HEIGHT_M,
        "opening_width_m": (OPENING_M[0], _largest("width_m", (form.width,), view)),
        "opening_height_m": (OPENING_M[0], _largest("height_m", heights, view)),
        "opening_count": OPENINGS_COUNT,
    }


def _largest(name: str, texts: tuple[str, ...], view: View) -> float:
    """Read the largest of some lengths; what can't be read yet sets no limit."""
    read = [view.read(name, text) for text in texts if text.strip() and not view.error(name, text)]
    return max((length for length in read if length >= OPENING_M[0]), default=OPENING_M[1])


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
