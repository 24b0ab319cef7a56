"""A weigh-out of ember wing, and where it stands."""

import asyncio
from collections.abc import Coroutine
from typing import Any

from mobile.session.mix import begin, weigh_out
from mobile.session.mix.pots import under_way
from mobile.session.session import Session
from mobile.store.pot import Pot


def run(story: Coroutine[Any, Any, None]) -> None:
    asyncio.run(story)


def now(session: Session) -> Pot:
    pot = under_way(session.known)
    assert pot is not None
    return pot


def reads(session: Session) -> tuple[str, float]:
    target = now(session).target
    assert target is not None
    return target.paint, target.reads_g


async def to_orange(session: Session) -> None:
    """Weigh up to the second part: yellow is in, orange comes next."""
    await begin.start_planned(session)
    await weigh_out.on_the_mark(session, now(session))
