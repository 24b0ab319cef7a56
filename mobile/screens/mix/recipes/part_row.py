"""One part of a recipe: its paint, its parts, its share, its two looks."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import board
from mobile.parts.buttons import outline_button
from mobile.parts.chip import TwoLight
from mobile.parts.fields import EntryField, Field
from mobile.parts.icons import icon
from mobile.parts.swatches import Swatches
from mobile.parts.tap import Action, grow, surface, tap
from mobile.screens.mix.recipes.form import DAY, LAMP, PAINT, PARTS
from mobile.screens.mix.weigh_out.lines import narrow
from mobile.session.cans.looks import look_error, look_of
from mobile.session.view import View
from mobile.store.records import Paint
from mobile.words import looks, places
from mobile.words import mix as words

SUGGESTED_MOST = 16
CHIP = 46.0
Set = Callable[[int, str], None]  # a column of the row, and what stands there now


@dataclass(frozen=True, slots=True)
class Part:
    """A row as it stands: its texts, its share, what is wrong, paints that it may mean."""

    at: int
    row: tuple[str, ...]
    share: str = ""
    paint_wrong: str = ""
    parts_wrong: str = ""
    suggested: tuple[Paint, ...] = ()
    looks_up: bool = False
    typed_as: str = "parts"


def part_row(
    part: Part, change: Set, choose: Callable[[Paint], None], look: Callable[[], None], view: View
) -> ft.Control:
    """Lay out a part; its chip opens its looks."""
    at, row = part.at, part.row
    name = row[PAINT].strip() or words.part(at + 1)
    paint = Field(f"paint {at}", words.paint_label(at + 1), row[PAINT], part.paint_wrong, False)
    label = words.parts_label(at + 1, part.typed_as)
    count = Field(f"parts {at}", label, row[PARTS], part.parts_wrong)
    remove = outline_button(Action(places.REMOVE, partial(change, -1, ""), key=f"remove {at}"))
    spot = chip(name, row, look, at)
    paints = wide(EntryField(paint, partial(change, PAINT), key=f"paint {at}"))
    count_field = wide(EntryField(count, partial(change, PARTS), key=f"parts {at}"))
    share = t.say(part.share, t.NAME, weight=t.MEDIUM)
    offered = [suggestions(part.suggested, choose)] if part.suggested else []
    if narrow(view):
        above, below = [paints], [[spot, count_field], [grow(share), remove]]
    else:
        above, below = [spot, paints], [[count_field, grow(share), remove]]
    lines: list[ft.Control] = [ft.Row(above, spacing=10), *offered]
    lines += [ft.Row(line, spacing=12) for line in below]
    if part.looks_up:
        for light, at_row in ((looks.BY_DAY, DAY), (looks.UNDER_LAMP, LAMP)):
            typed = row[at_row]
            lines.append(Swatches(light, typed, look_error(typed), partial(change, at_row)))
    return board(lines, spacing=10, key=f"part {at}")


def wide(field: ft.Control) -> ft.Control:
    """Let a field take the room that is left; a component has no width of its own."""
    return ft.Container(field, expand=True)


def chip(name: str, row: tuple[str, ...], look: Callable[[], None], at: int) -> ft.Control:
    """Show a paint's two looks as a button to change them."""
    day, lamp = look_of(row[DAY]), look_of(row[LAMP])
    said = looks.two_lights(name, day, lamp)
    face = surface(
        ft.Row([TwoLight(day, lamp, said, CHIP), icon("pencil", 18)], spacing=2, tight=True),
        radius=t.HOW_RADIUS,
        padding=ft.Padding(2, 4, 2, 4),
    )
    return tap(face, look, words.change_looks(said), key=f"looks {at}")


def suggestions(paints: tuple[Paint, ...], choose: Callable[[Paint], None]) -> ft.Control:
    """Offer known paints."""
    buttons: list[ft.Control] = [
        outline_button(Action(paint.name, partial(choose, paint), key=f"suggest {paint.name}"))
        for paint in paints[:SUGGESTED_MOST]
    ]
    return ft.Row(buttons, spacing=t.GAP, run_spacing=t.GAP, wrap=True)
