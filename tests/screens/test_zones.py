"""A wall with its zones, without a browser."""

import asyncio

import pytest

from mobile.screens.walls.place import WallsPlace
from mobile.session.mix import begin, weigh_out
from mobile.session.mix.pots import under_way
from mobile.words import walls as words
from tests.screens.seen import OnPlace, find, has, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_a_wall_shows_its_zones_and_a_zone_is_marked_and_taken_back() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        wall = job.wall(session.known, "Wall 2")
        screen = OnPlace(session, WallsPlace, f"/walls/{wall.id}")
        assert words.NO_ZONES in said(screen)
        await tap(screen, "mark")
        await write(screen, "area", "0.6")
        await write(screen, "coats", "2")
        await tap(screen, f"mix {job.mix(session.known, 'hot orange').id}")
        await tap(screen, "keep")
        assert {"hot orange", "0.60 m²", "opaque, 2 coats"} <= set(said(screen))
        await session.undo()
        await asyncio.sleep(0.05)
        assert words.NO_ZONES in said(screen)

    asyncio.run(story())


def test_a_zone_larger_than_its_wall_is_refused_at_its_field() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        wall = job.wall(session.known, "Wall 2")
        screen = OnPlace(session, WallsPlace, f"/walls/{wall.id}/zones/new")
        for wrong in ("0", "11", "big"):
            await write(screen, "area", wrong)
            assert find(screen, "area").error
            await tap(screen, "keep")
            assert not any(zone.wall == wall.id for zone in session.known.zones)
        await write(screen, "area", "1")
        await write(screen, "coats", "1.5")
        await tap(screen, "keep")
        assert not any(zone.wall == wall.id for zone in session.known.zones)

    asyncio.run(story())


def test_a_zone_is_changed_and_goes() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        zone = job.zone(session.known, "leaf")
        screen = OnPlace(session, WallsPlace, f"/walls/{zone.wall}/zones/{zone.id}")
        assert find(screen, "area").value == "0.96"
        await write(screen, "area", "1.5")
        await tap(screen, "keep")
        assert job.zone(session.known, "leaf").area_m2 == pytest.approx(1.5)
        assert "1.50 m²" in said(screen)
        await tap(screen, "leaf")
        await tap(screen, "remove")
        assert not has(screen, "leaf")
        await session.undo()
        assert job.zone(session.known, "leaf").area_m2 == pytest.approx(1.5)

    asyncio.run(story())


def test_a_wall_shows_the_pots_that_were_mixed_for_it() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await begin.start_pot(session, job.mix(session.known, "leaf"), 107.0, None)
        while (pot := under_way(session.known)) and pot.target:
            await weigh_out.on_the_mark(session, pot)
        assert pot is not None
        await weigh_out.stirred(session, pot)
        first, second = (job.wall(session.known, name).id for name in ("Wall 1", "Wall 2"))
        assert "Pot 3" in said(OnPlace(session, WallsPlace, f"/walls/{first}"))
        assert "Pot 3" not in said(OnPlace(session, WallsPlace, f"/walls/{second}"))

    asyncio.run(story())
