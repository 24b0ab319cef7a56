"""What is said when a reading can't be, what an answer takes, and where it leads."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from core.mixing.over_pour import Make
from mobile import clock
from mobile.session.cans.prices import prices_per_g
from mobile.session.how import how_of
from mobile.session.mix import weigh_out
from mobile.session.mix.begin import start_pot, takes_g
from mobile.session.mix.cups import cups_of, even, fill_cups
from mobile.session.mix.leftovers import Back, weigh_back
from mobile.session.mix.mishaps import pour_again
from mobile.session.mix.pace import more_pours, pace_s, pours_again, tens_s
from mobile.session.session import Declined
from mobile.session.view import View
from mobile.store.entries import StoodOpen
from mobile.words import mishaps
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words
from tests.screens.done_pot import again, ember_done
from tests.screens.mix_place import at_orange, keys, now, on_mix
from tests.screens.seen import find, has, tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job
from tests.session.ember import EMBER, SETTINGS, ember

pytestmark = pytest.mark.usefixtures("no_haste")


async def typed(at: str, reads: str) -> str:
    """Type a reading on a screen of ember wing, 19.3 g in its 21.4 g cup; give what is said."""
    session = ember()
    await start_pot(session, EMBER, 232.0, 21.4)
    await weigh_out.on_the_mark(session, now(session))
    screen = on_mix(session, f"weigh/{at}")
    await keys(screen, reads)
    return " ".join(said(screen)).replace("\xa0", " ")


@pytest.mark.parametrize(
    ("reads", "meaning"),
    [
        ("15", "below the cup's own 21.4 g"),
        ("30", "Cup and paint weigh 40.7 g"),
        ("40.7", weigh_words.cup_and_log("19.3")),
    ],
)
def test_after_the_scale_went_off_a_reading_is_held_to_the_cup(reads: str, meaning: str) -> None:
    assert meaning in asyncio.run(typed("scale", reads))


def test_a_cup_that_was_knocked_over_weighs_no_less_than_itself() -> None:
    async def story() -> None:
        session = ember()
        await start_pot(session, EMBER, 232.0, 21.4)
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.scale_restarted(session, now(session), 40.7)
        screen = on_mix(session, "weigh/spilt")
        await keys(screen, "10")
        assert "below the cup's own 21.4 g" in " ".join(said(screen)).replace("\xa0", " ")
        assert words.cup_counted(21.4) in said(on_mix(session, "weigh/scale"))

    asyncio.run(story())


def test_a_reading_below_the_last_leads_to_what_may_have_happened() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh/reads")
        assert not has(screen, "to spilt")
        await keys(screen, "12")
        await tap(screen, "to spilt")
        assert screen.went[-1] == "/mix/weigh/spilt"

    asyncio.run(story())


def test_too_much_that_was_the_wrong_can_is_taken_back_and_asked_for() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        screen = on_mix(session, "weigh")
        await tap(screen, "wrong can")
        assert screen.went[-1] == "/mix/weigh/wrong"
        assert not now(session).paint_g("FO")
        assert mishaps.WHICH in said(screen)

    asyncio.run(story())


def test_a_share_that_sank_is_called_weaker() -> None:
    assert weigh_words.stronger(0.98, "orange") == "Keep it, hardly weaker in orange"
    assert weigh_words.stronger(1.06, "orange") == "Keep it, a touch stronger in orange"


def test_an_answer_says_its_pours_and_how_long_they_took_here(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        at_s = iter(range(0, 100_000, 20))  # each stamp 20 s after the last
        monkeypatch.setattr(clock, "now_s", lambda: 1.9e9 + next(at_s))
        session = ember()
        assert pace_s(session.known) is None
        await start_pot(session, EMBER, 232.0, None)
        for _ in range(3):
            await weigh_out.on_the_mark(session, now(session))
        took_s = pace_s(session.known)
        assert took_s is not None
        assert took_s % 20 == 0
        assert took_s >= 20
        assert tens_s(2, took_s) == pytest.approx(2 * took_s)
        pot = now(session)
        assert pours_again(pot) == 3
        made = Make(
            1.1,
            255.2,
            tuple(replace(p, net_g=p.net_g * 0.1) for p in pot.plan.portions),
            23.2,
            None,
            True,
            (),
        )
        assert more_pours(pot, made) == 3

    asyncio.run(story())


def test_the_working_says_money_as_the_cards_do() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, 21.4)
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.scale_reads(session, now(session), 81.9)
        pot = now(session)
        three = pot.answers(takes_g(session.known, pot), prices_per_g(session.known, pot))
        steps = how_of("", "", three.working, View()).steps
        values = {step.name: step.value for step in steps}
        assert values["It costs more by"] == "0.47"  # over.make.extra_minor, in hundredths
        assert values["It loses"] == "3.40"  # over.tip.lost_minor

    asyncio.run(story())


def test_a_pot_of_another_book_is_said_to_be_none() -> None:
    async def story() -> None:
        assert words.NO_POT in said(on_mix(ember(), "pots/no-such-pot"))

    asyncio.run(story())


def test_a_scale_takes_its_capacity_less_the_cup_that_was_tared_on_it() -> None:
    async def story() -> None:
        session = ember(replace(SETTINGS, scale_capacity_g=300.0))
        await start_pot(session, EMBER, 232.0, 60.0)
        await weigh_out.on_the_mark(session, now(session))
        with pytest.raises(Refused):
            await weigh_out.scale_reads(session, now(session), 240.5)  # and 60 g of cup
        await weigh_out.scale_reads(session, now(session), 140.0)
        screen = on_mix(session, "weigh")
        assert find(screen, "answer keep").on_click is None  # 120.7 and the medium: beyond 240 g
        assert find(screen, "answer make").on_click is None
        assert find(screen, "answer tip").on_click is not None
        with pytest.raises(Declined):
            await weigh_out.keep_over(session, now(session), "FO")

    asyncio.run(story())


def test_a_reading_beyond_what_the_cans_hold_is_questioned() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh/reads")
        await keys(screen, "269")
        assert weigh_words.more_than_cans("201.1 g") in said(screen)
        assert find(screen, "use").on_click is not None  # the can may have held more

    asyncio.run(story())


def test_what_went_over_stands_in_the_account() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.on_the_mark(session, now(session))
        await pour_again(session, now(session), 40.0)  # of 77.3
        while now(session).target:
            await weigh_out.on_the_mark(session, now(session))
        pot = now(session)
        await weigh_out.stirred(session, pot)
        shown = said(on_mix(session, f"pots/{pot.id}/went"))
        assert {"Poured", "269.3 g", "Knocked over", "37.3 g", "232.0 g"} <= set(shown)

    asyncio.run(story())


def test_only_what_held_paint_dries() -> None:
    async def story() -> None:
        session, pot = await ember_done()
        await fill_cups(session, pot, even(pot, 2))
        cups = cups_of(session.known, pot)
        left = (("", 0.0), *((cup.id, 10.0) for cup in cups))
        await weigh_back(session, again(session, pot), Back(left, 3600.0))
        assert {one.cup for one in session.known.of(StoodOpen)} == {cup.id for cup in cups}

    asyncio.run(story())
