"""One can on the scale: what is left follows from each digit; *Keep* settles the ledger."""

import flet as ft

from mobile import theme as t
from mobile.parts.can import Can
from mobile.parts.figure import BigFigure
from mobile.parts.keypad import Keypad
from mobile.parts.page import screen
from mobile.parts.tap import Action, grow
from mobile.screens.cans.drawn import face_of, name_of, spoken
from mobile.screens.cans.found import found_rows
from mobile.screens.cans.how import how
from mobile.screens.cans.reading import Reading, read_scale
from mobile.screens.cans.room import figure_wide, inside, keys_high
from mobile.session.address import PICK, go
from mobile.session.cans.can import READS, CanNow, can_now, weigh_can, weigh_form
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.records import Can as CanRecord
from mobile.words import cans as words
from mobile.words import places


@ft.component
def WeighCan(known: Known, can: CanRecord, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Type what the scale reads, and know what is left."""
    session, view = use_session(), use_view()
    now = can_now(known, can)
    figures, press = use_typing(weigh_form(can), ((READS, ""),))
    text = figures.of(READS).text
    reading = read_scale(now, text, known.settings.scale_step_g, view)
    use_how(how(now, reading, view) if how_up else None)

    async def keep() -> None:
        newest = read_scale(now, press.now.of(READS).text, known.settings.scale_step_g, view)
        if newest.gross_g is not None and newest.found:
            verb = weigh_can(session, can, newest.gross_g)
            await session.attempt(verb, then=lambda _: go(places.CANS, PICK))

    action = Action(words.KEEP_NEXT, keep if reading.found else None, key="keep")
    keypad = Keypad(
        action, lambda sign: press(READS, sign), inside(view), keys_high(view), view.text_ratio
    )
    return screen([head(now, reading, view), *found_rows(known, now, reading, view)], [keypad])


def head(now: CanNow, reading: Reading, view: View) -> ft.Control:
    """Draw the can so full, with its paint and what is typed."""
    level = reading.found.level_ratio if reading.found else now.level_ratio
    kept = words.NOT_KEPT if reading.text else words.can(now.can.number)
    said = [
        t.say(name_of(now), t.NAME if t.large() else t.FACT, weight=t.STRONG),
        BigFigure(reading.text, "g", figure_wide(view), t.CAN, True),
        t.say(kept, t.CAPTION, t.SOFT),
    ]
    drawn = Can(face_of(now, level), spoken(now, level, view), True)
    row = ft.Row([drawn, grow(ft.Column(said, spacing=2, tight=True))], spacing=t.MARGIN)
    return ft.Container(row, padding=ft.Padding(4, 12, 4, 4))
