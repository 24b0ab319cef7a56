"""The one clock of the screen: its axis and ticks, each wall's strip, and when it moves on."""

import asyncio
from datetime import timedelta

import flet as ft

from core.waits.pair import Drying
from mobile import clock
from mobile import theme as t
from mobile.parts.waits import Axis, Clock, Strip, Tick, axis_of
from mobile.session.coats.due import next_change_s, on_clock
from mobile.session.coats.standing import CoatNow
from mobile.session.times import minute_s
from mobile.session.view import View

EDGES = 35.0  # of a board, both sides
HOUR_WIDE = 52.0  # the least room that a whole hour's words need
HALF = 20.0  # of those words: at an end they would be cut
HALF_HOUR = timedelta(minutes=30)


def use_now(coats: tuple[CoatNow, ...]) -> float:
    """Give this instant, and draw the screen anew at each minute and each change of a state.

    Another place on top does not stop it: one drawing a minute costs less than a screen that
    comes back with an old hour.
    """
    _, set_ticks = ft.use_state(0)

    async def run() -> None:
        while True:
            now_s = clock.now_s()
            await asyncio.sleep(next_change_s(coats, now_s) - now_s)
            set_ticks(lambda ticks: ticks + 1)

    ft.use_effect(run, [coats], lambda: None)  # a cleanup, so that leaving ends it
    return clock.now_s()


def strip_of(drying: Drying) -> Strip:
    """Give a coat's wait as it is drawn; the label's end is marked where the wait is longer."""
    label_s = drying.label_ready_at_s if drying.ready_at_s > drying.label_ready_at_s else None
    return Strip(drying.finished_at_s, drying.ready_at_s, label_s, drying.late_at_s)


def clock_of(coats: tuple[CoatNow, ...], now_s: float, view: View) -> Clock | None:
    """Give the one clock of all walls; None where no wait is short enough for it."""
    drawn = tuple(strip_of(coat.drying) for coat in coats if coat.drying and on_clock(coat, now_s))
    if not drawn:
        return None
    minute = minute_s(now_s)
    return Clock(axis_of(drawn, minute), minute, view.width - 2 * t.MARGIN - EDGES)


def ticks_of(axis: Axis, width: float) -> tuple[Tick, ...]:
    """Mark half hours, and say as many whole hours as the width has room for."""
    at = clock.local(axis.begins_s).replace(minute=0, second=0, microsecond=0)
    marks = []
    while at.timestamp() <= axis.ends_s:
        marks.append(at)
        at += HALF_HOUR
    hours = [mark for mark in marks if mark.minute == 0]
    every = 1 if len(hours) <= width // HOUR_WIDE else 2
    said = {
        mark
        for mark in hours
        if mark.hour % every == 0 and HALF <= axis.share(mark.timestamp()) * width <= width - HALF
    }
    return tuple(Tick(mark.timestamp(), f"{mark:%H:%M}" if mark in said else "") for mark in marks)
