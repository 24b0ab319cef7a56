"""The ledger of a can: what should be in it, from the last weighing and the pours since."""

from dataclasses import dataclass

from core.errors import require
from core.working import Working, step

NET_G = 0.0, 1e5
SHOULD_BE_G = -1e5, 1e5
POURS_COUNT = 0, 10_000

SPEAK_RATIO = 0.01  # of what was poured; the choice is this project's
STEP_G = 0.001, 100.0

CONSERVED = "conservation of mass"
PROJECT = "this project"


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
class Threshold:
    """The gap, either way, above which something is wrong rather than rounded."""

    speak_above_g: float
    working: Working


def balance(weighed_net_g: float | None, poured_g: tuple[float, ...]) -> Balance:
    """Find what should be in a can.

    What dries off while the lid is off is not counted.

    Parameters
    ----------
    weighed_net_g
        Net mass at the last weighing, g, 0 to 100 000; None if it was never weighed.
    poured_g
        What was poured out of it since, each 0 to 100 000 g.

    Returns
    -------
        Net mass, g, and the sum of the pours.

    Source: conservation of mass.

    >>> balance(285.0, (58.1, 13.4)).should_be_g
    213.5
    """
    if weighed_net_g is not None:
        require("weighed_net_g", weighed_net_g, *NET_G)
    require("pours_count", len(poured_g), *POURS_COUNT)
    for pour_g in poured_g:
        require("pour_g", pour_g, *NET_G)
    since_g = sum(poured_g)
    terms = {f"pour_{i}_g": pour_g for i, pour_g in enumerate(poured_g, 1)}
    formula = " + ".join(f"{{{name}}}" for name in terms) or "0"
    poured = step("poured_since_g", formula, since_g, CONSERVED, **terms)
    if weighed_net_g is None:
        return Balance(None, since_g, (poured,))
    should_be_g = weighed_net_g - since_g
    inputs = {"weighed_net_g": weighed_net_g, "poured_since_g": since_g}
    left = step(
        "should_be_g", "{weighed_net_g} − {poured_since_g}", should_be_g, CONSERVED, **inputs
    )
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


def speak_above(poured_since_g: float, scale_step_g: float) -> Threshold:
    """Find the gap above which it is worth asking where the paint went.

    How far the readings themselves are off, and what dried off, are not counted.

    Parameters
    ----------
    poured_since_g
        What was poured since the last weighing, g, 0 to 100 000.
    scale_step_g
        The scale's step, g, 0.001 to 100.

    Returns
    -------
        1 % of what was poured, at least one step of the scale, g.

    Source: planning model of this project.

    >>> round(speak_above(poured_since_g=71.5, scale_step_g=0.1).speak_above_g, 6)
    0.715
    """
    require("poured_since_g", poured_since_g, *NET_G)
    require("scale_step_g", scale_step_g, *STEP_G)
    speak_above_g = max(SPEAK_RATIO * poured_since_g, scale_step_g)
    poured = {"speak_ratio": SPEAK_RATIO, "poured_since_g": poured_since_g}
    inputs = poured | {"scale_step_g": scale_step_g}
    formula = "max({speak_ratio} × {poured_since_g}, {scale_step_g})"
    return Threshold(
        speak_above_g, (step("speak_above_g", formula, speak_above_g, PROJECT, **inputs),)
    )
