"""Coats in zones and on whole walls: whose turn it is, and what waits for what."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from mobile import clock
from mobile.session.coats.coat import coat_finished
from mobile.session.coats.due import alarms, in_order
from mobile.session.coats.standing import CoatNow, coats_now, place_now
from mobile.session.session import Session
from mobile.session.walls.zones import keep_zone
from mobile.store.entries import CoatFinished
from tests.session import moth_cellar as job
from tests.session.two_walls import Watch, hour_s

DONE = "wash", "promoter", "base 1", "base 2", "base 3"


async def to_the_glazes() -> Session:
    """Give the demo job with its film hung two hours ago."""
    session = await job.at_moth_cellar()
    known = session.known
    assert known.job is not None
    steps = {step.name: step.id for step in known.job.steps}
    first = job.wall(known, "Wall 1").id
    ends = [(name, first, hour_s(8, day=15)) for name in DONE]
    coats = [*ends, ("film", first, hour_s(10))]
    await session.keep(
        *(
            CoatFinished(*session.stamp(), known.job.id, wall, steps[name], at_s)
            for name, wall, at_s in coats
        )
    )
    return session


def by_name(session: Session) -> dict[str, CoatNow]:
    """Give what stands on the screen, by name."""
    return {coat.name: coat for coat in coats_now(session.known)}


def test_zones_have_their_turn_once_the_film_hangs(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(12))

    async def story() -> None:
        session = await to_the_glazes()
        seen = by_name(session)
        glazes = {"ember wing", "rose wing", "leaf", "halo", "dusk violet"}
        assert glazes <= seen.keys()
        assert all(seen[name].state(hour_s(12)) == "ready" for name in glazes)
        assert seen["Wall 1"].state(hour_s(12)) == "waiting"
        assert set(seen["Wall 1"].holds) == {"glaze 1", "glaze 2", "opaque"}
        assert seen["Wall 2"].next is not None
        assert seen["Wall 2"].next.name == "wash"

    asyncio.run(story())


def test_several_zones_dry_at_once_each_on_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    watch = Watch(monkeypatch, hour_s(12))

    async def story() -> None:
        session = await to_the_glazes()
        for minute, name in ((0, "ember wing"), (10, "halo"), (20, "leaf")):
            watch.at_s = hour_s(12, minute)
            await coat_finished(session, by_name(session)[name])
        seen = by_name(session)
        assert seen["ember wing"].drying is not None
        assert seen["ember wing"].drying.ready_at_s == hour_s(12, 30)
        assert seen["halo"].drying is not None
        assert seen["halo"].drying.ready_at_s == hour_s(12, 40)
        assert "leaf" not in seen  # one coat was all
        first = in_order(coats_now(session.known), hour_s(12, 35))[0]
        assert first.state(hour_s(12, 35)) == "ready"

    asyncio.run(story())


def test_zones_that_one_film_keeps_waiting_ring_once(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(11))

    async def story() -> None:
        session = await to_the_glazes()
        rings = [said for _, at_s, said in alarms(session.known) if at_s == hour_s(12)]
        assert rings == ["Wall 1 is ready for glaze 1"]

    asyncio.run(story())


def test_a_wall_goes_on_when_all_its_zones_are_done(monkeypatch: pytest.MonkeyPatch) -> None:
    watch = Watch(monkeypatch, hour_s(12))

    async def story() -> None:
        session = await to_the_glazes()
        for hour in range(12, 40):
            watch.at_s = hour_s(12) + (hour - 12) * clock.DAY_S / 24
            zones = [c for c in coats_now(session.known) if c.name != "Wall 2"]
            for coat in zones:
                if coat.next and coat.next.name in {"glaze 1", "glaze 2", "opaque"}:
                    await coat_finished(session, coat)
        wall = by_name(session)["Wall 1"]
        assert wall.holds == ()
        assert wall.next is not None
        assert wall.next.name == "outline"
        assert wall.step is not None
        assert wall.step.name == "opaque"
        assert place_now(session.known, wall.id) == wall

    asyncio.run(story())


def test_a_zone_outside_its_walls_is_refused() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        zone = job.zone(session.known, "leaf")
        with pytest.raises(Refused):
            await keep_zone(session, replace(zone, area_m2=16.0))

    asyncio.run(story())
