"""What goes wrong at the scale besides too much: the wrong can, a cup that was knocked over."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from mobile.screens.mix.place import MixPlace
from mobile.session.cans.can import can_now
from mobile.session.mix.begin import start_pot
from mobile.session.mix.mishaps import (
    hide_stray,
    left_of,
    make_smaller,
    pour_again,
    saved,
    smaller,
    wrong_can,
)
from mobile.session.mix.pots import pots
from mobile.session.mix.weigh_out import (
    keep_over,
    on_the_mark,
    scale_reads,
    scale_restarted,
    stirred,
    tip_out,
    undo_last,
)
from mobile.session.session import Session
from mobile.store.entries import StrayPoured
from mobile.words import mishaps as words
from mobile.words import mix as mix_words
from tests.screens.mix_place import keys, now
from tests.screens.seen import OnPlace, find, tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


async def at_orange(way: str = "total") -> Session:
    """Give the demo job with 19.3 g of yellow in the cup, and orange to come."""
    session = await job.at_moth_cellar()
    await session.keep(replace(session.known.settings, way=way))
    await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
    await on_the_mark(session, now(session))
    return session


def paint(session: Session, name: str) -> str:
    """Find a paint by its name."""
    return next(one.id for one in session.known.paints if one.name == name)


def test_a_stranger_in_the_pot_weighs_and_comes_off_its_can() -> None:
    async def story() -> None:
        session = await at_orange()
        white = paint(session, "standard white")
        can = next(can for can in session.known.cans if can.paint == white)
        before = can_now(session.known, can).balance.should_be_g
        await wrong_can(session, now(session), white, 23.3)
        pot = now(session)
        assert pot.stray_g == pytest.approx(4.0)
        assert pot.strays_show
        after = can_now(session.known, can).balance.should_be_g
        assert before is not None
        assert after == pytest.approx(before - 4.0)
        assert pot.target is not None
        assert pot.target.reads_g == pytest.approx(19.3 + 4.0 + 58.0)
        assert saved(session.known, pot).hidden_g == pytest.approx(400.0)

    asyncio.run(story())


def test_a_stranger_in_the_pot_is_hidden_kept_or_tipped_out() -> None:
    async def story() -> None:
        session = await at_orange()
        white = paint(session, "standard white")
        await wrong_can(session, now(session), white, 23.3)
        pot = now(session)
        seen = said(OnPlace(session, MixPlace, "/mix/weigh"))
        assert words.over("4.0", "standard white") in seen
        assert words.hide("400.0") in seen
        await hide_stray(session, pot)
        bigger = now(session)
        assert not bigger.strays_show
        assert bigger.batch_g + bigger.stray_g == pytest.approx(400.0)
        assert bigger.target is not None
        assert bigger.target.paint == paint(session, "fluorescent yellow")
        await undo_last(session, bigger)
        await keep_over(session, now(session), white)
        assert not now(session).strays_show
        await undo_last(session, now(session))
        await tip_out(session, now(session))
        assert now(session).in_cup_g == 0
        assert len(session.known.of(StrayPoured)) == 1

    asyncio.run(story())


def test_the_wrong_can_of_this_recipe_counts_as_poured() -> None:
    async def story() -> None:
        session = await at_orange()
        medium = paint(session, "clear glaze medium")
        await wrong_can(session, now(session), medium, 39.3)
        assert now(session).paint_g(medium) == pytest.approx(20.0)
        assert not now(session).strays
        with pytest.raises(Refused):
            await wrong_can(session, now(session), medium, 39.3)  # nothing went in

    asyncio.run(story())


def test_a_cup_that_was_knocked_over_is_filled_again_or_makes_less() -> None:
    async def story() -> None:
        session = await at_orange()
        await on_the_mark(session, now(session))
        found = left_of(now(session), 38.6)
        assert found.lost_g == pytest.approx(77.3 - 38.6)
        assert sum(part.net_g for part in smaller(now(session), found)) == pytest.approx(
            232.0 * 38.6 / 77.3, abs=0.2
        )
        await pour_again(session, now(session), 38.6)
        pot = now(session)
        assert pot.in_cup_g == pytest.approx(38.6)
        assert pot.target is not None
        assert pot.target.paint == paint(session, "fluorescent yellow")
        assert pot.target.reads_g == pytest.approx(38.6 + 19.3 * (77.3 - 38.6) / 77.3, abs=0.06)
        await undo_last(session, pot)
        assert now(session).in_cup_g == pytest.approx(77.3)
        await make_smaller(session, now(session), 38.6)
        pot = now(session)
        assert pot.batch_g == pytest.approx(115.8, abs=0.3)
        assert pot.target is not None
        assert pot.target.paint == paint(session, "clear glaze medium")
        assert pot.target.reads_g == pytest.approx(115.8, abs=0.3)
        with pytest.raises(Refused):
            left_of(pot, 300.0)

    asyncio.run(story())


def test_the_two_screens_lead_there_from_scale_went_off() -> None:
    async def story() -> None:
        session = await at_orange()
        screen = OnPlace(session, MixPlace, "/mix/weigh/wrong")
        await tap(screen, "paint standard white")
        await keys(screen, "23.3")
        assert words.so_much(4.0, "standard white") in said(screen)
        await tap(screen, "another")
        assert words.WHICH in said(screen)
        screen = OnPlace(session, MixPlace, "/mix/weigh/spilt")
        assert find(screen, "use").on_click is None
        await keys(screen, "99")
        assert words.TOO_MANY in said(screen)
        await tap(screen, "key delete")
        await tap(screen, "key delete")
        await keys(screen, "9.3")
        assert words.gone_of((("fluorescent yellow", 10.0),), 10.0) in said(screen)
        await tap(screen, "smaller")
        assert now(session).in_cup_g == pytest.approx(9.3)

    asyncio.run(story())


def test_a_scale_that_goes_off_over_a_stranger_takes_it_for_no_part() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, 21.4)
        await on_the_mark(session, now(session))
        await wrong_can(session, now(session), paint(session, "standard white"), 21.3)
        restart = await scale_restarted(session, now(session), 21.4 + 21.3)  # cup, 19.3 and 2.0
        assert restart.missed_g == pytest.approx(0.0)
        pot = now(session)
        assert pot.in_cup_g == pytest.approx(21.3)
        assert pot.target is not None
        assert pot.target.reads_g == pytest.approx(21.4 + 21.3 + 58.0)

    asyncio.run(story())


def test_a_spill_and_its_smaller_pot_are_one_act() -> None:
    async def story() -> None:
        session = await at_orange()
        await make_smaller(session, now(session), 9.3)
        await undo_last(session, now(session))
        assert now(session).in_cup_g == pytest.approx(19.3)
        assert now(session).batch_g == pytest.approx(232.0)

    asyncio.run(story())


def test_the_wrong_can_on_the_scale_was_tared_for_itself() -> None:
    async def story() -> None:
        session = await at_orange("can")
        await scale_reads(session, now(session), 20.0)  # of 58.0
        await wrong_can(session, now(session), paint(session, "standard white"), 3.0)
        assert now(session).stray_g == pytest.approx(3.0)

    asyncio.run(story())


def test_a_stranger_that_stays_is_listed_drawn_and_told() -> None:
    async def story() -> None:
        session = await at_orange()
        white = paint(session, "standard white")
        await wrong_can(session, now(session), white, 23.3)
        await keep_over(session, now(session), white)
        while now(session).target:
            await on_the_mark(session, now(session))
        await stirred(session, now(session))
        pot = pots(session.known)[-1]
        seen = said(OnPlace(session, MixPlace, f"/mix/pots/{pot.id}"))
        assert {"236.0 g", "4.0 g", "1.7 %", mix_words.NOT_PLANNED} <= set(seen)
        assert mix_words.with_stray("4.0", "standard white") in seen

    asyncio.run(story())
