"""The rows of a paint: the cans it is sold in with their prices, the waits off its label."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial

import flet as ft

from core.cans.price import SIZE_L
from core.waits.pair import WAIT_S
from mobile import theme as t
from mobile.parts.boards import board
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.tap import Action
from mobile.screens.cans.paint_form import MOST, SIZE_ROW, WAIT_ROW, PaintForm
from mobile.session.forms import Edit
from mobile.session.view import View
from mobile.words import job as job_words
from mobile.words import paints as words

Row = tuple[str, ...]
Change = Callable[[int, int, str], None]  # which row, which column (-1 takes it out), the text
PRICE = 0.0, 1e6


def changer(edit: Edit[PaintForm], name: str) -> Change:
    """Give a way to change the rows of a kind."""

    def change(at: int, column: int, text: str) -> None:
        def changed(now: PaintForm) -> PaintForm:
            rows: tuple[Row, ...] = getattr(now, name)
            row = rows[at : at + 1]
            after = () if column < 0 else tuple(_set(one, column, text) for one in row)
            return replace(now, **{name: (*rows[:at], *after, *rows[at + 1 :])})  # type: ignore[arg-type]

        edit(changed)

    return change


def _set(row: Row, column: int, text: str) -> Row:
    return (*row[:column], text, *row[column + 1 :])


def adder(edit: Edit[PaintForm], name: str, row: Row) -> Callable[[], None]:
    """Give a way to add a row of a kind."""

    def add() -> None:
        edit(lambda now: replace(now, **{name: (*getattr(now, name), row)}))  # type: ignore[arg-type]

    return add


def size_fields(form: PaintForm, edit: Edit[PaintForm], view: View) -> list[ft.Control]:
    """Ask for the cans it is sold in, each with its price."""
    change = changer(edit, "sizes")
    boards = [size_board(at, row, change, view) for at, row in enumerate(form.sizes)]
    add = second_button(Action(words.ADD_SIZE, adder(edit, "sizes", SIZE_ROW), key="add size"))
    return [t.say(words.SIZES, t.SMALL, t.SOFT), *boards, add]


def size_board(at: int, row: Row, change: Change, view: View) -> ft.Control:
    """Ask for one size."""
    litres, price = row
    label = view.label(words.size_label(at + 1), "size_l")
    fields = (
        Field("0", label, litres, view.error("size_l", litres, SIZE_L)),
        Field("1", words.price_label(at + 1), price, view.error("price", price, PRICE)),
    )
    asked = Fields(fields, lambda name, text: change(at, int(name), text), key=f"size {at}")
    remove = Action(words.REMOVE, partial(change, at, -1, ""), key=f"remove size {at}")
    return board([asked, outline_button(remove)], key=f"size board {at}")


def wait_fields(form: PaintForm, edit: Edit[PaintForm], view: View) -> list[ft.Control]:
    """Ask for the waits off the label: before which kind of step, at least, at most."""
    change = changer(edit, "waits")
    boards = [wait_board(at, row, change, view) for at, row in enumerate(form.waits)]
    add = second_button(Action(words.ADD_WAIT, adder(edit, "waits", WAIT_ROW), key="add wait"))
    return [t.say(words.WAITS, t.SMALL, t.SOFT), *boards, add]


def wait_board(at: int, row: Row, change: Change, view: View) -> ft.Control:
    """Ask for one wait."""
    use, least, limit, most, most_from = row
    kinds = (("", words.ANY), *job_words.KINDS[2:], ("hand-over", job_words.HAND_OVER))
    uses = [
        segmented(kinds[i : i + 2], use, partial(change, at, 0), 1.0, f"use {at}")
        for i in range(0, len(kinds), 2)
    ]
    wait = Field(
        "1",
        view.label(job_words.WAIT, "minimum_s"),
        least,
        view.error("minimum_s", least, WAIT_S),
    )
    lines: list[ft.Control] = [
        t.say(words.BEFORE, t.SMALL, t.SOFT),
        *uses,
        Fields((wait,), lambda name, text: change(at, int(name), text), key=f"least {at}"),
        t.say(job_words.LIMIT, t.SMALL, t.SOFT),
        segmented(job_words.LIMITS, limit, partial(change, at, 2), view.text_ratio, f"limit {at}"),
    ]
    if limit == MOST:
        label = view.label(job_words.RECOAT, "maximum_s")
        field = Field("3", label, most, view.error("maximum_s", most, WAIT_S))
        counted = partial(change, at, 4)
        lines += [
            Fields((field,), lambda name, text: change(at, int(name), text), key=f"most {at}"),
            segmented(job_words.LIMIT_FROM, most_from, counted, view.text_ratio, f"from {at}"),
        ]
    remove = Action(words.REMOVE, partial(change, at, -1, ""), key=f"remove wait {at}")
    return board([*lines, outline_button(remove)], key=f"wait board {at}")
