"""The weigh-out by running total: what the scale should read, and what was really poured.

Everything follows from the plan and from what was poured; nothing is remembered in between, so a
phone that starts again stands at the same step.
"""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import (
    CAN,
    DUST_G,
    TOTAL,
    Plan,
    Pour,
    band_of_g,
    each_in_cup_g,
    since_tare_g,
    targets_g,
)
from core.mixing.scale import BAND_RATIO, READING_G, shown_g
from core.working import Working, step

FROM_LOOKS = "from what a slip does to the colour, this project's planning model"
PRACTICE = "weighing by running total, band 1 %: common practice, no published source"


@dataclass(frozen=True, slots=True)
class Target:
    """What to pour next: the paint, the grams still to add, what the scale should then read.

    `before_g` is what it reads before that pour.
    """

    index: int
    paint: str
    net_g: float
    reads_g: float
    low_g: float
    high_g: float
    band_g: float
    working: Working
    before_g: float = 0.0


@dataclass(frozen=True, slots=True)
class OverPour:
    """Too much of one paint is in the cup."""

    index: int
    paint: str
    over_g: float
    working: Working


def next_pour(plan: Plan, poured: tuple[Pour, ...]) -> Target | None:
    """Find what to pour next: the first portion, in pouring order, still short by over its band.

    A paint that has not been poured at all is short, however small its portion.

    Parameters
    ----------
    plan
        1 to 24 different paints, each a step of the scale or more; factor 1 to 100; step 0.01
        to 10 g.
    poured
        What went into the cup so far, each 0 to 100 000 g; only paints of the plan.

    Returns
    -------
        The paint and its reading, on the scale's step; None when all is in. The steps of its
        working are exact; the scale rounds them.

    Source: weighing by running total and a band of 1 %, common practice, no published source.

    >>> from core.mixing.portions import Portion
    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0), Portion("medium", 154.7)))
    >>> target = next_pour(ember, (Pour("yellow", 19.3),))
    >>> target.paint, target.reads_g, target.low_g, target.high_g
    ('orange', 77.3, 76.7, 77.9)
    """
    in_cup_g = each_in_cup_g(plan, poured)
    index = _under_way(plan, in_cup_g)
    return None if index is None else _target(plan, index, poured)


def poured_g(plan: Plan, poured: tuple[Pour, ...], reads_g: float) -> float:
    """Find what was poured, from what the scale reads now.

    Parameters
    ----------
    plan
        For the offset and the scale's step.
    poured
        What went into the cup before.
    reads_g
        What the scale reads, g, -100 000 to 100 000; not below the last running total (or, if
        each part is tared, below zero; or, with the can on the scale, above zero) by more than a
        step. The last digit of a scale flickers, so one step less is nothing poured.

    Returns
    -------
        Net mass of this pour, g, 0 or more.

    Source: weighing by running total, common practice, no published source.

    >>> from core.mixing.portions import Portion
    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0)))
    >>> poured_g(ember, (Pour("yellow", 19.3),), reads_g=81.9)
    62.6
    """
    require("reads_g", reads_g, *READING_G)
    before_g = _before_g(plan, poured)
    if plan.way == CAN:
        if reads_g > before_g + plan.scale_step_g + DUST_G:
            raise Refused("can_reads_g", reads_g, READING_G[0], round(before_g, 6))
        return max(0.0, round(before_g - reads_g, 6))
    if reads_g < before_g - plan.scale_step_g - DUST_G:
        raise Refused("reads_g", reads_g, round(before_g, 6), READING_G[1])
    return max(0.0, round(reads_g - before_g, 6))


def over(plan: Plan, poured: tuple[Pour, ...], kept: tuple[str, ...] = ()) -> OverPour | None:
    """Find the paint of which too much is in the cup: more than its target and its band.

    Parameters
    ----------
    plan
        What is to be in the cup.
    poured
        What went into the cup so far.
    kept
        Paints whose over-pour was kept as it is; they are passed over.

    Returns
    -------
        Of the paints that are over, the one by the largest share of its target, and by how
        much, g; None if none is.

    Source: a band of 1 %, common practice, no published source.

    >>> from core.mixing.portions import Portion
    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0)))
    >>> over(ember, (Pour("yellow", 19.3), Pour("orange", 62.6))).over_g
    4.6
    """
    wanted_g, in_cup_g = targets_g(plan), each_in_cup_g(plan, poured)
    found = [
        index
        for index, portion in enumerate(plan.portions)
        if portion.paint not in kept
        and in_cup_g[index] - wanted_g[index] > band_of_g(plan, index) + DUST_G
    ]
    if not found:
        return None
    index = max(found, key=lambda i: in_cup_g[i] / wanted_g[i])
    over_g = in_cup_g[index] - wanted_g[index]
    inputs = {"part_in_cup_g": in_cup_g[index], "target_g": wanted_g[index]}
    by_how_much = step("over_g", "{part_in_cup_g} − {target_g}", over_g, PRACTICE, **inputs)
    working = (*_target_and_band(plan, index), by_how_much)
    return OverPour(index, plan.portions[index].paint, round(over_g, 6), working)


def _under_way(plan: Plan, in_cup_g: tuple[float, ...]) -> int | None:
    """Find the portion to pour now; None when all is in."""
    for index, (target_g, part_g) in enumerate(zip(targets_g(plan), in_cup_g, strict=True)):
        if not part_g or target_g - part_g > band_of_g(plan, index) + DUST_G:
            return index
    return None


def _before_g(plan: Plan, poured: tuple[Pour, ...]) -> float:
    """Find what the scale reads before the next pour.

    If each part is tared: what went in of this part since then. With the can on the scale that is
    what it has lost.
    """
    in_cup_g = each_in_cup_g(plan, poured)
    if plan.way == TOTAL:
        return plan.offset_g + sum(in_cup_g)
    index = _under_way(plan, in_cup_g)
    since_g = 0.0 if index is None else since_tare_g(plan, poured, plan.portions[index].paint)
    return -since_g if plan.way == CAN else since_g


def _target_and_band(plan: Plan, index: int) -> Working:
    target_g = targets_g(plan)[index]
    whole = {"portion_g": plan.portions[index].net_g, "factor_ratio": plan.factor_ratio}
    band_ratio = plan.parts_band_ratio[index] if plan.parts_band_ratio else BAND_RATIO
    limits = {"target_g": target_g, "band_ratio": band_ratio, "scale_step_g": plan.scale_step_g}
    exact = max(target_g * band_ratio, plan.scale_step_g)
    formula = "max({target_g} × {band_ratio}, {scale_step_g})"
    source = FROM_LOOKS if plan.parts_band_ratio else PRACTICE
    return (
        step("target_g", "{portion_g} × {factor_ratio}", target_g, "the recipe", **whole),
        step("band_g", formula, exact, source, **limits),
    )


def _target(plan: Plan, index: int, poured: tuple[Pour, ...]) -> Target:
    in_cup_g = each_in_cup_g(plan, poured)
    target_g, part_g = targets_g(plan)[index], in_cup_g[index]
    deficit_g, before_g = target_g - part_g, _before_g(plan, poured)
    exact_g = before_g - deficit_g if plan.way == CAN else before_g + deficit_g
    reads_g, band = shown_g(exact_g, plan.scale_step_g), band_of_g(plan, index)
    short = "{target_g} − {part_in_cup_g}"
    total, terms = _reads(plan, sum(in_cup_g), deficit_g, before_g)
    working = (
        *_target_and_band(plan, index),
        step("deficit_g", short, deficit_g, PRACTICE, target_g=target_g, part_in_cup_g=part_g),
        step("reads_g", total, exact_g, PRACTICE, **terms),
    )
    return Target(
        index,
        plan.portions[index].paint,
        net_g=round(abs(reads_g - before_g), 6),
        reads_g=reads_g,
        low_g=shown_g(reads_g - band, plan.scale_step_g),
        high_g=shown_g(reads_g + band, plan.scale_step_g),
        band_g=band,
        working=working,
        before_g=round(before_g, 6),
    )


def _reads(
    plan: Plan, in_cup_g: float, deficit_g: float, before_g: float
) -> tuple[str, dict[str, float]]:
    """Say how the reading comes about, with its terms."""
    if plan.way == TOTAL:
        terms = {"offset_g": plan.offset_g, "in_cup_g": in_cup_g, "deficit_g": deficit_g}
        return "{offset_g} + {in_cup_g} + {deficit_g}", terms
    sign = "−" if plan.way == CAN else "+"
    return f"{{since_tare_g}} {sign} {{deficit_g}}", {
        "since_tare_g": before_g,
        "deficit_g": deficit_g,
    }
