"""Verbs of *Job*: which one is open, its name, settings, export."""

from dataclasses import replace

from core.errors import Refused, require
from core.walls.area import DEDUCTED_ABOVE_M2
from mobile.session.session import Session, Undo
from mobile.store.records import Job, Record, Settings
from mobile.words import job as words

SETTINGS_FORMS = "job/settings/metric", "job/settings/us"  # typed in either units
CAPACITY_G = 10.0, 1e5  # a pocket scale to a platform


def job_or_new(session: Session) -> tuple[Job, tuple[Record, ...]]:
    """Give the open job; where there is none, a new one and the records that make it."""
    known = session.known
    if known.job:
        return known.job, ()
    job = Job(*session.stamp(), words.first_job(len(known.jobs)))
    return job, (job, opened(session, job))


def opened(session: Session, job: Job) -> Settings:
    """Give the settings with a job open."""
    return replace(settings_now(session), job=job.id)


def settings_now(session: Session) -> Settings:
    """Give the settings, stamped anew: to be changed and kept."""
    _, at_s, device = session.stamp()
    return replace(session.known.settings, at_s=at_s, device=device)


async def set_settings(session: Session, settings: Settings) -> None:
    """Keep changed settings."""
    await session.keep(settings)


async def new_job(session: Session, name: str, job_id: str = "") -> Job:
    """Begin a job and open it."""
    before = session.known.settings
    job = Job(*session.stamp(job_id), _named(name))
    await session.keep(job, opened(session, job), forget=("job/new",))
    session.tell(words.begun(job.name), Undo(things=(before,), forget=(job.id,)))
    return job


async def open_job(session: Session, job: Job) -> None:
    """Go to another job; one that was put away is brought back."""
    back = (replace(again(session, job), away=False),) if job.away else ()
    await session.keep(*back, opened(session, job))
    session.tell(words.now_at(job.name))


async def put_away(session: Session, job: Job) -> None:
    """Put a finished job away: it stays in the book, and off the list."""
    before = session.known.settings
    left = next((one for one in session.known.jobs if not one.away and one.id != job.id), None)
    settings = replace(settings_now(session), job=left.id if left else "")
    await session.keep(replace(again(session, job), away=True), settings)
    session.tell(words.put_away(job.name), Undo(things=(job, before)))


async def name_job(session: Session, name: str) -> None:
    """Name the open job."""
    job, made = job_or_new(session)
    after = replace(again(session, job), name=_named(name))
    await session.keep(*(r for r in made if r.id != job.id), after, forget=("job/name",))
    session.tell(words.named(after.name), None if made else Undo(things=(job,)))


async def set_who_and_rule(session: Session, who: str, deducted_above_m2: float | None) -> None:
    """Keep who has this phone, and the size above which the open job takes openings off."""
    settings = replace(settings_now(session), who=who.strip())
    job = session.known.job
    if job is None or deducted_above_m2 in {None, job.deducted_above_m2}:
        await session.keep(settings, forget=SETTINGS_FORMS)
        session.tell(words.SETTINGS_KEPT)
        return
    require("deducted_above_m2", deducted_above_m2, *DEDUCTED_ABOVE_M2)
    ruled = replace(again(session, job), deducted_above_m2=deducted_above_m2)
    await session.keep(settings, ruled, forget=SETTINGS_FORMS)
    session.tell(words.rule_set(job.name), Undo(things=(job,)))


def export(session: Session) -> bytes:
    """Give everything as one file."""
    return session.shelf.export()


def again(session: Session, job: Job) -> Job:
    """Stamp a job anew, to be changed and kept."""
    _, at_s, device = session.stamp()
    return replace(job, at_s=at_s, device=device)


def _named(name: str) -> str:
    if not name.strip():
        raise Refused("name", name, 1, 80)
    return name.strip()
