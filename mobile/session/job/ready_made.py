"""Schedules to start from (`assets/schedules/`): the usual steps, with waits that stand in."""

import json
from dataclasses import dataclass
from typing import Any

from core.coats.schedule import PlannedStep
from core.waits.pair import PairWait, Wait
from mobile.session.job.schedule import take_schedule
from mobile.session.session import Session
from mobile.store.shipped import shipped

FILE = "schedules/ready-made.json"


@dataclass(frozen=True, slots=True)
class ReadyMade:
    """A schedule by its name, and what it is for; the ids of its steps are words."""

    name: str
    about: str
    steps: tuple[PlannedStep, ...]
    waits: tuple[PairWait, ...]


def ready_made() -> tuple[ReadyMade, ...]:
    """Give the schedules that come with the app."""
    told: list[dict[str, Any]] = json.loads(shipped(FILE))
    return tuple(_read(one) for one in told)


def _read(one: dict[str, Any]) -> ReadyMade:
    steps = tuple(PlannedStep(s["key"], s["name"], s["use"]) for s in one["steps"])
    waits = tuple(
        PairWait(w["after"], w["before"], Wait(w["minimum_s"], usual=True)) for w in one["waits"]
    )
    return ReadyMade(one["name"], one["about"], steps, waits)


async def take(session: Session, ready: ReadyMade) -> None:
    """Begin the job's schedule with a ready-made one; its steps get ids of their own."""
    ids = {step.id: session.stamp()[0] for step in ready.steps}
    steps = tuple(PlannedStep(ids[s.id], s.name, s.use, s.work_s, s.walls) for s in ready.steps)
    waits = tuple(PairWait(ids[w.after], ids[w.before], w.wait) for w in ready.waits)
    await take_schedule(session, steps, waits, ready.name)
