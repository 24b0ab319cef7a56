"""What is in a pot: each paint with what was poured, what was planned, and its can."""

from dataclasses import dataclass

import flet as ft

from core.mixing.portions import Portion
from core.mixing.pot import contents
from core.paints.recipe import Part, shares
from mobile.parts.boards import Row, State, row, rows
from mobile.parts.can import Can
from mobile.parts.sheet import How, HowStep
from mobile.screens.mix.weigh_out.drawn import face
from mobile.screens.mix.weigh_out.room import BESIDE_CAN, inside
from mobile.session.known import Known
from mobile.session.mix.from_cans import FromCan, from_can, paint_of
from mobile.session.mix.pots import on_marks_g
from mobile.session.view import View
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

AROUND = 36.0  # a row's own sides and rim


@dataclass(frozen=True, slots=True)
class InPot:
    """One paint of a pot: its can, and how much was planned."""

    one: FromCan
    planned_g: float
    share_ratio: float
    within_g: float = 0.0  # how near it is, where it was said to be on the mark


def in_pot(known: Known, pot: Pot) -> tuple[InPot, ...]:
    """Put together what is in a pot, in pouring order; what was never poured is 0 g.

    Strays stand last: nothing of them was planned.
    """
    strays = contents(pot.strays)
    order = (*pot.plan.portions, *(Portion(one.paint, 0.0) for one in strays))
    poured = (*(Portion(one.paint, pot.paint_g(one.paint)) for one in pot.plan.portions), *strays)
    ratios = share_of(poured)
    within_g = on_marks_g(known, pot)
    return tuple(
        InPot(
            from_can(known, part, pot.can(part.paint)),
            plan.net_g,
            ratio,
            within_g.get(part.paint, 0.0),
        )
        for part, plan, ratio in zip(poured, order, ratios, strict=True)
    )


def share_of(parts: tuple[Portion, ...]) -> tuple[float, ...]:
    """Find each part's share of what is in; 0 while nothing is."""
    poured = tuple(Part(part.paint, part.net_g) for part in parts if part.net_g)
    ratios = dict(zip((p.paint for p in poured), shares(poured), strict=True)) if poured else {}
    return tuple(ratios.get(part.paint, 0.0) for part in parts)


def list_of(parts: tuple[InPot, ...], step_g: float, view: View, left: bool) -> ft.Control:
    """List what is in a pot; `left` says what each can still has, else each part's share."""
    return rows([line(part, step_g, view, left) for part in parts])


def line(part: InPot, step_g: float, view: View, left: bool) -> ft.Control:
    """Show one paint of a pot."""
    under, state = can_left(part.one) if left else (view.show("share_ratio", part.share_ratio), "")
    planned = in_grams.scale(part.planned_g, step_g)
    said = Row(
        part.one.paint.name,
        words.planned(planned, within(part, step_g)) if part.planned_g else words.NOT_PLANNED,
        in_grams.grams_at(part.one.net_g, step_g),
        under,
        state,
    )
    drawn = face(part.one)
    room = inside(view) - AROUND - (BESIDE_CAN if drawn else 0)
    lead = Can(*drawn) if drawn else None
    return row(said, lead=lead, text_ratio=view.text_ratio, room=room / view.text_ratio)


def within(part: InPot, step_g: float) -> str:
    """Say how near a part is that was on the mark; "" for one whose reading was typed."""
    return in_grams.scale(part.within_g, step_g) if part.within_g else ""


def can_left(one: FromCan) -> tuple[str, State]:
    """Say what a can still has; below nothing its weighing is wrong, and that is said."""
    if one.number is None:
        return words.NO_CAN, ""
    if one.has_g is None:
        return words.can_unknown(one.number), ""
    if one.has_g < 0:
        return words.weigh_it(one.number), "caution"
    return words.can_left(one.number, one.has_g), ""


def can_for_it(one: FromCan, step_g: float) -> tuple[str, State]:
    """Say which can a part comes from, and whether it has enough."""
    if one.number is None:
        return words.NO_CAN, ""
    if one.has_g is None:
        return words.can_unknown(one.number), ""
    if one.short_g > step_g:
        return words.can_short(one.number, in_grams.scale(one.short_g, step_g)), "caution"
    return words.can(one.number), ""


def how(known: Known, pot: Pot, view: View) -> How:
    """Say how what is in the cup and the shares come about."""
    parts = in_pot(known, pot)
    poured = tuple(pour for pour in (*pot.poured, *pot.strays) if pour.net_g)
    terms = " + ".join(view.show("net_g", pour.net_g) for pour in poured)
    total = view.show("net_g", pot.in_cup_g)
    steps = [HowStep(weigh_words.IN_THE_CUP, terms, total, weigh_words.SUM)]
    for part in parts:
        poured_said = view.show("net_g", part.one.net_g)
        share = view.show("share_ratio", part.share_ratio)
        name = paint_of(known, part.one.paint.id).name
        steps.append(HowStep(name, f"{poured_said} ÷ {total}", share, weigh_words.FRACTION))
    return How(
        words.pot(pot.started.number), pot.started.name, tuple(steps), note=weigh_words.POT_NOTE
    )
