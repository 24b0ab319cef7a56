"""Coats without a browser: cautions before their step, and limits that have passed."""

import asyncio
from collections.abc import Coroutine
from typing import Any

import pytest

from mobile.screens.coats.place import CoatsPlace
from mobile.session.coats.standing import coats_now
from mobile.words import cautions
from mobile.words import coats as words
from tests.screens.seen import OnPlace, finish_words, has, tap
from tests.screens.seen import words as said
from tests.session.two_walls import PROMOTED, READ, Watch, cautions_read, hour_s, two_walls


def run(story: Coroutine[Any, Any, None]) -> None:
    asyncio.run(story)


def test_a_caution_is_read_before_its_step(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(9))
        session = two_walls()
        screen = OnPlace(session, CoatsPlace, "/coats")
        for name in ("survey", "wipe-down"):  # old paint first: it may be sanded
            caution = cautions.CAUTIONS[name]
            assert {caution.title, *caution.lines, caution.decides} <= set(said(screen))
            assert not has(screen, "finish")
            await tap(screen, "caution read")
            assert caution.title not in said(screen)
        assert finish_words(screen) == "Wash finished / Wall 1"
        assert not any(coat.coat for coat in coats_now(session.known))

    run(story())


def test_a_passed_limit_says_so_and_offers_the_step_again(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(16))
        session = two_walls(*READ, *PROMOTED[:2])
        screen = OnPlace(session, CoatsPlace, "/coats")
        assert {words.TOO_LATE, "since 15:45", words.LIMIT_GONE} <= set(said(screen))
        assert words.LATE_HERE in said(screen)
        assert finish_words(screen) == "Base 1 finished / Wall 2"
        await tap(screen, "again Wall 2")
        assert words.TOO_LATE not in said(screen)
        assert {"promoter dries", "16:30"} <= set(said(screen))

    run(story())


def test_a_step_is_not_done_again_before_its_caution_is_read(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    async def story() -> None:
        Watch(monkeypatch, hour_s(16))
        session = two_walls(*cautions_read("survey", "wipe-down"), *PROMOTED[:2])
        screen = OnPlace(session, CoatsPlace, "/coats")
        await tap(screen, "again Wall 2")
        assert cautions.CAUTIONS["promoter"].title in said(screen)
        assert words.TOO_LATE in said(screen)
        await tap(screen, "caution read")
        await tap(screen, "again Wall 2")
        assert words.TOO_LATE not in said(screen)

    run(story())
