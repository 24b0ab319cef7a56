"""Whatever the verbs keep can be read back: nobody's own backup is refused."""

import asyncio

from mobile.session.coats import coat
from mobile.session.coats.standing import coats_now
from mobile.session.job import jobs, ready_made
from mobile.session.job.demo import open_demo
from mobile.session.mix import begin, recipes, weigh_out
from mobile.session.mix.pots import under_way
from mobile.session.session import Session
from mobile.session.walls.walls import remove_wall
from mobile.store.incoming import read_file
from mobile.store.pot import Pot
from tests.session.test_files import at_a_library


def reads_back(session: Session) -> None:
    """Check everything, and each job alone."""
    for job_id in (None, *(one.id for one in session.known.jobs)):
        read_file(session.shelf.export(job_id))


def pot_of(session: Session) -> Pot:
    pot = under_way(session.known)
    assert pot is not None
    return pot


def test_a_demo_that_was_taken_back_and_a_schedule_to_start_from_read_back() -> None:
    async def run() -> None:
        session = await at_a_library()
        await open_demo(session)
        await session.undo()
        reads_back(session)
        await open_demo(session)
        await open_demo(session)
        reads_back(session)
        await jobs.new_job(session, "Garden wall")
        for ready in ready_made.ready_made():
            await jobs.new_job(session, ready.name)
            await ready_made.take(session, ready)
        reads_back(session)

    asyncio.run(run())


def test_a_pot_reads_back_wherever_it_stands() -> None:
    async def run() -> None:
        session = await at_a_library()
        await open_demo(session)
        await begin.start_pot(session, session.known.job_mixes[2], 232.0, 21.5)
        await weigh_out.on_the_mark(session, pot_of(session))
        reads_back(session)
        target = pot_of(session).target
        assert target is not None
        await weigh_out.scale_reads(session, pot_of(session), target.reads_g + 9.3)
        reads_back(session)
        await weigh_out.make_more(session, pot_of(session), pot_of(session).answers(5000.0).make)
        reads_back(session)
        await weigh_out.tip_out(session, pot_of(session))
        reads_back(session)
        await session.undo()
        await weigh_out.scale_restarted(session, pot_of(session), 300.0)
        reads_back(session)
        await weigh_out.stirred(session, pot_of(session))
        reads_back(session)

    asyncio.run(run())


def test_a_job_reads_back_whose_walls_and_mixes_were_taken_off_after_the_work() -> None:
    async def run() -> None:
        session = await at_a_library()
        await open_demo(session)
        for _ in range(3):
            await coat.coat_finished(session, coats_now(session.known)[0])
            await coat.still_tacky(session, coats_now(session.known)[0])
        for one in session.known.job_mixes:
            await recipes.remove_mix(session, one)
        for wall in session.known.job_walls:
            await remove_wall(session, wall)
        reads_back(session)
        (only,) = session.known.jobs
        await jobs.put_away(session, only)
        reads_back(session)

    asyncio.run(run())
