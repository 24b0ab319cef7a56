"""A phone's own Python makes the calendar file, wherever the phone is."""

import json
import os
import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest

from mobile.device.calendar import calendar_file
from mobile.pwa import packages
from tests.pwa.conftest import Files, laid
from tests.pwa.test_reach import RUN

STARTS_S = datetime(2026, 11, 1, 6, 30, tzinfo=UTC).timestamp()
ARGUMENTS = (
    "base 1 of the moon",
    "Base 1, moon 🌙: due",
    STARTS_S,
    STARTS_S - 7200.0,
    "a\nb",
)


@pytest.mark.parametrize(
    ("zone", "hour"),
    [
        # the hours by the IANA time zone database, from memory
        ("Europe/Berlin", "07:30"),
        ("America/New_York", "01:30"),  # the second 01:30 of that night
        ("Pacific/Auckland", "19:30"),
    ],
)
@pytest.mark.timeout(200)
def test_a_phone_anywhere_makes_the_same_file(
    zone: str, hour: str, files: Files, tmp_path: Path
) -> None:
    folder, report = laid(tmp_path / "site", files), tmp_path / "report.json"
    given = tmp_path / "arguments.json"
    given.write_text(json.dumps(ARGUMENTS), "utf-8")
    script = Path(__file__).parent / "inside" / "calendar_made.py"
    done = subprocess.run(
        [packages.node(), RUN, folder, given, given, script, report],
        capture_output=True,
        text=True,
        timeout=180,
        check=False,
        env=os.environ | {"TZ": zone},
    )
    assert report.exists(), done.stderr[-2000:]
    told = json.loads(report.read_text("utf-8"))
    assert told["hour"] == hour
    assert told["made"].encode() == calendar_file(*ARGUMENTS)
    assert {"icalendar", "dateutil", "tzdata", "zoneinfo"} <= set(told["from"])
