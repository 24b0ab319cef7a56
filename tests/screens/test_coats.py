"""Coats without a browser: what stands there at which minute, and what a tap does."""

import asyncio
from collections.abc import Coroutine
from dataclasses import replace
from typing import Any

import flet as ft
import pytest

from mobile.screens.coats.place import CoatsPlace
from mobile.session.coats.standing import coats_now
from mobile.session.job.jobs import set_settings, settings_now
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.records import Settings
from mobile.words import coats as words
from mobile.words import places
from tests.screens.seen import OnPlace, find, finish_words, has, settled, shown, tap
from tests.screens.seen import words as said
from tests.session import ember
from tests.session.shelf import Shelf
from tests.session.two_walls import (
    JOB,
    PROMOTED,
    READ,
    WALL_1,
    Watch,
    finished,
    hour_s,
    two_walls,
)


def run(story: Coroutine[Any, Any, None]) -> None:
    asyncio.run(story)


def test_an_empty_job_says_what_to_do_first() -> None:
    async def story() -> None:
        screen = OnPlace(Session(Shelf(), "phone"), CoatsPlace, "/coats")
        assert words.NO_WALLS in said(screen)
        await tap(screen, "measure")
        assert screen.went == ["/walls/new"]
        bare = JOB.__class__("job", 1.0, "phone", "Moth Cellar")
        settings = Settings("settings", 1.0, "phone", job="job")
        screen = OnPlace(Session(Shelf(bare, WALL_1, settings), "phone"), CoatsPlace, "/coats")
        assert words.NO_STEPS in said(screen)
        await tap(screen, "first step")
        assert screen.went == ["/job/steps/new"]

    run(story())


def test_the_demo_is_one_tap_away() -> None:
    async def story() -> None:
        screen = OnPlace(Session(Shelf(), "phone"), CoatsPlace, "/coats")
        await tap(screen, "demo")
        assert "Moth Cellar, north stair" in said(screen)

    run(story())


def test_each_wall_says_its_hour_or_that_it_is_ready(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        screen = OnPlace(two_walls(*READ, *PROMOTED), CoatsPlace, "/coats")
        seen = said(screen)
        assert "now 12:54" in seen
        assert seen.index("Wall 2") < seen.index("Wall 1")
        assert [one for one in seen if one in {"Ready", "since 12:15"}] == [
            words.READY,
            "since 12:15",
        ]
        assert {"13:05", "in 11 min", words.READY_AT, "15 min"} <= set(seen)
        assert {"30 min", "15:45", words.BEFORE} <= set(seen)  # 11:45 + 4 h
        assert "Wall 2 dries until 12:15, too late from 15:45" in seen
        assert places.NO_RING in seen
        assert finish_words(screen) == "Base 1 finished / Wall 2"

    run(story())


def test_one_tap_finishes_what_is_planned_and_undo_takes_it_back(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        session = two_walls(*READ, *PROMOTED)
        screen = OnPlace(session, CoatsPlace, "/coats")
        await tap(screen, "finish")
        assert finish_words(screen) == "Wall 1 is ready at 13:05 / " + words.TAP_A_WALL
        assert not find(screen, "finish").on_click
        assert not has(screen, "earlier")
        await session.undo()
        await settled(screen)
        assert finish_words(screen) == "Base 1 finished / Wall 2"

    run(story())


def test_another_wall_takes_two_taps_and_says_what_speaks_against_it(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        session = two_walls(*READ, *PROMOTED)
        screen = OnPlace(session, CoatsPlace, "/coats")
        await tap(screen, "wall Wall 1")
        assert finish_words(screen) == "Base 2 finished / Wall 1"
        assert words.STILL_WET in said(screen)
        await tap(screen, "wall Wall 1")  # a second tap lets go
        assert finish_words(screen) == "Base 1 finished / Wall 2"
        await tap(screen, "wall Wall 1")
        await tap(screen, "finish")
        coat = coats_now(session.known)[0].coat
        assert coat is not None
        assert (coat.step, coat.finished_at_s) == ("base2", hour_s(12, 54))

    run(story())


def test_i_forgot_and_done_in_five(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        session = two_walls(*READ, *PROMOTED)
        screen = OnPlace(session, CoatsPlace, "/coats")
        await tap(screen, "earlier")
        await tap(screen, "earlier")
        assert finish_words(screen) == "Base 1 finished / Wall 2, at 12:44"
        for _ in range(3):
            await tap(screen, "later")
        assert finish_words(screen) == "Base 1 finished / Wall 2, at 12:59"
        await tap(screen, "finish")
        assert {"ends at", "12:59", "in 5 min", "base 1 goes on"} <= set(said(screen))
        assert finish_words(screen).startswith("Wall 1 is ready at 13:05")

    run(story())


def test_still_tacky_gives_ten_minutes_and_shows_both_waits(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        screen = OnPlace(two_walls(*READ, *PROMOTED), CoatsPlace, "/coats")
        await tap(screen, "tacky Wall 2")
        seen = said(screen)
        assert "13:04" in seen
        assert {"30 min", words.LABEL, "1 h 19 min", words.WITH_TACKY} <= set(seen)
        assert finish_words(screen).startswith("Wall 2 is ready at 13:04")

    run(story())


def test_time_passes_on_the_screen_by_itself(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        watch = Watch(monkeypatch, hour_s(13, 4) + 59.9)
        screen = OnPlace(two_walls(*READ, *PROMOTED), CoatsPlace, "/coats")
        assert "13:05" in said(screen)
        watch.at_s = hour_s(13, 4) + 59.95
        await asyncio.sleep(0.02)
        watch.at_s = hour_s(13, 5) + 0.1
        await asyncio.sleep(0.3)
        assert said(screen).count(words.READY) == 2
        assert "now 13:05" in said(screen)

    run(story())


def test_long_waits_and_walls_to_start_are_dashed_until_chosen(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(15))
        session = two_walls(*READ, finished(WALL_1, "base2", hour_s(14, 30)))
        screen = OnPlace(session, CoatsPlace, "/coats")
        seen = said(screen)
        assert {"24 h after base 2, by the label", "tomorrow 14:30"} <= set(seen)
        assert {"Wash, Wall 2", words.TO_START} <= set(seen)
        assert "now 15:00" not in seen  # no strip, no clock: the hour stands in the header
        assert "15:00" in seen
        assert not has(screen, "how Wall 1")
        await tap(screen, "wall Wall 1")
        assert has(screen, "how Wall 1")
        assert "in 23 h 30 min" in said(screen)

    run(story())


def test_how_shows_the_hours_and_who_decides(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        screen = OnPlace(two_walls(*READ, *PROMOTED), CoatsPlace, "/coats")
        await tap(screen, "how Wall 2")
        sheet = screen.told()
        seen = [one.value for one in shown(sheet) if isinstance(one, ft.Text)]
        assert {"11:45 + 30 min", "12:15", "11:45 + 4 h", "15:45", words.HOW_NOTE} <= set(seen)

    run(story())


def test_the_thumb_weighs_the_planned_mix_and_a_can(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        shelf = Shelf(*ember.RECORDS, JOB, WALL_1, *READ)
        session = Session(shelf, "phone")
        screen = OnPlace(session, CoatsPlace, "/coats")
        assert "ember wing, 232 g" in said(screen)
        await tap(screen, "weigh a can")
        await tap(screen, "weigh next")
        assert screen.went == ["/cans/pick", "/mix/weigh"]
        assert words.WEIGH_ON in said(screen)

    run(story())


def test_the_bell_says_that_it_is_off(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        session = two_walls(*READ, *PROMOTED)
        await set_settings(session, replace(settings_now(session), bell=False))
        screen = OnPlace(session, CoatsPlace, "/coats")
        assert words.NO_BELL in said(screen)
        assert places.NO_RING not in said(screen)

    run(story())


def test_large_text_keeps_every_word_and_every_button(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12, 54))
        session = two_walls(*READ, *PROMOTED)
        small = OnPlace(session, CoatsPlace, "/coats")
        large = OnPlace(session, CoatsPlace, "/coats", View(320.0, 640.0, 2.0))
        for key in ("earlier", "later", "finish", "weigh next", "weigh a can", "tacky Wall 2"):
            assert has(small, key)
            assert has(large, key)
        missing = set(said(small)) - set(said(large)) - {words.EARLIER, words.LATER, words.MINUTES}
        assert not missing

    run(story())


def test_a_usual_wait_is_not_called_the_labels(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(12))
        session = two_walls(*READ, finished(WALL_1, "base1", hour_s(11, 55)))
        job = session.known.job
        assert job is not None
        waits = tuple(replace(pair, wait=replace(pair.wait, usual=True)) for pair in job.waits)
        await session.keep(replace(job, waits=waits))
        seen = said(OnPlace(session, CoatsPlace, "/coats"))
        assert words.USUAL_WAIT in seen
        assert words.LABEL_WAIT not in seen

    run(story())
