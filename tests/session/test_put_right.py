"""What is put right stays right: keeps, corrections, restarts and tips, gone on or taken back."""

from collections.abc import Awaitable, Callable
from dataclasses import replace

import pytest

from core.mixing.correct import Lack
from core.paints.recipe import Part
from mobile.session.known import found
from mobile.session.mix import begin, leftovers, mishaps, pot_again, weigh_out
from mobile.session.mix.cups import fill_cups
from mobile.session.mix.leftovers import Back
from mobile.session.mix.pots import READING, RESTART, WRONG, pots
from mobile.session.mix.ways import ways_of
from mobile.session.mix.went import where_it_went
from mobile.session.session import Declined, Session
from mobile.store.entries import CanWeighed
from mobile.store.pot import Pot
from mobile.store.records import Draft, Mix, Paint
from tests.session.ember import EMBER, STAMP, ember
from tests.session.weighing import now, run, to_orange

MORE_ORANGE = (Lack(), Lack(day_count=2), Lack())
WHITE = Paint("W", *STAMP, "white", "#ffffff", "#ffffff", 1.2)
BLUE = Paint("B", *STAMP, "blue", "#0000ff", "#0000ff", 1.2)
TINT = Mix("tint", *STAMP, "job", "tint", (Part("FO", 0.5), Part("CM", 149.5)), "glaze", 150.0)


async def done(session: Session) -> Pot:
    """Pour the rest on the mark, and stir it."""
    while now(session).target:
        await weigh_out.on_the_mark(session, now(session))
    await weigh_out.stirred(session, now(session))
    return pots(session.known)[-1]


async def made(session: Session) -> Pot:
    """Make the whole pot."""
    await begin.start_planned(session)
    return await done(session)


async def down_to(session: Session, pot: Pot, left_g: float) -> Pot:
    """Weigh a pot back."""
    await leftovers.weigh_back(session, pot, Back((("", left_g),)))
    return pots(session.known)[-1]


def recipe(session: Session) -> Mix:
    mix = found(session.known.mixes, EMBER.id)
    assert mix is not None
    return mix


def test_a_small_part_that_is_in_needs_no_pour_in_a_pot_that_is_put_back() -> None:
    async def story() -> None:
        session = ember(TINT)
        await begin.start_pot(session, TINT, 150.0, None)
        pot = await down_to(session, await done(session), 20.0)  # 0.07 g of orange
        await pot_again.add_to_pot(session, pot, 5.0)
        target = now(session).target
        assert target is not None
        assert (target.paint, target.reads_g) == ("CM", 5.0)
        assert (await done(session)).in_cup_g == pytest.approx(25.0, abs=0.05)

    run(story())


def test_no_batch_is_offered_that_the_plan_can_not_take() -> None:
    async def story() -> None:
        drop = replace(TINT, parts=(Part("FO", 1.0), Part("CM", 99.0)))
        session = ember(drop)
        await begin.start_pot(session, drop, 20.0, None)
        await weigh_out.scale_reads(session, now(session), 21.0)  # instead of 0.2 g
        pot = now(session)
        three = pot.answers(1e5)
        assert not three.make.fits
        with pytest.raises(Declined):
            await weigh_out.make_more(session, pot, three.make)
        assert now(session).target is not None

    run(story())


def test_what_is_kept_is_what_was_in_then() -> None:
    async def story() -> None:
        session = ember(WHITE)
        await begin.start_planned(session)
        await weigh_out.scale_reads(session, now(session), 25.0)
        await weigh_out.keep_over(session, now(session), "FY")
        await weigh_out.scale_reads(session, now(session), 25.0 + 90.0)
        pot = now(session)
        await weigh_out.make_more(session, pot, pot.answers(1e5).make)
        target = now(session).target
        assert target is not None
        assert target.paint == "FY"  # the bigger batch wants more of it than was kept
        await weigh_out.scale_reads(session, now(session), 115.0 + 60.0)
        over = now(session).over
        assert over is not None
        assert over.paint == "FY"

    run(story())


def test_a_stray_that_grows_after_it_was_kept_is_asked_about_again() -> None:
    async def story() -> None:
        session = ember(WHITE)
        await to_orange(session)
        await mishaps.wrong_can(session, now(session), "W", 24.3)
        await weigh_out.keep_over(session, now(session), "W")
        assert not now(session).strays_show
        await mishaps.wrong_can(session, now(session), "W", 84.3)
        assert now(session).strays_show
        assert now(session).stray_g == pytest.approx(65.0)

    run(story())


def test_a_kept_paint_limits_what_its_can_can_follow() -> None:
    async def story() -> None:
        session = ember(CanWeighed("w8b", *STAMP, "can8", 83.6, 56.6, 27.0))
        await begin.start_planned(session)
        await weigh_out.scale_reads(session, now(session), 25.0)
        await weigh_out.keep_over(session, now(session), "FY")
        await weigh_out.scale_reads(session, now(session), 25.0 + 90.0)
        pot = now(session)  # 29.9 g of yellow would be due, 27 g were there
        assert not pot.answers(begin.takes_g(session.known, pot)).make.fits

    run(story())


def test_hiding_a_stray_counts_the_one_that_was_kept() -> None:
    async def story() -> None:
        full = (
            CanWeighed(f"x{can}", *STAMP, can, 5000.0, 56.6, 4943.4)
            for can in ("can7", "can8", "can12")
        )
        session = ember(WHITE, BLUE, *full)
        await session.keep(replace(session.known.settings, scale_capacity_g=700.0))
        await to_orange(session)
        await mishaps.wrong_can(session, now(session), "W", 169.3)
        await weigh_out.keep_over(session, now(session), "W")
        await mishaps.wrong_can(session, now(session), "B", 175.3)
        assert not mishaps.saved(session.known, now(session)).fits  # 600 g and 150 g

    run(story())


@pytest.mark.parametrize("back", [weigh_out.undo_last, weigh_out.give_up])
def test_a_correction_that_is_taken_back_takes_its_version_of_the_recipe_along(
    back: Callable[[Session, Pot], Awaitable[None]],
) -> None:
    async def story() -> None:
        session = ember()
        pot = await made(session)
        before = recipe(session)
        await pot_again.correct_pot(session, pot, MORE_ORANGE)
        assert recipe(session).parts != before.parts
        await back(session, now(session))
        assert recipe(session).parts == before.parts
        assert recipe(session).versions == before.versions
        assert pots(session.known)[-1].ended == "stirred"

    run(story())


def test_a_new_cup_for_a_corrected_pot_is_for_what_that_was_to_be() -> None:
    async def story() -> None:
        session = ember()
        pot = await down_to(session, await made(session), 60.0)
        await pot_again.correct_pot(session, pot, MORE_ORANGE)
        aim = now(session).plan.portions
        target = now(session).target
        assert target is not None
        await weigh_out.scale_reads(session, now(session), target.reads_g + 12)
        await weigh_out.tip_out(session, now(session))
        new = now(session).plan.portions
        assert [one.paint for one in new] == [one.paint for one in aim]
        for one, wanted in zip(new, aim, strict=True):
            assert one.net_g == pytest.approx(wanted.net_g, abs=0.05)
        await weigh_out.undo_last(session, now(session))
        assert now(session).over is not None

    run(story())


def test_cups_of_a_pot_that_was_tipped_out_can_be_weighed_back() -> None:
    async def story() -> None:
        session = ember()
        pot = await made(session)
        await fill_cups(session, pot, (("Ana", 100.0), ("Bo", 60.0)))
        await pot_again.add_to_pot(session, pots(session.known)[-1], 20.0)
        target = now(session).target
        assert target is not None
        await weigh_out.scale_reads(session, now(session), target.reads_g + 30)
        await weigh_out.give_up(session, now(session))
        tipped = pots(session.known)[-1]
        assert tipped.ended == "tipped"
        assert {"left", "went", "label"} <= set(ways_of(session.known, tipped))
        assert "add" not in ways_of(session.known, tipped)
        went = where_it_went(session.known, tipped)
        assert went.in_cups_g == pytest.approx(160.0)
        assert went.waste_g == pytest.approx(tipped.made_g - 160.0)
        assert went.account.walls_g == pytest.approx(0.0, abs=0.05)

    run(story())


def test_a_pot_that_was_put_back_is_as_it_was_though_the_scale_went_off_since() -> None:
    async def story() -> None:
        session = ember()
        pot = await made(session)
        await pot_again.add_to_pot(session, pot, 40.0)
        await weigh_out.scale_restarted(session, now(session), 21.4 + 232.0)
        assert now(session).put_back == pot_again.MORE
        await weigh_out.give_up(session, now(session))
        again = pots(session.known)[-1]
        assert again.ended == "stirred"
        assert again.left_g == pytest.approx(232.0)

    run(story())


def test_a_correction_below_a_step_of_the_scale_is_declined_and_changes_nothing() -> None:
    async def story() -> None:
        session = ember()
        pot = await down_to(session, await made(session), 10.0)
        before = recipe(session)
        with pytest.raises(Declined, match="Too little"):
            await pot_again.correct_pot(session, pot, (Lack(day_count=1), Lack(), Lack()))
        assert recipe(session) == before
        assert pots(session.known)[-1].ended == "stirred"

    run(story())


def test_what_a_correction_says_is_poured_is_poured() -> None:
    async def story() -> None:
        session = ember()
        await session.keep(replace(session.known.settings, scale_step_g=1.0))
        pot = await made(session)
        lacks = (Lack(day_count=1), Lack(day_count=3), Lack())
        adds = pot_again.as_poured(pot, pot_again.correction(session.known, pot, lacks).adds)
        await pot_again.correct_pot(session, pot, lacks)
        asked = []
        while target := now(session).target:
            asked.append(target.paint)
            await weigh_out.on_the_mark(session, now(session))
        assert sorted(asked) == sorted(one.paint for one in adds)

    run(story())


def test_back_after_the_scale_went_off_leads_to_where_its_reading_was_typed() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_restarted(session, now(session), 21.4 + 19.3 + 70.0)
        assert now(session).over
        assert weigh_out.typed_at(now(session)) == "scale"
        await weigh_out.back_to_reading(session, now(session))
        assert dict(session.draft(RESTART))["reads"] == "110.7"
        assert not session.draft(READING)

    run(story())


def test_back_after_a_wrong_can_of_the_recipe_leaves_the_other_keypad_empty() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)  # yellow is due
        await mishaps.wrong_can(session, now(session), "FO", 82.6)
        assert weigh_out.typed_at(now(session)) == "wrong"
        await weigh_out.back_to_reading(session, now(session))
        assert not session.draft(READING)
        assert not now(session).poured

    run(story())


def test_what_was_typed_of_a_wrong_can_does_not_stand_in_the_next_pot() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        await session.keep(Draft(*session.stamp(WRONG), (("reads", "81.9"),)))
        await done(session)
        assert not session.draft(WRONG)

    run(story())
