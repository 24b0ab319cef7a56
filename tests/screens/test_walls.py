"""Walls without a browser: what is typed gives square metres, or says what would."""

import asyncio

import pytest

from core.units import System
from mobile.screens.walls.place import WallsPlace
from mobile.session.session import Session
from mobile.session.view import View
from mobile.session.walls.walls import job_area_m2
from mobile.words import trouble
from mobile.words import walls as words
from tests.screens.seen import OnPlace, find, has, tap, write
from tests.screens.seen import words as said
from tests.session.shelf import Shelf


def new(view: View | None = None) -> tuple[Session, OnPlace]:
    session = Session(Shelf(), "phone")
    return session, OnPlace(session, WallsPlace, "/walls/new", view)


async def door(screen: OnPlace, width: str, height: str) -> None:
    await tap(screen, "add opening")
    await write(screen, "name 0 0", "door")
    await write(screen, "opening_width_m 0 1", width)
    await write(screen, "opening_height_m 0 2", height)


def test_typing_gives_the_square_metres_less_the_door() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "width", "5,62")
        await write(screen, "left", "2.8 m")
        assert "15.74 m²" in said(screen)  # the job worked by hand, area.W1.gross
        await door(screen, "80 cm", "1.82")
        assert "14.28 m²" in said(screen)  # area.W1.net
        await tap(screen, "keep")
        assert screen.went[-1] == "/walls"
        assert [wall.name for wall in session.known.job_walls] == ["Wall 1"]
        assert words.after(("door",)) in said(screen)

    asyncio.run(story())


def test_an_opening_typed_quicker_than_it_is_painted_stays_whole() -> None:
    async def story() -> None:
        _, screen = new()
        await tap(screen, "add opening")
        texts = {"name 0 0": "door", "opening_width_m 0 1": "0.8", "opening_height_m 0 2": "1.82"}
        await asyncio.gather(*(write(screen, key, text) for key, text in texts.items()))
        assert {key: find(screen, key).value for key in texts} == texts

    asyncio.run(story())


def test_two_heights_lean() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "width", "3.2")
        await tap(screen, "choose two")
        await write(screen, "left", "2.35")
        await write(screen, "right", "4.05")
        assert "10.24 m²" in said(screen)  # area.W2.net
        await tap(screen, "keep")
        assert f"{job_area_m2(session.known):.2f}" == "10.24"

    asyncio.run(story())


def test_nonsense_is_refused_beside_the_field_and_stays_typed() -> None:
    async def story() -> None:
        _, screen = new()
        await write(screen, "width", "wide")
        assert find(screen, "width").error == "Width: type a number, like 3.5 or 12 ft 6 in"
        assert find(screen, "width").value == "wide"
        assert not find(screen, "keep").on_click
        await write(screen, "width", "2")
        await write(screen, "left", "2")
        await door(screen, "3", "1")
        assert "Opening width: from" in find(screen, "opening_width_m 0 1").error
        assert not find(screen, "keep").on_click

    asyncio.run(story())


@pytest.mark.parametrize(
    ("key", "typed", "says"),
    [
        ("width", "0", "Width: from 0.01 m to 500.00 m"),
        ("width", "-3", "Width: from 0.01 m to 500.00 m"),
        ("left", "80", "Height: from 0.01 m to 50.00 m"),
        ("opening_width_m 0 1", "3", "Opening width: from 0.01 m to 2.00 m"),
        ("opening_count 0 3", "0", "How many: from 1 to 1000"),
    ],
)
def test_a_measure_out_of_bounds_is_said_at_its_field_and_nowhere_else(
    key: str, typed: str, says: str
) -> None:
    async def story() -> None:
        _, screen = new()
        await write(screen, "width", "2")
        await write(screen, "left", "2")
        await door(screen, "0.8", "1.82")
        await write(screen, key, typed)
        assert find(screen, key).error == says
        assert says not in said(screen)
        assert find(screen, "keep").on_click is None

    asyncio.run(story())


def test_openings_that_each_fit_and_together_do_not_are_said_for_the_wall() -> None:
    async def story() -> None:
        _, screen = new()
        await write(screen, "width", "2")
        await write(screen, "left", "2")
        await door(screen, "1.5", "1.5")
        await write(screen, "opening_count 0 3", "2")
        assert trouble.SENTENCES["openings_m2"] in said(screen)
        assert words.TODO_RIGHT in said(screen)

    asyncio.run(story())


def test_feet_and_inches_are_taken_and_shown() -> None:
    async def story() -> None:
        _, screen = new(View(system=System.US))
        await write(screen, "width", "12' 6\"")
        await write(screen, "left", "8 ft")
        assert "100.00 ft²" in said(screen)

    asyncio.run(story())


def test_a_wall_is_changed_and_taken_off_and_both_can_be_taken_back() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "width", "4")
        await write(screen, "left", "2.5")
        await tap(screen, "keep")
        await tap(screen, "Wall 1")
        await tap(screen, "measure")
        assert find(screen, "width").value == "4"
        await write(screen, "width", "5")
        await tap(screen, "keep")
        assert "12.50 m²" in said(screen)
        await session.undo()
        await asyncio.sleep(0.05)
        assert "10.00 m²" in said(screen)
        await tap(screen, "measure")
        await tap(screen, "remove")
        assert session.known.job_walls == ()
        await session.undo()
        assert len(session.known.job_walls) == 1

    asyncio.run(story())


def test_how_says_each_step_and_its_source() -> None:
    async def story() -> None:
        _, screen = new()
        await write(screen, "width", "5.62")
        await write(screen, "left", "2.8")
        await door(screen, "0.8", "1.82")
        await tap(screen, "how")
        assert screen.went[-1] == "/walls/new/how"
        sheet = screen.told()
        assert sheet.open

    asyncio.run(story())


def test_what_was_typed_is_offered_again() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "width", "12.")
        await session.drafts.flush()
        again = OnPlace(Session(session.shelf, "phone"), WallsPlace, "/walls/new")
        assert find(again, "width").value == "12."
        assert not has(again, "answer")

    asyncio.run(story())
