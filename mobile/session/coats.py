"""Verbs and views of *Coats*."""

from dataclasses import dataclass

from core.coats.schedule import PlannedStep, next_step
from core.waits.pair import Drying, after, state
from mobile import clock
from mobile.session.known import Known
from mobile.session.session import Session, Undo
from mobile.store.records import CautionRead, CoatFinished, StillTacky, Wall
from mobile.words import coats as words

TACKY_S = 600.0  # "ten minutes more"
NUDGE_S = 300.0  # -5 and +5
BEFORE_LATE_S = 1800.0  # the second ring, half an hour before the recoat limit


@dataclass(frozen=True, slots=True)
class CoatNow:
    """Where a wall stands: its last coat, what that waits for, and what comes next."""

    wall: Wall
    coat: CoatFinished | None
    step: PlannedStep | None  # of the last coat
    next: PlannedStep | None
    drying: Drying | None

    def state(self, now_s: float) -> str:
        """Say "to start", "rolling", "drying", "ready", "too late" or "done"."""
        if self.next is None:
            return "done"
        return state(self.drying, now_s) if self.drying else "to start"


def coats_now(known: Known) -> tuple[CoatNow, ...]:
    """Give each wall of the open job, in its order."""
    return tuple(_coat_now(known, wall) for wall in known.job_walls)


def _coat_now(known: Known, wall: Wall) -> CoatNow:
    steps = known.job.steps if known.job else ()
    coats = {coat.step: coat for coat in known.of(CoatFinished) if coat.wall == wall.id}
    finished = tuple(step.id for step in steps if step.id in coats)
    coming = next_step(steps, finished)
    if not finished:
        return CoatNow(wall, None, None, coming, None)
    step = next(step for step in steps if step.id == finished[-1])
    coat = coats[step.id]
    tacky = tuple((e.at_s, e.more_s) for e in known.of(StillTacky) if e.coat == coat.id)
    return CoatNow(wall, coat, step, coming, after(coat.finished_at_s, step.wait, tacky))


def in_order(coats: tuple[CoatNow, ...], now_s: float) -> tuple[CoatNow, ...]:
    """Sort for the screen: too late and ready first, then the soonest, then the rest."""
    rank = {"too late": 0, "ready": 1, "rolling": 2, "drying": 2, "to start": 3, "done": 4}

    def key(coat: CoatNow) -> tuple[int, float]:
        return rank[coat.state(now_s)], coat.drying.ready_at_s if coat.drying else 0.0

    return tuple(sorted(coats, key=key))


def planned(coats: tuple[CoatNow, ...], now_s: float) -> CoatNow | None:
    """Give the wall whose next coat the main button finishes: nothing that still dries."""
    due = [c for c in in_order(coats, now_s) if c.state(now_s) in ("too late", "ready", "to start")]
    return due[0] if due else None


def alarms(known: Known) -> tuple[tuple[str, float, str], ...]:
    """Give what is to ring: each coat when it is ready, and half an hour before its limit."""
    if not known.settings.bell:
        return ()
    rings = []
    for coat in coats_now(known):
        if coat.drying is None or coat.next is None or coat.coat is None:
            continue
        said = words.ring(coat.wall.name, coat.next.name)
        rings.append((coat.coat.id, coat.drying.ready_at_s, said))
        late_s = coat.drying.late_at_s
        if late_s is not None and late_s - BEFORE_LATE_S > coat.drying.ready_at_s:
            said = words.ring_late(coat.wall.name, clock.hour(late_s))
            rings.append((f"{coat.coat.id}:late", late_s - BEFORE_LATE_S, said))
    return tuple(rings)


async def coat_finished(session: Session, coat: CoatNow, nudge_s: float = 0.0) -> None:
    """Log that the next step on a wall has just ended, or so many seconds from now."""
    job = session.known.job
    if job is None or coat.next is None:
        return
    at_s = clock.now_s() + nudge_s
    entry = CoatFinished(*session.stamp(), job.id, coat.wall.id, coat.next.id, at_s)
    await session.keep(entry)
    said = words.finished(coat.next.name, coat.wall.name, clock.hour(at_s))
    session.tell(said, Undo(entries=(entry.id,)))


async def still_tacky(session: Session, coat: CoatNow) -> None:
    """Give a coat ten minutes more."""
    if coat.coat is None:
        return
    entry = StillTacky(*session.stamp(), coat.coat.id, TACKY_S)
    await session.keep(entry)
    session.tell(words.tacky(coat.wall.name), Undo(entries=(entry.id,)))


def caution_due(known: Known, use: str, now_s: float) -> str:
    """Give the caution that stands before a step of this use and was not read that day, or ""."""
    caution = words.CAUTION_BEFORE.get(use, "")
    job, today = known.job, clock.day(now_s)
    read = any(
        e.caution == caution and e.day == today and job is not None and e.job == job.id
        for e in known.of(CautionRead)
    )
    return "" if read else caution


async def read_caution(session: Session, caution: str) -> None:
    """Log that a caution was read today."""
    job = session.known.job
    if job is not None:
        day = clock.day(clock.now_s())
        await session.keep(CautionRead(*session.stamp(), job.id, caution, day))
