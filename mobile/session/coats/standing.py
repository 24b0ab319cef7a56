"""Where each wall and zone stands: its last coat, what that waits for, and what comes next."""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from core.coats.places import Coat, Place, coats_before, coats_left, coats_of, waits_before
from core.coats.schedule import HAND_OVER, PlannedStep
from core.errors import Refused
from core.waits.pair import Drying, PairWait, Wait, after, state, strictest
from mobile.session.job.label_waits import job_now
from mobile.session.known import Known, found
from mobile.store.entries import CoatFinished, StillTacky
from mobile.store.records import Job, Wall, Zone

Done = dict[tuple[str, str], CoatFinished]  # by step and place


@dataclass(frozen=True, slots=True)
class CoatNow:
    """Where a wall or a zone stands.

    `coat` is the finished coat that keeps it waiting longest, `step` and `wait` are that coat's;
    `holds` names the steps that have to be finished first elsewhere on its wall.
    """

    place: Wall | Zone
    wall_name: str
    coat: CoatFinished | None
    step: PlannedStep | None
    next: PlannedStep | None
    drying: Drying | None = None
    wait: Wait | None = None
    holds: tuple[str, ...] = ()

    @property
    def id(self) -> str:
        """The key of the wall or the zone."""
        return self.place.id

    @property
    def name(self) -> str:
        """The name of the wall or the zone."""
        return self.place.name

    def state(self, now_s: float) -> str:
        """Say where it stands: "waiting" is for what is to be done elsewhere on its wall.

        Else "to start", "rolling", "drying", "ready", "too late" or "done".
        """
        if self.next is None:
            return "done"
        if self.holds:
            return "waiting"
        return state(self.drying, now_s) if self.drying else "to start"

    @property
    def wait_s(self) -> float:
        """How long the last coat waits, from its end to ready."""
        return self.drying.ready_at_s - self.drying.finished_at_s if self.drying else 0.0

    @property
    def tacky(self) -> bool:
        """Whether a finger has made the wait longer than the label's."""
        return self.drying is not None and self.drying.ready_at_s > self.drying.label_ready_at_s

    @property
    def start(self) -> str:
        """Say "reckoned" or "unknown" of a start that its wait counts from, "" if none does."""
        if self.wait is None or self.coat is None:
            return ""
        limit_counts = self.wait.maximum_s is not None and self.wait.maximum_from == "start"
        if self.wait.minimum_from != "start" and not limit_counts:
            return ""
        return "unknown" if self.coat.started_at_s is None else "reckoned"

    @property
    def unasked(self) -> bool:
        """Whether a coat lies under the next one and nobody said how long that waits."""
        return self.next is not None and self.coat is not None and self.drying is None


@dataclass(frozen=True, slots=True)
class _Held:
    """A finished coat, the wait that runs from it, and its instants."""

    entry: CoatFinished
    wait: Wait
    drying: Drying


def places_of(known: Known) -> tuple[Place, ...]:
    """Give the walls of the open job, each followed by its zones, as core wants them."""
    uses = {mix.id: mix.use for mix in known.job_mixes}
    zones = [
        Place(zone.id, zone.wall, uses[zone.mix], zone.coats_count)
        for zone in known.job_zones
        if zone.mix in uses
    ]
    return tuple(
        place
        for wall in known.job_walls
        for place in (Place(wall.id, wall.id), *(zone for zone in zones if zone.wall == wall.id))
    )


@lru_cache(maxsize=2)
def job_coats(known: Known) -> tuple[Coat, ...]:
    """Give all coats of the open job, in the order of its schedule."""
    return coats_of(known.job.steps, places_of(known)) if known.job else ()


def done_coats(known: Known) -> Done:
    """Give the newest entry of each step in each place."""
    return {(coat.step, coat.place): coat for coat in known.of(CoatFinished)}


def left_in(coats: tuple[Coat, ...], done: Done, place_id: str) -> tuple[Coat, ...]:
    """Give what is still to do in a place."""
    return coats_left(coats, frozenset(done), place_id)


def to_do(known: Known) -> frozenset[Coat]:
    """Give all coats that are still to do."""
    coats, done = job_coats(known), done_coats(known)
    places = {coat.place for coat in coats}
    return frozenset(one for place in places for one in left_in(coats, done, place))


@lru_cache(maxsize=2)  # asked by several screens, and known is replaced whole
def coats_now(known: Known) -> tuple[CoatNow, ...]:
    """Give each wall of the open job, in its order, and each zone whose turn it is."""
    job, done = job_now(known), done_coats(known)
    if job is None:
        return ()
    every = (_coat_now(known, job, place, done) for place in places_of(known))
    return tuple(
        one for one in every if isinstance(one.place, Wall) or (one.next and not one.holds)
    )


def _has_its_turn(now: CoatNow) -> bool:
    return now.next is not None and not now.holds


def place_now(known: Known, place_id: str) -> CoatNow | None:
    """Give a wall, or a zone whose turn it is."""
    return next((one for one in coats_now(known) if one.id == place_id), None)


def _coat_now(known: Known, job: Job, place: Place, done: Done) -> CoatNow:
    coats, steps = job_coats(known), {step.id: step for step in job.steps}
    coming = next(iter(left_in(coats, done, place.id)), None)
    if coming:
        under = coats_before(coats, coming)
        waits = waits_before(coats, job.waits, coming)
    else:
        under = tuple(coat for coat in coats if coat.place == place.id)
        waits = _to_the_end(job, under)
    lacking = [coat for coat in under if coat in left_in(coats, done, coat.place)]
    holds = dict.fromkeys(steps[c.step].name for c in lacking if c.place != place.id)
    laid = [done[c.step, c.place] for c in under if (c.step, c.place) in done]
    held = [one for coat, pair in waits if (one := _held(known, done, coat, pair.wait))]
    longest = max(held, key=lambda one: one.drying.ready_at_s, default=None)
    last = max(laid, key=lambda entry: entry.finished_at_s, default=None)
    entry = longest.entry if longest else last
    wall = found(known.walls, place.wall)
    return CoatNow(
        _kept(known, place),
        wall.name if wall else "",
        entry,
        steps[entry.step] if entry else None,
        steps[coming.step] if coming else None,
        strictest(tuple(one.drying for one in held)) if held else None,
        longest.wait if longest else None,
        tuple(holds),
    )


def _kept(known: Known, place: Place) -> Wall | Zone:
    things: Iterable[Wall | Zone] = (*known.walls, *known.zones)
    return next(thing for thing in things if thing.id == place.id)


def _to_the_end(job: Job, under: tuple[Coat, ...]) -> tuple[tuple[Coat, PairWait], ...]:
    """Give the waits of a finished place before the hand-over."""
    ends = {step.id for step in job.steps if step.use == HAND_OVER}
    asked = {pair.after: pair for pair in job.waits if pair.before in ends}
    return tuple((coat, asked[coat.step]) for coat in under if coat.step in asked)


def _held(known: Known, done: Done, coat: Coat, wait: Wait) -> _Held | None:
    """Give a finished coat with its wait; None where it isn't finished, or no label asks so.

    Such a one must not hide the others.
    """
    entry = done.get((coat.step, coat.place))
    drying = drying_of(known, entry, wait) if entry else None
    return _Held(entry, wait, drying) if entry and drying else None


def drying_of(known: Known, entry: CoatFinished, wait: Wait) -> Drying | None:
    """Find a finished coat's wait; None for one that no label asks for.

    Where nobody planned its work a coat is taken to begin as it ends, so that its wait is kept all
    the same; the screen says so (`CoatNow.start`).
    """
    tacky = tuple((e.at_s, e.more_s) for e in known.of(StillTacky) if e.coat == entry.id)
    started_at_s = entry.finished_at_s if entry.started_at_s is None else entry.started_at_s
    try:
        return after(entry.finished_at_s, wait, tacky, started_at_s)
    except Refused:
        return None
