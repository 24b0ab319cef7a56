"""A pot: what is planned, what is in, what comes next; `pot_of.py` puts it together."""

from dataclasses import dataclass

from core.mixing.over_pour import Answers, answers
from core.mixing.plan import DUST_G, Plan, Pour
from core.mixing.portions import Portion
from core.mixing.pot import contents
from core.mixing.stray import UNSEEN_RATIO
from core.mixing.weigh_out import OverPour, Target, next_pour, over
from mobile.store.entries import AimChanged, Entry, PotStarted

SPILT, SPILL = "spilt", "spill"


@dataclass(frozen=True, slots=True)
class Pot:
    """One cup on the scale, or one that is done."""

    started: PotStarted
    plan: Plan
    cans: tuple[str, ...]  # one a portion, "" where the paint has no can yet
    poured: tuple[Pour, ...] = ()
    kept_at: tuple[Portion, ...] = ()  # what was in of a paint as its over-pour was left
    last: tuple[Entry, ...] = ()  # what *Undo* takes back: what was logged last, together
    ended: str = ""  # "stirred", "tipped", or nothing while it is under way
    strays: tuple[Pour, ...] = ()  # of wrong cans: in the cup, and in no portion
    drawn_g: float = 0.0  # what went out of it: into cups and jars, onto walls, to waste
    fates: tuple[str, ...] = ()  # a "spill", "more" of it, a "correction"
    used_g: float = 0.0  # what had gone out of it before it was added to
    spilt_g: float = 0.0  # what went over
    stray_cans: tuple[tuple[str, str], ...] = ()  # the wrong cans, each by its paint
    idle: tuple[Entry, ...] = ()  # since it was put back on the scale, if nothing was poured since

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
        return sum(pour.net_g for pour in (*self.poured, *self.strays))

    @property
    def made_g(self) -> float:
        """All that was ever made of it: what had gone out before it was added to counts too."""
        return self.in_cup_g + self.used_g

    @property
    def poured_g(self) -> float:
        """All that was ever poured into it, what went over too."""
        return self.made_g + self.spilt_g

    @property
    def left_g(self) -> float:
        """What should be in it still."""
        return 0.0 if self.ended == "tipped" else max(0.0, self.in_cup_g - self.drawn_g)

    @property
    def tipped_g(self) -> float:
        """What was in it as it was tipped out."""
        return max(0.0, self.in_cup_g - self.drawn_g) if self.ended == "tipped" else 0.0

    @property
    def went_in(self) -> tuple[Portion, ...]:
        """What went in, paint by paint, strays too: its composition."""
        return tuple(one for one in contents((*self.poured, *self.strays)) if one.net_g)

    @property
    def holds(self) -> tuple[Portion, ...]:
        """What is in it still, paint by paint, strays too."""
        share = self.left_g / self.in_cup_g if self.in_cup_g else 0.0
        return tuple(Portion(one.paint, one.net_g * share) for one in self.went_in)

    @property
    def kept(self) -> tuple[str, ...]:
        """Give the paints whose over-pour was left as it is; what came later nobody left."""
        now_g = {one.paint: one.net_g - DUST_G for one in self.went_in}
        left = (one.paint for one in self.kept_at if now_g.get(one.paint, 0.0) <= one.net_g)
        return tuple(dict.fromkeys(left))

    @property
    def strays_g(self) -> float:
        """All that is in of wrong cans."""
        return sum(pour.net_g for pour in self.strays)

    @property
    def stray_g(self) -> float:
        """What is in of wrong cans that nobody has answered for."""
        return sum(pour.net_g for pour in self.strays if pour.paint not in self.kept)

    @property
    def strays_show(self) -> bool:
        """Whether that is so much of the batch that an eye sees it."""
        return self.stray_g > UNSEEN_RATIO * (self.batch_g + self.stray_g) + DUST_G

    @property
    def batch_g(self) -> float:
        """The batch as it was decided: the plan's portions, with an over-pour made good."""
        return sum(portion.net_g for portion in self.plan.portions) * self.plan.factor_ratio

    @property
    def comes_to_g(self) -> float:
        """What will be in it at last: what was kept over, and strays, on top of the batch."""
        factor_ratio = self.plan.factor_ratio
        each = (max(p.net_g * factor_ratio, self.paint_g(p.paint)) for p in self.plan.portions)
        return sum(each) + self.strays_g

    @property
    def shown_g(self) -> float:
        """What a bar says it will be: the batch, until an over-pour has its answer."""
        return self.batch_g if self.over else self.comes_to_g

    @property
    def put_back(self) -> str:
        """Why it was put back on the scale, if nothing was poured since; else nothing."""
        return next((entry.why for entry in self.idle if isinstance(entry, AimChanged)), "")

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
        """Give the can that a paint comes from, a wrong one too; "" if it has none."""
        order = [portion.paint for portion in self.plan.portions]
        wrong = (can for stray, can in self.stray_cans if stray == paint)
        return self.cans[order.index(paint)] if paint in order else next(wrong, "")

    def paint_g(self, paint: str) -> float:
        """Give what is in of one paint."""
        return sum(pour.net_g for pour in self.poured if pour.paint == paint)

    def answers(self, room_g: float, prices_per_g: tuple[float | None, ...] = ()) -> Answers:
        """Give the three answers to an over-pour; a price a portion, None where it is unknown.

        `room_g` is what cup, bucket and scale take of paint; strays take their part of it.
        """
        prices = prices_per_g or (None,) * len(self.plan.portions)
        left_g = max(0.0, room_g - self.strays_g)
        return answers(self.plan, self.poured, prices, left_g, self.kept)
