"""A bug is a line on the screen, never the end of the app."""

import asyncio
import traceback
from typing import Any

import flet as ft
import pytest

from mobile.main import Root, Start, guard, main, show
from mobile.session.session import Session
from mobile.words import places, trouble
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
            ft.Container(ft.Text("less"), key="less", on_click=lambda: set_count(0)),
            ft.Container(ft.Text("fail"), key="fail", on_click=fail),
        ]
    )


def started() -> tuple[Screen, Start]:
    screen = Screen(root)
    flet: Any = screen.session
    flet.start_updates_scheduler()
    start = Start(flet.page)
    start.stage.session = Session(Shelf(), "phone")
    guard(flet.page, start)
    return screen, start


def guarded() -> tuple[Screen, Session]:
    screen, start = started()
    assert start.stage.session is not None
    return screen, start.stage.session


def test_a_handler_that_fails_says_so(capfd: pytest.CaptureFixture[str]) -> None:
    async def story() -> None:
        screen, session = guarded()
        await tap(screen, "fail")
        await asyncio.sleep(0.05)
        assert session.shown.told is not None
        assert session.shown.told.said == trouble.BUG
        assert "handled badly" in capfd.readouterr().err

    asyncio.run(story())


class Stubborn:
    """A page that can't draw an app, as Flet's raises in the middle of its first drawing."""

    def __init__(self) -> None:
        self.drawn: list[str] = []
        self.views: list[ft.View] = []

    def render(self, _component: object, start: Start) -> None:
        if start.stage.session:
            raise ZeroDivisionError("drawn badly")
        self.drawn.append(start.stage.why)


def test_a_book_that_can_not_be_drawn_is_said_and_can_be_saved(
    capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    saved: list[str] = []
    monkeypatch.setattr("mobile.main.device.save_file", lambda name, *_: saved.append(name))

    async def story() -> None:
        page: Any = Stubborn()
        start = Start(page)
        start.stage.session = Session(Shelf(), "phone")
        show(page, start)
        assert page.drawn == [places.UNSHOWABLE]
        assert "drawn badly" in capfd.readouterr().err

        @ft.component
        def said() -> Any:
            return Root(start)

        await tap(Screen(said), "save")
        assert saved == ["duskcoat.json"]

    asyncio.run(story())


def test_what_fails_as_often_as_it_is_drawn_gives_way_to_a_word(
    capfd: pytest.CaptureFixture[str],
) -> None:
    async def story() -> None:
        screen, start = started()
        for _tap in range(2):
            await tap(screen, "more")
        await asyncio.sleep(0.1)
        assert start.stage.session is not None  # once may be chance
        await tap(screen, "less")
        for _tap in range(2):
            await tap(screen, "more")
        await asyncio.sleep(0.1)
        assert start.stage.session is None
        assert start.stage.why == places.UNSHOWABLE
        assert "drawn badly" in capfd.readouterr().err

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


def test_a_start_that_fails_is_told_by_the_page_and_not_by_flet(
    capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []
    monkeypatch.setattr("mobile.main.device.failed", told.append)

    async def bad(_start: Start) -> None:
        raise ZeroDivisionError("opened badly")

    monkeypatch.setattr(Start, "open", bad)

    async def story() -> None:
        page: Any = Screen(root).session.page
        try:
            await main(page)
        except ZeroDivisionError as bug:  # as Flet's own caller of `main` does
            page.session.error(f"{bug}\n{traceback.format_exc()}")

    asyncio.run(story())
    assert told == ["ZeroDivisionError: opened badly"]
    assert "opened badly" in capfd.readouterr().err
