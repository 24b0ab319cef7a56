"""Mix's list, recipes and pots without a browser; every screen at every size."""

import asyncio
from dataclasses import replace

import flet as ft
import pytest

from core.units import System
from mobile import theme as t
from mobile.session.mix import weigh_out
from mobile.session.mix.pots import pots, under_way
from mobile.session.session import Session
from mobile.session.view import View
from mobile.words import looks
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words
from tests.screens.mix_place import at_orange, keys, now, on_mix, run
from tests.screens.seen import controls, find, has, shown, tap, write
from tests.screens.seen import words as said
from tests.session.ember import EMBER, SETTINGS, again, ember
from tests.session.shelf import Shelf

pytestmark = pytest.mark.usefixtures("no_haste")


def test_leaving_keeps_the_pot_and_the_list_carries_on() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh")
        await tap(screen, "leave")
        assert words.carry_on("ember wing", "part 2 of 3") in said(screen)
        await tap(screen, "give up")
        assert under_way(session.known) is None
        await session.undo()
        assert under_way(session.known) is not None

    run(story())


def test_other_grams_are_two_taps_and_the_digits_more() -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session)
        await tap(screen, "ember wing")
        assert {"19.3 g", "58.0 g", "154.7 g", "can 8", "can 7", "can 12"} <= set(said(screen))
        await keys(screen, "100")
        assert {"8.3 g", "25.0 g", "66.7 g"} <= set(said(screen))
        await tap(screen, "weigh")
        assert now(session).batch_g == pytest.approx(100.0)
        assert screen.went[-1] == "/mix/weigh"

    run(story())


@pytest.mark.parametrize(
    ("grams", "why"),
    [
        ("6000", "With this cup the scale takes 4978.6 g. Weigh it in more than one pot."),
        ("0.1", "Grams: from 1.0 g to 100000.0 g"),
        ("0.5", "Grams: from 1.0 g to 100000.0 g"),
    ],
)
def test_grams_that_cannot_be_weighed_are_refused_in_words(grams: str, why: str) -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session, "ember/weigh")
        await keys(screen, grams)
        assert why in said(screen)
        assert find(screen, "weigh").on_click is None

    run(story())


def test_the_cups_weight_is_typed_once_and_remembered() -> None:
    async def story() -> None:
        session = ember(replace(SETTINGS, cup_g=None))
        screen = on_mix(session, "ember/weigh")
        assert words.cup_line(None) in said(screen)
        await tap(screen, "choose cup")
        await keys(screen, "21.4")
        await tap(screen, "weigh")
        assert now(session).started.cup_g == pytest.approx(21.4)
        assert session.known.settings.cup_g == pytest.approx(21.4)

    run(story())


def test_another_pot_on_the_scale_is_carried_on_first() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "ember/weigh")
        assert words.ONE_SCALE in said(screen)
        assert not has(screen, "weigh")

    run(story())


def test_an_empty_job_says_what_to_do_first() -> None:
    async def story() -> None:
        session = Session(Shelf(), "phone")
        screen = on_mix(session)
        assert words.EMPTY in said(screen)
        await tap(screen, "demo")
        assert words.title(10) in said(screen)

    run(story())


def test_a_new_recipe_of_a_known_and_a_new_paint() -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session, "new")
        assert find(screen, "keep").on_click is None
        await write(screen, "name", "moss wing")
        await tap(screen, "suggest fluorescent yellow")
        await write(screen, "parts 0", "1")
        await write(screen, "paint 1", "moss green")
        await write(screen, "parts 1", "3")
        assert {"25.0 %", "75.0 %"} <= set(said(screen))
        await tap(screen, "looks 1")
        await tap(screen, f"{looks.BY_DAY} #57e03c")
        await tap(screen, "keep")
        mix = session.known.job_mixes[-1]
        assert (mix.name, [part.parts_count for part in mix.parts]) == ("moss wing", [1.0, 3.0])
        moss = session.known.paints[-1]
        assert (moss.name, moss.day, moss.lamp) == ("moss green", "#57e03c", "")
        assert mix.parts[0].paint == "FY"
        assert looks.two_lights(words.mostly("moss wing", "moss green"), "#57e03c", "") in said(
            screen
        )

    run(story())


def test_a_recipe_says_what_is_wrong_at_the_field() -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session, "ember")
        await write(screen, "parts 1", "0")
        assert find(screen, "parts 1").error == weigh_words.SENTENCES["parts_count"]
        await write(screen, "parts 1", "one")
        assert find(screen, "parts 1").error == "Parts: type a number"
        assert find(screen, "keep").on_click is None
        await write(screen, "parts 1", "1")
        await write(screen, "paint 1", "Fluorescent  Orange")
        assert find(screen, "paint 1").error == words.twice("Fluorescent  Orange")
        await write(screen, "paint 1", "fluorescent yellow")
        await write(screen, "planned", "0")
        assert find(screen, "planned").error
        assert find(screen, "keep").on_click is None

    run(story())


def test_a_typed_recipe_outlives_the_phone() -> None:
    async def story() -> None:
        session = ember()
        screen = on_mix(session, "new")
        await write(screen, "name", "moss wing")
        await write(screen, "parts 0", "2.")
        await asyncio.sleep(0.4)
        screen = on_mix(again(session), "new")
        assert find(screen, "name").value == "moss wing"
        assert find(screen, "parts 0").value == "2."

    run(story())


def test_an_unchanged_recipe_keeps_its_paints_as_they_are() -> None:
    async def story() -> None:
        session = ember()
        before = session.known.paints
        screen = on_mix(session, "ember")
        await tap(screen, "keep")
        assert session.known.paints == before
        assert session.known.job_mixes[0].parts == EMBER.parts

    run(story())


def test_a_pot_whose_end_was_taken_back_is_carried_on() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        await weigh_out.stirred(session, now(session))
        screen = on_mix(session, f"pots/{pots(session.known)[0].id}")
        await session.undo()
        await asyncio.sleep(0.1)
        await tap(screen, "carry on")
        assert screen.went[-1] == "/mix/weigh"

    run(story())


@pytest.mark.parametrize(
    ("at", "step"),
    [
        ("weigh/how", "21.4 g + 19.3 g + 58.0 g"),
        ("ember/how", "3 ÷ 12"),
        ("ember/weigh/how", "3 ÷ 12 × 232.0 g"),
    ],
)
def test_each_figure_says_how(at: str, step: str) -> None:
    async def story() -> None:
        session = ember()
        if at.startswith("weigh"):
            await at_orange(session)
            await weigh_out.scale_restarted(session, now(session), 40.7)
        screen = on_mix(session, at)
        sheet = [one.value for one in shown(screen.told()) if isinstance(one, ft.Text)]
        assert step in sheet

    run(story())


def test_no_fact_at_the_bucket_is_under_26_dp() -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh")
        sizes = {
            one.value: one.style.size or 0
            for one in controls(screen)
            if isinstance(one, ft.Text) and one.style
        }
        for fact in ("fluorescent orange", "band 76.7 to 77.9\xa0g"):
            assert sizes[fact] >= t.FACT == 26

    run(story())


@pytest.mark.parametrize("width", [320.0, 412.0, 752.0, 1280.0])
@pytest.mark.parametrize("text_ratio", [1.0, 1.5, 2.0])
@pytest.mark.parametrize(
    "at", ["", "new", "ember", "ember/weigh", "weigh", "weigh/reads", "weigh/scale", "weigh/how"]
)
def test_every_screen_stands_at_every_width_and_text_size(
    at: str, width: float, text_ratio: float
) -> None:
    async def story() -> None:
        session = ember()
        if at.startswith("weigh"):
            await at_orange(session)
        view = View(width, 800.0, text_ratio, System.METRIC)
        screen = on_mix(session, at, view)
        assert len(said(screen)) > 3

    run(story())
