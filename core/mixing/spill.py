"""A cup was knocked over: what is gone, and what is still in it."""

from dataclasses import dataclass

from core.errors import require
from core.mixing.plan import DUST_G, NET_G, TOTAL, Plan, Pour
from core.mixing.portions import Portion
from core.mixing.pot import contents
from core.working import Working, step

EVENLY = "lost evenly, as stirred: this project"


@dataclass(frozen=True, slots=True)
class Spilt:
    """What is left of each paint, what went over, and how much in all."""

    left: tuple[Portion, ...]
    lost: tuple[Portion, ...]
    lost_g: float
    left_ratio: float
    working: Working


def reads_below(plan: Plan, strays_g: float) -> bool:
    """Tell whether the scale would show the empty cup as less than nothing.

    So it does where it was tared, or switched on, with paint in the cup. What is left then reads
    below zero, and what is poured after it too: the scale is to begin anew.

    Parameters
    ----------
    plan
        For its way and its offset; only a running total goes on after a spill.
    strays_g
        What is in the cup and in no portion, g, 0 to 100 000; the offset has it.

    Returns
    -------
        True where it would.

    Source: a tare takes off all that stands on the pan.

    >>> from core.mixing.portions import Portion
    >>> reads_below(Plan((Portion("yellow", 60.0),), offset_g=-58.0), 0.0)
    True
    """
    require("strays_g", strays_g, *NET_G)
    return plan.way == TOTAL and plan.offset_g - strays_g < -DUST_G


def spilt(poured: tuple[Pour, ...], left_g: float) -> Spilt:
    """Find what is still in a cup that was knocked over.

    Parameters
    ----------
    poured
        What went in.
    left_g
        What is left in it by the scale, g, 0 to what went in; binary dust above is nothing.

    Returns
    -------
        Each paint times the share that is left.

    Source: this project's planning model: paint goes over as it is mixed. What was not stirred
    yet may have gone unevenly.

    >>> half = spilt((Pour("yellow", 20.0), Pour("orange", 60.0)), 40.0)
    >>> [one.net_g for one in half.left], half.lost_g
    ([10.0, 30.0], 40.0)
    """
    before = contents(poured)
    whole_g = sum(portion.net_g for portion in before)
    require("left_g", left_g, 0.0, whole_g + DUST_G)
    left_g = whole_g if left_g > whole_g - DUST_G else left_g
    ratio = left_g / whole_g if whole_g else 0.0
    left = tuple(Portion(one.paint, one.net_g * ratio) for one in before)
    inputs = {"left_g": left_g, "in_cup_g": whole_g}
    working = (
        step("left_ratio", "{left_g} ÷ {in_cup_g}", ratio, EVENLY, **inputs),
        step("lost_g", "{in_cup_g} − {left_g}", whole_g - left_g, EVENLY, **inputs),
    )
    lost = tuple(Portion(one.paint, one.net_g * (1 - ratio)) for one in before)
    return Spilt(left, lost, whole_g - left_g, ratio, working)
