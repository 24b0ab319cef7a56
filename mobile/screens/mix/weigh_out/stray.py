"""A stranger in the pot: a batch so big that nobody sees it, keep it, or tip it out."""

import flet as ft

from core.mixing.pot import contents
from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.icons import icon
from mobile.parts.page import screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.answer_card import card
from mobile.screens.mix.weigh_out.answers import Answer, holds, pours_said, why_not
from mobile.screens.mix.weigh_out.lines import back_corner
from mobile.session.address import HOW, go
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.begin import can_keep
from mobile.session.mix.from_cans import from_can, paint_of
from mobile.session.mix.mishaps import best_of, hide_stray, hiding, saved, worth_of
from mobile.session.mix.pace import pours_again
from mobile.session.mix.weigh_out import keep_over, tip_out, undo_last
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mishaps as words
from mobile.words import places
from mobile.words import weigh_out as weigh_words


@ft.component
def StrayAnswers(known: Known, pot: Pot, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Offer what can be saved, each with its cost."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    paint = next(pour.paint for pour in pot.strays if pour.paint not in pot.kept)
    found = saved(known, pot)
    use_how(how(known, paint, pot, view) if how_up else None)

    async def back() -> None:
        await touch(lambda: undo_last(session, pot), None)

    async def hide() -> None:
        await touch(lambda: hide_stray(session, pot), None)

    async def keep() -> None:
        await touch(lambda: keep_over(session, pot, paint), None)

    async def tip() -> None:
        await touch(lambda: tip_out(session, pot), None)

    make, stays, lose = answers(known, pot, paint, view)
    best = best_of(found, worth_of(known, pot, found))
    why = Action(places.HOW, lambda: go(places.MIX, "weigh", HOW), key="how")
    rows: list[ft.Control] = [
        back_corner(title(known, pot, paint), back, view),
        card(make, hide if found.fits else None, best == "make", view),
        card(stays, keep if can_keep(known, pot) else None, False, view),
        card(lose, tip, best == "tip", view),
        ft.Row([outline_button(why)]),
    ]
    return screen(rows)


def title(known: Known, pot: Pot, paint: str) -> ft.Control:
    """Say how much of what is in it."""
    much = in_grams.scale(pot.stray_g, pot.plan.scale_step_g)
    said = t.say(words.over(much, paint_of(known, paint).name), t.FACT, t.CAUTION)
    line = ft.Row([icon("warning", 28, t.CAUTION), grow(said)], spacing=8)
    return ft.Semantics(header=True, container=True, content=line)


def answers(known: Known, pot: Pot, paint: str, view: View) -> tuple[Answer, Answer, Answer]:
    """Put the three answers in words."""
    found, step_g = saved(known, pot), pot.plan.scale_step_g
    name = paint_of(known, paint).name
    total = in_grams.scale(found.hidden_g, step_g)
    worth = worth_of(known, pot, found)
    more = weigh_words.extra(in_grams.scale(found.extra_g, step_g), worth.extra_price)
    adds = tuple(from_can(known, one, pot.can(one.paint)) for one in hiding(pot, found))
    held = f"{words.UNSEEN} {holds(adds, step_g, why_not(known, pot, found.fits, found.hidden_g))}"
    share = view.show("kept_ratio", found.kept_ratio)
    in_all = in_grams.scale(pot.batch_g + pot.stray_g, step_g)
    inside = contents((*pot.poured, *pot.strays))
    waste = weigh_words.waste(tuple(paint_of(known, one.paint).name for one in inside))
    lost = weigh_words.lose(in_grams.scale(found.lost_g, step_g), worth.lost_price)
    again = pours_said(known, pours_again(pot), weigh_words.AGAIN, view)
    return (
        Answer("make", words.hide(total), more, held, ()),
        Answer("keep", words.stays(share, name), weigh_words.no_loss(in_all), words.LOOK, ()),
        Answer("tip", weigh_words.TIP, lost, f"{again} {waste}".strip(), ()),
    )


def how(known: Known, paint: str, pot: Pot, view: View) -> How:
    """Say how the batch comes about."""
    return how_of(paint_of(known, paint).name, words.STRAY, saved(known, pot).working, view)
