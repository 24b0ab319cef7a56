"""The demo job's book, with work under way: the same bytes each time, ids and clock told."""

import asyncio
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from itertools import count
from unittest.mock import patch
from uuid import UUID

from mobile.session.job.demo import open_demo
from mobile.session.session import Session
from mobile.store.door import MemoryDoor
from mobile.store.entries import (
    AimChanged,
    CanStirred,
    CautionRead,
    CoatFinished,
    CupFilled,
    KeptOver,
    LeftoverKept,
    MadeMore,
    PotStarted,
    Poured,
    ScaleChecked,
    ScaleRestarted,
    Spilt,
    StillTacky,
    StoodOpen,
    StrayPoured,
    ThrownAway,
    TippedOut,
    Undone,
    WeighedBack,
)
from mobile.store.library import Library
from mobile.store.records import Draft, Job, Record
from tests.store.made import PHONE

BEGAN_S = 1.936e9  # in May 2031


@contextmanager
def told() -> Iterator[None]:
    """Count ids and seconds, so that the same verbs give the same records."""
    ids, instants = count(1), count()
    with (
        patch("mobile.session.session.uuid4", lambda: UUID(int=next(ids), version=4)),
        patch("mobile.clock.now_s", lambda: BEGAN_S + next(instants)),
    ):
        yield


async def library_with(*records: Record, device: str = PHONE) -> Library:
    """Give a library on a door of its own."""
    library = await Library.open(MemoryDoor("duskcoat"), device)
    await library.keep(*records)
    return library


async def moth_cellar() -> Library:
    """Give the demo job with a pot under way, coats that dry, and a form half typed."""
    library = await library_with()
    with told():
        session = Session(library, PHONE)
        await open_demo(session)
        await library.keep(*under_way(session))
    return library


def under_way(session: Session) -> tuple[Record, ...]:
    """Give what happened on a first day."""
    known, stamp = session.known, session.stamp
    (job,), zone = known.jobs, known.zones[0]
    old = known.of(PotStarted)[0]
    can = {can.paint: can for can in known.cans}
    pot = replace(old, id=stamp()[0], at_s=stamp()[1], mix=zone.mix, number=3, like=old.id)
    first, second = pot.portions[:2]
    cans = [can[portion.paint].id for portion in (first, second)]
    wrong = Poured(*stamp(), pot.id, second.paint, cans[1], 25.0, 90.0)
    over = Poured(*stamp(), pot.id, second.paint, cans[1], second.net_g + 4.0, 87.2)
    base = CoatFinished(*stamp(), job.id, known.walls[0].id, job.steps[0].id, BEGAN_S, BEGAN_S - 9)
    glaze = CoatFinished(*stamp(), job.id, zone.id, job.steps[6].id, BEGAN_S + 60.0)
    return (
        pot,
        Poured(*stamp(), pot.id, first.paint, cans[0], first.net_g, None),
        wrong,
        Undone(*stamp(), wrong.id),
        ScaleRestarted(*stamp(), pot.id, 79.6, 21.5),
        over,
        MadeMore(*stamp(), pot.id, 1.07),
        KeptOver(*stamp(), pot.id, second.paint),
        StrayPoured(*stamp(), pot.id, known.paints[0].id, known.cans[0].id, 2.0),
        Spilt(*stamp(), pot.id, 60.0),
        AimChanged(*stamp(), pot.id, pot.portions, pot.cans, (), "spilt"),
        CupFilled(*stamp(), pot.id, "a", "north wall", 20.0),
        WeighedBack(*stamp(), pot.id, "", 30.0),
        StoodOpen(*stamp(), pot.id, "", 5400.0, 0.085, 18.0, 0.6, 0.0),
        ThrownAway(*stamp(), pot.id, 10.0),
        LeftoverKept(*stamp(), pot.id, 1, 30.0, "2031-11-08", 12.0),
        ScaleChecked(*stamp(), 200.0, 199.8, 0.1),
        CanStirred(*stamp(), known.cans[0].id, "2031-05-08"),
        replace(pot, id=stamp()[0], number=4),
        TippedOut(*stamp(), pot.id),
        base,
        StillTacky(*stamp(), base.id, 600.0),
        glaze,
        CautionRead(*stamp(), job.id, "wipe-down", "2031-05-08"),
        Draft(*stamp("walls/new"), (("width", "6."), ("openings.0.0", "door"))),
    )


async def _files() -> tuple[bytes, bytes]:
    library = await moth_cellar()
    (job,) = (record.id for record in library.records() if isinstance(record, Job))
    return library.export(), library.export(job)


BACKUP, ONE_JOB = asyncio.run(_files())  # of everything, of the demo job
