"""Five thousand spoiled files: each is refused with a reason, or is a book that can be drawn."""

import asyncio
import random
from collections import Counter
from itertools import pairwise

from mobile.session.cans.can import cans_now
from mobile.session.cans.prices import prices_per_g
from mobile.session.coats.due import alarms, in_order
from mobile.session.coats.standing import coats_now
from mobile.session.job.hand_over import ahead
from mobile.session.job.label_waits import label_wait
from mobile.session.known import Known, known_of
from mobile.session.mix.cup import tops_ratio
from mobile.session.mix.pots import all_pots
from mobile.session.walls.amounts import amounts
from mobile.session.walls.walls import job_area_m2
from mobile.store.errors import Clash, Newer, Unreadable, WrongFile
from mobile.store.export import exported
from mobile.store.incoming import Incoming, read_file
from mobile.store.library import Library
from mobile.store.migrations import schema_of
from tests.store.moth_cellar import BACKUP, BEGAN_S, ONE_JOB, library_with
from tests.store.mutations import MUTATIONS, Mutation
from tests.store.test_export import CELLAR, PHONE, SHOP

SPOILED = 5000
DRAWN = 7  # one in so many that can be read is drawn and taken in


def drawn(known: Known) -> None:
    """Ask core all that the five places ask before they draw."""
    job_area_m2(known)
    amounts(known)
    cans_now(known)
    alarms(known)
    in_order(coats_now(known), BEGAN_S)
    ahead(known, BEGAN_S)
    steps = known.job.steps if known.job else ()
    for first, then in pairwise(steps):
        label_wait(known, first, then)
    for pot in all_pots(known):
        assert len(pot.missing) == len(pot.started.cans)
        tops_ratio(known, pot.missing)
        if pot.target is not None and pot.over is not None:
            pot.answers(known.settings.scale_capacity_g, prices_per_g(known, pot))


def spoiled(seed: int) -> tuple[Mutation, bytes]:
    """Give a file that went wrong: of one job or of everything, once or twice."""
    chance = random.Random(seed)
    mutation = MUTATIONS[seed % len(MUTATIONS)]
    data = mutation(chance.choice((BACKUP, ONE_JOB)), chance)
    return mutation, data


def read_or_refused(data: bytes) -> str:
    """Read a file, and write it again; give the reason where it is refused."""
    try:
        found = read_file(data)
    except (Unreadable, Newer) as refusal:
        return type(refusal).__name__ if str(refusal) else "no reason given"
    again = exported(found.records, found.job, schema_of())
    assert read_file(again) == found
    return "read"


async def drawn_and_taken_in(library: Library, found: Incoming) -> None:
    """Draw a file that was read, take it in, draw what comes of it, and take it back."""
    drawn(known_of(found.records))
    before = library.export()
    try:
        done = await library.take_in(found)
    except (Clash, WrongFile):
        assert library.export() == before
        return
    drawn(known_of(library.records()))
    await library.take_back(forget=tuple(record.id for record in done.added))


def test_five_thousand_spoiled_files_are_refused_with_a_reason_or_are_a_book() -> None:
    async def run() -> Counter[tuple[str, str]]:
        library = await library_with(*PHONE, *SHOP, *CELLAR)
        before, found = library.export(), Counter[tuple[str, str]]()
        records = library.records()
        for seed in range(SPOILED):
            mutation, data = spoiled(seed)
            try:
                outcome = read_or_refused(data)
                if outcome == "read" and seed // len(MUTATIONS) % DRAWN == 0:
                    await drawn_and_taken_in(library, read_file(data))
            except Exception as bug:
                raise AssertionError(f"seed {seed}, {mutation.__name__}: {bug!r}") from bug
            found[mutation.__name__, outcome] += 1
            assert library.records() == records
        assert library.export() == before
        return found

    found = asyncio.run(run())
    outcomes = {outcome for _, outcome in found}
    assert outcomes >= {"read", "Unreadable", "Foreign", "Newer", "Senseless", "Astray"}
    assert "no reason given" not in outcomes
    for never in ("cut", "deep", "coded", "another", "twice"):
        assert found[never, "read"] == 0, never
    assert sum(count for (_, outcome), count in found.items() if outcome == "read") > SPOILED // 20


def test_the_same_seed_gives_the_same_file() -> None:
    assert [spoiled(seed) for seed in range(40)] == [spoiled(seed) for seed in range(40)]
