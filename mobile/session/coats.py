"""Verbs and views of *Coats*."""

from dataclasses import dataclass

from core.coats.schedule import PlannedStep, next_step
from core.errors import Refused
from core.waits.pair import Drying, after, state
from mobile import clock
from mobile.session.known import Known
from mobile.session.session import Session, Undo
from mobile.session.times import next_minute_s
from mobile.store.records import CautionRead, CoatFinished, StillTacky, Wall
from mobile.words import coats as words

Tacky = tuple[tuple[float, float], ...]  # when a finger said no, and how much longer
TACKY_S = 600.0  # "ten minutes more"
NUDGE_S = 300.0  # -5 and +5
BEFORE_LATE_S = 1800.0  # the second ring, half an hour before the recoat limit
LATE_BY_S = 0.001  # at its limit a coat is still ready, just after it is too late
AHEAD_S = 3600.0  # the furthest that "done in five" goes
MISSED_S = 60.0
CLOCK_S = 6 * 3600.0  # the longest wait that is drawn as a strip


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

    @property
    def wait_s(self) -> float:
        """How long the last coat waits, from its end to ready."""
        return self.drying.ready_at_s - self.drying.finished_at_s if self.drying else 0.0

    @property
    def tacky(self) -> bool:
        """Whether a finger has made the wait longer than the label's."""
        return self.drying is not None and self.drying.ready_at_s > self.drying.label_ready_at_s


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
    order = [coats[step_id] for step_id in finished]
    coat = max(reversed(order), key=lambda one: one.finished_at_s)
    step = next(step for step in steps if step.id == coat.step)
    tacky = tuple((e.at_s, e.more_s) for e in known.of(StillTacky) if e.coat == coat.id)
    return CoatNow(wall, coat, step, coming, _dried(coat, step, tacky))


def _dried(coat: CoatFinished, step: PlannedStep, tacky: Tacky) -> Drying | None:
    """Find a coat's wait; None for one that no label asks for: it must not hide the others."""
    try:
        return after(coat.finished_at_s, step.wait, tacky)
    except Refused:
        return None


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


def on_clock(coat: CoatNow, now_s: float) -> bool:
    """Tell whether a wait is drawn on the one clock: a short one that was begun not long ago."""
    drying = coat.drying
    if drying is None or coat.next is None or coat.state(now_s) == "done":
        return False
    return coat.wait_s <= CLOCK_S and now_s - drying.finished_at_s <= CLOCK_S - BEFORE_LATE_S


def soonest(coats: tuple[CoatNow, ...], now_s: float) -> CoatNow | None:
    """Give the wall that is ready next, of those that still dry."""
    wet = [c for c in in_order(coats, now_s) if c.state(now_s) in ("rolling", "drying")]
    return wet[0] if wet else None


def next_change_s(coats: tuple[CoatNow, ...], now_s: float) -> float:
    """Give the instant at which something on the screen changes next: a minute, or a state."""
    due = [next_minute_s(now_s)]
    for coat in coats:
        if coat.drying:
            dried = coat.drying
            late = () if dried.late_at_s is None else (dried.late_at_s + LATE_BY_S,)
            due += [at_s for at_s in (dried.finished_at_s, dried.ready_at_s, *late) if at_s > now_s]
    return min(due)


def nudged(coat: CoatNow, nudge_s: float, by_s: float, now_s: float) -> float:
    """Move the instant of finishing: at most an hour ahead, and not before the step before it."""
    earliest_s = coat.drying.finished_at_s - now_s if coat.drying else -clock.DAY_S
    return min(max(nudge_s + by_s, min(earliest_s, 0.0)), AHEAD_S)


def alarms(known: Known) -> tuple[tuple[str, float, str], ...]:
    """Give what is to ring: each coat when it is ready, and half an hour before its limit.

    What was due more than a minute ago has rung, or was missed: then the screen says it.
    """
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
    missed_s = clock.now_s() - MISSED_S
    return tuple(ring for ring in rings if ring[1] > missed_s)


async def coat_finished(session: Session, coat: CoatNow, nudge_s: float = 0.0) -> None:
    """Log that the next step on a wall has just ended, or so many seconds from now."""
    if coat.next is not None:
        await _log(session, coat, coat.next, nudge_s)


async def done_again(session: Session, coat: CoatNow) -> None:
    """Log a wall's last step once more: its limit had passed, so its wait begins anew."""
    if coat.step is not None:
        await _log(session, coat, coat.step, 0.0)


async def _log(session: Session, coat: CoatNow, step: PlannedStep, nudge_s: float) -> None:
    job = session.known.job
    # A wet knuckle taps twice: the second tap was meant for what is logged by now.
    if job is None or _coat_now(session.known, coat.wall).coat != coat.coat:
        return
    at_s = clock.now_s() + nudge_s
    entry = CoatFinished(*session.stamp(), job.id, coat.wall.id, step.id, at_s)
    await session.keep(entry)
    said = words.finished(step.name, coat.wall.name, clock.hour(at_s))
    session.tell(said, Undo(entries=(entry.id,)))


async def still_tacky(session: Session, coat: CoatNow) -> None:
    """Give a coat ten minutes more."""
    if coat.coat is None or _coat_now(session.known, coat.wall).drying != coat.drying:
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


def caution_before(known: Known, coat: CoatNow, now_s: float) -> str:
    """Give the caution to read before a wall's next step, or before the one to be done again."""
    late = coat.state(now_s) == "too late"
    steps = (coat.step if late else None, coat.next)
    due = [caution_due(known, step.use, now_s) for step in steps if step]
    return next((caution for caution in due if caution), "")


async def read_caution(session: Session, caution: str) -> None:
    """Log that a caution was read today."""
    job = session.known.job
    if job is not None:
        day = clock.day(clock.now_s())
        await session.keep(CautionRead(*session.stamp(), job.id, caution, day))
