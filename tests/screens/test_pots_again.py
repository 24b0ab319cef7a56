"""A pot that is done: more of it, its colour corrected, split into cups, weighed back, kept."""

import asyncio
from dataclasses import replace

import pytest

from core.mixing.correct import Lack
from mobile.screens.mix.place import MixPlace
from mobile.session.chips import chip_of
from mobile.session.mix.begin import like_pot, start_pot
from mobile.session.mix.leftovers import Back, weigh_back
from mobile.session.mix.mishaps import wrong_can
from mobile.session.mix.pot_again import add_to_pot, correct_pot
from mobile.session.mix.pots import pots, under_way
from mobile.session.mix.recipes import keep_mix
from mobile.session.mix.to_weigh import made_g
from mobile.session.mix.weigh_out import keep_over
from mobile.session.session import Declined
from mobile.words import grams as in_grams
from mobile.words import mix as mix_words
from mobile.words import pot as pot_words
from tests.screens.done_pot import again, ember_done, poured
from tests.screens.mix_place import keys, now
from tests.screens.seen import OnPlace, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_a_live_pot_is_topped_up_in_its_real_proportion() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await weigh_back(session, pot, Back((("", 116.0),)))
        half = again(session, pot)
        assert half.left_g == pytest.approx(116.0)
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/add")
        await keys(screen, "58")
        assert any("4.8 g fluorescent yellow" in text for text in said(screen))
        await add_to_pot(session, half, 58.0)
        live = now(session)
        assert live.id == pot.id
        assert live.in_cup_g == pytest.approx(116.0)
        assert live.batch_g == pytest.approx(174.0)
        assert live.target is not None
        assert live.target.reads_g == pytest.approx(4.8)  # tared with the pot on the scale
        with pytest.raises(Declined):
            await add_to_pot(session, half, 10.0)
        await poured(session)
        done = again(session, pot)
        shares = [one.net_g / done.in_cup_g for one in done.went_in]
        assert shares == pytest.approx([1 / 12, 3 / 12, 8 / 12], abs=1e-3)

    asyncio.run(story())


def test_a_correction_is_poured_and_the_recipe_gets_its_next_version() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        before = job.mix(session.known, "ember wing")
        names = [one.paint for one in pot.holds]
        orange = next(p.id for p in session.known.paints if p.name == "fluorescent orange")
        lacks = tuple(Lack(day_count=1 if paint == orange else 0) for paint in names)
        await correct_pot(session, pot, lacks)
        live = now(session)
        assert live.target is not None
        assert live.target.paint == orange
        assert live.target.net_g == pytest.approx(2.9)  # 5 % of 58.0 g
        await poured(session)
        after = job.mix(session.known, "ember wing")
        assert [version.parts for version in after.versions] == [before.parts]
        assert after.versions[0].why == "corrected"
        assert sum(part.parts_count for part in after.parts) == pytest.approx(100.0, abs=0.02)
        assert again(session, pot).in_cup_g == pytest.approx(234.9)

    asyncio.run(story())


def test_the_correction_screen_asks_paint_by_paint_in_either_light() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/correct")
        assert pot_words.NOTHING_ASKED in said(screen)
        await tap(screen, "steps 1 2")
        assert in_grams.unbroken(pot_words.then_weighs(232.0 + 58.0 * 0.12)) in said(screen)
        await tap(screen, "light lamp")
        await tap(screen, "steps 0 1")
        await tap(screen, "mend")
        assert under_way(session.known) is not None

    asyncio.run(story())


def test_a_changed_recipe_keeps_how_it_was() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        leaf = job.mix(session.known, "leaf")
        await keep_mix(session, leaf)
        assert job.mix(session.known, "leaf").versions == ()
        await keep_mix(session, replace(leaf, parts=leaf.parts[:2]))
        changed = job.mix(session.known, "leaf")
        assert [version.parts for version in changed.versions] == [leaf.parts]
        assert changed.versions[0].why == "typed"

    asyncio.run(story())


def test_more_of_the_same_takes_the_stranger_along() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
        white = next(p.id for p in session.known.paints if p.name == "standard white")
        await wrong_can(session, now(session), white, 4.0)
        await keep_over(session, now(session), white)
        await poured(session)
        pot = pots(session.known)[-1]
        assert {part.paint for part in like_pot(session.known, pot).parts} >= {white}
        await add_to_pot(session, pot, 118.0)
        await poured(session)
        shares = {one.paint: one.net_g for one in again(session, pot).went_in}
        assert shares[white] / sum(shares.values()) == pytest.approx(4 / 236, abs=1e-3)

    asyncio.run(story())


def test_a_recipe_is_typed_in_percent_with_looks_and_notes_and_shows_how_it_was() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        leaf = job.mix(session.known, "leaf")
        await keep_mix(session, replace(leaf, parts=leaf.parts[:2]))
        screen = OnPlace(session, MixPlace, f"/mix/{leaf.id}")
        assert mix_words.EARLIER_VERSIONS in said(screen)
        await tap(screen, "typed percent")
        await write(screen, "parts 0", "60")
        await write(screen, "parts 1", "35")
        assert mix_words.adds_up("95") in said(screen)
        await write(screen, "notes", "thin over the veins")
        await tap(screen, "By day #57e03c")
        await tap(screen, "keep")
        kept = job.mix(session.known, "leaf")
        assert (kept.typed_as, kept.notes) == ("percent", "thin over the veins")
        assert (kept.day, kept.lamp) == ("#57e03c", "")
        assert len(kept.versions) == 2
        assert [part.parts_count for part in kept.parts] == pytest.approx([60.0, 35.0])
        assert chip_of(session.known, kept)[0] == "#57e03c"

    asyncio.run(story())


def test_a_correction_no_larger_than_a_band_is_poured_all_the_same() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "base"), 1000.0, None)
        assert now(session).plan.parts_band_ratio  # wide ones, from looks
        await poured(session)
        pot = pots(session.known)[-1]
        part = pot.holds[0]
        lacks = tuple(Lack(day_count=1 if one == part else 0) for one in pot.holds)
        await correct_pot(session, pot, lacks)
        live = now(session)
        assert live.target is not None
        assert live.target.paint == part.paint
        assert live.target.net_g == pytest.approx(part.net_g * 0.05, abs=0.06)
        await poured(session)
        assert again(session, pot).in_cup_g == pytest.approx(1000.0 + part.net_g * 0.05, abs=0.06)

    asyncio.run(story())


def test_what_was_used_before_a_pot_was_added_to_counts_as_made() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await weigh_back(session, pot, Back((("", 116.0),)))
        await add_to_pot(session, again(session, pot), 58.0)
        await poured(session)
        done = again(session, pot)
        assert done.in_cup_g == pytest.approx(174.0)
        assert done.made_g == pytest.approx(290.0)
        ember = job.mix(session.known, "ember wing")
        assert made_g(session.known, ember) == pytest.approx((290.0,))

    asyncio.run(story())
