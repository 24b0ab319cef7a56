"""What a scale shows after a cup was knocked over, and what may be read from it."""

from collections.abc import Awaitable, Callable
from dataclasses import replace

import pytest

from core.errors import Refused
from mobile.session.mix import begin, mishaps, pot_again, weigh_out
from mobile.session.mix.pots import pots
from mobile.session.session import Session
from mobile.store.pot import Pot
from mobile.words import mishaps as words
from mobile.words import weigh_out as weigh_words
from tests.screens.mix_place import on_mix
from tests.screens.seen import words as said
from tests.session.ember import ember
from tests.session.weighing import now, reads, run, to_orange

Verb = Callable[[Session, Pot, float], Awaitable[None]]


def test_a_reading_as_logged_or_a_step_above_is_nothing_lost() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        for reads_g in (30.1, 40.3, 55.7, 77.3):  # sums of these are binary dust
            await weigh_out.scale_reads(session, now(session), reads_g)
            for above_g in (0.0, 0.1):
                found = mishaps.left_of(now(session), round(reads_g + above_g, 1))
                assert found.lost_g == 0
                assert found.left_ratio == 1
            with pytest.raises(Refused):
                mishaps.left_of(now(session), round(reads_g + 0.2, 1))

    run(story())


async def on_again(cup_g: float | None) -> Session:
    """Put a whole pot of 232.0 g back for 60.0 g more: the scale is tared with it."""
    session = ember()
    await session.keep(replace(session.known.settings, cup_g=cup_g))
    await begin.start_planned(session)
    while now(session).target:
        await weigh_out.on_the_mark(session, now(session))
    await weigh_out.stirred(session, now(session))
    await pot_again.add_to_pot(session, pots(session.known)[-1], 60.0)
    return session


@pytest.mark.parametrize("cup_g", [21.4, None])
@pytest.mark.parametrize("verb", [mishaps.pour_again, mishaps.make_smaller])
def test_a_tared_pot_that_was_knocked_over_begins_anew(cup_g: float | None, verb: Verb) -> None:
    """100 g are left and the scale stands at -132.0, which nobody can type."""

    async def story() -> None:
        session = await on_again(cup_g)
        screen = on_mix(session, "weigh/spilt")
        asked = words.CUP_NET if cup_g is None else words.CUP_ANEW
        assert asked in said(screen)
        await verb(session, now(session), 100.0 + (cup_g or 0.0))
        assert now(session).in_cup_g == pytest.approx(100.0)
        shown_g = cup_g + 100.0 if cup_g else 0.0
        tared = weigh_words.WITH_CUP if cup_g else weigh_words.TARED
        assert tared in said(on_mix(session, "weigh"))
        while target := now(session).target:
            assert target.before_g == pytest.approx(shown_g, abs=0.1)
            assert target.reads_g > shown_g
            shown_g = target.reads_g
            await weigh_out.scale_reads(session, now(session), shown_g)
        wanted_g = now(session).batch_g
        assert now(session).in_cup_g == pytest.approx(wanted_g, abs=0.3)
        if cup_g:  # it shows cup and all: a second time it needs no new beginning
            found = mishaps.left_of(now(session), shown_g - 50.0)
            assert found.lost_g == pytest.approx(50.0, abs=0.1)

    run(story())


def test_a_scale_that_began_at_zero_with_the_cup_on_it_does_so_too() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.scale_restarted(session, now(session), 0.0)
        with pytest.raises(Refused):
            mishaps.left_of(now(session), 21.0)  # the cup alone weighs more
        await mishaps.pour_again(session, now(session), 61.4)
        assert now(session).in_cup_g == pytest.approx(40.0)
        target = now(session).target
        assert target is not None
        assert target.before_g == pytest.approx(61.4)
        await weigh_out.undo_last(session, now(session))
        assert reads(session) == ("CM", 154.7)

    run(story())


def test_what_was_kept_over_stays_kept_in_a_smaller_pot() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        await weigh_out.scale_reads(session, now(session), 25.0)  # 19.3 g were wanted
        await weigh_out.keep_over(session, now(session), "FY")
        await weigh_out.on_the_mark(session, now(session))
        await mishaps.make_smaller(session, now(session), 41.5)
        assert now(session).over is None
        target = now(session).target
        assert target is not None
        assert target.paint == "CM"

    run(story())


@pytest.mark.parametrize(
    ("at", "asks"),
    [
        ("spilt", words.CUP_BACK),
        ("wrong", words.WHICH),
        ("scale", weigh_words.PUT_BACK),
    ],
)
def test_a_mishap_can_be_told_when_all_is_in(at: str, asks: str) -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        while now(session).target:
            await weigh_out.on_the_mark(session, now(session))
        assert words.SPILT in said(on_mix(session, "weigh"))
        assert asks in said(on_mix(session, f"weigh/{at}"))

    run(story())
