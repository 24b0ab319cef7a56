"""Instants are absolute: a changed time zone or daylight saving moves the clock, not the coat."""

import time
from collections.abc import Iterator
from datetime import UTC, datetime

import pytest

from mobile import clock
from mobile.session.coats.due import alarms
from mobile.session.coats.standing import coats_now
from mobile.session.times import when
from mobile.store.entries import CoatFinished
from tests.session.two_walls import WALL_1, two_walls


@pytest.fixture
def zone(monkeypatch: pytest.MonkeyPatch) -> Iterator[pytest.MonkeyPatch]:
    """Let a test travel; come home after it."""
    yield monkeypatch
    monkeypatch.undo()
    time.tzset()


def at(text: str) -> float:
    """Give an instant of UTC."""
    return datetime.fromisoformat(text).replace(tzinfo=UTC).timestamp()


def to(zone: pytest.MonkeyPatch, name: str) -> None:
    """Travel."""
    zone.setenv("TZ", name)
    time.tzset()


def dries(finished_at_s: float) -> tuple[float, str]:
    """Give when a promoter of 30 min is ready, and what the screen says."""
    coat = CoatFinished("c", finished_at_s, "phone", "job", WALL_1.id, "promoter", finished_at_s)
    known = two_walls(coat).known
    drying = coats_now(known)[0].drying
    assert drying is not None
    return drying.ready_at_s, when(drying.ready_at_s, finished_at_s)


def test_a_wait_across_the_lost_hour_is_as_long_as_ever(zone: pytest.MonkeyPatch) -> None:
    to(zone, "Europe/Berlin")
    ended_s = at("2026-03-29T00:45:00")  # 01:45 in Berlin; at 02:00 the clocks go to 03:00
    assert dries(ended_s) == (ended_s + 1800, "03:15")


def test_a_wait_across_the_hour_that_comes_twice(zone: pytest.MonkeyPatch) -> None:
    to(zone, "America/New_York")
    ended_s = at("2026-11-01T05:45:00")  # 01:45 for the first time
    assert dries(ended_s) == (ended_s + 1800, "01:15")


def test_a_phone_that_travels_rings_at_the_same_instant(zone: pytest.MonkeyPatch) -> None:
    ended_s = clock.now_s()
    coat = CoatFinished("c", ended_s, "phone", "job", WALL_1.id, "promoter", ended_s)
    rings = set()
    for name in ("UTC", "Asia/Tokyo", "America/Los_Angeles"):
        to(zone, name)
        [(_, ready_at_s, _), (_, late_at_s, _)] = alarms(two_walls(coat).known)
        rings.add((ready_at_s, late_at_s))
    assert rings == {(ended_s + 1800, ended_s + 14400 - 1800)}
