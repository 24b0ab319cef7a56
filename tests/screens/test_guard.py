"""A bug is a line on the screen, never the end of the app."""

import asyncio
from typing import Any

import flet as ft
import pytest

from mobile.main import Start, guard
from mobile.session.session import Session
from mobile.words import trouble
from tests.screens.headless import Screen
from tests.screens.seen import find, tap
from tests.session.shelf import Shelf


@ft.component
def root() -> Any:
    count, set_count = ft.use_state(0)
    if count == 2:
        raise ZeroDivisionError("drawn badly")

    def fail() -> None:
        raise KeyError("handled badly")

    return ft.Column(
        [
            ft.Container(
                ft.Text(str(count), key="count"),
                key="more",
                on_click=lambda: set_count(lambda n: n + 1),
            ),
            ft.Container(ft.Text("fail"), key="fail", on_click=fail),
        ]
    )


def guarded() -> tuple[Screen, Session]:
    screen = Screen(root)
    flet: Any = screen.session
    flet.start_updates_scheduler()
    start = Start(flet.page)
    session = start.stage.session = Session(Shelf(), "phone")
    guard(flet.page, start)
    return screen, session


def test_a_handler_that_fails_says_so(capfd: pytest.CaptureFixture[str]) -> None:
    async def story() -> None:
        screen, session = guarded()
        await tap(screen, "fail")
        await asyncio.sleep(0.05)
        assert session.shown.told is not None
        assert session.shown.told.said == trouble.BUG
        assert "handled badly" in capfd.readouterr().err

    asyncio.run(story())


def test_a_drawing_that_fails_says_so_and_drawing_goes_on(
    capfd: pytest.CaptureFixture[str],
) -> None:
    async def story() -> None:
        screen, session = guarded()
        await tap(screen, "more")
        assert find(screen, "count").value == "1"
        await tap(screen, "more")
        await asyncio.sleep(0.1)
        assert session.shown.told is not None
        assert session.shown.told.said == trouble.BUG
        assert "drawn badly" in capfd.readouterr().err
        await tap(screen, "more")
        await asyncio.sleep(0.1)
        assert find(screen, "count").value == "3"

    asyncio.run(story())
