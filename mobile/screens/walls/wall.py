"""One wall: what is typed of it, its drawing, its square metres."""

from dataclasses import dataclass, replace

import flet as ft

from core.errors import Refused
from core.walls.area import PaintedArea
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile import theme as t
from mobile.parts.boards import Fact, board, facts
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.elevation import Elevation
from mobile.parts.fields import Field, Fields
from mobile.parts.notices import notice
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.walls.drawn import dimensions, spoken_wall
from mobile.session.address import HOW, go
from mobile.session.forms import Edit, use_form
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.session.walls import area_of, keep_wall, next_name, remove_wall
from mobile.store.records import Wall
from mobile.words import places, trouble
from mobile.words import walls as words

ONE, TWO = "one", "two"
Row = tuple[str, str, str, str]


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
