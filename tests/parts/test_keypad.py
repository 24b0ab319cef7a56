"""The keypad: what stands there after a key, and each touch once."""

import asyncio
from typing import Any

import flet as ft
import pytest
from hypothesis import given
from hypothesis import strategies as st

from mobile.parts.keypad import (
    DELETE,
    MOST,
    POINT,
    Keypad,
    Typing,
    action_size,
    digit_size,
    pad_height,
    press,
)
from mobile.parts.measure import text_width
from mobile.parts.tap import Action
from tests.screens.headless import Screen

signs = st.sampled_from([*"0123456789", POINT, DELETE])


@given(st.lists(signs, max_size=30), st.booleans())
def test_whatever_is_pressed_reads_as_a_number_or_nothing(keys: list[str], fresh: bool) -> None:
    typing = Typing("77.3", fresh)
    for key in keys:
        typing = press(typing, key)
        assert len(typing.text) <= MOST
        assert not typing.text or float(typing.text) >= 0
        assert not typing.text.startswith("0") or typing.text[:2] in {"0", "0."}


def test_a_fresh_reading_gives_way_to_the_first_key_and_a_touched_one_does_not() -> None:
    assert press(Typing("77.3", fresh=True), "8") == Typing("8")
    assert press(Typing("77.3"), "8") == Typing("77.38")
    assert press(Typing("77.3", fresh=True), DELETE) == Typing("77.")
    assert press(Typing("", fresh=True), POINT) == Typing("0.")


def test_each_touch_sends_its_sign_once_and_the_keys_are_drawn_once() -> None:
    heard: list[str] = []

    @ft.component
    def Bench() -> ft.Control:  # noqa: N802
        typing, set_typing = ft.use_state(Typing(""))

        def pressed(sign: str) -> None:
            heard.append(sign)
            set_typing(lambda now: press(now, sign))

        return ft.Column([Keypad(Action(f"Use {typing.text} g", None), pressed, 380.0)])

    async def run() -> None:
        screen = Screen(Bench)
        seven = screen.find("key 7")
        for sign in ("7", "8", ".", "9", "delete"):
            await screen.fire(screen.find(f"key {sign}"))
        assert heard == ["7", "8", ".", "9", "delete"]
        assert screen.find("key 7") is seven
        assert "Use 78.\u00a0g" in words(screen)

    asyncio.run(run())


def words(screen: Screen) -> list[str]:
    return [one.value for one in screen.session.index.values() if isinstance(one, ft.Text)]


@pytest.mark.parametrize("ratio", [1.0, 1.5, 2.0])
@pytest.mark.parametrize(("width", "page"), [(288.0, 568.0), (380.0, 915.0)])
def test_keys_are_large_enough_for_a_thumb(width: float, page: float, ratio: float) -> None:
    @ft.component
    def Bench() -> ft.Control:  # noqa: N802
        action = Action("Next can", print)
        return ft.Column([Keypad(action, print, width, pad_height(page), ratio)])

    async def run() -> list[Any]:
        screen = Screen(Bench)
        return [screen.find(f"key {sign}") for sign in (*"0123456789", ".", "delete")]

    faces = asyncio.run(run())
    assert min(min(face.width, face.height) for face in faces) >= 48
    for face in faces:
        size = digit_size(face.width, face.height, ratio) * ratio
        assert text_width("0", size) <= face.width


def test_the_main_action_keeps_its_words_whole_on_a_narrow_phone() -> None:
    key = (288.0 - 24) / 4
    for said in ("Use 81.9\u00a0g", "Next can", "Use 1234.5\u00a0g"):
        size = action_size(Action(said), key)
        assert max(text_width(word, size) for word in said.split(" ")) <= key - 6
