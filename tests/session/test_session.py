"""The session: nothing changes before the commit, nothing is silent, all can be taken back."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.session.job import jobs
from mobile.session.job.demo import open_demo
from mobile.session.known import known_of
from mobile.session.session import Session
from mobile.session.walls.walls import job_area_m2, keep_wall, next_name, remove_wall
from mobile.words import trouble
from tests.session.shelf import Shelf

DOOR = Opening("door", 0.8, 1.82)
WALL = Shape(5.62, 2.8, 2.8, (DOOR,))


def session(*, full: bool = False) -> Session:
    shelf = Shelf()
    shelf.full = full
    return Session(shelf, "phone")


def test_a_wall_without_a_job_begins_one() -> None:
    one = session()
    asyncio.run(keep_wall(one, "", "", WALL))
    assert one.known.job is not None
    assert [wall.name for wall in one.known.job_walls] == ["Wall 1"]
    assert job_area_m2(one.known) == pytest.approx(14.28)  # the job worked by hand, area.W1.net


def test_names_of_walls_are_not_given_twice() -> None:
    one = session()
    asyncio.run(keep_wall(one, "", "Wall 2", WALL))
    assert next_name(one.known) == "Wall 3"


def test_a_full_phone_changes_nothing_and_says_so() -> None:
    one = session(full=True)
    done = asyncio.run(one.attempt(keep_wall(one, "", "", WALL)))
    assert not done
    assert one.known.job is None
    assert one.shown.told is not None
    assert one.shown.told.said == trouble.FULL


def test_a_refusal_is_said_in_words() -> None:
    one = session()
    wide = Shape(0.5, 2.8, 2.8, (DOOR,))
    assert not asyncio.run(one.attempt(keep_wall(one, "", "", wide)))
    assert one.shown.told is not None
    assert "Opening width" in one.shown.told.said


def test_a_removed_wall_comes_back_and_a_new_one_goes() -> None:
    one = session()

    async def run() -> None:
        wall = await keep_wall(one, "", "", WALL)
        await remove_wall(one, wall)
        assert not one.known.job_walls
        await one.undo()
        (back,) = tuple(one.known.job_walls)
        assert back.shape == WALL

    asyncio.run(run())


def test_what_is_known_is_what_the_book_says() -> None:
    one = session()

    async def run() -> None:
        await open_demo(one)
        await keep_wall(one, "", "", WALL)
        await jobs.set_settings(one, replace(jobs.settings_now(one), look="dim"))

    asyncio.run(run())
    again = known_of(one.shelf.records())
    for name in ("settings", "jobs", "walls", "paints", "cans", "mixes", "entries"):
        assert getattr(again, name) == getattr(one.known, name), name


def test_the_demo_job_comes_whole_and_goes_whole() -> None:
    one = session()

    async def run() -> None:
        await open_demo(one)
        assert job_area_m2(one.known) == pytest.approx(24.52)  # the job worked by hand, area.total
        assert len(one.known.job_mixes) == 10
        await one.undo()

    asyncio.run(run())
    assert one.known.job is None
    assert one.known.cans == ()


def test_a_second_demo_gives_its_cans_free_numbers() -> None:
    one = session()

    async def run() -> None:
        await open_demo(one)
        await open_demo(one)

    asyncio.run(run())
    numbers = [can.number for can in one.known.cans]
    assert len(numbers) == len(set(numbers))


def test_a_commit_is_one_commit() -> None:
    one = session()
    shelf = one.shelf
    assert isinstance(shelf, Shelf)
    asyncio.run(open_demo(one))
    assert shelf.commits == 1


def test_verbs_at_once_wait_for_each_other() -> None:
    one = session()

    async def run() -> None:
        await asyncio.gather(*(jobs.new_job(one, f"job {n}") for n in range(5)))

    asyncio.run(run())
    assert len(one.known.jobs) == 5


def test_a_job_needs_a_name() -> None:
    with pytest.raises(Refused):
        asyncio.run(jobs.new_job(session(), "  "))
