"""Cups, jars and what is left, where a reviewer found them wrong; most figures by hand."""

from dataclasses import replace

import pytest

from core.mixing.portions import Portion
from mobile.session.cans.can import can_gone
from mobile.session.known import Known
from mobile.session.mix import begin, cups, jars, to_weigh
from mobile.session.mix.label import label_of
from mobile.session.mix.leftovers import Back, keep_leftover, throw_away, weigh_back
from mobile.session.mix.mishaps import wrong_can
from mobile.session.mix.pot_again import add_to_pot
from mobile.session.mix.pots import pots
from mobile.session.mix.weigh_out import give_up, keep_over, on_the_mark, stirred
from mobile.session.mix.went import where_it_went
from mobile.session.session import Declined, Session
from mobile.session.view import View
from mobile.store.entries import CanWeighed, CoatFinished, LeftoverKept
from mobile.store.pot import Pot
from mobile.store.records import Can, Mix
from tests.session import moth_cellar as job
from tests.session.ember import CAN_7, EMBER, STAMP
from tests.session.ember import ember as at_ember
from tests.session.weighing import now, run

NAME = "ember wing"  # it needs 232 g: reference job


def ember(known: Known) -> Mix:
    return job.mix(known, NAME)


def newest(session: Session) -> Pot:
    return pots(session.known)[-1]


async def weigh(session: Session, mix: Mix, batch_g: float) -> Pot:
    """Weigh a mix out, each part on the mark."""
    await begin.start_pot(session, mix, batch_g, None)
    while now(session).target:
        await on_the_mark(session, now(session))
    await stirred(session, now(session))
    return newest(session)


async def in_a_jar(session: Session, pot: Pot, net_g: float) -> LeftoverKept:
    return await keep_leftover(session, pot, Back((("", net_g),)), None, None)


async def with_the_jar(session: Session, batch_g: float, jar: LeftoverKept) -> Mix:
    mixed = jars.with_jar(session.known, ember(session.known), batch_g, jar)
    assert mixed is not None
    return mixed


def to_weigh_g(session: Session) -> float:
    load = to_weigh.next_load(session.known, ember(session.known))
    return load.load_g if load else 0.0


async def used_up() -> tuple[Session, LeftoverKept]:
    """Weigh 100 g, put 60 of it in a jar, and weigh the other 132 g with that jar."""
    session = await job.at_moth_cellar()
    jar = await in_a_jar(session, await weigh(session, ember(session.known), 100.0), 60.0)
    assert to_weigh_g(session) == pytest.approx(132.0)
    await weigh(session, await with_the_jar(session, 132.0, jar), 132.0)
    return session, jar


def test_a_jar_that_is_used_up_is_made_once() -> None:
    async def story() -> None:
        session, _ = await used_up()
        assert to_weigh_g(session) == pytest.approx(60.0)
        made_g = to_weigh.made_g(session.known, ember(session.known))
        assert made_g == pytest.approx((40.0, 132.0))

    run(story())


def test_a_jar_in_a_pot_that_was_tipped_out_is_not_made() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        jar = await in_a_jar(session, await weigh(session, ember(session.known), 100.0), 60.0)
        await begin.start_pot(session, await with_the_jar(session, 132.0, jar), 132.0, None)
        while now(session).target:
            await on_the_mark(session, now(session))
        assert to_weigh_g(session) == pytest.approx(132.0)  # nobody knows yet what it comes to
        await give_up(session, now(session))
        assert to_weigh_g(session) == pytest.approx(192.0)

    run(story())


def test_the_account_tells_what_is_in_a_jar_from_what_went_on() -> None:
    async def story() -> None:
        session, jar = await used_up()
        went = where_it_went(session.known, pots(session.known)[-2])
        assert went.in_jars_g == pytest.approx(jars.left_g(session.known, jar))
        assert went.in_jars_g == pytest.approx(0.0)
        assert went.moved_g == pytest.approx(60.0)
        account = went.account
        assert account.walls_g + account.tools_g + account.dried_g == pytest.approx(40.0)

    run(story())


def in_paints_g(known: Known, mix: Mix) -> dict[str, float]:
    """Give what a mix with a jar in it comes to, paint by paint."""
    parts = tuple(Portion(part.paint, part.parts_count) for part in mix.parts)
    return {one.paint: one.net_g for one in jars.in_paints(known, parts)}


def test_a_jar_of_a_pot_that_used_a_jar_is_used_up_too() -> None:
    async def story() -> None:
        session, _ = await used_up()
        second = await in_a_jar(session, newest(session), 50.0)
        mixed = await with_the_jar(session, 120.0, second)
        assert mixed.parts[0].parts_count == pytest.approx(50.0, abs=0.5)  # it is rounded paint
        each_g = sorted(in_paints_g(session.known, mixed).values())
        assert each_g == pytest.approx([10.0, 30.0, 80.0], abs=0.1)  # 1 : 3 : 8 of 120 g

    run(story())


def test_a_stray_that_nobody_sees_keeps_no_jar_out() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        paint = job.mix(session.known, "base").parts[0].paint
        for stray_g, offered in ((0.3, True), (9.0, False)):
            await begin.start_pot(session, ember(session.known), 232.0, None)
            await wrong_can(session, now(session), paint, stray_g)
            if stray_g > 2.32:  # 1 % of the batch: it is asked for
                await keep_over(session, now(session), paint)
            while now(session).target:
                await on_the_mark(session, now(session))
            await stirred(session, now(session))
            jar = await in_a_jar(session, newest(session), 100.0)
            mixed = jars.with_jar(session.known, ember(session.known), 120.0, jar)
            assert (mixed is not None) == offered

    run(story())


async def whole_pot() -> tuple[Session, Pot]:
    session = await job.at_moth_cellar()
    return session, await weigh(session, ember(session.known), 232.0)


def test_all_vessels_together_hold_no_more_than_was_in_the_pot() -> None:
    async def story() -> None:
        session, pot = await whole_pot()
        await cups.fill_cups(session, pot, cups.even(pot, 2))
        pot = newest(session)
        with pytest.raises(Declined, match=r"464\.0.g.*232\.0.g"):
            await weigh_back(session, pot, Back((("", 232.0),)))
        first, _ = cups.cups_of(session.known, pot)
        back = Back((("", 100.0), (first.id, 10.0)))  # most of the first was poured back
        await weigh_back(session, pot, back)
        assert cups.in_pot_and_cups_g(session.known, newest(session)) == pytest.approx(226.0)

    run(story())


def test_what_is_in_a_jar_or_was_thrown_away_is_not_left_as_well() -> None:
    async def story() -> None:
        session, pot = await whole_pot()
        await in_a_jar(session, pot, 60.0)
        with pytest.raises(Declined):
            await weigh_back(session, newest(session), Back((("", 232.0),)))
        await weigh_back(session, newest(session), Back((("", 172.0),)))  # 60 g are in the jar
        await throw_away(session, newest(session), Back((("", 100.0),)))
        with pytest.raises(Declined):
            await in_a_jar(session, newest(session), 80.0)  # 232 - 60 - 100 = 72

    run(story())


def test_a_cup_and_a_pot_that_was_added_to_go_into_one_jar() -> None:
    async def story() -> None:
        session, pot = await whole_pot()
        await cups.fill_cups(session, pot, (("north", 100.0),))
        await add_to_pot(session, newest(session), 60.0)
        while now(session).target:
            await on_the_mark(session, now(session))
        await stirred(session, now(session))
        [cup] = cups.cups_of(session.known, newest(session))
        left = Back((("", 192.0), (cup.id, 100.0)))  # 132 + 60 in the pot, 100 in the cup
        jar = await keep_leftover(session, newest(session), left, None, None)
        assert jar.net_g == pytest.approx(292.0)

    run(story())


def test_cups_never_take_more_than_there_is() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(replace(session.known.settings, scale_step_g=1.0))
        pot = await weigh(session, ember(session.known), 232.0)
        await weigh_back(session, pot, Back((("", 99.6),)))
        pot = newest(session)
        split = cups.even(pot, 2)
        assert [net_g for _, net_g in split] == [50.0, 49.0]
        await cups.fill_cups(session, pot, split)
        assert newest(session).left_g == pytest.approx(0.6)

    run(story())


def lots_on(session: Session, pot: Pot, vessel: LeftoverKept | None = None) -> str:
    lines = label_of(session.known, pot, vessel, View()).lines
    return next((line for line in lines if line.startswith("lots ")), "")


def test_a_label_has_the_lots_of_cans_and_jars_that_came_in_later() -> None:
    async def story() -> None:
        first = replace(CAN_7, lot="A1")
        second = Can("can9", *STAMP, 9, "FO", 0.25, 56.6, "unopened", lot="B2")
        weighed = (
            CanWeighed("w7b", *STAMP, "can7", 116.6, 56.6, 60.0),
            CanWeighed("w9", *STAMP, "can9", 257.7, 56.6, 201.1),
        )
        session = at_ember(first, second, *weighed)
        pot = await weigh(session, EMBER, 232.0)  # 58 g of orange
        jar = await in_a_jar(session, pot, 60.0)
        await weigh_back(session, newest(session), Back((("", 172.0),)))
        await add_to_pot(session, newest(session), 40.0)
        while now(session).target:
            await on_the_mark(session, now(session))
        await stirred(session, now(session))
        pot = newest(session)
        assert lots_on(session, pot) == "lots A1, B2"
        assert lots_on(session, pot, jar) == "lots A1"  # it was filled before
        await can_gone(session, first)
        mixed = jars.with_jar(session.known, EMBER, 120.0, jar)
        assert mixed
        assert lots_on(session, await weigh(session, mixed, 120.0)) == "lots B2, A1"

    run(story())


async def all_thrown_away(session: Session, pot: Pot) -> None:
    await throw_away(session, pot, Back((("", pot.left_g),)))


def test_paint_that_was_thrown_away_is_asked_for_again() -> None:
    async def story() -> None:
        session, pot = await whole_pot()
        assert not to_weigh_g(session)
        await all_thrown_away(session, pot)
        assert to_weigh_g(session) == pytest.approx(232.0)

    run(story())


def test_a_rest_that_is_thrown_away_after_the_last_coat_is_not_asked_for_again() -> None:
    async def story() -> None:
        session, pot = await whole_pot()
        await throw_away(session, pot, Back((("", 20.0),)))
        assert to_weigh_g(session) == pytest.approx(20.0)
        coats = to_weigh.coats_of_mix(session.known, ember(session.known))
        assert coats
        for coat in coats:
            job_id = pot.started.job
            done = CoatFinished(*session.stamp(), job_id, coat.place, coat.step, pot.at_s)
            await session.keep(done)
        assert not to_weigh_g(session)

    run(story())


def test_a_rest_of_grams_typed_by_hand_is_not_asked_for_again() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(replace(ember(session.known), planned_g=50.0))
        pot = await weigh(session, ember(session.known), 50.0)
        await throw_away(session, pot, Back((("", 10.0),)))
        assert not to_weigh_g(session)

    run(story())


def test_a_spoilt_pot_of_grams_typed_by_hand_is_asked_for_again() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(replace(ember(session.known), planned_g=50.0))
        await all_thrown_away(session, await weigh(session, ember(session.known), 50.0))
        assert to_weigh_g(session) == pytest.approx(50.0)

    run(story())
