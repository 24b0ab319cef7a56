"""One step of a weigh-out: which can, what the scale should read, and one button to say so."""

from dataclasses import replace

import flet as ft

from core.mixing.least import least_part_g
from core.mixing.plan import CAN, EACH, TOTAL
from core.mixing.portions import Portion
from core.mixing.weigh_out import Target
from mobile import theme as t
from mobile.parts.buttons import main_button, second_button, stack_or_row
from mobile.parts.page import screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.drawn import layers, reads_said
from mobile.screens.mix.weigh_out.laid_out import Step, laid_out
from mobile.screens.mix.weigh_out.lines import corners, large, narrow, undo_words, went_off
from mobile.screens.mix.weigh_out.room import block_high, side_high
from mobile.screens.mix.weigh_out.step_room import Said
from mobile.session.address import go
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.begin import said_stirred, stir_due
from mobile.session.mix.from_cans import FromCan, from_can
from mobile.session.mix.pots import READING, tipped_before
from mobile.session.mix.weigh_out import on_the_mark, undo_last
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import mix as words
from mobile.words import places
from mobile.words import weigh_out as weigh_words

STRETCH = ft.CrossAxisAlignment.STRETCH
SAID = {
    TOTAL: weigh_words.SHOULD_READ,
    EACH: weigh_words.TARED,
    CAN: weigh_words.CAN_TARED,
}
IN_MID_PART = SAID | {EACH: weigh_words.NOT_AGAIN, CAN: weigh_words.CAN_NOT_AGAIN}


@ft.component
def WeighStep(
    known: Known, pot: Pot, target: Target, how_up: bool, *, key: str | None = None
) -> ft.Control:
    """Say what to pour now; *On the mark* fills the thumb's half."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    one = from_can(known, Portion(target.paint, target.net_g), pot.can(target.paint))
    use_how(how(one, target, view) if how_up else None)

    async def hit() -> None:
        await touch(lambda: on_the_mark(session, pot), None)

    async def undo() -> None:
        await touch(lambda: undo_last(session, pot), None)

    async def stirred() -> None:
        await session.attempt(said_stirred(session, pot))

    offered = None
    if pot.last or tipped_before(known, pot):
        offered = Action(undo_words(pot), undo, key="undo pour")
    elif stir_due(known, pot):
        offered = Action(weigh_words.ALL_STIRRED, stirred, key="stirred all")
    cup_said = weigh_words.cup_said(pot.in_cup_g)
    shown = Step(said_of(pot, target, one, offered), one, layers(known, pot), cup_said, offered)
    rows = laid_out(corners(pot, target, view), shown, view)
    mark = Action(weigh_words.ON_THE_MARK, hit, key="on the mark")
    return screen(rows, [thumb(mark, typed(known), view)])


def said_of(pot: Pot, target: Target, one: FromCan, offered: Action | None) -> Said:
    """Put a step in words."""
    at, of, step_g = target.index + 1, len(pot.plan.portions), pot.plan.scale_step_g
    low, high = sorted((target.low_g, target.high_g), key=abs)
    drops = pot.plan.way != TOTAL and target.net_g < least_part_g(step_g)
    return Said(
        words.part_of(at, of),
        reads_said(target.reads_g, pot),
        one.paint.name,
        should_read(pot, target),
        weigh_words.band(reads_said(low, pot), reads_said(high, pot)),
        " ".join(filter(None, (next_can(one), weigh_words.SPURTS if drops else ""))),
        offered.words if offered else "",
    )


def should_read(pot: Pot, target: Target) -> str:
    """Say how the scale stands before the pour: who tares in mid-part would pour too much."""
    if with_cup(pot):
        return weigh_words.WITH_CUP
    if pot.plan.way == TOTAL and pot.in_cup_g and not target.before_g:
        return weigh_words.TARED  # with all that is in it
    return (IN_MID_PART if target.before_g else SAID)[pot.plan.way]


def with_cup(pot: Pot) -> bool:
    """Tell whether the scale counts the cup in, as it does after it went off."""
    cup_g = pot.started.cup_g
    return pot.plan.way == TOTAL and cup_g is not None and pot.plan.offset_g >= cup_g > 0


def next_can(one: FromCan) -> str:
    """Say which can goes on where this pour empties its own."""
    if not one.runs_out or one.number is None:
        return ""
    return weigh_words.runs_out(one.number, tuple(now.can.number for now in one.others))


def thumb(mark: Action, reading: str, view: View) -> ft.Control:
    """Fill the thumb's half: *On the mark*, and *Scale reads* beside it."""
    reads = Action(
        weigh_words.SCALE_READS, lambda: go(places.MIX, "weigh", "reads"), reading, "reads"
    )
    if t.sideways():
        upper = stack_or_row([second_button(reads), went_off()], view.text_ratio)
        stacked = [upper, main_button(mark, t.ANSWER, side_high(view))]
        return ft.Column(stacked, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH)
    if large(view):
        stacked = [second_button(reads), main_button(mark)]
        return ft.Column(stacked, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH)
    sides = [
        grow(main_button(mark, t.ANSWER), 5),
        grow(second_button(reads, t.HEADING), 3 if narrow(view) else 2),
    ]
    row = ft.Row(sides, spacing=t.GAP, vertical_alignment=STRETCH)
    return ft.Container(row, height=block_high(view))


def typed(known: Known) -> str:
    """Say that a reading was typed and not used."""
    text = known.draft(READING).get("reads", "")
    return weigh_words.typed(text) if text else ""


def how(one: FromCan, target: Target, view: View) -> How:
    """Say how the reading comes about."""
    said = how_of(one.paint.name, weigh_words.SHOULD_READ, target.working, view)
    return replace(said, note=weigh_words.BAND_NOTE)
