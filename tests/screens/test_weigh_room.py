"""What a weigh-out keeps on the screen: what stands over a keypad, and what a step leaves."""

import asyncio

import pytest

from mobile.screens.mix.weigh_out.drawn import layers
from mobile.screens.mix.weigh_out.in_short import in_short
from mobile.screens.mix.weigh_out.room import KEYS_LEAST, keys_high, mishap_figure, mishap_keys_high
from mobile.screens.mix.weigh_out.start_form import batch_of
from mobile.screens.mix.weigh_out.step_room import Said, step_room
from mobile.session.mix.mishaps import wrong_can
from mobile.session.mix.scale import check_scale
from mobile.session.view import View
from mobile.words import advice as words
from mobile.words import mix as mix_words
from mobile.words import weigh_out as weigh_words
from tests.screens.mix_place import now, on_mix
from tests.screens.seen import words as said
from tests.screens.test_mishaps import at_orange
from tests.session import moth_cellar as job

PHONES = ((412.0, 915.0), (360.0, 640.0), (320.0, 568.0))
STEP = Said("Part 2 of 3", "77.3", "fluorescent orange", "the scale should read", "band 76.7 to")


@pytest.mark.parametrize(("width", "height"), PHONES)
def test_figure_and_keys_fit_a_phone(width: float, height: float) -> None:
    view = View(width, height)
    assert KEYS_LEAST <= keys_high(view, "81.9") < height / 2
    assert KEYS_LEAST <= mishap_keys_high(view, "68.6") < height / 2
    assert mishap_figure(view) >= 62
    assert step_room(STEP, view).figure_most >= 72


def test_the_cup_stands_beside_the_buttons_where_a_row_for_it_is_too_much() -> None:
    usual, small = (step_room(STEP, View(*size)) for size in PHONES[:2])
    assert not usual.close
    assert usual.cup.labels
    assert small.close
    assert not small.cup.labels


def test_a_wrong_can_s_layer_bears_its_number() -> None:
    async def story() -> None:
        session = await at_orange()
        name = "standard aubergine"
        paint = next(one.id for one in session.known.paints if one.name == name)
        await wrong_can(session, now(session), paint, 24.3)
        labels = [one.label for one in layers(session.known, now(session))]
        assert mix_words.can(6) in labels

    asyncio.run(story())


def test_what_is_worth_knowing_stands_over_the_keypad_in_short() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        ember = job.mix(session.known, "ember wing")

        def short(grams: str) -> tuple[str, bool]:
            batch = batch_of(session.known, ember, grams, "", View())
            one = in_short(session.known, ember, batch)
            return one.said, one.caution

        assert short("") == ("", False)
        assert short("232") == (words.at_most("851 g"), False)
        assert short("900") == (words.at_most("851 g"), True)
        await check_scale(session, 200.0, 198.0)
        assert short("900") == (f"{words.at_most('851 g')} {words.off('2.0')}", True)
        seen = said(on_mix(session, f"{ember.id}/weigh"))
        assert any(words.off("2.0") in one for one in seen)

    asyncio.run(story())


def test_a_phone_on_its_side_has_all_corners() -> None:
    async def story() -> None:
        session = await at_orange()
        for size in ((457.0, 412.0), (284.0, 320.0), (412.0, 915.0)):
            seen = said(on_mix(session, "weigh", View(*size)))
            assert {weigh_words.LEAVE, weigh_words.WENT_OFF, "Part 2 of 3"} <= set(seen)

    asyncio.run(story())
