"""All paints: what each looks like, what its label says, what lacks."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.chip import TwoLight
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import NEW, PAINTS, go
from mobile.session.cans.paints import lacks, take_starter
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.records import Paint
from mobile.words import looks, places
from mobile.words import paints as words

CHIP = 40.0


@ft.component
def Paints(known: Known, *, key: str | None = None) -> ft.Control:
    """List the paints by name; offer the starter set."""
    session, view = use_session(), use_view()

    async def starter() -> None:
        await session.attempt(take_starter(session))

    back = outline_button(Action(places.BACK, lambda: go(places.CANS), key="back"), "back")
    lines: list[ft.Control] = [header(words.TITLE, "", back)]
    if known.paints:
        ordered = sorted(known.paints, key=lambda paint: paint.name.casefold())
        lines.append(rows([line(paint, view) for paint in ordered]))
    else:
        lines.append(t.say(words.EMPTY, t.NAME, t.SOFT))
    lines.append(second_button(Action(words.STARTER, starter, words.STARTER_MORE, "starter")))
    new = Action(words.NEW, lambda: go(places.CANS, PAINTS, NEW), key="new paint")
    return screen(lines, [main_button(new)])


def line(paint: Paint, view: View) -> ft.Control:
    """Show a paint."""
    density = "" if paint.density_g_ml is None else view.show("density_g_ml", paint.density_g_ml)
    chip = TwoLight(
        paint.day, paint.lamp, looks.two_lights(paint.name, paint.day, paint.lamp), CHIP
    )
    said = Row(paint.name, words.lacking(lacks(paint)) or density)
    return row(said, partial(go, places.CANS, PAINTS, paint.id), chip, view.text_ratio)
