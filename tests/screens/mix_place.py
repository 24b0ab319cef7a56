"""Mix on a headless screen, and a weigh-out brought to its second part."""

import asyncio
from collections.abc import Coroutine
from typing import Any

from mobile.screens.mix.place import MixPlace
from mobile.session.mix import begin, weigh_out
from mobile.session.mix.pots import under_way
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.pot import Pot
from tests.screens.seen import OnPlace, tap


def run(story: Coroutine[Any, Any, None]) -> None:
    asyncio.run(story)


def on_mix(session: Session, at: str = "", view: View | None = None) -> OnPlace:
    return OnPlace(session, MixPlace, f"/mix/{at}".rstrip("/"), view)


def now(session: Session) -> Pot:
    pot = under_way(session.known)
    assert pot is not None
    return pot


async def keys(screen: OnPlace, text: str) -> None:
    for sign in text:
        await tap(screen, f"key {sign}")


async def at_orange(session: Session) -> None:
    await begin.start_planned(session)
    await weigh_out.on_the_mark(session, now(session))
