"""A calendar file as others read it: RFC 5545, and two parsers that don't know the one who wrote.

The parsers are vobject and ics (not the icalendar library that writes the file). Section numbers
and rules of RFC 5545 are from memory.
"""

import re
import subprocess
import sys
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import ics  # type: ignore[import-untyped]
import pytest
import vobject  # type: ignore[import-untyped]
from hypothesis import given
from hypothesis import strategies as st

from mobile.device.calendar import calendar_file, plain

STARTS_S = datetime(2031, 5, 17, 12, 36, tzinfo=UTC).timestamp()
STAMPED_S = STARTS_S - 14_400.0
LONG = "Base 1 on the left half of the moon above the door: " + "wait for the glaze, " * 20


def written(title: str = "Base 1 is due", starts_at_s: float = STARTS_S, more: str = "") -> bytes:
    """Write a file."""
    return calendar_file("coat 7f3a", title, starts_at_s, STAMPED_S, more)


def lines(data: bytes) -> list[bytes]:
    """Split into the lines as they stand in the file."""
    assert data.endswith(b"\r\n")
    return data[:-2].split(b"\r\n")


def unfolded(data: bytes) -> list[str]:
    """Undo the folding: a line break before one space (RFC 5545 3.1)."""
    return [line.decode() for line in lines(data.replace(b"\r\n ", b""))]


def as_vobject_reads(data: bytes) -> tuple[str, datetime, datetime, timedelta]:
    """Read title, start, end, and when it rings after the start."""
    event = vobject.readOne(data.decode()).vevent
    times = event.dtstart.value, event.dtend.value, event.valarm.trigger.value
    return (event.summary.value, *times)


def as_ics_reads(data: bytes) -> tuple[str, datetime, datetime, timedelta]:
    """Read the same by another parser."""
    (event,) = ics.Calendar(data.decode()).events
    (alarm,) = event.alarms
    return event.name, event.begin.datetime, event.end.datetime, alarm.trigger


READERS = pytest.mark.parametrize("read", [as_vobject_reads, as_ics_reads])


@READERS
@pytest.mark.parametrize(
    ("zone", "finished", "wait_h", "due"),
    [
        # the clock is set forward at 02:00 on 29 March 2026 (IANA time zone database)
        ("Europe/Berlin", "2026-03-28T23:00", 4, "2026-03-29T04:00+02:00"),
        ("Europe/Berlin", "2026-03-29T01:30", 1, "2026-03-29T03:30+02:00"),
        # and back at 02:00 on 1 November 2026
        ("America/New_York", "2026-10-31T23:00", 4, "2026-11-01T02:00-05:00"),
        ("America/New_York", "2026-11-01T00:30", 2, "2026-11-01T01:30-05:00"),
        ("Asia/Kathmandu", "2026-06-01T23:50", 1, "2026-06-02T00:50+05:45"),
    ],
)
def test_others_read_the_instant_also_across_a_change_of_the_clocks(  # type: ignore[no-untyped-def]
    read, zone: str, finished: str, wait_h: int, due: str
) -> None:
    here = ZoneInfo(zone)
    at_s = datetime.fromisoformat(finished).replace(tzinfo=here).timestamp() + wait_h * 3600.0
    _, starts, ends, rings_after = read(written(starts_at_s=at_s))
    assert starts.astimezone(here).isoformat(timespec="minutes") == due
    assert ends > starts
    assert rings_after == timedelta(0)


@READERS
@pytest.mark.parametrize(
    "title",
    [
        "Base 1",
        LONG,
        "Moon, wing; stars: 'ring' \"two\" \\ done \\ end",
        "ends with a backslash \\",
        " spaces around ",
        "two\nlines",
        "Grundierung für die Tür – 泥土 – 🌙🦋" + "🌙" * 60,
        "BEGIN:VEVENT",
        "a=b;c=d:e,f^n^'",
    ],
)
def test_others_read_any_title(read, title: str) -> None:  # type: ignore[no-untyped-def]
    assert read(written(title))[0] == title


@given(st.text(), st.text())
def test_whatever_is_typed_the_file_is_well_formed(title: str, more: str) -> None:
    data = written(title, more=more)
    for line in lines(data):
        assert len(line) <= 75  # octets, without the line break (3.1)
        assert not re.search(rb"[\x00-\x08\x0a-\x1f\x7f]", line)  # CONTROL (3.1)
        line.decode()  # no sign is folded in its middle
    names = [line.partition(":")[0] for line in unfolded(data)]
    assert names.count("SUMMARY") == names.count("BEGIN") - 2 == 1
    assert vobject.readOne(data.decode()).vevent.summary.value == plain(title)


def parts(data: bytes) -> Iterator[tuple[str, dict[str, str]]]:
    """Yield each component's name and its own properties."""
    open_ones: list[tuple[str, dict[str, str]]] = []
    for line in unfolded(data):
        name, _, value = line.partition(":")
        if name == "BEGIN":
            open_ones.append((value, {}))
        elif name == "END":
            yield open_ones.pop()
        else:
            assert name not in open_ones[-1][1], "each of these stands once at most"
            open_ones[-1][1][name] = value


def test_it_holds_what_the_standard_asks_for() -> None:
    found = dict(parts(written(more="one\ntwo, three")))
    assert list(found) == ["VALARM", "VEVENT", "VCALENDAR"]
    assert found["VCALENDAR"]["VERSION"] == "2.0"  # 3.7.4
    assert found["VCALENDAR"]["PRODID"]  # 3.7.3
    event = found["VEVENT"]
    assert event["UID"] == "coat 7f3a"  # 3.8.4.7
    assert event["DTSTAMP"] == "20310517T083600Z"  # 3.8.7.2: in UTC
    assert event["DTSTART"] == "20310517T123600Z"  # 3.3.5, form 2: UTC
    assert event["DTEND"] > event["DTSTART"]  # 3.8.2.2: later than the start
    assert event["DESCRIPTION"] == r"one\ntwo\, three"  # 3.3.11
    alarm = found["VALARM"]  # 3.6.6: these three, and no more is needed
    assert alarm == {"ACTION": "DISPLAY", "DESCRIPTION": "Base 1 is due", "TRIGGER": "PT0S"}


def test_another_library_finds_nothing_missing() -> None:
    assert vobject.readOne(written().decode()).validate(raiseException=True)


def test_with_nothing_more_to_say_there_is_no_description() -> None:
    assert "DESCRIPTION" not in dict(parts(written()))["VEVENT"]


@READERS
def test_it_never_rings_before_the_wait_is_over(read) -> None:  # type: ignore[no-untyped-def]
    starts = read(written(starts_at_s=STARTS_S + 0.2))[1]
    assert starts == datetime(2031, 5, 17, 12, 36, 1, tzinfo=UTC)


def test_the_same_arguments_give_the_same_bytes_wherever_the_phone_is(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    made = set()
    for zone in ("Europe/Berlin", "America/New_York", "UTC"):
        monkeypatch.setenv("TZ", zone)
        time.tzset()
        made.add(written(LONG))
    monkeypatch.undo()
    time.tzset()
    assert len(made) == 1


def test_the_library_is_imported_on_use() -> None:
    asked = "import sys; import mobile.device.calendar; sys.exit('icalendar' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", asked], timeout=60, check=False).returncode == 0
