"""What is left of a pot and its cups: weighed back, and kept in a jar."""

from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.cups import (
    COLDEST_C,
    MONTHS_COUNT,
    Cup,
    cups_of,
    jars_of,
    keep_leftover,
    weigh_back,
)
from mobile.session.forms import Edit, use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.entries import LeftoverKept
from mobile.store.pot import Pot
from mobile.words import cups as words
from mobile.words import grams as in_grams
from mobile.words import places
from mobile.words import pot as pot_words


@dataclass(frozen=True, slots=True)
class LeftForm:
    """What has been typed, untouched: a row a vessel, the months, the coldest night."""

    left: tuple[tuple[str, ...], ...] = ()
    months: str = ""
    coldest: str = ""

    def weighed(self, view: View) -> tuple[tuple[str, float], ...]:
        """Read what is left in each vessel; what is empty was not weighed."""
        told = ((cup, text) for cup, text in self.left if text.strip())
        return tuple((cup, view.read("left_g", text)) for cup, text in told)

    def keeps(self, view: View) -> tuple[float | None, float | None]:
        """Read how long it keeps and how cold it stands."""
        months = view.read("months_count", self.months) if self.months.strip() else None
        return months, view.read("coldest_c", self.coldest) if self.coldest.strip() else None


@ft.component
def Left(known: Known, pot: Pot, _how: bool, *, key: str | None = None) -> ft.Control:
    """Ask what is left, and into which jar it goes."""
    view, session = use_view(), use_session()
    cups = cups_of(known, pot)
    blank = LeftForm((("", ""), *((cup.id, "") for cup in cups)))
    form, edit, _ = use_form(f"mix/pots/{pot.id}/left", blank)

    def to_pot(_: object) -> None:
        go(places.MIX, "pots", pot.id)

    async def keep() -> None:
        try:
            left = edit.now.weighed(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        await session.attempt(weigh_back(session, pot, left), then=to_pot)

    async def jar() -> None:
        try:
            left = edit.now.weighed(view) or (("", pot.left_g),)
            keeps = edit.now.keeps(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        await session.attempt(keep_leftover(session, pot, left, *keeps), then=to_pot)

    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    lines: list[ft.Control] = [
        header(words.LEFT, pot_words.left(pot.left_g), outline_button(back, "back")),
        Fields(left_fields(form, cups, view), partial(left_typed, edit), key="left"),
        t.say(words.INTO_JAR, t.NAME, weight=t.MEDIUM),
        Fields(jar_fields(form, view), partial(jar_typed, edit), key="jar"),
        t.say(words.FROST, t.CAPTION, t.SOFT),
        second_button(Action(words.INTO_JAR, jar, key="jar")),
    ]
    if jars := jars_of(known, pot):
        lines.append(rows([jar_line(one, view) for one in jars]))
    return screen(lines, [main_button(Action(words.KEEP_LEFT, keep, key="keep"))])


def left_typed(edit: Edit[LeftForm], name: str, text: str) -> None:
    """Put what is typed of a vessel into the form."""

    def changed(now: LeftForm) -> LeftForm:
        left = tuple((cup, text if cup == name else old) for cup, old in now.left)
        return replace(now, left=left)

    edit(changed)


def jar_typed(edit: Edit[LeftForm], name: str, text: str) -> None:
    """Put what is typed of a jar into the form."""
    if name == "months":
        edit(lambda now: replace(now, months=text))
    else:
        edit(lambda now: replace(now, coldest=text))


def left_fields(form: LeftForm, cups: tuple[Cup, ...], view: View) -> tuple[Field, ...]:
    """Ask what is left in the pot and in each cup."""
    names = {cup.id: words.left_label(words.cup(cup.label, cup.whom)) for cup in cups}
    return tuple(
        Field(
            cup,
            view.label(names.get(cup, words.IN_POT), "left_g"),
            text,
            view.error("left_g", text),
        )
        for cup, text in form.left
    )


def jar_fields(form: LeftForm, view: View) -> tuple[Field, ...]:
    """Ask how long a jar keeps, and how cold it stands."""
    months = view.error("months_count", form.months, MONTHS_COUNT)
    coldest = view.error("coldest_c", form.coldest, COLDEST_C)
    return (
        Field("months", words.USE_BY, form.months, months),
        Field("coldest", view.label(words.COLDEST, "coldest_c"), form.coldest, coldest),
    )


def jar_line(jar: LeftoverKept, view: View) -> ft.Control:
    """Show a jar: its number, its grams, how long it keeps."""
    coldest = "" if jar.coldest_c is None else view.show("coldest_c", jar.coldest_c)
    small = words.jar_small(jar.use_by_day, coldest)
    return row(Row(words.jar(jar.number), small, in_grams.grams(jar.net_g)))
