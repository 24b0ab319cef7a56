"""Coats: which wall is next, what rings, what a second tap does, what can be taken back."""

import asyncio
from dataclasses import replace

import pytest

from mobile.session.coats.coat import (
    NUDGE_S,
    caution_before,
    coat_finished,
    done_again,
    read_caution,
    still_tacky,
)
from mobile.session.coats.due import (
    alarms,
    in_order,
    next_change_s,
    nudged,
    on_clock,
    planned,
    soonest,
)
from mobile.session.coats.standing import CoatNow, coats_now
from mobile.session.job.jobs import set_settings, settings_now
from mobile.session.session import Session
from tests.session.two_walls import WALL_1, WALL_2, Watch, finished, hour_s, two_walls


def wall(session: Session, name: str) -> CoatNow:
    return next(coat for coat in coats_now(session.known) if coat.name == name)


def test_finished_starts_the_labels_wait(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls()
    asyncio.run(coat_finished(session, wall(session, "Wall 1")))
    one = wall(session, "Wall 1")
    assert one.drying is not None
    assert one.next is not None
    assert one.next.name == "promoter"
    assert one.drying.ready_at_s == hour_s(10)  # the label says 1 h
    assert one.state(hour_s(9, 59)) == "drying"
    assert one.state(hour_s(10)) == "ready"
    assert wall(session, "Wall 2").state(hour_s(9)) == "to start"


def test_a_second_tap_on_the_same_button_is_the_same_news(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls()
    drawn = wall(session, "Wall 1")
    asyncio.run(coat_finished(session, drawn))
    asyncio.run(coat_finished(session, drawn))
    assert len(session.known.entries) == 1
    late = wall(session, "Wall 1")
    asyncio.run(still_tacky(session, late))
    asyncio.run(still_tacky(session, late))
    assert wall(session, "Wall 1").wait_s == pytest.approx(3600.0 + 600.0)


def test_finished_can_be_taken_back(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls()
    asyncio.run(coat_finished(session, wall(session, "Wall 1")))
    asyncio.run(session.undo())
    assert wall(session, "Wall 1").state(hour_s(9)) == "to start"


def test_a_full_phone_logs_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls()
    session.shelf.full = True  # type: ignore[attr-defined]
    assert not asyncio.run(session.attempt(coat_finished(session, wall(session, "Wall 1"))))
    assert wall(session, "Wall 1").coat is None


def test_i_forgot_counts_back_but_not_before_the_step_before(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    Watch(monkeypatch, hour_s(9, 7))
    session = two_walls(finished(WALL_1, "wash", hour_s(9)))
    one = wall(session, "Wall 1")
    back_s = nudged(one, 0.0, -NUDGE_S, hour_s(9, 7))
    assert back_s == pytest.approx(-300.0)
    assert nudged(one, back_s, -NUDGE_S, hour_s(9, 7)) == pytest.approx(
        -420.0
    )  # 9:00 and no earlier
    asyncio.run(coat_finished(session, one, back_s))
    logged = wall(session, "Wall 1").coat
    assert logged is not None
    assert logged.finished_at_s == hour_s(9, 2)


def test_done_in_five_rolls_first(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls()
    ahead_s = nudged(wall(session, "Wall 1"), 0.0, NUDGE_S, hour_s(9))
    asyncio.run(coat_finished(session, wall(session, "Wall 1"), ahead_s))
    one = wall(session, "Wall 1")
    assert [one.state(hour_s(9, m)) for m in (0, 4, 5, 6)] == [
        *("rolling", "rolling"),
        *("drying", "drying"),
    ]
    assert nudged(one, 3600.0, NUDGE_S, hour_s(9)) == pytest.approx(3600.0)


def test_ready_walls_come_first_then_the_soonest(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(12, 54))
    session = two_walls(
        finished(WALL_1, "base1", hour_s(12, 50)), finished(WALL_2, "promoter", hour_s(11, 45))
    )
    coats = coats_now(session.known)
    assert [coat.name for coat in in_order(coats, hour_s(12, 54))] == ["Wall 2", "Wall 1"]
    due = planned(coats, hour_s(12, 54))
    assert due is not None
    assert due.next is not None
    assert (due.name, due.next.name) == ("Wall 2", "base 1")  # nobody logged the wash there
    wet = soonest(coats, hour_s(12, 54))
    assert wet is not None
    assert wet.name == "Wall 1"


def test_nothing_is_planned_while_all_walls_dry(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9, 1))
    both = finished(WALL_1, "wash", hour_s(9)), finished(WALL_2, "wash", hour_s(9))
    session = two_walls(*both)
    assert planned(coats_now(session.known), hour_s(9, 1)) is None


def test_a_passed_limit_lets_the_step_be_done_again(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(13, 1))
    session = two_walls(
        finished(WALL_1, "wash", hour_s(7)), finished(WALL_1, "promoter", hour_s(9))
    )
    one = wall(session, "Wall 1")
    assert one.state(hour_s(13)) == "ready"  # at most 4 h
    assert one.state(hour_s(13, 1)) == "too late"
    asyncio.run(done_again(session, one))
    one = wall(session, "Wall 1")
    assert one.next is not None
    assert one.next.name == "base 1"
    assert one.state(hour_s(13, 1)) == "drying"


def test_it_rings_when_ready_and_before_the_limit(monkeypatch: pytest.MonkeyPatch) -> None:
    watch = Watch(monkeypatch, hour_s(9))
    session = two_walls(finished(WALL_1, "promoter", hour_s(9)), finished(WALL_1, "wash", 0.0))
    rings = alarms(session.known)
    assert [(at_s, said) for _, at_s, said in rings] == [
        (hour_s(9, 30), "Wall 1 is ready for base 1"),
        (hour_s(12, 30), "Wall 1: recoat before 13:00"),
    ]
    watch.at_s = hour_s(10)  # what was missed is on the screen, and does not ring at each start
    assert [at_s for _, at_s, _ in alarms(session.known)] == [hour_s(12, 30)]
    asyncio.run(set_settings(session, replace(settings_now(session), bell=False)))
    assert alarms(session.known) == ()


def test_the_screen_changes_with_minutes_and_states(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls(finished(WALL_1, "wash", hour_s(8) + 20.5))
    coats, ready_s = coats_now(session.known), hour_s(9) + 20.5
    assert next_change_s(coats, hour_s(8, 59) + 1) == hour_s(9)
    assert next_change_s(coats, hour_s(9) + 1) == pytest.approx(ready_s)
    assert next_change_s(coats, ready_s) == hour_s(9, 1)
    assert next_change_s((), hour_s(9)) == hour_s(9, 1)


def test_long_waits_are_not_on_the_clock(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(9))
    session = two_walls(finished(WALL_1, "base2", hour_s(9)), finished(WALL_2, "base1", hour_s(9)))
    first, second = coats_now(session.known)
    assert not on_clock(first, hour_s(10))  # 24 h
    assert on_clock(second, hour_s(10))
    assert not on_clock(second, hour_s(15))  # so long ago that its strip would fill the axis


def test_a_caution_is_due_once_a_day(monkeypatch: pytest.MonkeyPatch) -> None:
    watch = Watch(monkeypatch, hour_s(9))
    session = two_walls()
    one = wall(session, "Wall 1")
    for caution in ("survey", "wipe-down"):
        assert caution_before(session.known, one, hour_s(9)) == caution
        asyncio.run(read_caution(session, caution))
    assert caution_before(session.known, one, hour_s(9)) == ""
    watch.at_s = hour_s(9, day=18)
    assert caution_before(session.known, one, watch.at_s) == "survey"


def test_doing_a_step_again_asks_for_its_caution(monkeypatch: pytest.MonkeyPatch) -> None:
    Watch(monkeypatch, hour_s(14))
    session = two_walls(
        finished(WALL_1, "wash", hour_s(7)), finished(WALL_1, "promoter", hour_s(9))
    )
    assert caution_before(session.known, wall(session, "Wall 1"), hour_s(14)) == "promoter"
    assert caution_before(session.known, wall(session, "Wall 1"), hour_s(10)) == ""  # base 1


def test_a_step_that_lies_under_a_finished_one_is_asked_no_more(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    Watch(monkeypatch, hour_s(10))
    session = two_walls(
        finished(WALL_1, "base1", hour_s(9)), finished(WALL_1, "wash", hour_s(9, 30))
    )
    one = wall(session, "Wall 1")  # the wash was forgotten and logged later, the promoter never
    assert one.step is not None
    assert one.next is not None
    assert (one.step.name, one.next.name) == ("base 1", "base 2")
