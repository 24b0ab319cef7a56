"""The wrong can was poured: which paint went in, and how much."""

from functools import partial

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.figure import BigFigure
from mobile.parts.page import screen
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.lines import back_corner
from mobile.screens.mix.weigh_out.mishap import keys, reads_of, which_mishap
from mobile.screens.mix.weigh_out.room import inside, mishap_figure, tight
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.mishaps import other_paints, went_in_g, wrong_can
from mobile.session.mix.pots import WRONG
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.store.records import Paint
from mobile.words import mishaps as words
from mobile.words import mix as mix_words
from mobile.words import places
from mobile.words import weigh_out as weigh_words


@ft.component
def WrongCan(known: Known, pot: Pot, *, key: str | None = None) -> ft.Control:
    """Ask which paint went in, and what the scale reads now."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    figures, press = use_typing(WRONG, (("reads", ""),))
    paint, choose = ft.use_state("")
    text = figures.of("reads").text

    async def log() -> None:
        reads_g = reads_of(press.now.of("reads").text, view)
        if reads_g is not None and paint:
            done = partial(wrong_can, session, pot, paint, reads_g)
            await touch(done, lambda: go(places.MIX, "weigh"))

    said, can_log = went_in(known, pot, paint, text, view)
    rows: list[ft.Control] = [
        back_corner(t.say(words.WRONG, t.FACT), lambda: go(places.MIX, "weigh"), view),
        which_mishap("wrong", view),
        paints(known, pot, paint, choose),
    ]
    if not paint:
        return screen(rows)
    figure = BigFigure(text, "g", inside(view), mishap_figure(view), True)
    if tight(view):
        title, which, chosen = rows
        rows = [title, chosen, figure, t.say(said if text else words.READS_NOW, t.NAME), which]
    else:
        rows += [t.say(words.READS_NOW, t.NAME), figure, t.say(said, t.NAME)]
    action = Action(words.LOG, log if can_log else None, key="use")
    return screen(rows, [keys(action, partial(press, "reads"), text, view)])


def paints(known: Known, pot: Pot, chosen: str, choose: "ft.StateSetter[str]") -> ft.Control:
    """Offer the paints that it may have been; once one is chosen, that one."""
    if chosen:
        other = outline_button(Action(words.ANOTHER, lambda: choose(""), key="another"))
        name = t.say(paint_of(known, chosen).name, t.FACT)
        return ft.Row([grow(name), other], spacing=t.GAP)
    offered: list[ft.Control] = [
        outline_button(Action(named(known, one), partial(choose, one.id), key=f"paint {one.name}"))
        for one in other_paints(known, pot)
    ]
    buttons = ft.Row(offered, spacing=t.GAP, run_spacing=t.GAP, wrap=True)
    return ft.Column([t.say(words.WHICH, t.NAME), buttons], spacing=t.GAP, tight=True)


def named(known: Known, paint: Paint) -> str:
    """Name a paint, with its can where it has one."""
    can = next((can for can in known.cans if can.paint == paint.id and not can.gone), None)
    return mix_words.paint_in(can.number if can else None, paint.name)


def went_in(known: Known, pot: Pot, paint: str, text: str, view: View) -> tuple[str, bool]:
    """Say how much went in by what is typed, or why that can't be; and whether it can."""
    try:
        net_g = went_in_g(known, pot, view.read("reads_g", text))
    except Refused as refusal:
        return weigh_words.refused(refusal, view.show) if text else words.TYPE_READING, False
    if not net_g:
        return words.NOTHING_MORE, False
    return words.so_much(net_g, paint_of(known, paint).name), True
