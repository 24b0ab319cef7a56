"""The only reader of time: instants are POSIX seconds, days and hours are the phone's own."""

import time
from datetime import date, datetime

DAY_S = 86_400.0


def now_s() -> float:
    """Give this instant."""
    return time.time()


def local(at_s: float) -> datetime:
    """Give an instant as the phone's calendar and clock show it."""
    return datetime.fromtimestamp(at_s).astimezone()


def day(at_s: float) -> str:
    """Give the day of an instant, `2031-05-17`."""
    return local(at_s).strftime("%Y-%m-%d")


def hour(at_s: float) -> str:
    """Give the hour of an instant, `14:36`."""
    return local(at_s).strftime("%H:%M")


def days_apart(earlier_s: float, later_s: float) -> int:
    """Count the midnights between two instants."""
    return (local(later_s).date() - local(earlier_s).date()).days


def days_from_now(day_of: str) -> int:
    """Count the days from today to a day, `2031-05-17`."""
    return (date.fromisoformat(day_of) - local(now_s()).date()).days
