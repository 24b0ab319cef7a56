"""Verbs and views of the coat schedule: its steps, and the waits between pairs of them."""

from dataclasses import replace
from typing import Literal

from core.coats.schedule import HAND_OVER, PlannedStep, kept_waits, require_schedule
from core.errors import Refused
from core.waits.hand_over import Task, hand_over
from core.waits.pair import PairWait, Wait
from mobile.session.coats.standing import job_coats, to_do
from mobile.session.job.jobs import again, job_or_new
from mobile.session.known import Known
from mobile.session.session import Session, Undo
from mobile.store.records import Job
from mobile.words import job as words

StepState = Literal["done", "now", "to come"]


async def keep_step(session: Session, step: PlannedStep, wait: PairWait | None = None) -> None:
    """Keep a step, changed or at the end of the schedule, and the wait before it if one is given.

    The first step brings the hand-over, which stays the last.
    """
    job, made = job_or_new(session)
    known_step = any(old.id == step.id for old in job.steps)
    steps = tuple(step if old.id == step.id else old for old in job.steps)
    if not known_step:
        end = [old for old in job.steps if old.use == HAND_OVER] or [_hand_over(session)]
        steps = (*(old for old in job.steps if old.use != HAND_OVER), step, *end)
    waits = kept_waits(steps, job.waits)
    after = _with_schedule(session, job, steps, with_wait(waits, wait) if wait else waits)
    forget = (f"job/steps/{step.id if known_step else 'new'}",)
    await session.keep(*(r for r in made if r.id != job.id), after, forget=forget)
    session.tell(words.step_kept(step.name), None if made else Undo(things=(job,)))


def _hand_over(session: Session) -> PlannedStep:
    return PlannedStep(session.stamp()[0], words.HAND_OVER, HAND_OVER)


def _with_schedule(
    session: Session, job: Job, steps: tuple[PlannedStep, ...], waits: tuple[PairWait, ...]
) -> Job:
    """Give the job with another schedule; refuse one that can't be, or that no time can keep."""
    require_schedule(steps, waits)
    tasks = tuple(Task(step.id, step.work_s) for step in steps)
    try:
        hand_over(tasks, waits, one_after_another=True)
    except Refused as refusal:
        if refusal.name != "impossible_pair":
            raise
        pair = waits[int(float(refusal.value))]
        names = {step.id: step.name for step in steps}
        said = words.pair(names[pair.after], names[pair.before])
        raise Refused("impossible_pair", said, 0.0, 0.0) from None
    return replace(again(session, job), steps=steps, waits=waits)


def with_wait(waits: tuple[PairWait, ...], wait: PairWait) -> tuple[PairWait, ...]:
    """Give the waits with one more, or another one for its pair."""
    pair = wait.after, wait.before
    return (*(old for old in waits if (old.after, old.before) != pair), wait)


def wait_between(job: Job | None, after: str, before: str) -> Wait | None:
    """Find the wait of a pair of steps; None while nobody was asked."""
    pairs = job.waits if job else ()
    return next((p.wait for p in pairs if (p.after, p.before) == (after, before)), None)


async def keep_wait(session: Session, pair: PairWait) -> None:
    """Keep the wait between two steps."""
    job, _ = job_or_new(session)
    names = {step.id: step.name for step in job.steps}
    after = _with_schedule(session, job, job.steps, with_wait(job.waits, pair))
    await session.keep(after, forget=(f"job/waits/{pair.after}/{pair.before}",))
    said = words.pair(names[pair.after], names[pair.before])
    session.tell(words.wait_kept(said), Undo(things=(job,)))


async def drop_wait(session: Session, pair: PairWait) -> None:
    """Forget the wait between two steps: it is not asked again until someone types one."""
    job, _ = job_or_new(session)
    waits = tuple(old for old in job.waits if old != pair)
    await session.keep(_with_schedule(session, job, job.steps, waits))
    session.tell(words.WAIT_DROPPED, Undo(things=(job,)))


async def keep_steps(session: Session, steps: tuple[PlannedStep, ...], said: str) -> None:
    """Keep another order, or one step fewer; waits that lead backwards then are dropped."""
    job, made = job_or_new(session)
    after = _with_schedule(session, job, steps, kept_waits(steps, job.waits))
    await session.keep(*(r for r in made if r.id != job.id), after)
    session.tell(said, None if made else Undo(things=(job,)))


async def take_schedule(
    session: Session, steps: tuple[PlannedStep, ...], waits: tuple[PairWait, ...], name: str
) -> None:
    """Begin with a ready-made schedule."""
    job, made = job_or_new(session)
    after = _with_schedule(session, job, steps, waits)
    await session.keep(*(r for r in made if r.id != job.id), after)
    session.tell(words.schedule_taken(name), None if made else Undo(things=(job,)))


def moved(
    steps: tuple[PlannedStep, ...], step: PlannedStep, by_count: int
) -> tuple[PlannedStep, ...]:
    """Give the schedule with a step moved up or down; it stays before the hand-over."""
    rest = [other for other in steps if other.id != step.id]
    last = sum(other.use != HAND_OVER for other in rest)
    place = min(max(steps.index(step) + by_count, 0), last)
    return (*rest[:place], step, *rest[place:])


def step_states(known: Known) -> tuple[StepState, ...]:
    """Say of each step whether all its coats are finished, it is the one now, or to come."""
    coats, left = job_coats(known), to_do(known)
    states: list[StepState] = []
    for step in known.job.steps if known.job else ():
        own = [coat not in left for coat in coats if coat.step == step.id]
        finished = bool(own) and all(own)
        states.append("done" if finished else "to come" if "now" in states else "now")
    return tuple(states)
