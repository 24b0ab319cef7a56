"""A pot, computed from its entries: what is planned, what is in, what comes next."""

from dataclasses import dataclass, replace
from functools import lru_cache

from core.mixing.over_pour import Answers, answers
from core.mixing.plan import Plan, Pour
from core.mixing.portions import Portion
from core.mixing.weigh_out import OverPour, Target, next_pour, over
from mobile.session.known import Known
from mobile.store.entries import (
    Entry,
    KeptOver,
    MadeMore,
    PotStarted,
    Poured,
    ScaleRestarted,
    Stirred,
    TippedOut,
)

OF_A_POT = (Poured, MadeMore, KeptOver, ScaleRestarted, Stirred, TippedOut)


@dataclass(frozen=True, slots=True)
class Pot:
    """One cup on the scale, or one that is done."""

    started: PotStarted
    plan: Plan
    poured: tuple[Pour, ...] = ()
    kept: tuple[str, ...] = ()  # paints whose over-pour was left as it is
    last: tuple[Entry, ...] = ()  # what *Undo* takes back: what was logged last, together
    ended: str = ""  # "stirred", "tipped", or nothing while it is under way

    @property
    def id(self) -> str:
        """The pot's id: that of the entry that began it."""
        return self.started.id

    @property
    def at_s(self) -> float:
        """When something was last logged of it."""
        return self.last[-1].at_s if self.last else self.started.at_s

    @property
    def in_cup_g(self) -> float:
        """All that was poured in."""
        return sum(pour.net_g for pour in self.poured)

    @property
    def batch_g(self) -> float:
        """The batch as it was decided: the plan's portions, with an over-pour made good."""
        return sum(portion.net_g for portion in self.plan.portions) * self.plan.factor_ratio

    @property
    def missing(self) -> tuple[Portion, ...]:
        """What is still to come of each portion, in pouring order; 0 g where it is in."""
        factor_ratio = self.plan.factor_ratio
        return tuple(
            Portion(one.paint, max(0.0, one.net_g * factor_ratio - self.paint_g(one.paint)))
            for one in self.plan.portions
        )

    @property
    def target(self) -> Target | None:
        """What to pour next; None when all is in."""
        return next_pour(self.plan, self.poured)

    @property
    def over(self) -> OverPour | None:
        """An over-pour that has no answer yet."""
        return over(self.plan, self.poured, self.kept)

    def can(self, paint: str) -> str:
        """Give the can that a paint comes from, "" if it has none."""
        order = [portion.paint for portion in self.started.portions]
        return self.started.cans[order.index(paint)] if paint in order else ""

    def paint_g(self, paint: str) -> float:
        """Give what is in of one paint."""
        return sum(pour.net_g for pour in self.poured if pour.paint == paint)

    def answers(
        self, scale_capacity_g: float, prices_per_g: tuple[float | None, ...] = ()
    ) -> Answers:
        """Give the three answers to an over-pour; a price a portion, None where it is unknown."""
        room_g = max(0.0, scale_capacity_g - max(self.started.cup_g or 0.0, self.plan.offset_g))
        prices = prices_per_g or (None,) * len(self.plan.portions)
        return answers(self.plan, self.poured, prices, room_g, self.kept)


def pot_of(started: PotStarted, entries: tuple[Entry, ...]) -> Pot:
    """Put a pot together from its own entries, in the order in which they were written."""
    step_g, each = started.scale_step_g, started.tared_each
    pot = Pot(started, Plan(started.portions, 1.0, step_g, 0.0, each))
    for entry in entries:
        pot = _after(pot, entry)
    return pot


def _after(pot: Pot, entry: Entry) -> Pot:
    last = (*pot.last, entry) if _found_after_restart(pot.last, entry) else (entry,)
    pot = replace(pot, last=last)
    match entry:
        case Poured():
            pot = replace(pot, poured=(*pot.poured, Pour(entry.paint, entry.net_g)))
        case MadeMore():
            pot = replace(pot, plan=replace(pot.plan, factor_ratio=entry.factor_ratio))
        case KeptOver():
            pot = replace(pot, kept=(*pot.kept, entry.paint))
        case ScaleRestarted():
            pot = replace(pot, plan=replace(pot.plan, offset_g=entry.offset_g))
        case _:
            pot = replace(pot, ended="stirred" if isinstance(entry, Stirred) else "tipped")
    return pot


def _found_after_restart(last: tuple[Entry, ...], entry: Entry) -> bool:
    """Tell whether a pour was found by the restart before it: one act, one *Undo*."""
    return (
        len(last) == 1
        and isinstance(last[0], ScaleRestarted)
        and isinstance(entry, Poured)
        and last[0].at_s == entry.at_s
    )


@lru_cache(maxsize=2)  # asked by every screen, and known is replaced whole
def all_pots(known: Known) -> tuple[Pot, ...]:
    """Give the pots of all jobs, oldest first."""
    own: dict[str, list[Entry]] = {}
    for entry in known.entries:
        if isinstance(entry, OF_A_POT):
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
