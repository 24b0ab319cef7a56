"""Paints off their labels, without a browser."""

import asyncio

import pytest

from core.cans.price import Size
from core.waits.pair import Wait
from mobile.screens.cans.place import CansPlace
from mobile.session.session import Session
from mobile.store.records import LabelWait, Paint
from mobile.words import trouble
from tests.screens.seen import OnPlace, has, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job
from tests.session.shelf import Shelf


def new() -> tuple[Session, OnPlace]:
    session = Session(Shelf(), "phone")
    return session, OnPlace(session, CansPlace, "/cans/paints/new")


def only(session: Session) -> Paint:
    [paint] = session.known.paints
    return paint


def test_all_that_a_label_says_is_kept() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "name", "Violet")
        await write(screen, "density", "1.12")
        await write(screen, "solids", "36")
        await tap(screen, "add size")
        await write(screen, "0", "0.5")
        await write(screen, "1", "23.50")
        await tap(screen, "keep")
        paint = only(session)
        assert paint.density_g_ml == pytest.approx(1.12)
        assert paint.solids_ratio == pytest.approx(0.36)
        assert paint.sizes == (Size(0.5, 2350.0),)
        assert "Violet" in said(screen)

    asyncio.run(story())


@pytest.mark.parametrize("way", ["label", "weighed"])
def test_a_density_comes_of_a_mass_and_its_litres(way: str) -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "name", "White")
        await tap(screen, f"density {way}")
        await write(screen, "mass", "345 g")
        await write(screen, "volume", "250 ml")
        assert "That is 1.380 g/mL." in said(screen)
        await tap(screen, "keep")
        assert only(session).density_g_ml == pytest.approx(1.38)

    asyncio.run(story())


def test_a_density_that_is_no_paints_is_said_and_not_kept() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "name", "Lead")
        await tap(screen, "density label")
        await write(screen, "mass", "5 kg")
        await write(screen, "volume", "250 ml")
        await tap(screen, "keep")
        assert session.known.paints == ()
        assert session.shown.told is not None
        assert session.shown.told.said.startswith("Density: from 0.50 g/mL")

    asyncio.run(story())


def test_a_wait_off_the_label_asks_for_its_limit() -> None:
    async def story() -> None:
        session, screen = new()
        await write(screen, "name", "Promoter")
        await tap(screen, "add wait")
        await tap(screen, "use 0 base")
        await tap(screen, "keep")  # half typed: neither kept nor dropped without a word
        assert session.known.paints == ()
        await write(screen, "1", "30")
        await tap(screen, "keep")
        assert session.shown.told is not None
        assert session.shown.told.said == trouble.SENTENCES["limit"]
        await tap(screen, "limit 0 most")
        await write(screen, "3", "4 h")
        await tap(screen, "from 0 start")
        await tap(screen, "keep")
        told = Wait(1800.0, 14400.0, "end", "start")
        assert only(session).waits == (LabelWait("base", told),)

    asyncio.run(story())


def test_a_paint_in_use_stays_and_two_of_one_name_are_refused() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        screen = OnPlace(session, CansPlace, "/cans/paints")
        await tap(screen, "fluorescent orange")
        assert not has(screen, "remove")
        await write(screen, "name", "Fluorescent  Pink")
        await tap(screen, "keep")
        assert session.shown.told is not None
        assert session.shown.told.said == "Fluorescent Pink is on the list already."

    asyncio.run(story())


def test_a_paint_without_a_name_is_asked_for_it() -> None:
    async def story() -> None:
        session, screen = new()
        await tap(screen, "keep")
        assert session.shown.told is not None
        assert session.shown.told.said == "Give it a name."
        assert not session.known.paints

    asyncio.run(story())


def test_starter_paints_come_once_and_go_with_undo() -> None:
    async def story() -> None:
        session = Session(Shelf(), "phone")
        screen = OnPlace(session, CansPlace, "/cans/paints")
        await tap(screen, "starter")
        count = len(session.known.paints)
        assert count > 8
        await tap(screen, "starter")
        assert len(session.known.paints) == count
        assert not any(paint.waits or paint.sizes for paint in session.known.paints)

    asyncio.run(story())
