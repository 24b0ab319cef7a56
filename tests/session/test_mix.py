"""The weigh-out's verbs: what the scale should read, and how a wrong pour is put right."""

from dataclasses import replace

import pytest

from mobile.session.cans.can import can_now
from mobile.session.mix import begin, weigh_out
from mobile.session.mix.pots import pots, under_way
from mobile.session.mix.to_weigh import to_weigh_next
from mobile.session.session import Session
from mobile.store.records import Mix
from tests.session.ember import CAN_7, EMBER, SETTINGS, STAMP, again, ember
from tests.session.weighing import now, reads, run, to_orange


def next_mix(session: Session) -> Mix | None:
    """Give the mix that is to be weighed next."""
    load = to_weigh_next(session.known)
    return load.mix if load else None


def test_the_planned_mix_stands_at_its_first_step_after_one_verb() -> None:
    async def story() -> None:
        session = ember()
        started = await begin.start_planned(session)
        assert started is not None
        assert (started.number, started.cans) == (1, ("can8", "can7", "can12"))
        assert started.cup_g == pytest.approx(21.4)
        assert reads(session) == ("FY", 19.3)

    run(story())


def test_the_running_totals_are_those_worked_by_hand() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        seen = []
        while now(session).target:
            seen.append(reads(session))
            await weigh_out.on_the_mark(session, now(session))
        assert seen == [("FY", 19.3), ("FO", 77.3), ("CM", 232.0)]
        assert now(session).in_cup_g == pytest.approx(232.0)

    run(story())


def test_a_second_touch_starts_no_second_pot() -> None:
    async def story() -> None:
        session = ember()
        first = await begin.start_planned(session)
        second = await begin.start_pot(session, EMBER, 100.0, None)
        assert first == second
        assert len(pots(session.known)) == 1

    run(story())


def test_nothing_planned_starts_nothing() -> None:
    async def story() -> None:
        session = ember(replace(EMBER, planned_g=None))
        assert await begin.start_planned(session) is None
        assert under_way(session.known) is None

    run(story())


def test_a_done_mix_is_not_weighed_next() -> None:
    async def story() -> None:
        rose = Mix("rose", *STAMP, "job", "rose wing", EMBER.parts, "glaze", 201.0)
        session = ember(rose)
        assert next_mix(session) == EMBER
        await to_orange(session)
        assert next_mix(session) is None  # one is on the scale
        await weigh_out.stirred(session, now(session))
        assert next_mix(session) == rose

    run(story())


def test_a_short_reading_asks_for_the_rest_of_the_same_paint() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 70.0)
        target = now(session).target
        assert target is not None
        assert (target.paint, target.net_g, target.reads_g) == ("FO", 7.3, 77.3)

    run(story())


def test_what_was_poured_is_gone_from_its_can_and_undo_brings_it_back() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        left_g = can_now(session.known, CAN_7).balance.should_be_g
        assert left_g == pytest.approx(201.1 - 62.6)
        await weigh_out.undo_last(session, now(session))
        assert can_now(session.known, CAN_7).balance.should_be_g == pytest.approx(201.1)
        assert reads(session) == ("FO", 77.3)

    run(story())


def test_too_much_has_the_three_answers_of_the_worked_job() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        pot = now(session)
        assert pot.over is not None
        assert pot.over.over_g == pytest.approx(4.6)
        three = pot.answers(5000.0)
        assert three.make.total_g == pytest.approx(250.4, abs=0.05)
        assert three.make.extra_g == pytest.approx(18.4, abs=0.05)
        assert three.keep.share_ratio == pytest.approx(0.2646, abs=5e-5)
        assert three.tip.lost_g == pytest.approx(81.9)
        assert three.best == "make"

    run(story())


def test_making_more_asks_for_the_first_paint_again() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        await weigh_out.make_more(session, now(session), now(session).answers(5000.0).make)
        assert now(session).over is None
        assert now(session).batch_g == pytest.approx(250.4)
        assert reads(session) == ("FY", 83.4)
        await weigh_out.on_the_mark(session, now(session))
        assert reads(session) == ("CM", 250.4)

    run(story())


def test_a_second_over_pour_counts_its_bigger_batch_from_the_recipe() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        await weigh_out.make_more(session, now(session), now(session).answers(5000.0).make)
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.scale_reads(session, now(session), 260.0)
        make = now(session).answers(5000.0).make
        await weigh_out.make_more(session, now(session), make)
        medium_g = now(session).paint_g("CM")
        assert now(session).batch_g == pytest.approx(232.0 * medium_g / 154.7, abs=0.1)
        assert now(session).over is None

    run(story())


def test_keeping_it_goes_on_with_the_next_paint_and_is_not_asked_again() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        await weigh_out.keep_over(session, now(session), "FO")
        assert now(session).over is None
        assert reads(session) == ("CM", 236.6)

    run(story())


def test_an_over_pour_after_one_was_kept_leaves_that_one_alone() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        await weigh_out.keep_over(session, now(session), "FO")
        await weigh_out.scale_reads(session, now(session), 246.6)
        pot = now(session)
        assert pot.over is not None
        assert pot.over.paint == "CM"
        adds = {one.paint: one.net_g for one in pot.answers(5000.0).make.adds}
        assert not adds["FO"]
        assert adds["FY"] == pytest.approx(19.3 * 164.7 / 154.7 - 19.3)

    run(story())


def test_tipping_out_puts_the_same_batch_into_a_new_cup_and_can_be_taken_back() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        old = now(session)
        await weigh_out.tip_out(session, old)
        assert now(session).started.number == 2
        assert (now(session).in_cup_g, reads(session)) == (0.0, ("FY", 19.3))
        assert can_now(session.known, CAN_7).balance.should_be_g == pytest.approx(138.5)
        await weigh_out.undo_last(session, now(session))
        assert now(session).id == old.id
        assert len(pots(session.known)) == 1

    run(story())


def test_going_back_from_too_much_brings_the_digits_back_and_no_pour() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        await weigh_out.back_to_reading(session, now(session))
        assert reads(session) == ("FO", 77.3)
        assert session.known.draft("weigh")["reads"] == "81.9"
        started_again = again(session)
        assert reads(started_again) == ("FO", 77.3)
        assert started_again.known.draft("weigh")["reads"] == "81.9"

    run(story())


def test_the_scale_is_back_with_cup_and_paint_on_it() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        restart = await weigh_out.scale_restarted(session, now(session), 40.7)  # cup 21.4 + 19.3
        assert (restart.offset_g, restart.missed_g) == (21.4, 0.0)
        assert reads(session) == ("FO", 98.7)

    run(story())


def test_what_was_poured_when_the_scale_went_off_is_found_and_undone_with_it() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.scale_restarted(session, now(session), 70.7)  # 30 g of orange were in
        assert now(session).paint_g("FO") == pytest.approx(30.0)
        assert reads(session) == ("FO", 98.7)
        await weigh_out.undo_last(session, now(session))
        assert not now(session).paint_g("FO")
        assert reads(session) == ("FO", 77.3)

    run(story())


def test_a_scale_switched_on_under_the_full_cup_counts_from_nothing() -> None:
    async def story() -> None:
        session = ember(replace(SETTINGS, cup_g=None))
        await to_orange(session)
        await weigh_out.scale_restarted(session, now(session), 0.0)
        assert reads(session) == ("FO", 58.0)

    run(story())
