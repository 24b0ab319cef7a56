"""One touch is one act: wet knuckles touch twice, and a commit takes a moment."""

from collections.abc import Awaitable, Callable
from typing import Any

import flet as ft

from mobile.session.mix.pots import under_way
from mobile.session.mix.weigh_out import bounced
from mobile.session.session import use_session
from mobile.store.pot import Pot

Start = Callable[[], Awaitable[Any]]
Touch = Callable[[Start, Callable[[], None] | None], Awaitable[None]]


def use_touch(pot: Pot) -> Touch:
    """Give a way to start verbs of a weigh-out: one at a time, and on the pot as it was drawn."""
    session = use_session()
    busy = ft.use_ref(False)

    async def touch(start: Start, then: Callable[[], None] | None = None) -> None:
        now = under_way(session.known)
        as_drawn = now is not None and now.id == pot.id and now.last == pot.last
        if busy.current or not as_drawn or bounced(pot):
            return
        busy.current = True
        try:
            await session.attempt(start(), then=lambda _: then() if then else None)
        finally:
            busy.current = False

    return touch
