"""What is left of a pot and its cups: weighed back, kept in a jar, or thrown away."""

from collections.abc import Awaitable, Callable
from dataclasses import replace
from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.fields import Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.mix.pots.cups import dries_said
from mobile.screens.mix.pots.left_form import (
    LeftForm,
    jar_fields,
    jar_typed,
    left_fields,
    left_typed,
)
from mobile.screens.mix.pots.vessels import vessels
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.known import Known
from mobile.session.mix.cups import cups_of, in_pot_and_cups_g
from mobile.session.mix.leftovers import (
    Back,
    keep_leftover,
    left_form,
    throw_away,
    weigh_back,
)
from mobile.session.session import use_session
from mobile.session.view import use_view
from mobile.store.pot import Pot
from mobile.words import cups as words
from mobile.words import places

Verb = Callable[[LeftForm, Back], Awaitable[object]]


@ft.component
def Left(known: Known, pot: Pot, _how: bool, *, key: str | None = None) -> ft.Control:
    """Ask what is left, and where it goes."""
    view, session = use_view(), use_session()
    cups = cups_of(known, pot)
    typed_form, edit, _ = use_form(left_form(pot), LeftForm())
    form = typed_form.with_vessels(cups)

    async def typed(verb: Verb, else_all: bool) -> None:
        async def read() -> None:
            back = edit.now.with_vessels(cups).weighed(view)
            if else_all and not back.left:
                back = replace(back, left=(("", pot.left_g),))
            await verb(edit.now, back)

        await session.attempt(read(), then=lambda _: go(places.MIX, "pots", pot.id))

    async def keep() -> None:
        await typed(lambda _, back: weigh_back(session, pot, back), False)

    async def jar() -> None:
        await typed(lambda now, back: keep_leftover(session, pot, back, *now.keeps(view)), True)

    async def waste() -> None:
        await typed(lambda _, back: throw_away(session, pot, back), True)

    to_pot = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    now = words.left_now(in_pot_and_cups_g(known, pot), bool(cups))
    lines: list[ft.Control] = [
        header(words.LEFT, now, outline_button(to_pot, "back")),
        Fields(left_fields(form, pot, cups, view), partial(left_typed, edit, cups), key="left"),
        t.say(dries_said(known, view), t.CAPTION, t.SOFT),
        t.say(words.INTO_JAR, t.NAME, weight=t.MEDIUM),
        Fields(jar_fields(form, view), partial(jar_typed, edit), key="jar"),
        t.say(words.FROST, t.CAPTION, t.CAUTION if form.frost(view) else t.SOFT),
        second_button(Action(words.INTO_JAR, jar, key="jar")),
        t.say(words.DRAIN, t.CAPTION, t.SOFT),
        second_button(Action(words.AWAY, waste, key="waste")),
    ]
    lines += vessels(known, pot, view)
    return screen(lines, [main_button(Action(words.KEEP_LEFT, keep, key="keep"))])
