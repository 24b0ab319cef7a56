"""What a painter who had never seen the app ran into."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from core.waits.pair import PairWait, Wait
from mobile.screens.job.place import JobPlace
from mobile.session.coats.standing import coats_now
from mobile.session.job.hand_over import ahead, hindered
from mobile.session.job.label_waits import job_now
from mobile.session.job.shopping import assumed, on_shelf_g, on_steps, unmixed
from mobile.session.mix.begin import start_planned
from mobile.session.mix.pots import all_pots, under_way
from mobile.session.mix.weigh_out import give_up, on_the_mark
from mobile.session.walls.walls import keep_wall
from mobile.store.entries import TippedOut
from mobile.store.records import LabelWait
from tests.screens.seen import OnPlace
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def usual(pair: PairWait) -> PairWait:
    return replace(pair, wait=Wait(600.0, usual=True))


def test_a_label_is_heard_where_a_usual_wait_stood_in() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        known = session.known
        assert known.job is not None
        await session.keep(replace(known.job, waits=tuple(map(usual, known.job.waits))))
        paint = next(one for one in known.paints if one.name == "fluorescent violet")
        label = LabelWait("", Wait(2700.0, 14400.0))
        await session.keep(replace(paint, waits=(label,)))
        now = job_now(session.known)
        assert now is not None
        steps = {step.id: step.use for step in now.steps}
        from_base = [pair.wait for pair in now.waits if steps[pair.after] == "base"]
        assert from_base
        assert all(wait.minimum_s >= 2700.0 and not wait.usual for wait in from_base)
        rest = [pair.wait for pair in now.waits if steps[pair.after] == "wash"]
        assert all(wait.usual for wait in rest)
        assert coats_now(session.known)

    asyncio.run(story())


def test_a_wait_that_someone_typed_is_not_talked_over() -> None:
    known = job.moth_cellar().known
    assert known.job is not None
    assert job_now(known) == known.job


def test_steps_that_have_no_mix_are_named_not_passed_over() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        assert unmixed(session.known) == ()
        await session.keep(forget=(job.mix(session.known, "base").id,))
        assert unmixed(session.known) == ("base 1", "base 2", "base 3")

    asyncio.run(story())


def test_what_rests_on_a_usual_rate_is_marked_where_it_is_listed() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        orange = next(p for p in session.known.paints if p.name == "fluorescent orange")
        assert not any(one.assumed for one in on_steps(session.known))
        assert not assumed(session.known, orange)
        await session.keep(replace(job.mix(session.known, "ember wing"), g_m2=None))
        marked = {one.mix for one in on_steps(session.known) if one.assumed}
        assert marked == {"ember wing"}
        assert assumed(session.known, orange)
        should_be_g = 212.94413  # worked by hand for the reference job
        assert on_shelf_g(session.known, orange) == pytest.approx(should_be_g)

    asyncio.run(story())


def test_a_weigh_out_that_was_left_before_a_pour_takes_no_number() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        before = len(all_pots(session.known))
        await start_planned(session)
        pot = under_way(session.known)
        assert pot is not None
        await give_up(session, pot)
        assert len(all_pots(session.known)) == before
        assert session.known.of(TippedOut) == ()
        again = await start_planned(session)
        assert again is not None
        assert again.number == pot.started.number
        begun = under_way(session.known)
        assert begun is not None
        await on_the_mark(session, begun)
        poured = under_way(session.known)
        assert poured is not None
        await give_up(session, poured)
        assert len(session.known.of(TippedOut)) == 1

    asyncio.run(story())


def test_a_second_wall_of_the_same_name_is_refused() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        wall = job.wall(session.known, "Wall 1")
        with pytest.raises(Refused) as refusal:
            await keep_wall(session, "new", " wall 1", wall.shape)
        assert refusal.value.name == "wall_taken"
        await keep_wall(session, wall.id, "Wall 1", wall.shape)

    asyncio.run(story())


def test_a_label_that_leaves_no_time_is_named_instead_of_a_hand_over() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        known = session.known
        assert known.job is not None
        by_use = {step.id: step.use for step in known.job.steps}
        waits = tuple(
            usual(pair) if by_use[pair.after] == "base" else pair for pair in known.job.waits
        )
        await session.keep(replace(known.job, waits=waits))
        assert hindered(session.known, 2e9) == ""
        paint = next(one for one in known.paints if one.name == "fluorescent violet")
        label = LabelWait("", Wait(600.0, 601.0, "end", "start"))  # gone before a coat is on
        await session.keep(replace(paint, waits=(label,)))
        assert ahead(session.known, 2e9) is None
        assert "base" in hindered(session.known, 2e9)
        screen = OnPlace(session, JobPlace, "/job")
        assert any("leaves no room" in text for text in said(screen))

    asyncio.run(story())
