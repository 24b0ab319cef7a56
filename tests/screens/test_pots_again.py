"""A pot that is done: more of it, its colour corrected, split into cups, weighed back, kept."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from core.mixing.correct import Lack
from mobile.screens.mix.place import MixPlace
from mobile.session.begin import like_pot, start_pot
from mobile.session.chips import chip_of
from mobile.session.cups import (
    by_area,
    cups_of,
    dries_g,
    even,
    fill_cups,
    keep_leftover,
    weigh_back,
)
from mobile.session.jars import all_paints, jar_paint, left_g
from mobile.session.mishaps import wrong_can
from mobile.session.mix import keep_mix
from mobile.session.pot_again import add_to_pot, correct_pot
from mobile.session.pots import pot_by, pots, under_way
from mobile.session.session import Declined, Session
from mobile.session.weigh_out import keep_over, on_the_mark, stirred
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mix as mix_words
from mobile.words import pot as pot_words
from tests.screens.mix_place import keys, now
from tests.screens.seen import OnPlace, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


async def poured(session: Session) -> None:
    """Pour what is left on the mark, and stir it."""
    while now(session).target:
        await on_the_mark(session, now(session))
    await stirred(session, now(session))


async def ember_done() -> tuple[Session, Pot]:
    """Give the demo job with a pot of ember wing of 232 g."""
    session = await job.at_moth_cellar()
    await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
    await poured(session)
    return session, pots(session.known)[-1]


def again(session: Session, pot: Pot) -> Pot:
    """Give a pot as it is now."""
    found = pot_by(session.known, pot.id)
    assert found is not None
    return found


def test_a_live_pot_is_topped_up_in_its_real_proportion() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await weigh_back(session, pot, (("", 116.0),))
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


def test_a_pot_is_split_by_people_or_by_area_and_weighed_back() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        assert [net_g for _, net_g in even(pot, 3)] == pytest.approx([77.4, 77.3, 77.3])
        with pytest.raises(Refused):
            by_area(session.known, pot)  # it goes on one zone only
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/cups")
        await write(screen, "count", "4")
        await tap(screen, "fill")
        cups = cups_of(session.known, pot)
        assert [(cup.label, cup.net_g) for cup in cups] == [(label, 58.0) for label in "abcd"]
        assert again(session, pot).left_g == pytest.approx(0.0)
        with pytest.raises(Refused):
            await fill_cups(session, again(session, pot), (("", 10.0),))
        await weigh_back(session, pot, ((cups[0].id, 12.5),))
        assert cups_of(session.known, pot)[0].left_g == pytest.approx(12.5)
        with pytest.raises(Refused):
            await weigh_back(session, pot, ((cups[1].id, 80.0),))

    asyncio.run(story())


def test_a_jar_is_a_paint_with_its_own_composition() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/left")
        await write(screen, "months", "6")
        await write(screen, "coldest", "4")
        await write(screen, "", "100")
        await tap(screen, "jar")
        known = session.known
        jar = next(one for one in all_paints(known) if one.name == "ember wing, jar 1")
        assert jar.density_g_ml == pytest.approx(1.0619967, rel=1e-4)  # G1.density, by hand
        assert again(session, pot).left_g == pytest.approx(132.0)

    asyncio.run(story())


def test_a_jar_goes_into_a_recipe_and_pours_come_off_it() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await keep_leftover(session, again(session, pot), 100.0, None, None)
        kept = await keep_leftover(session, again(session, pot), 32.0, None, None)
        assert (kept.number, jar_paint(session.known, kept).name) == (2, "ember wing, jar 2")
        screen = OnPlace(session, MixPlace, "/mix/new")
        await write(screen, "paint 0", "ember wing, jar 2")
        await write(screen, "parts 0", "1")
        await write(screen, "paint 1", "standard white")
        await write(screen, "parts 1", "1")
        await tap(screen, "keep")
        mix = session.known.job_mixes[-1]
        assert mix.parts[0].paint == kept.id
        assert kept.id not in {paint.id for paint in session.known.paints}
        await start_pot(session, mix, 40.0, None)
        await poured(session)
        assert left_g(session.known, kept) == pytest.approx(12.0)

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
        assert {part.paint for part in like_pot(pot).parts} >= {white}
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


def test_an_open_cup_says_how_much_it_loses_at_the_most() -> None:
    known = job.moth_cellar().known
    bound_g, air = dries_g(known)
    assert (air.air_c, air.rh_ratio) == pytest.approx((18.0, 0.6))  # of the lid that was off
    # (25 + 19 v) A (xs - x): an 80 mm cup at 23 C and 50 %, still, loses up to 1.13 g an hour;
    # the same formula is held to its own published humidity in tests/core. Here the air is cooler.
    assert 0.4 < bound_g < 1.13


def test_a_jar_of_the_same_colour_is_used_up_in_the_next_pot() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        jar = await keep_leftover(session, pot, 60.0, None, None)
        ember = job.mix(session.known, "ember wing")
        screen = OnPlace(session, MixPlace, f"/mix/{ember.id}/weigh")
        await keys(screen, "232")
        await tap(screen, "jar 1")
        live = now(session)
        assert live.batch_g == pytest.approx(232.0)
        assert {part.paint: part.net_g for part in live.plan.portions}[jar.id] == pytest.approx(
            60.0
        )
        await poured(session)
        assert left_g(session.known, jar) == pytest.approx(0.0)
        rest = [one.net_g for one in live.plan.portions if one.paint != jar.id]
        assert rest == pytest.approx([14.3, 43.0, 114.7], abs=0.11)  # 172 g in 1 : 3 : 8

    asyncio.run(story())
