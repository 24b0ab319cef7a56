"""The demo job in a session: the job worked by hand, with all that it has."""

import asyncio

from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import Session
from mobile.store.records import Can, Mix, Wall, Zone
from tests.session.shelf import Shelf


async def at_moth_cellar() -> Session:
    """Give a session at the demo job."""
    session = Session(Shelf(), "phone")
    await open_demo(session)
    session.hush()
    return session


def moth_cellar() -> Session:
    """Give it where no loop runs."""
    return asyncio.run(at_moth_cellar())


def mix(known: Known, name: str) -> Mix:
    """Find a mix by its name."""
    return next(mix for mix in known.mixes if mix.name == name)


def can(known: Known, number: int) -> Can:
    """Find a can by its number."""
    return next(can for can in known.cans if can.number == number)


def wall(known: Known, name: str) -> Wall:
    """Find a wall by its name."""
    return next(wall for wall in known.walls if wall.name == name)


def zone(known: Known, name: str) -> Zone:
    """Find a zone by its name."""
    return next(zone for zone in known.zones if zone.name == name)
