"""A pot, computed from its entries: what is planned, what is in, what comes next."""

from dataclasses import dataclass, replace

from core.mixing.over_pour import Answers, answers
from core.mixing.portions import Portion
from core.mixing.weigh_out import OverPour, Plan, Pour, Target, next_pour, over
from mobile.session.known import Known
from mobile.store.records import (
    KeptOver,
    MadeMore,
    PotStarted,
    Poured,
    ScaleRestarted,
    Stirred,
    TippedOut,
)


@dataclass(frozen=True, slots=True)
class Pot:
    """One cup on the scale, or one that is done."""

    started: PotStarted
    plan: Plan
    poured: tuple[Pour, ...]
    last: str  # the last pour's entry, "" before the first
    ended: str = ""  # "stirred", "tipped", or nothing while it is under way

    @property
    def id(self) -> str:
        """The pot's id: that of the entry that began it."""
        return self.started.id

    @property
    def in_cup_g(self) -> float:
        """All that was poured in."""
        return sum(pour.net_g for pour in self.poured)

    @property
    def batch_g(self) -> float:
        """The planned batch, with an over-pour made good."""
        return sum(portion.net_g for portion in self.plan.portions) * self.plan.factor_ratio

    @property
    def target(self) -> Target | None:
        """What to pour next; None when all is in."""
        return next_pour(self.plan, self.poured)

    @property
    def over(self) -> OverPour | None:
        """An over-pour that has no answer yet."""
        return over(self.plan, self.poured)

    def can(self, paint: str) -> str:
        """Give the can that a paint comes from, "" if it has none."""
        order = [portion.paint for portion in self.started.portions]
        return self.started.cans[order.index(paint)] if paint in order else ""

    def paint_g(self, paint: str) -> float:
        """Give what is in of one paint."""
        return sum(pour.net_g for pour in self.poured if pour.paint == paint)

    def answers(self, capacity_g: float | None) -> Answers:
        """Give the three answers to an over-pour; prices come with a later issue."""
        return answers(self.plan, self.poured, (None,) * len(self.plan.portions), capacity_g)


def pot_of(known: Known, started: PotStarted) -> Pot:
    """Put a pot together from its entries, in the order in which they were written."""
    plan = Plan(started.portions, 1.0, started.scale_step_g, 0.0)
    poured: tuple[Pour, ...] = ()
    last = ended = ""
    for entry in known.entries:
        if getattr(entry, "pot", "") != started.id:
            continue
        match entry:
            case Poured():
                poured, last = (*poured, Pour(entry.paint, entry.net_g)), entry.id
            case MadeMore():
                plan = replace(plan, factor_ratio=plan.factor_ratio * entry.factor_ratio)
            case KeptOver():
                plan = _kept(plan, poured, entry.paint)
            case ScaleRestarted():
                plan = replace(plan, offset_g=entry.offset_g)
            case Stirred():
                ended = "stirred"
            case TippedOut():
                ended = "tipped"
    return Pot(started, plan, poured, last, ended)


def _kept(plan: Plan, poured: tuple[Pour, ...], paint: str) -> Plan:
    """Plan what is in of a paint as its portion: an over-pour that was kept is none any more."""
    in_g = sum(pour.net_g for pour in poured if pour.paint == paint)
    portions = tuple(
        Portion(portion.paint, in_g / plan.factor_ratio) if portion.paint == paint else portion
        for portion in plan.portions
    )
    return replace(plan, portions=portions)


def pots(known: Known) -> tuple[Pot, ...]:
    """Give the open job's pots, oldest first."""
    job = known.job
    return tuple(
        pot_of(known, started)
        for started in known.of(PotStarted)
        if job is None or started.job == job.id
    )


def under_way(known: Known) -> Pot | None:
    """Give the pot that stands on the scale, whichever job is open."""
    for started in reversed(known.of(PotStarted)):
        pot = pot_of(known, started)
        if not pot.ended:
            return pot
    return None
