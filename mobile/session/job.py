"""Verbs and views of *Job*: its name and steps, settings, export."""

from dataclasses import replace

from core.coats.schedule import PlannedStep
from core.errors import Refused
from mobile.session.session import Session, Undo
from mobile.store.records import Job, Record, Settings
from mobile.words import job as words


def job_or_new(session: Session) -> tuple[Job, tuple[Record, ...]]:
    """Give the open job; where there is none, a new one and the records that make it."""
    known = session.known
    if known.job:
        return known.job, ()
    job = Job(*session.stamp(), words.first_job(len(known.jobs)))
    return job, (job, opened(session, job))


def opened(session: Session, job: Job) -> Settings:
    """Give the settings with a job open."""
    return changed(session, job=job.id)


def changed(session: Session, **what: str | float | bool | None) -> Settings:
    """Give the settings with some of them changed."""
    stamp = dict(zip(("id", "at_s", "device"), session.stamp("settings"), strict=True))
    return replace(session.known.settings, **(stamp | what))  # type: ignore[arg-type]


async def set_settings(session: Session, **what: str | float | bool | None) -> None:
    """Keep changed settings."""
    await session.keep(changed(session, **what))


async def new_job(session: Session, name: str) -> Job:
    """Begin a job and open it."""
    before = session.known.settings
    job = Job(*session.stamp(), _named(name))
    await session.keep(job, opened(session, job), forget=("job/new",))
    session.tell(words.begun(job.name), Undo(things=(before,), forget=(job.id,)))
    return job


async def open_job(session: Session, job: Job) -> None:
    """Go to another job."""
    await session.keep(opened(session, job))
    session.tell(words.now_at(job.name))


async def name_job(session: Session, name: str) -> None:
    """Name the open job."""
    await _change(session, words.named, name=_named(name))


async def set_rule(session: Session, deducted_above_m2: float) -> None:
    """Set the size above which an opening is taken off."""
    await _change(session, words.rule_set, deducted_above_m2=deducted_above_m2)


async def keep_step(session: Session, step: PlannedStep) -> None:
    """Keep a step, changed or at the end of the schedule."""
    job, made = job_or_new(session)
    known_step = any(old.id == step.id for old in job.steps)
    steps = (
        tuple(step if old.id == step.id else old for old in job.steps)
        if known_step
        else (*job.steps, step)
    )
    forget = (f"job/steps/{step.id if known_step else 'new'}",)
    after = _with(session, job, steps=steps)
    await session.keep(*(r for r in made if r.id != job.id), after, forget=forget)
    session.tell(words.step_kept(step.name), None if made else Undo(things=(job,)))


async def keep_steps(session: Session, steps: tuple[PlannedStep, ...], said: str) -> None:
    """Keep the whole schedule: another order, one step fewer, a ready-made one."""
    job, made = job_or_new(session)
    after = _with(session, job, steps=steps)
    await session.keep(*(r for r in made if r.id != job.id), after)
    session.tell(said, None if made else Undo(things=(job,)))


def moved(
    steps: tuple[PlannedStep, ...], step: PlannedStep, by_count: int
) -> tuple[PlannedStep, ...]:
    """Give the schedule with a step moved up or down; at the end it stays."""
    rest = [other for other in steps if other.id != step.id]
    place = min(max(steps.index(step) + by_count, 0), len(rest))
    return (*rest[:place], step, *rest[place:])


def new_step_id(session: Session) -> str:
    """Give an id for a new step."""
    return session.stamp()[0]


def export(session: Session) -> bytes:
    """Give everything as one file."""
    return session.shelf.export()


async def _change(session: Session, said: "words.Saying", **what: str | float) -> None:
    job, made = job_or_new(session)
    after = _with(session, job, **what)
    await session.keep(*(r for r in made if r.id != job.id), after)
    session.tell(said(after.name), None if made else Undo(things=(job,)))


def _with(session: Session, job: Job, **what: object) -> Job:
    stamp = dict(zip(("id", "at_s", "device"), session.stamp(job.id), strict=True))
    return replace(job, **(stamp | what))  # type: ignore[arg-type]


def _named(name: str) -> str:
    if not name.strip():
        raise Refused("name", name, 1, 80)
    return name.strip()
