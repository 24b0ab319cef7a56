"""Too much poured: three answers, each with its cost, one tap."""

from dataclasses import replace

import flet as ft

from core.mixing.over_pour import Answers
from core.mixing.portions import Portion
from core.mixing.weigh_out import OverPour
from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.icons import icon
from mobile.parts.page import screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.answer_card import card, glance
from mobile.screens.mix.weigh_out.answers import keep_answer, make_answer, tip_answer
from mobile.screens.mix.weigh_out.lines import back_corner
from mobile.session.address import HOW, go
from mobile.session.cans.prices import prices_per_g
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.begin import can_keep, takes_g
from mobile.session.mix.from_cans import from_can, paint_of
from mobile.session.mix.weigh_out import (
    back_to_reading,
    keep_over,
    make_more,
    tip_out,
    typed_at,
)
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mishaps, places
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

READS = "reads"  # where the keypad is
STRETCH = ft.CrossAxisAlignment.STRETCH


@ft.component
def TooMuch(
    known: Known, pot: Pot, over: OverPour, at: str, *, key: str | None = None
) -> ft.Control:
    """Offer the three answers; the cheapest that keeps the colour is the main one."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    three = pot.answers(takes_g(known, pot), prices_per_g(known, pot))
    use_how(how(known, over, three, view) if at == HOW else None)

    async def back(to: str) -> None:
        await touch(lambda: back_to_reading(session, pot), lambda: go(places.MIX, "weigh", to))

    left_the_keypad = ft.use_ref(False)

    async def follow() -> None:
        # The browser's Back leads to the keypad: that is the same as *Back* on the screen.
        if at != READS:
            left_the_keypad.current = True
        elif left_the_keypad.current:
            await touch(lambda: back_to_reading(session, pot), None)

    ft.use_effect(follow, [at])

    async def make() -> None:
        await touch(lambda: make_more(session, pot, three.make), None)

    async def keep() -> None:
        await touch(lambda: keep_over(session, pot, over.paint), None)

    async def tip() -> None:
        await touch(lambda: tip_out(session, pot), None)

    made = make_answer(known, pot, three.make, view)

    why = outline_button(Action(places.HOW, lambda: go(places.MIX, "weigh", HOW), key="how"))
    other = outline_button(Action(mishaps.WRONG, lambda: back("wrong"), key="wrong can"))
    keeps = keep if can_keep(known, pot) else None
    rows: list[ft.Control] = [
        back_corner(title(known, pot, over, glance(view)), lambda: back(typed_at(pot)), view),
        card(made, make if three.make.fits else None, three.best == "make", view),
        card(keep_answer(known, pot, three, view), keeps, False, view),
        card(tip_answer(known, pot, three.tip, view), tip, three.best == "tip", view),
        ft.Row([why, other], spacing=t.GAP),
    ]
    return screen(rows)


def title(known: Known, pot: Pot, over: OverPour, size: float) -> ft.Control:
    """Say how much of what is too much."""
    step_g = pot.plan.scale_step_g
    much = ft.Row(
        [
            icon("up", size, t.CAUTION, heavy=True),
            grow(t.say(weigh_words.over(in_grams.scale(over.over_g, step_g)), size, t.CAUTION)),
        ],
        spacing=8,
    )
    one = from_can(known, Portion(over.paint, 0.0), pot.can(over.paint))
    which = t.say(words.paint_in(one.number, one.paint.name))
    both = ft.Column([much, which], spacing=4, tight=True)
    return ft.Semantics(header=True, container=True, content=both)


def how(known: Known, over: OverPour, three: Answers, view: View) -> How:
    """Say how the three answers come about."""
    name = paint_of(known, over.paint).name
    paints = tuple(paint_of(known, part.paint).name for part in three.make.adds)
    told = how_of(name, "", (*over.working, *three.working), view, {"add_g": paints})
    return replace(told, note=weigh_words.OVER_NOTE)
