"""Split a pot into cups: so many alike, for people, or by the m² of its walls and zones."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow
from mobile.session.address import HOW, go
from mobile.session.forms import use_form
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.cups import (
    CUPS_COUNT,
    by_area,
    cups_of,
    even,
    even_count,
    fill_cups,
    for_people,
)
from mobile.session.mix.leftovers import dries
from mobile.session.mix.people import people_of
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import cups as words
from mobile.words import grams as in_grams
from mobile.words import places
from mobile.words import pot as pot_words
from mobile.words.trouble import refused

EVEN, PEOPLE, AREA = "even", "people", "area"
PEOPLE_MOST = 400  # letters: a crew and its shares


@dataclass(frozen=True, slots=True)
class CupsForm:
    """What has been typed, untouched."""

    how: str = EVEN
    count: str = "2"
    people: str = ""


@ft.component
def Cups(known: Known, pot: Pot, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Ask how to split; say each cup's grams."""
    view, session = use_view(), use_session()
    form, edit, _ = use_form(f"mix/pots/{pot.id}/cups", CupsForm())
    cups = split_of(known, pot, form, view)
    working = dries(known)[0].working
    use_how(how_of(words.CUP_OPEN, words.AN_HOUR, working, view) if how_up else None)

    async def fill() -> None:
        now = split_of(known, pot, edit.now, view)
        await session.attempt(
            fill_cups(session, pot, now), then=lambda _: go(places.MIX, "pots", pot.id)
        )

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    lines: list[ft.Control] = [
        header(words.CUPS, pot_words.left(pot.left_g), outline_button(back, "back")),
        segmented(words.HOW, form.how, partial(typed, "how"), view.text_ratio, "how"),
    ]
    lines += asked(form, typed, bool(cups), view)
    first = len(cups_of(known, pot))
    if cups:
        lines.append(rows([line(first + at, one, pot) for at, one in enumerate(cups)]))
    why = Action(places.HOW, lambda: go(places.MIX, "pots", pot.id, "cups", HOW), key="how")
    said = grow(t.say(dries_said(known, view), t.CAPTION, t.SOFT))
    lines.append(ft.Row([said, outline_button(why)], spacing=t.GAP))
    return screen(lines, [main_button(Action(words.CUPS, fill if cups else None, key="fill"))])


def asked(
    form: CupsForm, typed: Callable[[str, str], None], several: bool, view: View
) -> list[ft.Control]:
    """Ask how many cups, or whose; walls and zones are known."""
    if form.how == EVEN:
        wrong = view.error("cups_count", form.count, CUPS_COUNT) or not_whole(form, view)
        return [Fields((Field("count", words.COUNT, form.count, wrong),), typed)]
    if form.how == PEOPLE:
        whose = Field("people", words.WHO, form.people, wrong_share(form, view), False, PEOPLE_MOST)
        return [Fields((whose,), typed), t.say(words.WHO_NOTE, t.CAPTION, t.SOFT)]
    return [t.say(words.BY_AREA if several else words.ALONE, t.NAME, t.SOFT)]


def not_whole(form: CupsForm, view: View) -> str:
    """Say that there are no half cups."""
    try:
        even_count(view.read("cups_count", form.count))
    except Refused:
        return words.WHOLE_CUPS if form.count.strip() else ""
    return ""


def wrong_share(form: CupsForm, view: View) -> str:
    """Say which share can't be read."""
    try:
        people_of(form.people, view)
    except Refused as refusal:
        return refused(refusal, view.show)
    return ""


def line(at: int, one: tuple[str, float], pot: Pot) -> ft.Control:
    """Show a cup with its letter, its place and its grams."""
    whom, net_g = one
    name = words.cup(chr(ord("a") + at), whom)
    return row(Row(name, "", in_grams.grams_at(net_g, pot.plan.scale_step_g)))


def split_of(known: Known, pot: Pot, form: CupsForm, view: View) -> tuple[tuple[str, float], ...]:
    """Split the pot as it is typed; nothing where that can't be."""
    try:
        if form.how == AREA:
            return by_area(known, pot)
        if form.how == PEOPLE:
            return for_people(pot, people_of(form.people, view))
        return even(pot, view.read("cups_count", form.count))
    except Refused:
        return ()


def dries_said(known: Known, view: View) -> str:
    """Say what an open cup loses in an hour, at the most."""
    dried, air = dries(known)
    humidity = view.show("rh_ratio", air.rh_ratio, 0)
    return words.dries(view.show("net_g", dried.bound_g), view.show("air_c", air.air_c), humidity)
