"""A weigh-out without a browser: by taps, a wrong pour put right, a scale gone off."""

import asyncio
from dataclasses import replace

import pytest

from mobile import clock
from mobile.session.cans.can import can_now
from mobile.session.mix import begin, weigh_out
from mobile.session.mix.pots import pots
from mobile.session.session import Declined
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words
from tests.screens.mix_place import at_orange, keys, now, on_mix, run
from tests.screens.seen import find, has, settled, tap
from tests.screens.seen import words as said
from tests.session.ember import CAN_7, EMBER, SETTINGS, again, ember

pytestmark = pytest.mark.usefixtures("no_haste")


def test_a_planned_three_part_mix_takes_five_taps() -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session)
        taps = ["weigh next", "on the mark", "on the mark", "on the mark", "stirred"]
        for key in taps:
            await tap(screen, key)
        pot = pots(session.known)[0]
        assert (pot.ended, len(pot.poured)) == ("stirred", 3)
        assert screen.went[-1] == f"/mix/pots/{pot.id}"
        assert {"Pot 1", "232.0 g", words.AS_PLANNED, "8.3 %", "25.0 %", "66.7 %"} <= set(
            said(screen)
        )

    run(story())


def test_a_miss_costs_two_taps_and_the_digits() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh")
        await tap(screen, "reads")
        await keys(screen, "70")
        await tap(screen, "use")
        assert screen.went[-1] == "/mix/weigh"
        assert now(session).paint_g("FO") == pytest.approx(50.7)
        assert {"77.3 g", "Part 2 of 3", "Undo 50.7 g"} <= set(said(screen))

    run(story())


def test_a_step_says_at_most_five_facts() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh")
        seen = said(screen)
        facts = {"Part 2 of 3", "fluorescent orange", "77.3 g", "band 76.7 to 77.9\xa0g"}
        assert facts <= set(seen)
        assert "the cup, 19.3 g in it" in seen

    run(story())


def test_a_second_touch_of_a_wet_knuckle_logs_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        screen = on_mix(session, "weigh")
        still = clock.now_s()
        monkeypatch.setattr(clock, "now_s", lambda: still)
        await tap(screen, "on the mark")
        await tap(screen, "on the mark")
        assert len(now(session).poured) == 1

    run(story())


@pytest.mark.parametrize(
    ("typed", "verdict"),
    [
        ("81.9", "4.6 g over"),
        ("77.9", weigh_words.WITHIN),
        ("76.7", weigh_words.WITHIN),
        ("76.6", "0.7 g short"),
        ("78", "0.7 g over"),
        ("19.1", "Less than before: 19.3 g were on the scale. Read again, or it went off."),
        ("5000.1", "The scale takes 4978.6 g at most. Read again."),
    ],
)
def test_the_keypad_says_what_follows_before_it_is_used(typed: str, verdict: str) -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh/reads")
        assert weigh_words.WITHIN in said(screen)  # prefilled with the target, and fresh
        await keys(screen, typed)
        assert verdict in said(screen)
        assert bool(find(screen, "use").on_click) == ("Read again" not in verdict)

    run(story())


def test_digits_survive_the_death_of_the_phone() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh/reads")
        await keys(screen, "81.")
        await asyncio.sleep(0.4)
        screen = on_mix(again(session), "weigh")
        assert weigh_words.typed("81.") in said(screen)
        await tap(screen, "reads")
        await keys(screen, "9")
        assert "81.9 g" in said(screen)
        assert "4.6 g over" in said(screen)

    run(story())


def test_the_browsers_back_at_the_answers_leads_to_the_keypad_with_its_digits() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh/reads")
        await keys(screen, "81.9")
        await tap(screen, "use")
        assert has(screen, "answer make")
        screen.session.page.navigate("/mix/weigh/reads")  # where Back leads
        await settled(screen)
        assert not has(screen, "answer make")
        assert "81.9 g" in said(screen)
        assert len(now(session).poured) == 1

    run(story())


def test_too_much_offers_three_answers_and_back_brings_the_digits() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        screen = on_mix(session, "weigh")
        assert {
            "4.6 g over",
            "Make 250.4 g instead",
            "18.4 g more",
            "Keep it, a touch stronger in fluorescent orange",
            "no paint lost, 236.6 g in all",
            "Tip it out, start again",
            "lose 81.9 g",
        } <= set(said(screen))
        seen = " ".join(said(screen)).replace("\xa0", " ")
        assert (
            "1.5 g more of can 8, then 167.0 g of can 12. 1 pour more. Cans and scale hold it."
            in seen
        )
        assert "26.5 % fluorescent orange, where the recipe has 25.0 %." in seen
        await tap(screen, "back")
        assert screen.went[-1] == "/mix/weigh/reads"
        assert "81.9 g" in said(screen)
        await keys(screen, "7")  # the digits give way to the first key
        assert "7 g" in said(screen)

    run(story())


@pytest.mark.parametrize(
    ("answer", "next_reads", "batch_g"),
    [("make", "83.4 g", 250.4), ("keep", "236.6 g", 232.0), ("tip", "19.3 g", 232.0)],
)
def test_each_answer_is_one_tap(answer: str, next_reads: str, batch_g: float) -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        screen = on_mix(session, "weigh")
        await tap(screen, f"answer {answer}")
        assert next_reads in said(screen)
        assert now(session).batch_g == pytest.approx(batch_g)
        await tap(screen, "undo pour")
        assert "4.6 g over" in said(screen)

    run(story())


def test_a_batch_too_heavy_for_the_scale_is_no_answer() -> None:
    async def story() -> None:
        session = ember(replace(SETTINGS, scale_capacity_g=260.0))
        await at_orange(session)
        await weigh_out.scale_reads(session, now(session), 81.9)
        screen = on_mix(session, "weigh")
        assert find(screen, "answer make").on_click is None
        assert weigh_words.TOO_HEAVY in " ".join(said(screen))

    run(story())


def test_a_can_too_short_for_the_bigger_batch_is_said() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        big = replace(EMBER, planned_g=None)
        await weigh_out.undo_last(session, now(session))
        await weigh_out.give_up(session, now(session))
        with pytest.raises(Declined, match=r"orange is 48\.9 g short, its cans hold 201\.1 g"):
            await begin.start_pot(session, big, 1000.0, None)
        await begin.start_pot(session, big, 800.0, None)
        await weigh_out.scale_reads(session, now(session), 70.0)
        screen = on_mix(session, "weigh")
        assert "Can 7 is 8.8\xa0g short." in " ".join(said(screen))
        assert find(screen, "answer make").on_click is None
        make = now(session).answers(begin.takes_g(session.known, now(session))).make
        with pytest.raises(Declined):
            await weigh_out.make_more(session, now(session), make)

    run(story())


def test_the_scale_went_off_and_what_is_typed_is_explained() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh")
        await tap(screen, "went off")
        assert find(screen, "use").on_click is None
        await keys(screen, "40.7")
        assert weigh_words.cup_and_log("19.3") in said(screen)
        await tap(screen, "key delete")
        for _ in range(3):
            await tap(screen, "key delete")
        await keys(screen, "70.7")
        assert weigh_words.missed("30.0", "fluorescent orange") in said(screen)
        await tap(screen, "use")
        assert now(session).paint_g("FO") == pytest.approx(30.0)
        assert {"98.7 g", "Undo 30.0 g"} <= set(said(screen))

    run(story())


@pytest.mark.parametrize(
    ("cup_g", "typed", "meaning"),
    [
        (21.4, "19.3", weigh_words.kept_count("19.3")),
        (None, "0", weigh_words.zeroed("19.3")),
        (None, "40.7", weigh_words.log_believed("19.3")),
    ],
)
def test_what_a_reading_means_after_the_scale_went_off(
    cup_g: float | None, typed: str, meaning: str
) -> None:
    async def story() -> None:
        session = ember(replace(SETTINGS, cup_g=cup_g))
        await at_orange(session)
        screen = on_mix(session, "weigh/scale")
        await keys(screen, typed)
        assert meaning in said(screen)

    run(story())


def test_the_cans_of_the_day_are_asked_for_once() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        screen = on_mix(session, "weigh")
        await tap(screen, "stirred all")
        assert not has(screen, "stirred all")
        assert not now(session).poured

    run(story())


def test_all_in_says_the_number_and_what_each_can_has_left() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.on_the_mark(session, now(session))
        await weigh_out.on_the_mark(session, now(session))
        screen = on_mix(session, "weigh")
        seen = said(screen)
        assert {"Pot 1", "ember wing", "58.0 g", "planned 58.0 g, within 0.6 g"} <= set(seen)
        left_g = can_now(session.known, CAN_7).balance.should_be_g
        assert left_g == pytest.approx(143.1)
        assert "can 7 has 143.1 g left" in seen

    run(story())
