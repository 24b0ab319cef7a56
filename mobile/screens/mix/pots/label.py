"""Labels of a pot, its cups and its jars, each with the code that opens the pot."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.device.label import Label, signs_of
from mobile.parts.boards import Row, board, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.chip import TwoLight
from mobile.parts.code import code
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow
from mobile.session.address import go
from mobile.session.chips import looks_of_pot
from mobile.session.known import Known
from mobile.session.mix.label import (
    Vessel,
    label_of,
    print_label,
    save_label,
    vessel_by,
    vessels_of,
)
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import label as words
from mobile.words import places, trouble

CODE_MOST, CHIP = 260.0, 64.0


@ft.component
def LabelScreen(known: Known, pot: Pot, vessel_id: str, *, key: str | None = None) -> ft.Control:
    """Show one label; print it, or save it as a picture."""
    view, session = use_view(), use_session()
    vessel = vessel_by(known, pot, vessel_id)
    label = label_of(known, pot, vessel, view)

    async def save() -> None:
        await session.attempt(save_label(session, label))

    async def put_on_paper() -> None:
        await session.attempt(print_label(label))

    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    lines: list[ft.Control] = [
        header(words.LABEL, pot.started.name, outline_button(back, "back")),
        board([*said(known, pot, label), drawn_code(label.says, code_side(view))]),
        t.say(words.SCAN, t.CAPTION, t.SOFT),
    ]
    if others := [one for one in vessels_of(known, pot) if one is not vessel]:
        lines += [header(words.OTHERS, size=t.HEADING), other_labels(known, pot, others, view)]
    save_it = second_button(Action(words.SAVE, save, key="save"))
    return screen(lines, [save_it, main_button(Action(words.PRINT, put_on_paper, key="print"))])


def said(known: Known, pot: Pot, label: Label) -> list[ft.Control]:
    """Show the number, large, beside the two looks; under it the lines."""
    chip = TwoLight(*looks_of_pot(known, pot), CHIP)
    first = ft.Row([grow(t.say(label.number, t.CAN)), chip], spacing=t.GAP)
    return [first, *(t.say(line, t.FACT) for line in label.lines)]


def other_labels(known: Known, pot: Pot, others: list[Vessel], view: View) -> ft.Control:
    """Lead to the other labels of a pot."""
    lines = []
    for one in others:
        label = label_of(known, pot, one, view)
        there = partial(go, places.MIX, "pots", pot.id, "label", *([one.id] if one else []))
        lines.append(row(Row(label.number, label.lines[1]), there, text_ratio=view.text_ratio))
    return rows(lines)


def code_side(view: View) -> float:
    """Find how large the code is drawn: a camera reads it across a table."""
    return min(CODE_MOST, view.width / 2 + CHIP)


def drawn_code(says: str, side: float) -> ft.Control:
    """Draw the code; say so where the library for it can't be had."""
    try:
        signs = signs_of(says)
    except OSError:
        return t.say(trouble.GONE, t.SMALL, t.CAUTION)
    return ft.Row([code(signs, side, words.CODE)], alignment=ft.MainAxisAlignment.CENTER)
