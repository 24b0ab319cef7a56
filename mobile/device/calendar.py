"""A file for the phone's calendar: it rings at an instant, also when the app is closed.

The instants are written in UTC, so that no time zone and no daylight saving can move them.
"""

import re
from datetime import UTC, datetime, timedelta
from math import ceil

from mobile.device.bridge import bring

MADE_BY = "-//Duskcoat//Duskcoat//EN"
MIME = "text/calendar"
LASTS = timedelta(minutes=15)  # how long it is shown in a calendar; without any it is a thin line
NOT_TEXT = re.compile(r"[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff]")  # RFC 5545 3.1: no CONTROL


def calendar_file(
    uid: str, title: str, starts_at_s: float, stamped_at_s: float, more: str = ""
) -> bytes:
    """Write a calendar file with one event, and an alarm as it starts.

    Parameters
    ----------
    uid : str
        Names the event in all calendars there are; a later file with the same name replaces it.
    title : str
        What it is about, in a line; signs that a calendar can't hold are left out.
    starts_at_s : float
        When it rings, POSIX seconds; written to the next whole second, as it must not be early.
    stamped_at_s : float
        When this was written, POSIX seconds.
    more : str, optional
        What else to say, in as many lines as it takes.

    Returns
    -------
    bytes
        The file (`.ics`, `MIME`); the same arguments give the same bytes. Source: RFC 5545.

    Raises
    ------
    OSError
        The library for it, which the start does without, can't be had.
    """
    bring("later.zip")
    from icalendar import Alarm, Calendar, Event  # noqa: PLC0415  it takes half a second

    said, starts = plain(title), instant(starts_at_s)
    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", said)
    alarm.add("trigger", "PT0S", encode=False)  # the library's own "P0D" says it in days
    event = Event()
    event.add("uid", plain(uid))
    event.add("dtstamp", instant(stamped_at_s))
    event.add("dtstart", starts)
    event.add("dtend", starts + LASTS)
    event.add("summary", said)
    if more:
        event.add("description", plain(more))
    event.add("transp", "TRANSPARENT")  # nobody is busy because a coat is due
    event.add_component(alarm)
    whole = Calendar()
    whole.add("prodid", MADE_BY)
    whole.add("version", "2.0")
    whole.add_component(event)
    return bytes(whole.to_ical())


def instant(at_s: float) -> datetime:
    """Round POSIX seconds up to the whole second that a calendar can hold, in UTC."""
    return datetime.fromtimestamp(ceil(at_s), UTC)


def plain(text: str) -> str:
    """Leave out what a calendar's text can't hold: controls and halves of signs."""
    return NOT_TEXT.sub("", text.replace("\r\n", "\n").replace("\r", "\n"))
