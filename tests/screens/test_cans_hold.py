"""Cans hold what they hold: a pour from two of them, a pot beyond them, a jar that was poured."""

import asyncio
from dataclasses import replace

import pytest

from core.mixing.correct import Lack
from mobile.screens.mix.place import MixPlace
from mobile.session.cans.can import can_now, cans_now
from mobile.session.mix import weigh_out
from mobile.session.mix.begin import like_pot, start_pot, takes_g
from mobile.session.mix.cans_hold import holds_g, taken_from
from mobile.session.mix.jars import in_paints, with_jar
from mobile.session.mix.leftovers import Back, keep_leftover
from mobile.session.mix.mishaps import hide_stray, saved, wrong_can
from mobile.session.mix.pot_again import add_to_pot, correct_pot
from mobile.session.mix.pots import pots
from mobile.session.mix.to_weigh import next_load
from mobile.session.session import Declined
from mobile.store.entries import CanWeighed
from mobile.store.records import Can
from mobile.words import weigh_out as weigh_words
from tests.screens.done_pot import again, ember_done, poured
from tests.screens.mix_place import keys, now
from tests.screens.seen import OnPlace, find, has, tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job
from tests.session.ember import CAN_7, EMBER, STAMP, ember

CAN_9 = Can("can9", *STAMP, 9, "FO", 0.25, 56.6, "unopened")
SECOND = CanWeighed("w9", *STAMP, "can9", 156.6, 56.6, 100.0)


def test_a_part_of_two_cans_empties_one_and_goes_on_with_the_next() -> None:
    async def story() -> None:
        session = ember(CAN_9, SECOND)
        assert holds_g(session.known, "FO") == pytest.approx(301.1)
        await start_pot(session, replace(EMBER, planned_g=None), 840.0, None)  # 210 g of orange
        await weigh_out.on_the_mark(session, now(session))
        first = now(session).can("FO")
        assert taken_from(session.known, "FO", first, 210.0)[0][0] == first
        before = now(session)
        await weigh_out.on_the_mark(session, now(session))
        left = [can_now(session.known, can).balance.should_be_g for can in (CAN_7, CAN_9)]
        assert sorted(g or 0.0 for g in left) == pytest.approx([0.0, 91.1])  # 301.1 less 210
        assert now(session).paint_g("FO") == pytest.approx(210.0)
        await weigh_out.undo_last(session, now(session))
        assert now(session).poured == before.poured  # one act, one undo

    asyncio.run(story())


def test_a_stray_is_not_hidden_beyond_the_cans_and_comes_off_its_own() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
        await weigh_out.on_the_mark(session, now(session))
        white = next(one for one in session.known.paints if one.name == "standard white")
        can = next(can for can in session.known.cans if can.paint == white.id)
        await wrong_can(session, now(session), white.id, 39.3)  # 20 g: hidden in 2000 g
        assert not saved(session.known, now(session)).fits
        with pytest.raises(Declined):
            await hide_stray(session, now(session))
        screen = OnPlace(session, MixPlace, "/mix/weigh")
        assert find(screen, "answer make").on_click is None
        assert "short" in " ".join(said(screen))
        history = OnPlace(session, MixPlace, "/mix/weigh/how")
        assert said(history)
        assert can_now(session.known, can).balance.poured_since_g == pytest.approx(20.0)

    asyncio.run(story())


def test_a_pot_is_not_added_to_beyond_the_cans() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/add")
        await keys(screen, "2000")
        assert "short" in " ".join(said(screen))
        assert find(screen, "use").on_click is None
        with pytest.raises(Declined, match="short"):
            await add_to_pot(session, pot, 2000.0)

    asyncio.run(story())


def test_a_pot_put_back_without_a_pour_comes_off_the_scale_as_it_was() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await add_to_pot(session, pot, 50.0)
        screen = OnPlace(session, MixPlace, "/mix")
        await tap(screen, "give up")
        assert not now_or_none(session)
        assert again(session, pot).left_g == pytest.approx(232.0)
        assert again(session, pot).ended == "stirred"

    def now_or_none(session: object) -> bool:
        return any(not one.ended for one in pots(session.known))  # type: ignore[attr-defined]

    asyncio.run(story())


def test_a_jar_in_a_pot_counts_as_its_paints_when_more_is_made_or_it_is_corrected() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        jar = await keep_leftover(session, pot, Back((("", 60.0),)), None, None)
        mix = job.mix(session.known, "ember wing")
        mixed = with_jar(session.known, mix, 232.0, jar)
        assert mixed
        await start_pot(session, mixed, 232.0, None)
        await poured(session)
        second = pots(session.known)[-1]
        paints = {one.paint: one.net_g for one in in_paints(session.known, second.went_in)}
        assert jar.id not in paints
        assert sum(paints.values()) == pytest.approx(232.0)
        assert jar.id not in {part.paint for part in like_pot(session.known, second).parts}
        lacks = (Lack(day_count=1), *(Lack() for _ in range(len(paints) - 1)))
        await correct_pot(session, second, lacks)
        adds = {one.paint: one.net_g for one in now(session).missing}
        assert adds[jar.id] == pytest.approx(0.0)  # nothing is asked of an empty jar
        recipe = job.mix(session.known, "ember wing")
        assert jar.id not in {part.paint for part in recipe.parts}
        assert sum(part.parts_count for part in recipe.parts) == pytest.approx(100.0)

    asyncio.run(story())


def test_tipped_out_a_pot_is_begun_again_only_if_the_cans_have_it() -> None:
    async def story() -> None:
        session = ember()
        await start_pot(session, replace(EMBER, planned_g=None), 800.0, None)  # 200 of 201.1 g
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.tip_out(session, now(session))
        assert all(pot.ended for pot in pots(session.known))
        assert session.shown.told
        assert "orange is 198.9 g short" in session.shown.told.said

    asyncio.run(story())


def test_what_a_cup_takes_counts_what_the_cans_still_hold() -> None:
    async def story() -> None:
        session = ember()
        await start_pot(session, replace(EMBER, planned_g=None), 600.0, None)
        assert takes_g(session.known, now(session)) == pytest.approx(804.4)  # 201.1 × 12 ÷ 3
        assert has(OnPlace(session, MixPlace, "/mix/weigh"), "on the mark")

    asyncio.run(story())


def test_a_step_says_which_can_goes_on_and_a_base_in_loads_is_boxed() -> None:
    async def story() -> None:
        session = ember(CAN_9, SECOND)
        await start_pot(session, replace(EMBER, planned_g=None), 840.0, None)
        await weigh_out.on_the_mark(session, now(session))
        step = " ".join(said(OnPlace(session, MixPlace, "/mix/weigh"))).replace("\xa0", " ")
        assert "Can 7 runs out in it: go on with can 9." in step
        cellar = await job.at_moth_cellar()
        base = job.mix(cellar.known, "base")
        load = next_load(cellar.known, base)
        assert load
        assert (load.number, load.of, load.load_g) == (1, 2, 4484.0)  # base.load_g
        await start_pot(cellar, base, load.load_g, None)
        while now(cellar).target:
            await weigh_out.on_the_mark(cellar, now(cellar))
        assert weigh_words.BOX in said(OnPlace(cellar, MixPlace, "/mix/weigh"))
        assert all((one.balance.should_be_g or 0.0) >= 0.0 for one in cans_now(cellar.known))

    asyncio.run(story())


def test_a_load_is_no_more_than_the_cans_hold() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        base = job.mix(session.known, "base")
        small = next(one for one in cans_now(session.known) if one.can.number == 6)
        fewer = [one for one in cans_now(session.known) if one.can.paint == small.can.paint]
        for one in fewer:
            if one.can.id != small.can.id:
                await session.keep(replace(one.can, gone=True))
        load = next_load(session.known, base)
        assert load
        # 655 g of aubergine ÷ 0.38 is 1723 g: the fewest loads alike that are no more, of 8968 g
        assert (load.of, load.load_g) == (6, 1495.0)

    asyncio.run(story())
