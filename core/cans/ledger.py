"""The ledger of a can: what should be in it, from the last weighing and the pours since."""

from dataclasses import dataclass
from math import sqrt

from core.errors import require
from core.working import Working, step

NET_G = 0.0, 1e5
SHOULD_BE_G = -1e5, 1e5
POURS_COUNT = 0, 10_000

BOUND_G = 0.0, 1e5
SPEAK_RATIO = 0.01  # of what was poured; the choice is this project's
STEP_G = 0.001, 100.0
TWELVE = 12  # an even spread's variance is a twelfth of its width's square

CONSERVED = "conservation of mass"
PROJECT = "this project"
FLAT = "standard deviation of an even spread, JCGM 100, 4.3.7"


@dataclass(frozen=True, slots=True)
class Balance:
    """What should be in a can; None until it is weighed once.

    Below 0, more was poured than was weighed in: the weighing, or a pour's can, is wrong.
    """

    should_be_g: float | None
    poured_since_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Gap:
    """How much less a can holds than it should; negative where it holds more."""

    gap_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Doubt:
    """How far a gap can be off by the readings' rounding and by what dried off: one sigma."""

    u_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Threshold:
    """The gap, either way, above which something is wrong rather than rounded."""

    speak_above_g: float
    working: Working


def balance(
    weighed_net_g: float | None, poured_g: tuple[float, ...], dried_bound_g: float = 0.0
) -> Balance:
    """Find what should be in a can.

    Parameters
    ----------
    weighed_net_g
        Net mass at the last weighing, g, 0 to 100 000; None if it was never weighed.
    poured_g
        What was poured out of it since, each 0 to 100 000 g.
    dried_bound_g
        What dried off since while its lid was off, at the most, g, 0 to 100 000: half of it is
        taken off.

    Returns
    -------
        Net mass, g, and the sum of the pours.

    Source: conservation of mass; half of the bound is this project's rule.

    >>> balance(285.0, (58.1, 13.4)).should_be_g
    213.5
    """
    if weighed_net_g is not None:
        require("weighed_net_g", weighed_net_g, *NET_G)
    require("pours_count", len(poured_g), *POURS_COUNT)
    require("bound_g", dried_bound_g, *BOUND_G)
    for pour_g in poured_g:
        require("pour_g", pour_g, *NET_G)
    since_g = sum(poured_g)
    terms = {f"pour_{i}_g": pour_g for i, pour_g in enumerate(poured_g, 1)}
    formula = " + ".join(f"{{{name}}}" for name in terms) or "0"
    poured = step("poured_since_g", formula, since_g, CONSERVED, **terms)
    if weighed_net_g is None:
        return Balance(None, since_g, (poured,))
    inputs = {"weighed_net_g": weighed_net_g, "poured_since_g": since_g}
    formula = "{weighed_net_g} − {poured_since_g}"
    if dried_bound_g:
        formula, inputs = f"{formula} − {{bound_g}} ÷ 2", inputs | {"bound_g": dried_bound_g}
    should_be_g = weighed_net_g - since_g - dried_bound_g / 2
    left = step("should_be_g", formula, should_be_g, CONSERVED, **inputs)
    return Balance(should_be_g, since_g, (poured, left))


def gap(net_g: float, should_be_g: float) -> Gap:
    """Find how much is missing in a can.

    Parameters
    ----------
    net_g
        Net mass now, g, 0 to 100 000.
    should_be_g
        Net mass by the ledger, g, -100 000 to 100 000.

    Returns
    -------
        What is missing, g; negative where there is more than there should be.

    Source: conservation of mass; the tare cancels, as it is the same can.

    >>> round(gap(net_g=201.1, should_be_g=213.5).gap_g, 6)
    12.4
    """
    require("net_g", net_g, *NET_G)
    require("should_be_g", should_be_g, *SHOULD_BE_G)
    gap_g = should_be_g - net_g
    inputs = {"should_be_g": should_be_g, "net_g": net_g}
    return Gap(gap_g, (step("gap_g", "{should_be_g} − {net_g}", gap_g, CONSERVED, **inputs),))


def doubt(
    can_step_g: float, cup_step_g: float, pours_count: int, dried_bound_g: float = 0.0
) -> Doubt:
    """Find how far a gap can be off though nothing is missing.

    Parameters
    ----------
    can_step_g, cup_step_g
        The steps of the scale that weighs the can, and of the one under the cup, g, 0.001 to 100.
    pours_count
        How many pours there were since the last weighing, 0 to 10 000: two readings each.
    dried_bound_g
        What dried off at the most, g, 0 to 100 000: taken as evenly likely from nothing to that.

    Returns
    -------
        The standard uncertainty of the gap, g.

    Source: an even spread of width d has a standard deviation of d / sqrt(12) (JCGM 100, 4.3.7);
    variances add.

    >>> round(doubt(can_step_g=0.1, cup_step_g=0.1, pours_count=4).u_g, 5)
    0.09129
    """
    require("can_step_g", can_step_g, *STEP_G)
    require("cup_step_g", cup_step_g, *STEP_G)
    require("pours_count", pours_count, *POURS_COUNT)
    require("bound_g", dried_bound_g, *BOUND_G)
    squares = 2 * can_step_g**2 + 2 * pours_count * cup_step_g**2 + dried_bound_g**2
    u_g = sqrt(squares / TWELVE)
    inputs = {"can_step_g": can_step_g, "pours_count": float(pours_count)}
    inputs |= {"cup_step_g": cup_step_g, "bound_g": dried_bound_g}
    formula = "√((2 × {can_step_g}² + 2 × {pours_count} × {cup_step_g}² + {bound_g}²) ÷ 12)"
    return Doubt(u_g, (step("u_g", formula, u_g, FLAT, **inputs),))


def speak_above(poured_since_g: float, scale_step_g: float, u_g: float = 0.0) -> Threshold:
    """Find the gap above which it is worth asking where the paint went.

    Parameters
    ----------
    poured_since_g
        What was poured since the last weighing, g, 0 to 100 000.
    scale_step_g
        The scale's step, g, 0.001 to 100.
    u_g
        How far the gap can be off though nothing is missing (`doubt`), g, 0 to 100 000.

    Returns
    -------
        Twice that doubt, 1 % of what was poured or one step of the scale, whichever is most, g.

    Source: planning model of this project.

    >>> round(speak_above(poured_since_g=71.5, scale_step_g=0.1, u_g=0.3286).speak_above_g, 6)
    0.715
    """
    require("poured_since_g", poured_since_g, *NET_G)
    require("scale_step_g", scale_step_g, *STEP_G)
    require("u_g", u_g, *BOUND_G)
    speak_above_g = max(2 * u_g, SPEAK_RATIO * poured_since_g, scale_step_g)
    inputs = {"speak_ratio": SPEAK_RATIO, "poured_since_g": poured_since_g}
    inputs |= {"scale_step_g": scale_step_g, "u_g": u_g}
    formula = "max(2 × {u_g}, {speak_ratio} × {poured_since_g}, {scale_step_g})"
    return Threshold(
        speak_above_g, (step("speak_above_g", formula, speak_above_g, PROJECT, **inputs),)
    )
