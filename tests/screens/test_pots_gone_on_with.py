"""A pot that is gone on with: what was typed of it before it changed, a pour of two cans undone."""

import asyncio

import pytest

from mobile.screens.mix.place import MixPlace
from mobile.session.mix.begin import start_planned
from mobile.session.mix.cups import (
    cups_of,
    even,
    fill_cups,
)
from mobile.session.mix.mishaps import wrong_can
from mobile.session.mix.pot_again import add_to_pot
from mobile.session.mix.weigh_out import on_the_mark
from mobile.store.entries import CanWeighed, Poured, Undone, WeighedBack
from mobile.store.records import Can
from tests.screens.done_pot import again, ember_done, poured
from tests.screens.mix_place import now
from tests.screens.seen import OnPlace, has, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job
from tests.session.ember import STAMP
from tests.session.ember import ember as at_ember


def test_what_was_typed_before_a_pot_was_split_hides_no_cup() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        address = f"/mix/pots/{pot.id}/left"
        await write(OnPlace(session, MixPlace, address), "off", "2 h")
        await session.drafts.flush()
        await fill_cups(session, pot, even(pot, 2))
        first, second = cups_of(session.known, pot)
        screen = OnPlace(session, MixPlace, address)
        await write(screen, first.id, "30")
        await write(screen, second.id, "20")
        await tap(screen, "keep")
        assert [cup.left_g for cup in cups_of(session.known, pot)] == [30.0, 20.0]

    asyncio.run(story())


def test_a_cup_that_is_no_more_is_not_weighed_back() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await fill_cups(session, pot, (("north", 100.0),))
        [cup] = cups_of(session.known, pot)
        address = f"/mix/pots/{pot.id}/left"
        await write(OnPlace(session, MixPlace, address), cup.id, "30")
        await session.drafts.flush()
        await session.keep(Undone(*session.stamp(), cup.id))
        screen = OnPlace(session, MixPlace, address)
        assert not has(screen, cup.id)
        await write(screen, "", "200")
        await tap(screen, "keep")
        [back] = session.known.of(WeighedBack)
        assert (back.cup, back.net_g) == ("", 200.0)

    asyncio.run(story())


def test_a_correction_chosen_before_another_paint_came_in_can_be_gone_on_with() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        address = f"/mix/pots/{pot.id}/correct"
        screen = OnPlace(session, MixPlace, address)
        await tap(screen, "steps 0 1")
        await session.drafts.flush()
        await add_to_pot(session, pot, 24.0)
        white = job.mix(session.known, "base").parts[0].paint
        await wrong_can(session, now(session), white, 2.0)
        await poured(session)
        paints = [one.paint for one in again(session, pot).holds]
        assert len(paints) == 4
        screen = OnPlace(session, MixPlace, address)
        await tap(screen, "steps 3 1")
        await tap(screen, "mend")
        portions = {one.paint: one.net_g for one in now(session).plan.portions}
        held = {one.paint: one.net_g for one in again(session, pot).holds}
        grown = {paint for paint, net_g in portions.items() if net_g > held[paint] + 0.05}
        assert {paints[0], paints[3]} <= grown

    asyncio.run(story())


def test_undo_says_all_of_a_pour_that_came_from_two_cans() -> None:
    async def story() -> None:
        session = at_ember(
            Can("can9", *STAMP, 9, "FO", 0.25, 56.6, "unopened"),
            CanWeighed("w9", *STAMP, "can9", 76.6, 56.6, 20.0),
            CanWeighed("w7b", *STAMP, "can7", 106.6, 56.6, 50.0),
        )
        await start_planned(session)
        await on_the_mark(session, now(session))
        await on_the_mark(session, now(session))
        assert [pour.net_g for pour in session.known.of(Poured)][1:] == pytest.approx([50.0, 8.0])
        assert "Undo 58.0 g" in said(OnPlace(session, MixPlace, "/mix/weigh"))

    asyncio.run(story())
