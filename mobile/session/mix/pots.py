"""The pots of the book: all, those of the open job, the one on the scale."""

from functools import lru_cache

from core.mixing.plan import band_of_g
from mobile.session.known import Known
from mobile.store.entries import Entry, PotStarted, Poured, TippedOut
from mobile.store.pot import Pot
from mobile.store.pot_of import OfAPot, pot_of

READING, RESTART = "weigh", "weigh/scale"  # drafts: what is typed of a reading
WRONG, OVER = "weigh/wrong", "weigh/spilt"  # drafts: what the scale read then
AT_SCALE = (READING, RESTART, WRONG, OVER)  # all of them: none outlives the cup on the scale


@lru_cache(maxsize=2)  # asked by every screen, and known is replaced whole
def all_pots(known: Known) -> tuple[Pot, ...]:
    """Give the pots of all jobs, oldest first."""
    own: dict[str, list[Entry]] = {}
    for entry in known.entries:
        if isinstance(entry, OfAPot):
            own.setdefault(entry.pot, []).append(entry)
    return tuple(pot_of(one, tuple(own.get(one.id, ()))) for one in known.of(PotStarted))


def pots(known: Known) -> tuple[Pot, ...]:
    """Give the open job's pots, oldest first."""
    job = known.job
    return tuple(pot for pot in all_pots(known) if job is None or pot.started.job == job.id)


def pot_by(known: Known, pot_id: str) -> Pot | None:
    """Find a pot by its id."""
    return next((pot for pot in all_pots(known) if pot.id == pot_id), None)


def under_way(known: Known) -> Pot | None:
    """Give the pot that stands on the scale, whichever job is open."""
    return next((pot for pot in reversed(all_pots(known)) if not pot.ended), None)


def next_number(known: Known, job_id: str) -> int:
    """Give the number that goes on the next cup of a job."""
    numbers = (pot.started.number for pot in all_pots(known) if pot.started.job == job_id)
    return 1 + max(numbers, default=0)


def tipped_before(known: Known, pot: Pot) -> TippedOut | None:
    """Find what *Tip it out* ended when it began this pot: both were written at one instant."""
    same = (e for e in known.of(TippedOut) if e.at_s == pot.started.at_s)
    return next(same, None)


def more_than_planned(pot: Pot) -> tuple[str, ...]:
    """Give the paints of which too much was kept and that are a larger share than in the plan."""
    planned_g = sum(portion.net_g for portion in pot.plan.portions)
    share = {one.paint: one.net_g / planned_g for one in pot.plan.portions}
    in_all_g = sum(pour.net_g for pour in pot.poured)
    return tuple(one for one in pot.kept if pot.paint_g(one) > share.get(one, 0.0) * in_all_g)


def on_marks_g(known: Known, pot: Pot) -> dict[str, float]:
    """Give the bands of the paints that were said to be on the mark: so near they are."""
    said = {e.paint for e in known.of(Poured) if e.pot == pot.id and e.reads_g is None and e.net_g}
    bands = (band_of_g(pot.plan, at) for at in range(len(pot.plan.portions)))
    each = zip(pot.plan.portions, bands, strict=True)
    return {one.paint: band_g for one, band_g in each if one.paint in said}
