"""The schedule without a browser: its steps, and the waits that are asked between them."""

import asyncio

import pytest

from mobile.screens.job.stops import stops_of
from mobile.session.job.hand_over import ahead
from mobile.session.session import Session
from mobile.session.view import View
from mobile.words import job as words
from mobile.words import trouble
from tests.screens.seen import OnPlace, find, tap, write
from tests.screens.seen import words as said
from tests.screens.test_job import begun
from tests.session.moth_cellar import at_moth_cellar
from tests.session.two_walls import Watch, hour_s


def told(session: Session) -> str:
    """Give what was said last."""
    return session.shown.told.said if session.shown.told else ""


def test_a_wait_says_at_its_fields_what_lacks_once_it_was_tried() -> None:
    async def story() -> None:
        _session, screen = await two_steps()
        await tap(screen, "limit most")
        assert not find(screen, "wait").error
        await tap(screen, "keep")
        for field in ("wait", "most"):
            assert "type a number" in find(screen, field).error

    asyncio.run(story())


def test_a_wait_that_no_label_asks_for_is_refused_at_its_field() -> None:
    async def story() -> None:
        session, screen = await two_steps()
        await write(screen, "wait", "5000000")
        assert find(screen, "wait").error
        await tap(screen, "limit none")
        await tap(screen, "keep")
        assert session.known.job is not None
        assert session.known.job.waits == ()

    asyncio.run(story())


def test_a_step_asks_for_its_wait_and_never_assumes_a_limit() -> None:
    async def story() -> None:
        session, screen = await begun()
        await tap(screen, "add step")
        await write(screen, "name", "promoter")
        await tap(screen, "choose promoter")
        await tap(screen, "keep")
        await tap(screen, "add step")
        await tap(screen, "keep")  # its wait is asked at once
        await write(screen, "wait", "30")
        await tap(screen, "keep")
        assert told(session) == trouble.SENTENCES["limit"]
        await tap(screen, "limit most")
        await write(screen, "most", "4 h")
        await tap(screen, "keep")
        assert told(session) == trouble.SENTENCES["limit_from"]
        await tap(screen, "most_from start")
        await tap(screen, "keep")
        assert session.known.job is not None
        [pair] = session.known.job.waits
        assert (pair.wait.minimum_s, pair.wait.maximum_s) == (1800.0, 14400.0)
        assert (pair.wait.minimum_from, pair.wait.maximum_from) == ("end", "start")
        assert "30 min, at most 4 h from its start" in said(screen)
        assert words.asked_before("hand-over") in said(screen)

    asyncio.run(story())


@pytest.mark.parametrize(
    ("wait", "most", "why"),
    [
        ("soon", "", "Wait: type a number, like 30 min or 1 h 30"),
        ("2 h", "1 h", trouble.SENTENCES["limit_before_wait"]),
        ("", "", "Wait: type a number, like 30 min or 1 h 30"),
    ],
)
def test_a_wait_that_is_none_is_refused_in_words(wait: str, most: str, why: str) -> None:
    async def story() -> None:
        session, screen = await two_steps()
        await write(screen, "wait", wait)
        if most:
            await tap(screen, "limit most")
            await write(screen, "most", most)
            await tap(screen, "most_from end")
        await tap(screen, "keep")
        assert told(session) == why
        assert find(screen, "wait").value == wait

    asyncio.run(story())


async def two_steps() -> tuple[Session, OnPlace]:
    """Write two steps down, and stand where the wait between them is asked."""
    session, screen = await begun()
    for name in ("base 1", "base 2"):
        await tap(screen, "add step")
        await write(screen, "name", name)
        await tap(screen, "keep")
    return session, screen


def test_steps_move_and_go() -> None:
    async def story() -> None:
        session, screen = await two_steps()
        await write(screen, "wait", "15")
        await tap(screen, "limit none")
        await tap(screen, "keep")
        job = session.known.job
        assert job is not None
        assert "15 min" in said(screen)
        await tap(screen, f"stop {job.steps[1].id}")
        await tap(screen, "up")
        assert [step.name for step in session.known.job.steps] == ["base 2", "base 1", "hand-over"]  # type: ignore[union-attr]
        assert session.known.job.waits == ()  # type: ignore[union-attr]
        await tap(screen, "remove")
        assert [step.name for step in session.known.job.steps] == ["base 1", "hand-over"]  # type: ignore[union-attr]

    asyncio.run(story())


def test_a_schedule_may_begin_with_a_ready_made_one() -> None:
    async def story() -> None:
        session, screen = await begun()
        await tap(screen, "ready-made")
        await tap(screen, "Mural over a printed film")
        assert session.known.job is not None
        assert len(session.known.job.steps) == 12
        assert "24 h, usual" in " ".join(said(screen))
        await tap(screen, f"stop {session.known.job.steps[-1].id}")
        await tap(screen, "after clear coat")
        assert words.USUAL_MORE in said(screen)
        await tap(screen, "keep")
        assert told(session) == trouble.SENTENCES["limit"]

    asyncio.run(story())


def test_the_hand_over_bears_the_day_of_its_end(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story() -> None:
        # 163 h 30 min after 04:39 it is nine minutes past midnight: its start is the day before.
        watch = Watch(monkeypatch, hour_s(4, 39))
        session = await at_moth_cellar()
        plan = ahead(session.known, watch.at_s)
        *_, end = stops_of(session.known, plan, View())
        assert (end.at, end.day) == ("00:09", "24 May")

    asyncio.run(story())
