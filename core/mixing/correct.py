"""Correct a colour: from what a dried brush-out lacks to the smallest addition."""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import NET_G
from core.mixing.portions import Portion
from core.paints.recipe import Part
from core.working import Step, Working, step

STEPS_COUNT = -3, 3
# What a step each way does to a part: hardly, a touch, clearly. This project's choice.
TIMES = {0: 1.0, 1: 1.05, 2: 1.12, 3: 1.25}
CHOICE = "this project's planning model"
LEAST = "the least batch that holds the ratio: algebra, no published source"


@dataclass(frozen=True, slots=True)
class Lack:
    """How many steps of a part a brush-out lacks, by day and under the lamp, -3 to 3."""

    day_count: int = 0
    lamp_count: int = 0


@dataclass(frozen=True, slots=True)
class Correction:
    """The recipe's next version, and the smallest addition that turns the pot into it."""

    parts: tuple[Part, ...]
    adds: tuple[Portion, ...]
    total_g: float
    working: Working


def correct(in_pot: tuple[Portion, ...], lacks: tuple[Lack, ...]) -> Correction:
    """Find the smallest addition to a pot.

    Parameters
    ----------
    in_pot
        What is in the pot now, each more than 0 g.
    lacks
        One a portion; where both lights ask for steps their mean counts. At least one is no 0.

    Returns
    -------
        The new parts, g as parts; what to add of each, 0 g of the one that sets the size.

    Source: the steps (5, 12 and 25 %) are this project's planning model; the least batch that
    holds a ratio is algebra, no published source.

    >>> ember = (Portion("yellow", 20.0), Portion("orange", 60.0))
    >>> redder = correct(ember, (Lack(), Lack(day_count=1)))
    >>> [add.net_g for add in redder.adds], redder.total_g
    ([0.0, 3.0], 83.0)
    """
    require("lacks_count", len(lacks), len(in_pot), len(in_pot))
    for portion, lack in zip(in_pot, lacks, strict=True):
        require("part_in_pot_g", portion.net_g, 1e-6, NET_G[1])
        require("steps_count", lack.day_count, *STEPS_COUNT)
        require("steps_count", lack.lamp_count, *STEPS_COUNT)
    times = tuple(_times(lack) for lack in lacks)
    if len(set(times)) == 1:
        raise Refused("steps_count", 0.0, 1, STEPS_COUNT[1])
    wanted = tuple(portion.net_g * one for portion, one in zip(in_pot, times, strict=True))
    factor_ratio = 1 / min(times)
    adds_g = tuple(
        max(factor_ratio * want_g - portion.net_g, 0.0)
        for portion, want_g in zip(in_pot, wanted, strict=True)
    )
    total_g = sum(portion.net_g for portion in in_pot) + sum(adds_g)
    lines: list[Step] = [
        step("factor_ratio", "1 ÷ {times_ratio}", factor_ratio, LEAST, times_ratio=min(times))
    ]
    for portion, one, add_g in zip(in_pot, times, adds_g, strict=True):
        inputs = {"factor_ratio": factor_ratio, "part_in_pot_g": portion.net_g, "times_ratio": one}
        formula = "max({factor_ratio} × {part_in_pot_g} × {times_ratio} − {part_in_pot_g}, 0)"
        lines.append(step("add_g", formula, add_g, CHOICE, **inputs))
    parts = tuple(
        Part(portion.paint, want_g) for portion, want_g in zip(in_pot, wanted, strict=True)
    )
    adds = tuple(Portion(one.paint, add_g) for one, add_g in zip(in_pot, adds_g, strict=True))
    return Correction(parts, adds, total_g, tuple(lines))


def _times(lack: Lack) -> float:
    """Find what a part is multiplied by: the mean of both lights where both ask."""
    asked = [count for count in (lack.day_count, lack.lamp_count) if count]
    if not asked:
        return 1.0
    each = [TIMES[abs(count)] ** (1 if count > 0 else -1) for count in asked]
    return sum(each) / len(each)
