"""What is left of a weigh-out when the scale went off in the middle of it."""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import DUST_G, EACH, NET_G, TOTAL, Plan, Pour, each_in_cup_g, since_tare_g
from core.mixing.scale import BAND_RATIO, READING_G, band_g
from core.working import Working, step

PRACTICE = "weighing by difference, common practice, no published source"


@dataclass(frozen=True, slots=True)
class Restart:
    """How far the scale is off zero now, what was poured and never logged, if it kept its count."""

    offset_g: float
    missed_g: float
    working: Working
    kept: bool = False


def offset_after_restart(
    plan: Plan, poured: tuple[Pour, ...], reads_g: float, cup_g: float | None
) -> Restart:
    """Find how far the scale is off zero after it went off, and what the log missed.

    If the scale shows the last running total, it kept its zero; if next to nothing, it was
    switched on under the full cup. Else it shows cup and paint: the cup's own weight then says
    what is in it, or, where nobody knows that, the log is believed. Where each part is tared it
    shows the last one alone if it kept its zero; else it is tared with all that is in. The can is
    always tared again.

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
        The new offset, g: less than nothing by all that is in, if a part or the can is to be tared
        again; and what was poured of the part under way and not logged, g.

    Source: weighing by difference, common practice, no published source.

    >>> from core.mixing.portions import Portion
    >>> going = Plan((Portion("yellow", 110.2), Portion("orange", 58.0)))
    >>> restart = offset_after_restart(going, (Pour("yellow", 110.2),), reads_g=163.7, cup_g=21.4)
    >>> restart.offset_g, restart.missed_g
    (21.4, 32.1)
    """
    require("reads_g", reads_g, *READING_G)
    in_cup_g = sum(each_in_cup_g(plan, poured))
    near_g = plan.scale_step_g + DUST_G
    if _kept(plan, poured, reads_g):
        was_g = plan.offset_g
        kept = step("offset_g", "{offset_before_g}", was_g, PRACTICE, offset_before_g=was_g)
        return Restart(was_g, 0.0, (kept,), kept=True)
    if cup_g is None or abs(reads_g) <= near_g:
        begins_g = reads_g if plan.way == TOTAL else 0.0  # tared again, it begins there
        off_g = round(begins_g - in_cup_g, 6)
        formula = "{reads_g} − {in_cup_g}"
        off = step("offset_g", formula, off_g, PRACTICE, reads_g=begins_g, in_cup_g=in_cup_g)
        return Restart(off_g, 0.0, (off,))
    require("cup_g", cup_g, *NET_G)
    slack_g = sum(band_g(pour.net_g, plan.scale_step_g, _widest(plan)) for pour in poured)
    if reads_g < cup_g + in_cup_g - slack_g - near_g:
        raise Refused("reads_g", reads_g, round(cup_g + in_cup_g, 6), READING_G[1])
    return _by_cup(plan, in_cup_g, reads_g, cup_g)


def _kept(plan: Plan, poured: tuple[Pour, ...], reads_g: float) -> bool:
    """Tell whether the scale shows what it showed; at zero a part is tared again in any case."""
    near_g = plan.scale_step_g + DUST_G
    if plan.way == TOTAL:
        in_cup_g = sum(each_in_cup_g(plan, poured))
        return abs(reads_g - plan.offset_g - in_cup_g) <= near_g
    if plan.way != EACH or not poured or abs(reads_g) <= near_g:
        return False
    return abs(reads_g - since_tare_g(plan, poured, poured[-1].paint)) <= near_g


def _by_cup(plan: Plan, in_cup_g: float, reads_g: float, cup_g: float) -> Restart:
    """Find what is in by the cup's own weight; so much the scale is off, or it is tared again."""
    net_g = round(reads_g - cup_g, 6)
    missed_g = round(net_g - in_cup_g, 6)
    beyond = {"net_g": net_g, "in_cup_g": in_cup_g}
    working = (
        step("net_g", "{reads_g} − {cup_g}", net_g, PRACTICE, reads_g=reads_g, cup_g=cup_g),
        step("missed_g", "{net_g} − {in_cup_g}", missed_g, PRACTICE, **beyond),
    )
    missed_g = missed_g if missed_g > plan.scale_step_g + DUST_G else 0.0
    if plan.way == TOTAL:
        off = step("offset_g", "{cup_g}", cup_g, PRACTICE, cup_g=cup_g)
        return Restart(cup_g, missed_g, (*working, off))
    off_g = round(-in_cup_g - missed_g, 6)
    formula = "0 − {in_cup_g} − {missed_g}"
    in_all = {"in_cup_g": in_cup_g, "missed_g": missed_g}
    off = step("offset_g", formula, off_g, PRACTICE, **in_all)
    return Restart(off_g, missed_g, (*working, off))


def _widest(plan: Plan) -> float:
    return max(plan.parts_band_ratio, default=BAND_RATIO)
