"""The weigh-out by running total: what the scale should read, and what was really poured.

Everything follows from the plan and from what was poured; nothing is remembered in between, so a
phone that starts again stands at the same step.
"""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.portions import Portion
from core.mixing.scale import BAND_RATIO, READING_G, SCALE_STEP_G, band_g, shown_g
from core.working import Working, step

FACTOR_RATIO = 1.0, 100.0  # an over-pour only ever makes a batch bigger
NET_G = 0.0, 1e5
PORTIONS_COUNT = 1, 24
DUST_G = 1e-6  # sums of decimal readings are off by less; no scale shows as little

PRACTICE = "weighing by running total, band 1 %: common practice, no published source"


@dataclass(frozen=True, slots=True)
class Pour:
    """So many grams of one paint went into the cup."""

    paint: str
    net_g: float


@dataclass(frozen=True, slots=True)
class Plan:
    """What is to be in the cup: portions in pouring order, all times `factor_ratio`.

    `offset_g` is what the scale reads before anything is poured: 0 for a tared cup.
    """

    portions: tuple[Portion, ...]
    factor_ratio: float = 1.0
    scale_step_g: float = 0.1
    offset_g: float = 0.0


@dataclass(frozen=True, slots=True)
class Target:
    """What to pour next: the paint, the grams still to add, what the scale should then read."""

    index: int
    paint: str
    net_g: float
    reads_g: float
    low_g: float
    high_g: float
    band_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class OverPour:
    """Too much of one paint is in the cup."""

    index: int
    paint: str
    over_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Restart:
    """How far the scale is off zero now, and what was poured and never logged."""

    offset_g: float
    missed_g: float
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

    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0), Portion("medium", 154.7)))
    >>> target = next_pour(ember, (Pour("yellow", 19.3),))
    >>> target.paint, target.reads_g, target.low_g, target.high_g
    ('orange', 77.3, 76.7, 77.9)
    """
    in_cup_g = _in_cup_g(plan, poured)
    for index, (target_g, part_g) in enumerate(zip(_targets_g(plan), in_cup_g, strict=True)):
        if not part_g or target_g - part_g > band_g(target_g, plan.scale_step_g) + DUST_G:
            return _target(plan, index, in_cup_g)
    return None


def poured_g(plan: Plan, poured: tuple[Pour, ...], reads_g: float) -> float:
    """Find what was poured, from what the scale reads now.

    Parameters
    ----------
    plan
        For the offset and the scale's step.
    poured
        What went into the cup before.
    reads_g
        What the scale reads, g, -100 000 to 100 000; not below the last running total by more
        than a step. The last digit of a scale flickers, so one step less is nothing poured.

    Returns
    -------
        Net mass of this pour, g, 0 or more.

    Source: weighing by running total, common practice, no published source.

    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0)))
    >>> poured_g(ember, (Pour("yellow", 19.3),), reads_g=81.9)
    62.6
    """
    require("reads_g", reads_g, *READING_G)
    before_g = plan.offset_g + sum(_in_cup_g(plan, poured))
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

    >>> ember = Plan((Portion("yellow", 19.3), Portion("orange", 58.0)))
    >>> over(ember, (Pour("yellow", 19.3), Pour("orange", 62.6))).over_g
    4.6
    """
    targets_g, in_cup_g = _targets_g(plan), _in_cup_g(plan, poured)
    found = [
        index
        for index, portion in enumerate(plan.portions)
        if portion.paint not in kept
        and in_cup_g[index] - targets_g[index]
        > band_g(targets_g[index], plan.scale_step_g) + DUST_G
    ]
    if not found:
        return None
    index = max(found, key=lambda i: in_cup_g[i] / targets_g[i])
    over_g = in_cup_g[index] - targets_g[index]
    inputs = {"part_in_cup_g": in_cup_g[index], "target_g": targets_g[index]}
    by_how_much = step("over_g", "{part_in_cup_g} − {target_g}", over_g, PRACTICE, **inputs)
    working = (*_target_and_band(plan, index), by_how_much)
    return OverPour(index, plan.portions[index].paint, round(over_g, 6), working)


def offset_after_restart(
    plan: Plan, poured: tuple[Pour, ...], reads_g: float, cup_g: float | None
) -> Restart:
    """Find how far the scale is off zero after it went off, and what the log missed.

    If the scale shows the last running total, it kept its zero; if next to nothing, it was
    switched on under the full cup. Else it shows cup and paint: the cup's own weight then says
    what is in it, or, where nobody knows that, the log is believed.

    Parameters
    ----------
    plan
        As it was before the scale went off.
    poured
        What was logged.
    reads_g
        What it shows with the cup back on it, g, -100 000 to 100 000; not less than cup and log
        by more than a step and the bands of what was poured.
    cup_g
        The empty cup, g, 0 to 100 000; None if nobody weighed it.

    Returns
    -------
        The new offset, g, and what was poured of the part under way and not logged, g.

    Source: weighing by difference, common practice, no published source.

    >>> going = Plan((Portion("yellow", 110.2), Portion("orange", 58.0)))
    >>> restart = offset_after_restart(going, (Pour("yellow", 110.2),), reads_g=163.7, cup_g=21.4)
    >>> restart.offset_g, restart.missed_g
    (21.4, 32.1)
    """
    require("reads_g", reads_g, *READING_G)
    in_cup_g = sum(_in_cup_g(plan, poured))
    near_g = plan.scale_step_g + DUST_G
    if abs(reads_g - plan.offset_g - in_cup_g) <= near_g:
        was_g = plan.offset_g
        kept = step("offset_g", "{offset_before_g}", was_g, PRACTICE, offset_before_g=was_g)
        return Restart(was_g, 0.0, (kept,))
    if cup_g is None or abs(reads_g) <= near_g:
        off_g = round(reads_g - in_cup_g, 6)
        formula = "{reads_g} − {in_cup_g}"
        off = step("offset_g", formula, off_g, PRACTICE, reads_g=reads_g, in_cup_g=in_cup_g)
        return Restart(off_g, 0.0, (off,))
    require("cup_g", cup_g, *NET_G)
    slack_g = sum(band_g(pour.net_g, plan.scale_step_g) for pour in poured)
    if reads_g < cup_g + in_cup_g - slack_g - near_g:
        raise Refused("reads_g", reads_g, round(cup_g + in_cup_g, 6), READING_G[1])
    net_g = round(reads_g - cup_g, 6)
    missed_g = round(net_g - in_cup_g, 6)
    beyond = {"net_g": net_g, "in_cup_g": in_cup_g}
    working = (
        step("net_g", "{reads_g} − {cup_g}", net_g, PRACTICE, reads_g=reads_g, cup_g=cup_g),
        step("missed_g", "{net_g} − {in_cup_g}", missed_g, PRACTICE, **beyond),
        step("offset_g", "{cup_g}", cup_g, PRACTICE, cup_g=cup_g),
    )
    return Restart(cup_g, missed_g if missed_g > near_g else 0.0, working)


def _in_cup_g(plan: Plan, poured: tuple[Pour, ...]) -> tuple[float, ...]:
    """Find how much of each portion's paint is in the cup; refuse what nobody can weigh out."""
    paints = [portion.paint for portion in plan.portions]
    require("portions_count", len(paints), *PORTIONS_COUNT)
    require("different_paints_count", len(set(paints)), len(paints), len(paints))
    require("factor_ratio", plan.factor_ratio, *FACTOR_RATIO)
    require("offset_g", plan.offset_g, *READING_G)
    require("scale_step_g", plan.scale_step_g, *SCALE_STEP_G)
    for portion in plan.portions:
        require("portion_g", portion.net_g, plan.scale_step_g - DUST_G, NET_G[1])
    for pour in poured:
        require("net_g", pour.net_g, *NET_G)
    strays = sum(pour.paint not in paints for pour in poured)
    require("unplanned_paints_count", strays, 0, 0)
    return tuple(sum((p.net_g for p in poured if p.paint == paint), 0.0) for paint in paints)


def _targets_g(plan: Plan) -> tuple[float, ...]:
    return tuple(portion.net_g * plan.factor_ratio for portion in plan.portions)


def _target_and_band(plan: Plan, index: int) -> Working:
    target_g = _targets_g(plan)[index]
    whole = {"portion_g": plan.portions[index].net_g, "factor_ratio": plan.factor_ratio}
    limits = {"target_g": target_g, "band_ratio": BAND_RATIO, "scale_step_g": plan.scale_step_g}
    exact = max(target_g * BAND_RATIO, plan.scale_step_g)
    formula = "max({target_g} × {band_ratio}, {scale_step_g})"
    return (
        step("target_g", "{portion_g} × {factor_ratio}", target_g, "the recipe", **whole),
        step("band_g", formula, exact, PRACTICE, **limits),
    )


def _target(plan: Plan, index: int, in_cup_g: tuple[float, ...]) -> Target:
    target_g, total_g, part_g = _targets_g(plan)[index], sum(in_cup_g), in_cup_g[index]
    deficit_g = target_g - part_g
    exact_g = plan.offset_g + total_g + deficit_g
    reads_g, band = shown_g(exact_g, plan.scale_step_g), band_g(target_g, plan.scale_step_g)
    short, total = "{target_g} − {part_in_cup_g}", "{offset_g} + {in_cup_g} + {deficit_g}"
    terms = {"offset_g": plan.offset_g, "in_cup_g": total_g, "deficit_g": deficit_g}
    working = (
        *_target_and_band(plan, index),
        step("deficit_g", short, deficit_g, PRACTICE, target_g=target_g, part_in_cup_g=part_g),
        step("reads_g", total, exact_g, PRACTICE, **terms),
    )
    return Target(
        index,
        plan.portions[index].paint,
        net_g=round(reads_g - plan.offset_g - total_g, 6),
        reads_g=reads_g,
        low_g=shown_g(reads_g - band, plan.scale_step_g),
        high_g=shown_g(reads_g + band, plan.scale_step_g),
        band_g=band,
        working=working,
    )
