"""All cans, the emptiest first, each as full as it should be."""

import flet as ft

from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, second_button
from mobile.parts.can import Can
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.cans.drawn import face_of, grams_of, litres_of, name_of, spoken
from mobile.session.address import go
from mobile.session.cans import CanNow, cans_now, typed_reading
from mobile.session.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.words import cans as words
from mobile.words import places


@ft.component
def AllCans(known: Known, *, key: str | None = None) -> ft.Control:
    """List the cans; with none, say what to do first."""
    session, view = use_session(), use_view()
    new = Action(words.NEW, lambda: go(places.CANS, "new"), key="new can")
    cans = cans_now(known)
    if not cans:
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        return empty(words.EMPTY, words.EMPTY_MORE, new, demo)
    weigh = Action(words.WEIGH, lambda: go(places.CANS, "pick"), words.SHORTEST, key="weigh")
    lines = [_line(now, typed_reading(session, now.can), view) for now in cans]
    return screen([header(words.TITLE), rows(lines)], [second_button(new), main_button(weigh)])


def _line(now: CanNow, typed: str, view: View) -> ft.Control:
    lead = Can(face_of(now, now.level_ratio), spoken(now, now.level_ratio, view))
    said = Row(name_of(now), _small(now, typed, view), grams_of(now, view), litres_of(now, view))
    return row(said, lambda: go(places.CANS, now.can.id), lead, view.text_ratio)


def _small(now: CanNow, typed: str, view: View) -> str:
    if typed:
        return words.typed(typed)
    label_l = now.can.label_l
    return (
        words.can(now.can.number) if label_l is None else words.full(view.show("label_l", label_l))
    )
