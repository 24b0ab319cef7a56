"""What happened to a can: each pour with its pot, each weighing, each time its lid was off."""

from functools import partial

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.cans.drawn import name_of
from mobile.session.address import LID, go
from mobile.session.cans.can import can_now
from mobile.session.cans.goes_over import Happened, happened_to
from mobile.session.known import Known
from mobile.session.times import when
from mobile.session.view import View, use_view
from mobile.store.entries import CanWeighed, LidOff
from mobile.store.records import Can
from mobile.words import cans as words
from mobile.words import places


@ft.component
def Pours(known: Known, can: Can, *, key: str | None = None) -> ft.Control:
    """List it, newest first."""
    view, now = use_view(), can_now(known, can)
    back = Action(places.BACK, lambda: go(places.CANS, can.id), key="back")
    title = words.how_title(can.number, name_of(now))
    lines: list[ft.Control] = [header(title, words.POURS, outline_button(back, "back"))]
    several = [line(one, view) for one in happened_to(known, can)]
    lines.append(rows(several) if several else t.say(words.NOTHING_YET, t.NAME, t.SOFT))
    lid = Action(words.LID, lambda: go(places.CANS, can.id, LID), words.LID_SMALL, "lid")
    return screen(lines, [main_button(lid)])


def line(one: Happened, view: View) -> ft.Control:
    """Show one thing that happened; a pour leads to its pot."""
    entry = one.entry
    at = when(entry.at_s, clock.now_s())
    if isinstance(entry, CanWeighed):
        return row(Row(words.WEIGHED, at, view.show("net_g", entry.net_g)))
    if isinstance(entry, LidOff):
        return row(Row(words.LID_WAS_OFF, at, view.show("open_s", entry.open_s)))
    name = words.into(one.pot.number, one.pot.name) if one.pot else words.POURED
    to = partial(go, places.MIX, "pots", entry.pot)
    return row(Row(name, at, words.out(view.show("net_g", entry.net_g))), to)
