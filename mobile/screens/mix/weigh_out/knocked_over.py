"""The cup was knocked over: what is gone, and whether to pour it again or to make less."""

from collections.abc import Awaitable, Callable
from functools import partial

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import second_button
from mobile.parts.figure import BigFigure
from mobile.parts.page import screen
from mobile.parts.tap import Action
from mobile.screens.mix.weigh_out.lines import back_corner
from mobile.screens.mix.weigh_out.mishap import keys, reads_of, which_mishap
from mobile.screens.mix.weigh_out.room import BESIDE_BUTTON, crowded, inside, mishap_figure, tight
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.mishaps import (
    asks_cup_anew,
    asks_net,
    left_of,
    make_smaller,
    pour_again,
    smaller,
)
from mobile.session.mix.pots import OVER
from mobile.session.session import Session, use_session
from mobile.session.touch import Start, use_touch
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import mishaps as words
from mobile.words import places
from mobile.words import weigh_out as weigh_words

Settle = Callable[[Session, Pot, float], Awaitable[None]]


@ft.component
def KnockedOver(known: Known, pot: Pot, *, key: str | None = None) -> ft.Control:
    """Ask what is left; say what is gone, and offer to pour it again or to make less."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    figures, press = use_typing(OVER, (("reads", ""),))
    text = figures.of("reads").text

    async def settle(verb: Settle) -> None:
        reads_g = reads_of(press.now.of("reads").text, view)
        if reads_g is not None:
            done: Start = partial(verb, session, pot, reads_g)
            await touch(done, lambda: go(places.MIX, "weigh"))

    said, batch_g = gone_said(known, pot, text, view)
    asked = asked_of(pot)
    less = None
    if batch_g:
        less = Action(words.smaller(batch_g), partial(settle, make_smaller), key="smaller")
    title = back_corner(t.say(words.SPILT, t.FACT), lambda: go(places.MIX, "weigh"), view)
    which = which_mishap("spilt", view)
    if tight(view):
        rows = [title, *answered(text, less, said or asked, view), which]
    else:
        answers = answered(text, less, said or words.TYPE_READING, view)
        rows = [title, which, t.say(asked, t.NAME), *answers]
    can = batch_g is not None
    action = Action(words.AGAIN, partial(settle, pour_again) if can else None, key="use")
    return screen(rows, [keys(action, partial(press, "reads"), text, view)])


def asked_of(pot: Pot) -> str:
    """Ask for a reading that the scale can show and the keypad can type."""
    if asks_cup_anew(pot):
        return words.CUP_ANEW
    return words.CUP_NET if asks_net(pot) else words.CUP_BACK


def answered(text: str, less: Action | None, said: str, view: View) -> list[ft.Control]:
    """Show the figure, what follows from it, and the offer of a smaller pot with its note."""
    wide, follows = inside(view), t.say(said, t.NAME)
    note = [t.say(words.UNSTIRRED, t.CAPTION, t.SOFT)] if less else []
    if crowded(view):
        figure = BigFigure(text, "g", wide - BESIDE_BUTTON - t.GAP, mishap_figure(view), True)
        small = [second_button(less, t.SMALL, width=BESIDE_BUTTON)] if less else []
        return [ft.Row([figure, *small], spacing=t.GAP), t.say(said, t.SMALL), *note]
    figure = BigFigure(text, "g", wide, mishap_figure(view), True)
    return [figure, follows, *([second_button(less)] if less else []), *note]


def gone_said(known: Known, pot: Pot, text: str, view: View) -> tuple[str, float | None]:
    """Say what is gone, and the batch that what is left would make; None where it can't be."""
    reads_g = reads_of(text, view)
    if reads_g is None:
        return "", None
    try:
        found = left_of(pot, reads_g)
    except Refused as refusal:
        too_many = refusal.name == "left_g"
        return words.TOO_MANY if too_many else weigh_words.refused(refusal, view.show), None
    lost = tuple((paint_of(known, one.paint).name, one.net_g) for one in found.lost)
    said = words.gone_of(lost, found.lost_g) if found.lost_g else words.NOTHING_GONE
    return said, sum(part.net_g for part in smaller(pot, found))
