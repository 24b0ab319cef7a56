"""What the scale reads, typed with gloves on."""

from dataclasses import replace
from functools import partial

import flet as ft

from core.mixing.plan import CAN
from core.mixing.portions import Portion
from core.mixing.weigh_out import Target
from mobile import theme as t
from mobile.parts.boards import COLORS
from mobile.parts.buttons import outline_button
from mobile.parts.figure import BigFigure
from mobile.parts.gauge import OverGauge, Reading
from mobile.parts.icons import icon
from mobile.parts.keypad import Keypad
from mobile.parts.page import screen
from mobile.parts.tap import Action, Do, grow
from mobile.screens.mix.weigh_out.lines import (
    back_corner,
    large,
    lowered,
    name_size,
    poured_from,
    which,
)
from mobile.screens.mix.weigh_out.room import (
    CLOSE_READS,
    LEAST_WIDE,
    close_figure,
    inside,
    keys_high,
    low,
    tight,
)
from mobile.screens.mix.weigh_out.verdict import Verdict, verdict
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.from_cans import FromCan, from_can
from mobile.session.mix.pots import READING
from mobile.session.mix.weigh_out import scale_reads
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mishaps, places
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

SIGNS = {CAN: weigh_words.MINUS}


@ft.component
def ScaleReads(known: Known, pot: Pot, target: Target, *, key: str | None = None) -> ft.Control:
    """Take a reading; what follows from it is said with each digit."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    should = in_grams.scale(abs(target.reads_g), pot.plan.scale_step_g)
    sign = SIGNS.get(pot.plan.way, "")
    figures, press = use_typing(READING, (("reads", should),))
    text = figures.of("reads").text
    said = verdict(known, pot, target, text, view)
    one = from_can(known, Portion(target.paint, target.net_g), pot.can(target.paint))

    async def use() -> None:
        newest = verdict(known, pot, target, press.now.of("reads").text, view)
        if newest.reads_g is not None:
            reads_g = newest.reads_g
            await touch(lambda: scale_reads(session, pot, reads_g), lambda: go(places.MIX, "weigh"))

    async def back() -> None:
        await session.drafts.flush()
        go(places.MIX, "weigh")

    reading = replace(reading_of(target, said, one.paint.day, should), sign=sign)
    below = under(reading, said, view)
    figure = BigFigure(f"{sign}{text}", "g", inside(view), close_figure(view, CLOSE_READS), True)
    line = verdict_line(said, f"{sign}{should}" if said.sign in {"up", "down"} else "")
    above = heads(pot, target, one, back, view)
    rows = [*above, figure, line, below]
    if (large(view) or low(view)) and not merged(view):
        rows = [lowered(figure), line, below, *above]
    keypad = Keypad(
        Action(weigh_words.use(text), use if said.reads_g is not None else None, key="use"),
        lambda sign: press("reads", sign),
        inside(view),
        keys_high(view, text),
        view.text_ratio,
    )
    return screen(rows, [keypad])


def under(reading: Reading, said: Verdict, view: View) -> ft.Control:
    """Draw a reading on its gauge; lead from one that can't be to what may have happened."""
    if said.sign != "warning":
        spoken = weigh_words.gauge_said(reading.target, said.said)
        gauge: ft.Control = OverGauge(reading, spoken, inside(view))
        return gauge
    happened = (("scale", weigh_words.WENT_OFF), ("spilt", mishaps.SPILT))
    buttons: list[ft.Control] = [
        outline_button(Action(named, partial(go, places.MIX, "weigh", at), key=f"to {at}"))
        for at, named in happened
    ]
    return ft.Row(buttons, spacing=t.GAP, wrap=True)


def merged(view: View) -> bool:
    """Tell whether part and can stand on one line: the keys need the room, and no word breaks."""
    return tight(view) and view.width >= LEAST_WIDE


def heads(pot: Pot, target: Target, one: FromCan, back: Do, view: View) -> list[ft.Control]:
    """Say which part and which can; on one line where the keys need the room."""
    if merged(view):
        part = words.part_of(target.index + 1, len(pot.plan.portions))
        return [back_corner(poured_from(one, part, t.HEADING), back, view)]
    paint = poured_from(one, weigh_words.THE_SCALE_READS, name_size(view, t.FACT))
    return [back_corner(which(pot, target), back, view), paint]


def reading_of(target: Target, said: Verdict, color: str, should: str) -> Reading:
    """Give what the gauge shows; of a can on the scale all is less than nothing."""
    low_g, high_g = sorted((abs(target.low_g), abs(target.high_g)))
    return Reading(abs(target.reads_g), low_g, high_g, said.reads_g, color, should)


def verdict_line(said: Verdict, should: str) -> ft.Control:
    """Say what follows from a reading, and what it should have been."""
    color = COLORS[said.state]
    sign = [icon(said.sign, 30, color, heavy=True)] if said.sign else []
    size = t.ZONE if said.reads_g is not None else t.NAME
    line: list[ft.Control] = [*sign, grow(t.say(said.said, size, color))]
    if should:
        line.append(t.say(weigh_words.not_this(should), t.FACT))
    content = ft.Row(line, spacing=8)
    return ft.Semantics(live_region=True, container=True, content=content)
