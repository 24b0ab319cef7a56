"""More of a pot that is done: so many grams on top of what is left of it."""

from functools import partial

import flet as ft

from core.errors import Refused
from core.mixing.cups import more_of_it
from mobile import theme as t
from mobile.parts.figure import BigFigure
from mobile.parts.keypad import Keypad
from mobile.parts.page import screen
from mobile.parts.tap import Action
from mobile.screens.mix.weigh_out.lines import back_corner
from mobile.screens.mix.weigh_out.room import figure_most, inside, keys_high
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.cans_hold import lacking
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import in_paints
from mobile.session.mix.pot_again import add_form, add_to_pot
from mobile.session.session import use_session
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import mix as mix_words
from mobile.words import places
from mobile.words import pot as words


@ft.component
def AddToPot(known: Known, pot: Pot, _how: bool, *, key: str | None = None) -> ft.Control:
    """Ask how many grams more; say what will be poured."""
    view, session = use_view(), use_session()
    figures, press = use_typing(add_form(pot), (("grams", ""),))
    text = figures.of("grams").text

    async def add() -> None:
        add_g = grams_of(press.now.of("grams").text, view)
        if add_g is not None:
            verb = add_to_pot(session, pot, add_g)
            await session.attempt(verb, then=lambda _: go(places.MIX, "weigh"))

    said, can = what_more(known, pot, text, view)
    rows: list[ft.Control] = [
        back_corner(t.say(words.ADD, t.FACT), lambda: go(places.MIX, "pots", pot.id), view),
        t.say(words.left(pot.left_g), t.SMALL, t.SOFT),
        t.say(words.HOW_MUCH_MORE, t.NAME),
        BigFigure(text, "g", inside(view), figure_most(view), True),
        t.say(said, t.NAME, t.TEXT if can else t.CAUTION),
        t.say(words.TARE_FIRST, t.SMALL, t.SOFT),
    ]
    action = Action(words.add_grams(text), add if can else None, key="use")
    pad = Keypad(
        action, partial(press, "grams"), inside(view), keys_high(view, text), view.text_ratio
    )
    return screen(rows, [pad])


def grams_of(text: str, view: View) -> float | None:
    """Read the grams; None where there are none."""
    try:
        return view.read("add_g", text) or None
    except Refused:
        return None


def what_more(known: Known, pot: Pot, text: str, view: View) -> tuple[str, bool]:
    """Say what will be poured of each paint, or what the cans lack; and whether it can be."""
    add_g = grams_of(text, view)
    if add_g is None:
        return "", False
    try:
        more = more_of_it(in_paints(known, pot.holds), add_g)
    except Refused:
        return "", False
    if short := lacking(known, more):
        return mix_words.cans_lack(short), False
    pours = tuple((paint_of(known, one.paint).name, one.net_g) for one in more)
    return words.add_these(pours), True
