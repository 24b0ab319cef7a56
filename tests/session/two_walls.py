"""Two walls of the demo job and its first steps, at hours of one morning; made up for this project.

The waits are the reference job's, worked by hand: promoter 30 min and at most 4 h, base 15 min,
24 h before the film.
"""

from datetime import datetime

import pytest

from core.coats.schedule import PlannedStep
from core.waits.pair import PairWait, Wait
from core.walls.shape import Wall as Shape
from mobile import clock
from mobile.session.session import Session
from mobile.store.entries import CautionRead, CoatFinished
from mobile.store.records import Job, Record, Settings, Wall
from tests.session.shelf import Shelf

STAMP = (1000.0, "phone")
STEPS = (
    PlannedStep("wash", "wash", "prepare"),
    PlannedStep("promoter", "promoter", "promoter"),
    PlannedStep("base1", "base 1", "base"),
    PlannedStep("base2", "base 2", "base"),
    PlannedStep("film", "film", "film"),
    PlannedStep("end", "hand-over", "hand-over"),
)
WAITS = (
    PairWait("wash", "promoter", Wait(3600.0)),
    PairWait("promoter", "base1", Wait(1800.0, 14400.0)),
    PairWait("base1", "base2", Wait(900.0)),
    PairWait("base2", "film", Wait(86400.0)),
    PairWait("film", "end", Wait(7200.0)),
)
JOB = Job("job", *STAMP, "Moth Cellar", STEPS, WAITS)
WALL_1 = Wall("w1", *STAMP, "job", "Wall 1", Shape(5.62, 2.8, 2.8))
WALL_2 = Wall("w2", *STAMP, "job", "Wall 2", Shape(3.2, 2.35, 4.05))
DAY = "2031-05-17"


def hour_s(hour: int, minute: int = 0, day: int = 17) -> float:
    """Give an instant of that May."""
    return datetime(2031, 5, day, hour, minute).astimezone().timestamp()


def finished(wall: Wall, step: str, at_s: float) -> CoatFinished:
    """Give an entry."""
    return CoatFinished(f"{wall.id} {step}", at_s, "phone", "job", wall.id, step, at_s)


def cautions_read(*names: str) -> tuple[CautionRead, ...]:
    """Give what was read that day."""
    return tuple(CautionRead(f"read {name}", *STAMP, "job", name, DAY) for name in names)


READ = cautions_read("survey", "wipe-down", "promoter")
PROMOTED = (
    finished(WALL_2, "wash", hour_s(10)),
    finished(WALL_2, "promoter", hour_s(11, 45)),
    finished(WALL_1, "wash", hour_s(10)),
    finished(WALL_1, "promoter", hour_s(11)),
    finished(WALL_1, "base1", hour_s(12, 50)),
)


def two_walls(*more: Record) -> Session:
    """Give a session with the job on a shelf."""
    settings = Settings("settings", *STAMP, job="job")
    return Session(Shelf(JOB, WALL_1, WALL_2, settings, *more), "phone")


class Watch:
    """A clock that stands until it is set."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch, at_s: float) -> None:
        self.at_s = at_s
        monkeypatch.setattr(clock, "now_s", lambda: self.at_s)
