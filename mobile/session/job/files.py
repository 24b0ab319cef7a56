"""Verbs of files: a job or everything as a file, a job's file taken in, a backup restored."""

from functools import partial

from core.errors import Refused
from core.units import System, show
from mobile import clock
from mobile.device import page as device
from mobile.session.job.jobs import opened
from mobile.session.known import SETTINGS, found
from mobile.session.session import Declined, Session, Undo
from mobile.store.errors import (
    Astray,
    Clash,
    Foreign,
    Newer,
    Senseless,
    TooLarge,
    Unreadable,
)
from mobile.store.incoming import Incoming, read_file
from mobile.store.merge import TakenIn
from mobile.store.records import Job, Record, Settings
from mobile.words import files as words
from mobile.words import trouble

MIME = "application/json"


async def export_job(session: Session) -> str:
    """Put the job on the screen into the phone's downloads, as one file; give its name."""
    job = session.known.job
    if job is None:
        raise Declined(words.NO_JOB)
    return _saved(session, words.job_file(job.name, _today()), job.id)


async def back_up(session: Session) -> str:
    """Put everything into the phone's downloads, as one file; give its name."""
    await session.drafts.flush()
    return _saved(session, words.backup_file(_today()), None)


async def import_file(session: Session, name: str, data: bytes) -> Job:
    """Take the file of one job in, beside what is here, and go to that job.

    It goes again with *Undo*: all of it, as it came. Raise `Declined`, which says the file's name,
    where it is no such file, with nothing changed.
    """
    try:
        return await _imported(session, data)
    except Declined as declined:
        raise Declined(words.of_file(name, declined.said)) from None


async def _imported(session: Session, data: bytes) -> Job:
    incoming = _read(session, data)
    if incoming.job is None:
        raise Declined(words.declined(words.IS_BACKUP))
    before = session.known.settings
    (job,) = (one for one in incoming.records if isinstance(one, Job) and one.id == incoming.job)
    try:
        taken = await session.renew(session.shelf.take_in(incoming, opened(session, job)))
    except Unreadable as error:
        raise _declined(session, error) from None
    job = found(session.known.jobs, job.id) or job
    session.tell(_told(job, taken), _undo(taken, before))
    return job


async def restore(session: Session, data: bytes) -> str:
    """Let a backup take the place of everything; give the name of what was put aside, or "".

    What is half typed goes too: it belongs to what was here before. Raise `Declined` where the file
    is no backup, with nothing changed.
    """
    incoming = _read(session, data)
    if incoming.job is not None:
        raise Declined(words.declined(words.IS_JOB))
    await session.drafts.flush()
    if incoming.records == session.shelf.records():
        session.tell(words.declined(words.SAME))
        return ""
    aside = await session.renew(_restored(session, incoming))
    session.tell(words.restored(aside))
    return aside


async def _restored(session: Session, incoming: Incoming) -> str:
    aside = await session.shelf.restore(incoming)
    session.drafts.drop(tuple(session.drafts.waiting()))
    return aside


def _saved(session: Session, name: str, job_id: str | None) -> str:
    device.save_file(name, session.shelf.export(job_id), MIME)
    session.tell(words.SAVED)
    return name


def _today() -> str:
    return clock.day(clock.now_s())


def _told(job: Job, taken: TakenIn) -> str:
    said = words.taken_in(job.name, len(taken.added), len(taken.before), taken.stay_count)
    lids = (words.moved(on_lid, here) for on_lid, here in taken.moved)
    return " ".join((said, *lids, *([words.put_away(job.name)] if job.away else [])))


def _undo(taken: TakenIn, before: Settings) -> Undo | None:
    """Give what takes an import back; None where it brought nothing."""
    if not taken.added and not taken.before:
        return None
    came = tuple(record.id for record in taken.added)
    if before == SETTINGS:  # none were kept yet
        return Undo(things=taken.before, came=(*came, before.id))
    things: tuple[Record, ...] = (*taken.before, before)
    return Undo(things=things, came=came)


def _read(session: Session, data: bytes) -> Incoming:
    if not data:
        raise Declined(words.declined(words.EMPTY))
    try:
        return read_file(data)
    except (Unreadable, Newer) as error:
        raise _declined(session, error) from None


def _declined(session: Session, error: Unreadable | Newer) -> Declined:
    return Declined(words.declined(_why(session, error)))


def _why(session: Session, error: Unreadable | Newer) -> str:
    """Say why a file is refused, in the person's words and units."""
    match error:
        case Senseless():
            said = words.why(error.refusal, _as_typed(session, error.refusal))
            return words.cant_be(error.kind, error.name, said)
        case Astray():
            return words.astray(error.kind, error.name)
        case Clash():
            return words.clash(error.kind, error.name)
    plain: dict[type[Exception], str] = {
        Newer: words.NEWER,
        Foreign: words.FOREIGN,
        TooLarge: words.TOO_LARGE,
    }
    place = error.path[:1] if isinstance(error, Unreadable) else ()
    return plain.get(type(error)) or words.damaged("".join(place))


def _as_typed(session: Session, refusal: Refused) -> str:
    units = partial(show, system=System(session.known.settings.units))
    return trouble.refused(refusal, units)
