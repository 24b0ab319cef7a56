"""Ready-made schedules to start from."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.ready_made import ReadyMade, ready_made, take
from mobile.session.session import use_session
from mobile.words import job as words
from mobile.words import places


@ft.component
def ReadyMadeSchedules(*, key: str | None = None) -> ft.Control:
    """List them; a tap takes one, *Undo* gives it back."""
    session = use_session()

    async def choose(one: ReadyMade) -> None:
        await session.attempt(take(session, one), then=lambda _: go(places.JOB))

    several: list[ft.Control] = [
        row(Row(one.name, one.about), partial(choose, one)) for one in ready_made()
    ]
    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    head = header(words.READY_MADE, words.READY_MADE_MORE, back)
    return screen([head, rows(several), t.say(words.USUAL_ALL, t.SMALL, t.SOFT)])
