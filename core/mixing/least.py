"""The smallest part worth weighing on a scale, and what to do about a smaller one."""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import NET_G
from core.mixing.portions import Portion
from core.mixing.scale import SCALE_STEP_G
from core.working import Working, step

TOLERANCE_RATIO = 0.001, 0.2
USUAL_RATIO = 0.01  # common practice, no published source
REPEATS_RATIO = 0.41  # of a step: no scale repeats better, USP <41>
USP = "minimum weight, USP <41>: 2 × 0.41 × step ÷ tolerance"
PREMIX = "dilution, conservation of mass"


@dataclass(frozen=True, slots=True)
class LetDown:
    """A weaker premix: `tint_g` in `carrier_g`; `use_g` of it go into the pot.

    `carrier_left_g` is what the pot still takes of the carrier by itself.
    """

    tint_g: float
    carrier_g: float
    use_g: float
    carrier_left_g: float
    working: Working


def least_part_g(scale_step_g: float, tolerance_ratio: float = USUAL_RATIO) -> float:
    """Find the smallest part that a scale weighs to a tolerance.

    Parameters
    ----------
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.
    tolerance_ratio
        How far off a part may be, as a share of it, 0.001 to 0.2.

    Returns
    -------
        g.

    Source: minimum weight of USP <41>, 2 s / tolerance with s of 0.41 steps at the least.

    >>> round(least_part_g(0.1), 1), round(least_part_g(0.1, 0.001), 1)
    (8.2, 82.0)
    """
    require("scale_step_g", scale_step_g, *SCALE_STEP_G)
    require("tolerance_ratio", tolerance_ratio, *TOLERANCE_RATIO)
    return 2 * REPEATS_RATIO * scale_step_g / tolerance_ratio


def batch_for_g(portions: tuple[Portion, ...], least_g: float) -> float:
    """Find the batch in which the smallest part is large enough.

    Parameters
    ----------
    portions
        The parts of a batch, each more than 0 g.
    least_g
        The smallest part worth weighing, g, more than 0.

    Returns
    -------
        g; no less than the batch is.

    Source: proportion.

    >>> batch_for_g((Portion("blue", 2.0), Portion("medium", 98.0)), 8.0)
    400.0
    """
    require("least_g", least_g, 1e-6, NET_G[1])
    for portion in portions:
        require("portion_g", portion.net_g, 1e-9, NET_G[1])
    whole_g = sum(portion.net_g for portion in portions)
    smallest_g = min(portion.net_g for portion in portions)
    return whole_g * max(1.0, least_g / smallest_g)


def let_down(part_g: float, carrier_g: float, least_g: float) -> LetDown:
    """Find the smallest premix that lets a small part be weighed.

    Parameters
    ----------
    part_g
        What the pot takes of the strong paint, g, more than 0 and less than `least_g`.
    carrier_g
        What the pot takes of the paint that it is let down with, g; with the part no less than
        `least_g`.
    least_g
        The smallest part worth weighing, g.

    Returns
    -------
        The premix, so that both weighings of the tint are no smaller than `least_g`.

    Source: dilution, conservation of mass.

    >>> blue = let_down(0.5, 150.0, 8.0)
    >>> blue.tint_g, blue.carrier_g, blue.use_g, blue.carrier_left_g
    (8.0, 120.0, 8.0, 142.5)
    """
    require("least_g", least_g, 1e-6, NET_G[1])
    require("part_g", part_g, 1e-9, least_g)
    if part_g + carrier_g < least_g:
        raise Refused("carrier_g", carrier_g, least_g - part_g, NET_G[1])
    inside_g = least_g - part_g  # of the carrier, in what the pot takes of the premix
    premix_g = least_g * inside_g / part_g
    left_g = carrier_g - inside_g
    inputs = {"least_g": least_g, "part_g": part_g}
    working = (
        step("tint_g", "{least_g}", least_g, USP, least_g=least_g),
        step(
            "carrier_g", "{least_g} × ({least_g} − {part_g}) ÷ {part_g}", premix_g, PREMIX, **inputs
        ),
        step("use_g", "{least_g}", least_g, PREMIX, least_g=least_g),
        step(
            "carrier_left_g",
            "{carrier_g} − ({least_g} − {part_g})",
            left_g,
            PREMIX,
            carrier_g=carrier_g,
            **inputs,
        ),
    )
    return LetDown(least_g, premix_g, least_g, left_g, working)
