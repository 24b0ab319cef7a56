"""The wrong can was poured: what can be saved."""

from dataclasses import dataclass

from core.errors import require
from core.mixing.plan import FACTOR_RATIO, NET_G, Plan, Pour, each_in_cup_g, targets_g
from core.working import Working, step

SHARE_RATIO = 0.001, 0.2
UNSEEN_RATIO = 0.01  # common practice, no published source
FRACTION = "definition of the mass fraction, ISO 80000-9"
PRACTICE = "a stray under 1 % is not seen: common practice, no published source"


@dataclass(frozen=True, slots=True)
class Stray:
    """What a stray paint does: its share if it is kept, the batch that hides it, what is lost.

    `factor_ratio` is to the plan's portions; `fits` tells whether cup and scale hold that batch
    and it is at most 100 times the portions.
    """

    kept_ratio: float
    hidden_g: float
    factor_ratio: float
    extra_g: float
    fits: bool
    lost_g: float
    working: Working

    @property
    def best(self) -> str:
        """Name the way that keeps the colour with less paint, "make" or "tip"."""
        return "make" if self.fits and self.extra_g <= self.lost_g else "tip"


def stray(
    plan: Plan,
    poured: tuple[Pour, ...],
    stray_g: float,
    capacity_g: float | None,
    unseen_ratio: float = UNSEEN_RATIO,
) -> Stray:
    """Find what can be saved after a can that is not in the recipe was poured.

    Parameters
    ----------
    plan
        What is to be in the cup.
    poured
        What went into it by the plan.
    stray_g
        What went in of the other paint, g, more than 0.
    capacity_g
        What cup and scale hold of paint, g; None if unknown.
    unseen_ratio
        The share under which nobody sees it, 0.001 to 0.2.

    Returns
    -------
        The stray's share of the whole batch if it stays; the batch, stray and all, in which it is
        just that share; what is lost if it is tipped out.

    Source: definition of the mass fraction, ISO 80000-9; 1 % is common practice, no published
    source.

    >>> from core.mixing.portions import Portion
    >>> ember = Plan((Portion("yellow", 20.0), Portion("medium", 180.0)))
    >>> found = stray(ember, (Pour("yellow", 20.0),), 4.0, 1000.0)
    >>> round(found.kept_ratio, 4), found.hidden_g, round(found.factor_ratio, 3), found.lost_g
    (0.0196, 400.0, 1.98, 24.0)
    """
    require("stray_g", stray_g, 1e-6, NET_G[1])
    require("unseen_ratio", unseen_ratio, *SHARE_RATIO)
    planned_g = sum(targets_g(plan))
    in_cup_g = sum(each_in_cup_g(plan, poured))
    kept_ratio = stray_g / (planned_g + stray_g)
    hidden_g = max(stray_g / unseen_ratio, planned_g + stray_g)
    factor_ratio = (hidden_g - stray_g) / sum(portion.net_g for portion in plan.portions)
    extra_g = hidden_g - stray_g - planned_g
    of = {"stray_g": stray_g, "planned_g": planned_g}
    whole = {"in_cup_g": in_cup_g, "stray_g": stray_g}
    working = (
        step("kept_ratio", "{stray_g} ÷ ({planned_g} + {stray_g})", kept_ratio, FRACTION, **of),
        step(
            "hidden_g",
            "max({stray_g} ÷ {unseen_ratio}, {planned_g} + {stray_g})",
            hidden_g,
            PRACTICE,
            unseen_ratio=unseen_ratio,
            **of,
        ),
        step("lost_g", "{in_cup_g} + {stray_g}", in_cup_g + stray_g, FRACTION, **whole),
    )
    within = factor_ratio <= FACTOR_RATIO[1]  # a plan takes no more
    fits = within and (capacity_g is None or hidden_g <= capacity_g)
    return Stray(kept_ratio, hidden_g, factor_ratio, extra_g, fits, in_cup_g + stray_g, working)
