"""What happened to a can, and a lid that was off, without a browser."""

import asyncio

import pytest

from mobile.screens.cans.place import CansPlace
from mobile.session.cans.can import can_now
from mobile.store.entries import LidOff
from mobile.words import cans as words
from tests.screens.seen import OnPlace, find, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_a_can_says_where_its_paint_went() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        can = job.can(session.known, 7)
        screen = OnPlace(session, CansPlace, f"/cans/{can.id}")
        await tap(screen, "pours")
        seen = set(said(screen))
        assert {"pot 1, sample panel, ember wing", "−58.1 g", "−13.4 g", "285.0 g"} <= seen
        assert words.LID_WAS_OFF in seen

    asyncio.run(story())


def test_a_lid_that_was_off_comes_off_the_ledger_and_back() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        can = job.can(session.known, 12)
        screen = OnPlace(session, CansPlace, f"/cans/{can.id}/lid")
        assert find(screen, "air").value == "18"  # as typed last
        assert find(screen, "across").value == "0.108"
        await write(screen, "off", "3 h")
        await write(screen, "humidity", "50 %")
        await tap(screen, "moves moving")
        await tap(screen, "keep")
        now = can_now(session.known, can)
        [lid] = [entry for entry in session.known.of(LidOff) if entry.can == can.id]
        assert (lid.open_s, lid.air_m_per_s) == (10800.0, 0.3)
        assert now.balance.should_be_g == pytest.approx(740.9 - now.dried_bound_g / 2)
        await session.undo()
        assert can_now(session.known, can).dried_bound_g == 0

    asyncio.run(story())


def test_a_can_of_one_coat_says_how_much_wall_it_goes_over() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        can = job.can(session.known, 1)
        screen = OnPlace(session, CansPlace, f"/cans/{can.id}")
        for digit in "640":
            await tap(screen, f"key {digit}")
        assert words.over("promoter", "5.24 m²") in said(screen)

    asyncio.run(story())
