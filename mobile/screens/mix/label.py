"""A pot's label: number, mix, date, grams, who, lots, its looks, and the code that opens it."""

import flet as ft

from mobile import theme as t
from mobile.device.label import signs_of
from mobile.parts.boards import board
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.chip import TwoLight
from mobile.parts.code import code
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow
from mobile.session.address import go
from mobile.session.chips import looks_of_pot
from mobile.session.known import Known
from mobile.session.label import label_of, save_label
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import label as words
from mobile.words import places, trouble

CODE_MOST, CHIP = 260.0, 64.0


@ft.component
def LabelScreen(known: Known, pot: Pot, _how: bool, *, key: str | None = None) -> ft.Control:
    """Show the label; save it as a picture to print."""
    view, session = use_view(), use_session()
    label = label_of(known, pot)

    async def save() -> None:
        await session.attempt(save_label(session, pot))

    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    chip = TwoLight(*looks_of_pot(known, pot), CHIP)
    said: list[ft.Control] = [
        ft.Row([grow(t.say(label.number, t.CAN)), chip], spacing=t.GAP),
        *(t.say(line, t.FACT) for line in label.lines),
    ]
    lines: list[ft.Control] = [
        header(words.LABEL, pot.started.name, outline_button(back, "back")),
        board([*said, drawn_code(label.says, code_side(view))]),
        t.say(words.SCAN, t.CAPTION, t.SOFT),
    ]
    return screen(lines, [main_button(Action(words.SAVE, save, key="save"))])


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
