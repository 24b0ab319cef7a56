"""All cans, the emptiest first, each as full as it should be."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.can import Can
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow, spread, tap
from mobile.screens.cans.drawn import face_of, grams_of, litres_of, name_of, spoken
from mobile.session.address import NEW, PAINTS, PICK, go
from mobile.session.cans.can import CanNow, cans_now, typed_reading
from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.words import cans as words
from mobile.words import places


@ft.component
def AllCans(known: Known, *, key: str | None = None) -> ft.Control:
    """List the cans; with none, say what to do first."""
    session, view = use_session(), use_view()
    new = Action(words.NEW, lambda: go(places.CANS, NEW), key="new can")
    cans = cans_now(known)
    if not cans:
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        return empty(words.EMPTY, words.EMPTY_MORE, new, demo)
    weigh = Action(words.WEIGH, lambda: go(places.CANS, PICK), words.SHORTEST, key="weigh")
    labels = outline_button(Action(words.PAINTS, lambda: go(places.CANS, PAINTS), key="paints"))
    lines = [_line(now, typed_reading(session, now.can), view) for now in cans]
    return screen(
        [header(words.TITLE, "", labels), rows(lines)], [second_button(new), main_button(weigh)]
    )


def _line(now: CanNow, typed: str, view: View) -> ft.Control:
    can = Can(face_of(now, now.level_ratio), spoken(now, now.level_ratio, view))
    grams = t.say(grams_of(now, view), t.FACT if now.weighed else t.SMALL)
    small = words.typed(typed) if typed else litres_of(now, view)
    said: list[ft.Control] = [
        t.say(name_of(now), t.NAME, weight=t.MEDIUM),
        spread([grams, *([t.say(small, t.CAPTION, t.SOFT)] if small else [])]),
    ]
    words_side = grow(ft.Column(said, spacing=2, tight=True, horizontal_alignment=STRETCH))
    face = ft.Container(ft.Row([can, words_side], spacing=14), padding=PADDING)
    return tap(face, lambda: go(places.CANS, now.can.id), key=f"can {now.can.number}")


PADDING = ft.Padding(16, 11, 16, 11)
STRETCH = ft.CrossAxisAlignment.STRETCH
