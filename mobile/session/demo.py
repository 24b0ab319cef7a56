"""The demo job: records made of `assets/demo/moth-cellar.json`, with ids of their own each time."""

import json
from typing import Any

from core.coats.schedule import PlannedStep
from core.paints.recipe import Part
from core.waits.pair import Wait
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.session.job import opened
from mobile.session.session import Session, Undo
from mobile.store.records import Can, CanWeighed, Job, Mix, Paint, Record, Wall
from mobile.store.shipped import shipped
from mobile.words import job as words

FILE = "demo/moth-cellar.json"


async def open_demo(session: Session) -> None:
    """Put the demo job and its cans beside what is there, and go to it."""
    told: dict[str, Any] = json.loads(shipped(FILE))
    job = Job(*session.stamp(), told["name"], tuple(_step(session, s) for s in told["steps"]))
    walls = [Wall(*session.stamp(), job.id, w["name"], _shape(w)) for w in told["walls"]]
    paints = {p["key"]: _paint(session, p) for p in told["paints"]}
    cans = [_can(session, c, paints) for c in told["cans"]]
    mixes = [_mix(session, m, job, paints) for m in told["mixes"]]
    made: list[Record] = [job, *walls, *paints.values(), *mixes]
    made += [record for pair in cans for record in pair]
    before = session.known.settings
    await session.keep(*made, opened(session, job))
    weighed = tuple(record.id for _, record in cans)
    things = tuple(record.id for record in made if record.id not in weighed)
    undo = Undo(entries=weighed, things=(before,), forget=things)
    session.tell(words.now_at(job.name), undo)


def _step(session: Session, step: dict[str, Any]) -> PlannedStep:
    wait = Wait(step["minimum_s"], step["maximum_s"])
    return PlannedStep(session.stamp()[0], step["name"], step["use"], wait)


def _shape(wall: dict[str, Any]) -> Shape:
    openings = tuple(
        Opening(o["name"], o["width_m"], o["height_m"], o["count"]) for o in wall["openings"]
    )
    return Shape(wall["width_m"], wall["left_height_m"], wall["right_height_m"], openings)


def _paint(session: Session, paint: dict[str, Any]) -> Paint:
    looks = paint["day"], paint["lamp"]
    return Paint(*session.stamp(), paint["name"], *looks, paint["density_g_ml"])


def _can(session: Session, can: dict[str, Any], paints: dict[str, Paint]) -> tuple[Can, CanWeighed]:
    number = can["number"] + max((other.number for other in session.known.cans), default=0)
    paint = paints[can["paint"]]
    kept = Can(*session.stamp(), number, paint.id, can["label_l"], can["tare_g"], "unopened")
    gross_g = can["tare_g"] + can["net_g"]
    return kept, CanWeighed(*session.stamp(), kept.id, gross_g, can["tare_g"], can["net_g"])


def _mix(session: Session, mix: dict[str, Any], job: Job, paints: dict[str, Paint]) -> Mix:
    parts = tuple(Part(paints[key].id, parts_count) for key, parts_count in mix["parts"])
    return Mix(*session.stamp(), job.id, mix["name"], parts, mix["use"], mix["planned_g"])
