"""How much of a mix the cans allow, and which can says so."""

from dataclasses import dataclass

from core.errors import require
from core.mixing.plan import NET_G, Plan, Pour, each_in_cup_g
from core.paints.recipe import Part, shares
from core.working import Working, step

HAS_G = 0.0, 1e6
LEAST = "the part that runs out first"


@dataclass(frozen=True, slots=True)
class Limit:
    """The most that can be made, g, and the paint that limits it; "" where none does."""

    most_g: float | None
    paint: str
    working: Working


def limit(parts: tuple[Part, ...], has_g: tuple[float | None, ...]) -> Limit:
    """Find how much can be made of what is there.

    Parameters
    ----------
    parts
        The recipe by mass.
    has_g
        What there is of each paint, g, 0 to 1 000 000, one a part; None where nobody knows.

    Returns
    -------
        The most, g, with the paint that runs out first; None where nothing is known.

    Source: the least of what is there divided by its share, proportion.

    >>> one = limit((Part("yellow", 1), Part("orange", 3)), (100.0, 150.0))
    >>> one.most_g, one.paint
    (200.0, 'orange')
    """
    require("amounts_count", len(has_g), len(parts), len(parts))
    by_paint: list[tuple[float, str, float, float]] = []
    for part, share, one_g in zip(parts, shares(parts), has_g, strict=True):
        if one_g is not None:
            require("has_g", one_g, *HAS_G)
            by_paint.append((one_g / share, part.paint, one_g, share))
    if not by_paint:
        return Limit(None, "", ())
    most_g, paint, one_g, share = min(by_paint, key=lambda one: one[0])
    inputs = {"has_g": one_g, "share_ratio": share}
    most = step("most_g", "{has_g} ÷ {share_ratio}", most_g, LEAST, **inputs)
    return Limit(min(most_g, NET_G[1]), paint, (most,))


def most_in_cup_g(
    plan: Plan,
    poured: tuple[Pour, ...],
    has_g: tuple[float | None, ...],
) -> float | None:
    """Find how much a cup can come to, its ratio kept, with what the cans still hold.

    Parameters
    ----------
    plan
        As for the weigh-out.
    poured
        What is in the cup.
    has_g
        What there still is of each paint, g, 0 to 1 000 000; None where nobody knows.

    Returns
    -------
        g in the cup; None where nothing limits it.

    Source: the least of (in the cup + there is) ÷ portion, proportion.

    >>> from core.mixing.portions import Portion
    >>> ember = Plan((Portion("yellow", 20.0), Portion("orange", 60.0)))
    >>> most_in_cup_g(ember, (Pour("yellow", 25.0),), (100.0, 90.0))
    120.0
    """
    require("amounts_count", len(has_g), len(plan.portions), len(plan.portions))
    in_cup_g = each_in_cup_g(plan, poured)
    factors: list[float] = []
    for portion, inside_g, one_g in zip(plan.portions, in_cup_g, has_g, strict=True):
        if one_g is not None:
            require("has_g", one_g, *HAS_G)
            factors.append((inside_g + one_g) / portion.net_g)
    if not factors:
        return None
    least = min(factors)
    return sum(
        max(least * portion.net_g, inside_g)
        for portion, inside_g in zip(plan.portions, in_cup_g, strict=True)
    )
