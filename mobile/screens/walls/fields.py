"""The fields of a wall: its measures, and a board for each opening."""

from collections.abc import Callable
from dataclasses import replace

import flet as ft

from mobile.parts.boards import board
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.tap import Action
from mobile.screens.walls.form import ONE, TWO, WallForm, limits
from mobile.session.forms import Edit
from mobile.session.view import Limits, View
from mobile.words import walls as words

HEIGHTS = ((ONE, words.ONE_HEIGHT), (TWO, words.TWO_HEIGHTS))
Row = tuple[str, ...]
Change = Callable[[int, Callable[[Row], tuple[Row, ...]]], None]
NEW_OPENING = ("", "", "", "1")
NAMES = "name", "opening_width_m", "opening_height_m", "opening_count"
LABELS = words.OPENING, words.OPENING_WIDTH, words.OPENING_HEIGHT, words.COUNT


def measures(form: WallForm, edit: Edit[WallForm], view: View) -> ft.Control:
    """Ask for the name, the width and one height or two."""

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))  # type: ignore[arg-type]

    def field(name: str, label: str, quantity: str, text: str) -> Field:
        wrong = view.error(quantity, text, within[quantity])
        return Field(name, view.label(label, quantity), text, wrong)

    one, within = form.heights == ONE, limits(form, view)
    heights = [field("left", words.HEIGHT, "height_m", form.left)]
    if not one:
        heights = [
            field("left", words.LEFT, "left_height_m", form.left),
            field("right", words.RIGHT, "right_height_m", form.right),
        ]
    fields = (
        Field("name", words.NAME, form.name, number=False),
        field("width", words.WIDTH, "width_m", form.width),
        *heights,
    )
    choice = segmented(HEIGHTS, form.heights, lambda key: typed("heights", key), view.text_ratio)
    return ft.Column(
        [Fields(fields, typed), choice],
        spacing=14,
        tight=True,
        horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
    )


def openings(form: WallForm, edit: Edit[WallForm], view: View) -> list[ft.Control]:
    """Ask for each opening, and offer one more."""

    def change(at: int, change_row: Callable[[Row], tuple[Row, ...]]) -> None:
        def changed(now: WallForm) -> WallForm:  # the row as it is now: keys may outrun a painting
            rows = tuple(row for old in now.openings[at : at + 1] for row in change_row(old))
            return replace(now, openings=(*now.openings[:at], *rows, *now.openings[at + 1 :]))

        edit(changed)

    def add() -> None:
        edit(lambda now: replace(now, openings=(*now.openings, NEW_OPENING)))

    within = limits(form, view)
    boards = [_opening(at, row, change, view, within) for at, row in enumerate(form.openings)]
    return [*boards, second_button(Action(words.ADD_OPENING, add, key="add opening"))]


def _opening(
    at: int, row: Row, change: Change, view: View, within: dict[str, Limits]
) -> ft.Control:
    def typed(name: str, text: str) -> None:
        place = int(name.rpartition(" ")[2])
        change(at, lambda now: ((*now[:place], text, *now[place + 1 :]),))

    fields = tuple(
        Field(
            f"{name} {at} {place}",
            label if name == "name" else view.label(label, name),
            text,
            "" if name == "name" else view.error(name, text, within[name]),
            number=name != "name",
        )
        for place, (name, label, text) in enumerate(zip(NAMES, LABELS, row, strict=True))
    )
    remove = Action(
        words.REMOVE_OPENING, lambda: change(at, lambda _: ()), key=f"remove opening {at}"
    )
    return board([Fields(fields, typed), outline_button(remove)], key=f"opening {at}")
