"""Verbs of *Coats*: a coat is finished, still tacky; a caution is read."""

from core.coats.schedule import PlannedStep
from mobile import clock
from mobile.device import page as device
from mobile.device.calendar import MIME, calendar_file
from mobile.session.coats.standing import CoatNow, job_coats, place_now
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.session.walls.walls import place_area_m2
from mobile.store.entries import CautionRead, CoatFinished, StillTacky
from mobile.words import coats as words

TACKY_S = 600.0  # "ten minutes more"
NUDGE_S = 300.0  # -5 and +5


async def coat_finished(session: Session, coat: CoatNow, nudge_s: float = 0.0) -> None:
    """Log that the next step on a wall has just ended, or so many seconds from now."""
    if coat.next is not None:
        await _log(session, coat, (coat.id, coat.next), nudge_s)


async def done_again(session: Session, coat: CoatNow) -> None:
    """Log the last coat under a step once more: its limit had passed, so its wait begins anew."""
    if coat.step is not None and coat.coat is not None:
        await _log(session, coat, (coat.coat.place, coat.step), 0.0)


async def _log(
    session: Session, coat: CoatNow, done: tuple[str, PlannedStep], nudge_s: float
) -> None:
    known, job = session.known, session.known.job
    # A wet knuckle taps twice: the second tap was meant for what is logged by now.
    now = place_now(known, coat.id)
    if job is None or now is None or (now.coat, now.next) != (coat.coat, coat.next):
        return
    place_id, step = done
    at_s = clock.now_s() + nudge_s
    work_s = work_there_s(known, step, place_id)
    started_at_s = at_s - work_s if work_s else None
    entry = CoatFinished(*session.stamp(), job.id, place_id, step.id, at_s, started_at_s)
    await session.keep(entry)
    said = words.finished(step.name, name_of(known, place_id), clock.hour(at_s))
    session.tell(said, Undo(entries=(entry.id,)))


def name_of(known: Known, place_id: str) -> str:
    """Give the name of a wall or a zone."""
    place = found(known.walls, place_id) or found(known.zones, place_id)
    return place.name if place else ""


def work_there_s(known: Known, step: PlannedStep, place_id: str) -> float:
    """Reckon a place's share of a step's work, by its area; 0 where no work was planned."""
    areas_m2 = {
        coat.place: place_area_m2(known, coat.place) * coat.coats_count
        for coat in job_coats(known)
        if coat.step == step.id
    }
    whole_m2 = sum(areas_m2.values())
    return step.work_s * areas_m2.get(place_id, 0.0) / whole_m2 if whole_m2 else 0.0


async def still_tacky(session: Session, coat: CoatNow) -> None:
    """Give a coat ten minutes more."""
    now = place_now(session.known, coat.id)
    if coat.coat is None or now is None or now.drying != coat.drying:
        return
    entry = StillTacky(*session.stamp(), coat.coat.id, TACKY_S)
    await session.keep(entry)
    session.tell(words.tacky(coat.name), Undo(entries=(entry.id,)))


async def save_calendar(session: Session, coat: CoatNow) -> None:
    """Save a calendar file for a coat's end: the phone rings with the app closed."""
    if coat.drying is None or coat.coat is None or coat.next is None:
        return
    job = session.known.job
    title = words.ring(coat.name, coat.next.name)
    more = words.calendar_more(job.name if job else "", coat.step.name if coat.step else "")
    uid, ready_at_s = f"{coat.coat.id}.{coat.id}", coat.drying.ready_at_s
    data = calendar_file(uid, title, ready_at_s, clock.now_s(), more)
    device.save_file(words.calendar_name(coat.name, coat.next.name), data, MIME)
    session.tell(words.CALENDAR_SAVED)


def caution_due(known: Known, use: str, now_s: float) -> str:
    """Give the first caution before a step of this use that was not read that day, or ""."""
    job, today = known.job, clock.day(now_s)
    read = {
        e.caution
        for e in known.of(CautionRead)
        if e.day == today and job is not None and e.job == job.id
    }
    return next((one for one in words.CAUTIONS_BEFORE.get(use, ()) if one not in read), "")


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
