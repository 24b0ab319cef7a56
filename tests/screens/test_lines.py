"""What was told stands over the places, but never in a number's way."""

import asyncio

import flet as ft
import pytest

from mobile.screens.lines import ToldLine
from mobile.session.session import SESSION, Session
from tests.screens.headless import Screen
from tests.screens.seen import words as said
from tests.session.shelf import Shelf


@pytest.mark.parametrize(
    ("room_needed", "bad", "stands"),
    [(False, False, True), (True, False, False), (True, True, True)],
    ids=["usual", "a number needs the room", "bad news always"],
)
def test_what_was_told_gives_way_to_a_number(room_needed: bool, bad: bool, stands: bool) -> None:
    async def story() -> None:
        session = Session(Shelf(), "phone")
        session.tell("Can 7 is kept.", bad=bad)

        @ft.component
        def root() -> ft.Control:
            return SESSION(session, lambda: ToldLine(room_needed, False))

        assert ("Can 7 is kept." in said(Screen(root))) == stands

    asyncio.run(story())
