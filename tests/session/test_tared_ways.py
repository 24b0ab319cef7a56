"""Each part tared, and the can on the scale: what is asked for is what a scale would show.

Where the tare is gone in the middle of a part the reading begins at zero again. The figures are of
ember wing: 19.3 g yellow, 58.0 g orange, 154.7 g medium.
"""

from dataclasses import replace

import pytest

from core.errors import Refused
from core.mixing.correct import Lack
from core.paints.recipe import Part
from mobile.session.mix import begin, mishaps, pot_again, weigh_out
from mobile.session.mix.pots import pots
from mobile.session.session import Session
from mobile.store.entries import CanWeighed
from mobile.store.pot import Pot
from mobile.store.records import Mix, Paint
from mobile.words import weigh_out as words
from tests.screens.mix_place import on_mix
from tests.screens.seen import words as said
from tests.session.ember import STAMP, ember
from tests.session.weighing import now, reads, run, to_orange

WHITE = Paint("W", *STAMP, "white", "#ffffff", "#ffffff", 1.2)
LACKS = (Lack(), Lack(), Lack())
HAIR_G = 0.11  # a step of the scale, and binary dust
FULL = tuple(
    CanWeighed(f"full {can}", *STAMP, can, 5000.0, 56.6, 4943.4)
    for can in ("can7", "can8", "can12")
)
SIGNS = {"each": 1.0, "can": -1.0}
ways = pytest.mark.parametrize("way", ["each", "can"])


async def weighed_by(way: str, *more: object) -> Session:
    session = ember(*more)
    await session.keep(replace(session.known.settings, way=way))
    return session


async def in_mid_orange(way: str, *more: object) -> Session:
    """Pour 30.0 of the 58.0 g of orange."""
    session = await weighed_by(way, *more)
    await to_orange(session)
    await weigh_out.scale_reads(session, now(session), 30.0)
    assert reads(session) == ("FO", SIGNS[way] * 58.0)
    return session


async def all_poured(session: Session) -> Pot:
    while now(session).target:
        await weigh_out.on_the_mark(session, now(session))
    await weigh_out.stirred(session, now(session))
    return pots(session.known)[-1]


@ways
def test_a_pot_put_back_begins_at_zero_though_its_next_paint_was_poured_last(way: str) -> None:
    async def story() -> None:
        session = await weighed_by(way)
        await begin.start_planned(session)
        pot = await all_poured(session)
        await pot_again.correct_pot(session, pot, (Lack(), Lack(), Lack(day_count=1)))
        assert reads(session) == ("CM", SIGNS[way] * 7.7)
        await weigh_out.scale_reads(session, now(session), 3.0)
        assert now(session).poured[-1].net_g == pytest.approx(3.0)
        assert reads(session) == ("CM", SIGNS[way] * 7.7)
        await weigh_out.undo_last(session, now(session))
        assert reads(session) == ("CM", SIGNS[way] * 7.7)
        await weigh_out.scale_reads(session, now(session), 7.7)
        assert now(session).target is None

    run(story())


@ways
def test_more_of_a_pot_of_one_paint_begins_at_zero(way: str) -> None:
    async def story() -> None:
        one = Mix("one", *STAMP, "job", "orange alone", (Part("FO", 1.0),), "glaze", 50.0)
        session = await weighed_by(way, one)
        await begin.start_pot(session, one, 50.0, None)
        await pot_again.add_to_pot(session, await all_poured(session), 20.0)
        assert reads(session) == ("FO", SIGNS[way] * 20.0)

    run(story())


@ways
@pytest.mark.parametrize("shows_g", [0.0, 70.7])
def test_a_scale_begun_anew_in_mid_part_asks_for_what_is_still_wanted(
    way: str, shows_g: float
) -> None:
    """It began at zero with the cup on it, or shows cup and all: it is tared again."""

    async def story() -> None:
        session = await in_mid_orange(way)
        await weigh_out.scale_restarted(session, now(session), shows_g)
        assert reads(session) == ("FO", SIGNS[way] * 28.0)
        await weigh_out.scale_reads(session, now(session), 10.0)
        assert now(session).paint_g("FO") == pytest.approx(40.0)
        await weigh_out.scale_restarted(session, now(session), shows_g and shows_g + 10.0)
        assert reads(session) == ("FO", SIGNS[way] * 18.0)
        await weigh_out.undo_last(session, now(session))
        assert reads(session) == ("FO", SIGNS[way] * 28.0)

    run(story())


@ways
def test_what_a_restart_finds_was_in_before_the_tare(way: str) -> None:
    async def story() -> None:
        session = await in_mid_orange(way)
        restart = await weigh_out.scale_restarted(session, now(session), 80.7)
        assert restart.missed_g == pytest.approx(10.0)
        assert reads(session) == ("FO", SIGNS[way] * 18.0)
        await weigh_out.undo_last(session, now(session))
        assert reads(session) == ("FO", SIGNS[way] * 58.0)

    run(story())


def test_a_part_tared_that_still_shows_what_it_showed_goes_on() -> None:
    async def story() -> None:
        session = await in_mid_orange("each")
        assert (await weigh_out.scale_restarted(session, now(session), 30.0)).kept
        assert reads(session) == ("FO", 58.0)
        await weigh_out.on_the_mark(session, now(session))
        assert (await weigh_out.scale_restarted(session, now(session), 58.0)).kept
        assert reads(session) == ("CM", 154.7)  # and is tared for its next part as always

    run(story())


@ways
def test_the_step_says_when_to_tare_again_and_when_not(way: str) -> None:
    async def story() -> None:
        tared = {"each": words.TARED, "can": words.CAN_TARED}[way]
        not_again = {"each": words.NOT_AGAIN, "can": words.CAN_NOT_AGAIN}[way]
        session = await in_mid_orange(way)
        seen = said(on_mix(session, "weigh"))
        assert not_again in seen
        assert tared not in seen
        await weigh_out.scale_restarted(session, now(session), 0.0)
        seen = said(on_mix(session, "weigh"))
        assert tared in seen
        assert not_again not in seen

    run(story())


@ways
@pytest.mark.parametrize("first", [False, True])
def test_after_the_wrong_can_the_right_one_is_tared_again(way: str, first: bool) -> None:
    async def story() -> None:
        session = await in_mid_orange(way, WHITE)
        if first:  # the wrong can came before any of the part
            await weigh_out.undo_last(session, now(session))
        shows_g = 2.0 if way == "can" or first else 32.0
        await mishaps.wrong_can(session, now(session), "W", shows_g)
        assert now(session).strays_g == pytest.approx(2.0)
        assert reads(session) == ("FO", SIGNS[way] * (58.0 if first else 28.0))
        await weigh_out.scale_reads(session, now(session), 10.0)
        await mishaps.wrong_can(session, now(session), "W", 1.0 if way == "can" else 11.0)
        assert reads(session) == ("FO", SIGNS[way] * (48.0 if first else 18.0))

    run(story())


@ways
def test_after_a_spill_in_mid_part_the_rest_is_read_from_zero(way: str) -> None:
    """Half of 49.3 g is gone: of orange 15.0 g are left, and 29.0 or 58.0 g are wanted."""

    async def story() -> None:
        session = await in_mid_orange(way)
        await mishaps.make_smaller(session, now(session), 24.65)
        assert reads(session) == ("FO", SIGNS[way] * 14.0)
        await weigh_out.undo_last(session, now(session))
        await mishaps.pour_again(session, now(session), 24.65)
        assert reads(session)[1] == pytest.approx(SIGNS[way] * 9.65, abs=0.06)
        await weigh_out.on_the_mark(session, now(session))
        assert reads(session) == ("FO", SIGNS[way] * 43.0)

    run(story())


def test_a_part_under_way_counts_once_towards_what_the_scale_takes() -> None:
    """On a scale of 300 g the cup, 77.3 g and the whole last part of 154.7 g are 253.4 g."""

    async def story() -> None:
        session = await in_mid_orange("each")
        await session.keep(replace(session.known.settings, scale_capacity_g=300.0))
        await weigh_out.scale_reads(session, now(session), 58.0)
        await weigh_out.scale_reads(session, now(session), 100.0)
        with pytest.raises(Refused):  # 98.7 g stand there beside what the reading has
            await weigh_out.scale_reads(session, now(session), 201.4)
        await weigh_out.scale_reads(session, now(session), 154.7)
        assert now(session).target is None

    run(story())
