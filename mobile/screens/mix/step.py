"""One step of a weigh-out: which can, what the scale should read, and one button to say so."""

from dataclasses import replace

import flet as ft

from core.mixing.least import least_part_g
from core.mixing.plan import CAN, EACH, TOTAL
from core.mixing.portions import Portion
from core.mixing.weigh_out import Target
from mobile import theme as t
from mobile.parts.bucket import Bucket
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.figure import BigFigure
from mobile.parts.page import screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action, grow
from mobile.screens.mix.at_scale import (
    corners,
    large,
    name_size,
    narrow,
    poured_from,
    undo_words,
)
from mobile.screens.mix.drawn import layers, reads_said
from mobile.screens.mix.laid_out import laid_out
from mobile.screens.mix.room import (
    block_high,
    cup_drawn,
    figure_wide,
    side_high,
)
from mobile.session.address import HOW, go
from mobile.session.begin import said_stirred, stir_due
from mobile.session.from_cans import FromCan, from_can
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.pots import READING, tipped_before
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.view import View, use_view
from mobile.session.weigh_out import on_the_mark, undo_last
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import places
from mobile.words import weigh_out as weigh_words

STRETCH = ft.CrossAxisAlignment.STRETCH
SAID = {
    TOTAL: weigh_words.SHOULD_READ,
    EACH: weigh_words.TARED,
    CAN: weigh_words.CAN_TARED,
}


@ft.component
def WeighStep(
    known: Known, pot: Pot, target: Target, how_up: bool, *, key: str | None = None
) -> ft.Control:
    """Say what to pour now; *On the mark* fills the thumb's half."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    one = from_can(known, Portion(target.paint, target.net_g), pot.can(target.paint))
    use_how(how(one, target, view) if how_up else None)
    reads = reads_said(target.reads_g, pot)

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
    cup = Bucket(layers(known, pot), weigh_words.cup_said(pot.in_cup_g), cup_drawn(view, reads))
    facts: list[ft.Control] = [
        poured_from(one, size=name_size(view, t.ZONE)),
        should_read(pot),
        BigFigure(reads, "g", figure_wide(view)),
        band(pot, target, offered, view),
    ]
    rows = laid_out(corners(pot, target, view), facts, cup, view)
    mark = Action(weigh_words.ON_THE_MARK, hit, key="on the mark")
    return screen(rows, [thumb(mark, typed(known), view)])


def should_read(pot: Pot) -> ft.Control:
    """Say what the figure is; *How?* beside it."""
    words_said = SAID[pot.plan.way]
    why = outline_button(Action(places.HOW, lambda: go(places.MIX, "weigh", HOW), key="how"))
    return ft.Row([grow(t.say(words_said, t.NAME, t.SOFT)), why], spacing=12)


def band(pot: Pot, target: Target, offered: Action | None, view: View) -> ft.Control:
    """Say the band, and offer what stands beside it."""
    step_g = pot.plan.scale_step_g
    low, high = sorted((target.low_g, target.high_g), key=abs)
    limits = weigh_words.band(reads_said(low, pot), reads_said(high, pot))
    said: ft.Control = t.say(in_grams.unbroken(limits), t.FACT)
    if pot.plan.way != TOTAL and target.net_g < least_part_g(step_g):
        drops = t.say(weigh_words.SPURTS, t.SMALL, t.SOFT)
        said = ft.Column([said, drops], spacing=2, tight=True)
    button = [outline_button(offered)] if offered else []
    if narrow(view):
        return ft.Column([said, *button], spacing=t.GAP, tight=True)
    return ft.Row([grow(said), *button], spacing=12)


def thumb(mark: Action, reading: str, view: View) -> ft.Control:
    """Fill the thumb's half: *On the mark*, and *Scale reads* beside it."""
    reads = Action(
        weigh_words.SCALE_READS, lambda: go(places.MIX, "weigh", "reads"), reading, "reads"
    )
    if t.sideways():
        stacked = [main_button(mark, t.ANSWER, side_high(view)), second_button(reads)]
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
