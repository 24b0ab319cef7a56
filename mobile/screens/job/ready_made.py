"""Ready-made schedules to start from."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.job.ready_made import ReadyMade, ready_made, take
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.words import job as words
from mobile.words import places


@ft.component
def ReadyMadeSchedules(known: Known, *, key: str | None = None) -> ft.Control:
    """List them; a tap takes one, *Undo* gives it back."""
    session = use_session()

    async def choose(one: ReadyMade) -> None:
        await session.attempt(take(session, one), then=lambda _: go(places.JOB))

    several: list[ft.Control] = [
        row(Row(one.name, one.about), partial(choose, one)) for one in ready_made()
    ]
    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    small = known.job.name if known.job else words.READY_MADE_MORE
    head = header(words.READY_MADE, small, back)
    return screen([head, rows(several), t.say(words.USUAL_ALL, t.SMALL, t.SOFT)])
