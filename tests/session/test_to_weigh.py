"""What is to be weighed: loads of what walls and zones need, less the pots that are made."""

import asyncio
from dataclasses import replace

import pytest

from mobile.session.mix import begin, recipes, weigh_out
from mobile.session.mix.pots import pots, under_way
from mobile.session.mix.to_weigh import next_load, to_weigh_next
from mobile.session.session import Session
from mobile.session.walls.zones import keep_zone
from tests.session import moth_cellar as job


async def weigh(session: Session, name: str, batch_g: float) -> None:
    """Weigh a mix out, each part on the mark."""
    await begin.start_pot(session, job.mix(session.known, name), batch_g, None)
    while (pot := under_way(session.known)) and pot.target:
        await weigh_out.on_the_mark(session, pot)
    assert pot is not None
    await weigh_out.stirred(session, pot)


def next_up(session: Session) -> tuple[str, float, int, int]:
    """Give the load that is weighed next."""
    load = to_weigh_next(session.known)
    assert load is not None
    return load.mix.name, load.load_g, load.number, load.of


def test_a_base_of_two_loads_is_weighed_load_by_load() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        assert next_up(session) == ("base", 4484.0, 1, 2)  # reference job: base.loads, base.load_g
        await weigh(session, "base", 4484.0)
        assert next_up(session) == ("base", 4484.0, 2, 2)
        await weigh(session, "base", 4484.0)
        assert next_up(session) == ("ember wing", 232.0, 1, 1)

    asyncio.run(story())


def test_a_pot_of_another_size_leaves_the_rest_to_weigh() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await weigh(session, "ember wing", 100.0)
        load = next_load(session.known, job.mix(session.known, "ember wing"))
        assert load is not None
        assert (load.load_g, load.number, load.of) == (132.0, 2, 2)

    asyncio.run(story())


def test_paint_that_comes_straight_from_its_can_is_not_weighed_by_plan() -> None:
    known = job.moth_cellar().known
    assert next_load(known, job.mix(known, "promoter")) is None
    assert next_load(known, job.mix(known, "clear coat")) is None


def test_grams_typed_by_hand_win_once() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        leaf = job.mix(session.known, "leaf")
        await recipes.keep_mix(session, replace(leaf, planned_g=50.0))
        load = next_load(session.known, job.mix(session.known, "leaf"))
        assert load is not None
        assert load.load_g == pytest.approx(50.0)
        await weigh(session, "leaf", 50.0)
        assert next_load(session.known, job.mix(session.known, "leaf")) is None

    asyncio.run(story())


def test_a_larger_zone_asks_for_more() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        zone = job.zone(session.known, "hot orange")
        await keep_zone(session, replace(zone, area_m2=0.95))
        load = next_load(session.known, job.mix(session.known, "hot orange"))
        assert load is not None
        assert load.load_g == pytest.approx(261.0)  # 1.90 x 110 + 23 + 29

    asyncio.run(story())


def test_more_of_the_same_is_what_was_really_poured() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await begin.start_pot(session, job.mix(session.known, "halo"), 90.0, None)
        pot = under_way(session.known)
        assert pot is not None
        await weigh_out.scale_reads(session, pot, 30.0)  # 20 were planned
        pot = under_way(session.known)
        assert pot is not None
        await weigh_out.keep_over(session, pot, pot.plan.portions[0].paint)
        pot = under_way(session.known)
        assert pot is not None
        await weigh_out.on_the_mark(session, pot)
        pot = under_way(session.known)
        assert pot is not None
        await weigh_out.stirred(session, pot)
        like = begin.like_pot(session.known, pots(session.known)[-1])
        again = await begin.start_pot(session, like, 200.0, None, pot.id)
        assert again.like == pot.id
        yellow, medium = again.portions
        assert yellow.net_g / medium.net_g == pytest.approx(30 / 70, abs=0.002)
        assert yellow.net_g + medium.net_g == pytest.approx(200.0)

    asyncio.run(story())


def test_each_part_tared_is_read_by_itself() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(replace(session.known.settings, way="each"))
        await begin.start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
        shown = []
        while (pot := under_way(session.known)) and pot.target:
            shown.append(pot.target.reads_g)
            await weigh_out.on_the_mark(session, pot)
        assert shown == [19.3, 58.0, 154.7]  # reference job: weigh.*.each

    asyncio.run(story())
