"""How far off its mark each part may be before the colour shows it."""

from dataclasses import dataclass

from core.colours.look import Lab, difference_de, lab_of
from core.colours.mixture import Looks, mixed
from core.errors import require
from core.mixing.portions import Portion
from core.mixing.scale import BAND_RATIO
from core.working import Working, step

BUDGET_DE = 0.1, 5.0
SIDE_BY_SIDE_DE = 0.5  # half of what an eye sees side by side: from memory
NUDGE_RATIO = 1e-4  # of the batch: small enough for a slope
WIDEST_RATIO = 0.05  # a model from looks alone is trusted no further: this project
USES_UP = "min({budget_de} × {nudge_g} ÷ {shift_de} ÷ {part_g}, {widest_ratio})"
MODEL = "this project's planning model"


@dataclass(frozen=True, slots=True)
class Bands:
    """The band of each part as a share of it, in the parts' order."""

    parts_ratio: tuple[float, ...]
    working: Working


def bands(
    portions: tuple[Portion, ...],
    looks: tuple[Looks | None, ...],
    budget_de: float = SIDE_BY_SIDE_DE,
) -> Bands:
    """Find how far off each part may be, from what a slip does to the colour.

    Each part in turn is nudged, and the mixture's shift is read by day and under the lamp; the
    larger one says how many grams use up the budget.

    Parameters
    ----------
    portions
        What is to be in the pot, each more than 0 g.
    looks
        One a part; None where a look is not known.
    budget_de
        How far the colour may shift, CIE 1976, 0.1 to 5.

    Returns
    -------
        One share a part, at most 5 %; 1 % for all where a look is missing, or where there is but
        one part.

    Source: this project's planning model; 1 % without looks is common practice, no published
    source; the budget of 0.5 is from memory.

    >>> white, black = Looks((0.9,) * 3, (0.0,) * 3, 0.07), Looks((0.05,) * 3, (0.0,) * 3, 0.04)
    >>> grey = bands((Portion("white", 342.0), Portion("black", 38.0)), (white, black))
    >>> [round(ratio, 3) for ratio in grey.parts_ratio]
    [0.039, 0.039]
    """
    require("looks_count", len(looks), len(portions), len(portions))
    require("budget_de", budget_de, *BUDGET_DE)
    for portion in portions:
        require("portion_g", portion.net_g, 1e-6, 1e6)
    known = tuple(one for one in looks if one is not None)
    if len(known) < len(portions) or len(portions) == 1:
        return Bands((BAND_RATIO,) * len(portions), ())
    masses = tuple(portion.net_g for portion in portions)
    nudge_g = NUDGE_RATIO * sum(masses)
    ratios, working = [], []
    for index, mass_g in enumerate(masses):
        shift_de = _shift_de(masses, known, index, nudge_g)
        if not shift_de:  # the same paint twice: no slip shows
            ratios.append(WIDEST_RATIO)
            continue
        ratio = min(budget_de * nudge_g / shift_de / mass_g, WIDEST_RATIO)
        inputs = {"budget_de": budget_de, "shift_de": shift_de, "part_g": mass_g}
        inputs |= {"nudge_g": nudge_g, "widest_ratio": WIDEST_RATIO}
        working.append(step("band_ratio", USES_UP, ratio, MODEL, **inputs))
        ratios.append(ratio)
    return Bands(tuple(ratios), tuple(working))


def _shift_de(
    masses: tuple[float, ...], looks: tuple[Looks, ...], index: int, nudge_g: float
) -> float:
    """Find how far the colour moves if one part is nudged."""
    slipped = tuple(mass_g + nudge_g * (i == index) for i, mass_g in enumerate(masses))
    before, after = _seen(masses, looks), _seen(slipped, looks)
    return max(difference_de(one, other) for one, other in zip(before, after, strict=True))


def _seen(masses: tuple[float, ...], looks: tuple[Looks, ...]) -> tuple[Lab, Lab]:
    whole_g = sum(masses)
    day, lamp = mixed(tuple(mass_g / whole_g for mass_g in masses), looks)
    return lab_of(day), lab_of(lamp)
