"""The demo job: records made of `assets/demo/moth-cellar.json`, with ids of their own each time."""

import json
from typing import Any

from core.cans.price import Size
from core.coats.schedule import PlannedStep
from core.mixing.portions import Portion
from core.paints.recipe import Part
from core.waits.pair import PairWait, Wait
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.session.job.jobs import opened
from mobile.session.session import Session, Undo
from mobile.store.entries import CanWeighed, Entry, LidOff, PotStarted, Poured, Stirred
from mobile.store.records import (
    Can,
    Job,
    LabelWait,
    Mix,
    Paint,
    Record,
    Settings,
    Wall,
    Wetting,
    Zone,
)
from mobile.store.shipped import shipped
from mobile.words import job as words

FILE = "demo/moth-cellar.json"
Told = dict[str, Any]
WAIT = "minimum_s", "maximum_s", "minimum_from", "maximum_from"


class Demo:
    """The things of the file by their keys there, made into records of this phone."""

    def __init__(self, session: Session, told: Told) -> None:
        self.session, self.told = session, told
        self.walls: dict[str, Wall] = {}
        self.paints = {p["key"]: self.paint(p) for p in told["paints"]}
        self.job = self.job_of(told)
        self.walls |= {w["name"]: self.wall(w) for w in told["walls"]}
        self.job = self.on_walls(self.job)
        self.mixes = {m["key"]: self.mix(m) for m in told["mixes"]}
        self.zones = [self.zone(z) for z in told["zones"]]
        first = max((can.number for can in session.known.cans), default=0)
        self.cans = {c["number"]: self.can(c, first + c["number"]) for c in told["cans"]}

    def things(self) -> list[Record]:
        """Give all that is planned or owned."""
        kept: list[Record] = [self.job, *self.walls.values(), *self.paints.values()]
        return [*kept, *self.mixes.values(), *self.zones, *self.cans.values()]

    def entries(self) -> list[Entry]:
        """Give all that happened: cans weighed, sample panels mixed, weighed anew, a lid off."""
        happened: list[Entry] = [
            self.weighed(self.cans[c["number"]], c["before_g"])
            for c in self.told["cans"]
            if c["before_g"] is not None
        ]
        for number, pot in enumerate(self.told["pots"], 1):
            happened += self.pot(pot, number)
        happened += [
            self.weighed(self.cans[c["number"]], c["net_g"])
            for c in self.told["cans"]
            if c["net_g"] is not None
        ]
        return [*happened, self.lid_off(self.told["lid_off"])]

    def job_of(self, told: Told) -> Job:
        """Make the job; its steps are named by their keys until the walls are there."""
        steps = tuple(
            PlannedStep(s["key"], s["name"], s["use"], s["work_s"], tuple(s["walls"]))
            for s in told["steps"]
        )
        waits = tuple(PairWait(w["after"], w["before"], wait_of(w)) for w in told["waits"])
        return Job(*self.session.stamp(), told["name"], steps, waits)

    def on_walls(self, job: Job) -> Job:
        """Give the job with ids of this phone in its schedule."""
        ids = {step.id: self.session.stamp()[0] for step in job.steps}
        steps = tuple(
            PlannedStep(
                ids[s.id], s.name, s.use, s.work_s, tuple(self.walls[w].id for w in s.walls)
            )
            for s in job.steps
        )
        waits = tuple(PairWait(ids[w.after], ids[w.before], w.wait) for w in job.waits)
        return Job(job.id, job.at_s, job.device, job.name, steps, waits)

    def wall_ids(self, names: tuple[str, ...]) -> tuple[str, ...]:
        """Give the ids of walls by their names."""
        return tuple(self.walls[name].id for name in names)

    def wall(self, told: Told) -> Wall:
        """Make a wall."""
        openings = tuple(
            Opening(o["name"], o["width_m"], o["height_m"], o["count"]) for o in told["openings"]
        )
        sizes = told["width_m"], told["left_height_m"], told["right_height_m"]
        return Wall(*self.session.stamp(), self.job.id, told["name"], Shape(*sizes, openings))

    def zone(self, told: Told) -> Zone:
        """Make a zone."""
        wall, mix = self.walls[told["wall"]], self.mixes[told["mix"]]
        sizes = told["area_m2"], mix.id, told["coats_count"]
        return Zone(*self.session.stamp(), self.job.id, wall.id, told["name"], *sizes)

    def paint(self, told: Told) -> Paint:
        """Make a paint."""
        sizes = tuple(Size(label_l, price) for label_l, price in told["sizes"])
        waits = tuple(LabelWait(w["use"], wait_of(w)) for w in told["waits"])
        looks = told["day"], told["lamp"]
        label = told["density_g_ml"], told["solids_ratio"], told["spread_m2_l"], None
        return Paint(*self.session.stamp(), told["name"], *looks, *label, sizes, waits)

    def mix(self, told: Told) -> Mix:
        """Make a recipe."""
        parts = tuple(Part(self.paints[key].id, count) for key, count in told["parts"])
        rate = told["g_m2"], told["spread_m2_l"], told["dft_um"], told["loss_ratio"]
        tools = tuple(Wetting(tool, count) for tool, count in told["tools"])
        keeps = tools, told["cups_count"], told["kit"]
        kept = self.session.stamp()
        return Mix(*kept, self.job.id, told["name"], parts, told["use"], None, *rate, *keeps)

    def can(self, told: Told, number: int) -> Can:
        """Make a can."""
        paint = self.paints[told["paint"]].id
        whence = "unopened" if told["unopened"] else "empty"
        label_l, tare_g, across_m = told["label_l"], told["tare_g"], told["across_m"]
        stamp = self.session.stamp()
        return Can(*stamp, number, paint, label_l, tare_g, whence, False, across_m)

    def weighed(self, can: Can, net_g: float) -> CanWeighed:
        """Weigh a can."""
        tare_g = can.tare_g or 0.0
        return CanWeighed(*self.session.stamp(), can.id, tare_g + net_g, tare_g, net_g)

    def pot(self, told: Told, number: int) -> list[Entry]:
        """Mix a pot, each part on the mark; it is of no recipe of the list."""
        parts = [(self.paints[key].id, net_g) for key, net_g in told["pours"]]
        cans = {can.paint: can.id for can in self.cans.values()}
        portions = tuple(Portion(paint, net_g) for paint, net_g in parts)
        whence = tuple(cans[paint] for paint, _ in parts)
        begun = self.session.stamp()
        started = PotStarted(
            *begun, self.job.id, "", told["name"], number, portions, whence, 0.1, None
        )
        poured = [
            Poured(*self.session.stamp(), started.id, paint, cans[paint], net_g, None)
            for paint, net_g in parts
        ]
        return [started, *poured, Stirred(*self.session.stamp(), started.id)]

    def lid_off(self, told: Told) -> LidOff:
        """Leave a lid off."""
        can = self.cans[told["can"]]
        air = told["air_c"], told["rh_ratio"], told["air_m_per_s"]
        across_m = can.across_m or 0.0
        return LidOff(*self.session.stamp(), can.id, told["open_s"], across_m, *air)


def wait_of(told: Told) -> Wait:
    """Read a wait."""
    least_s, most_s, least_from, most_from = (told[name] for name in WAIT)
    return Wait(least_s, most_s, least_from, most_from)


async def open_demo(session: Session) -> None:
    """Put the demo job and its cans beside what is there, and go to it."""
    demo = Demo(session, json.loads(shipped(FILE)))
    things, entries = demo.things(), demo.entries()
    before: Settings = session.known.settings
    await session.keep(*things, *entries, opened(session, demo.job))
    undo = Undo(
        entries=tuple(entry.id for entry in entries),
        things=(before,),
        forget=tuple(thing.id for thing in things),
    )
    session.tell(words.now_at(demo.job.name), undo)
