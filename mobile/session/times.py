"""Instants as one says them: today by the hour, later days by their name."""

from math import ceil

from mobile import clock
from mobile.words import times as words

MINUTE_S = 60.0


def when(at_s: float, now_s: float) -> str:
    """Say an instant: `14:36` today, `tomorrow 14:36`, `Fri 14:36`, then with the date."""
    hour, days = clock.hour(at_s), clock.days_apart(now_s, at_s)
    if days == 0:
        return hour
    if days in words.NEAR:
        return words.near(days, hour)
    local = clock.local(at_s)
    weekday = local.strftime("%a")
    return words.on(weekday if 0 < days < words.WEEK else f"{weekday} {local.day} {local:%b}", hour)


def minutes_s(from_s: float, to_s: float) -> float:
    """Count the whole minutes from one instant to another, begun ones too, in seconds."""
    return ceil(max(to_s - from_s, 0.0) / MINUTE_S) * MINUTE_S


def next_minute_s(now_s: float) -> float:
    """Give the instant at which the clock's minutes change next."""
    return (now_s // MINUTE_S + 1) * MINUTE_S


def minute_s(now_s: float) -> float:
    """Give the instant at which the clock's minutes changed last."""
    return now_s // MINUTE_S * MINUTE_S
