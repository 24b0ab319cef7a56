"""What became of a pot: on walls, in tools, dried off; the rest is left or went to waste."""

from dataclasses import dataclass
from math import sqrt

from core.cans.ledger import STEP_G, TWELVE
from core.errors import require
from core.working import Working, step

MASS_G = 0.0, 1e5
READINGS_COUNT = 0, 10_000

CONSERVED = "conservation of mass"
PROJECT = "this project"
FLAT = "standard deviation of an even spread, JCGM 100, 4.3.7"


@dataclass(frozen=True, slots=True)
class Used:
    """What is known of a pot that was used, g each, 0 to 100 000.

    `made_g` is what was poured into it and not spilt; `left_g` stands in the pot, its cups and its
    jars; `moved_g` went out of its jars into other pots; `waste_g` was thrown away; `bound_g` can
    have dried off at the most while they stood open; `tools_g` is what its tools and cups usually
    keep.
    """

    made_g: float
    left_g: float = 0.0
    waste_g: float = 0.0
    bound_g: float = 0.0
    tools_g: float = 0.0
    moved_g: float = 0.0


@dataclass(frozen=True, slots=True)
class Account:
    """Where it went, g each; `u_g` is how far the walls' share can be off: one sigma."""

    walls_g: float
    tools_g: float
    dried_g: float
    u_g: float
    working: Working


def account(used: Used, scale_step_g: float, readings_count: int) -> Account:
    """Find what of a pot is on walls.

    Parameters
    ----------
    used
        What is known of it.
    scale_step_g
        The step that the scale shows, g, 0.001 to 100.
    readings_count
        How many readings stand behind it, 0 to 10 000.

    Returns
    -------
        What is on walls, wet as laid; what is in tools, no more than is gone; half of what can
        have dried off; and how far rounding and drying put the walls off. All are 0 or more,
        and with what is left, what moved on and what is waste they are what was made.

    Source: conservation of mass; half of the bound is this project's rule, as in a can's ledger.

    >>> ember = Used(made_g=232.0, left_g=31.2, bound_g=1.2, tools_g=66.0)
    >>> round(account(ember, 0.1, 4).walls_g, 6)
    134.2
    """
    for name in ("made_g", "left_g", "waste_g", "bound_g", "tools_g", "moved_g"):
        require(name, getattr(used, name), *MASS_G)
    require("scale_step_g", scale_step_g, *STEP_G)
    require("readings_count", readings_count, *READINGS_COUNT)
    gone_g = max(used.made_g - used.left_g - used.moved_g - used.waste_g, 0.0)
    dried_g = min(used.bound_g / 2, gone_g)
    tools_g = min(used.tools_g, gone_g - dried_g)
    walls_g = gone_g - dried_g - tools_g
    u_g = sqrt((readings_count * scale_step_g**2 + used.bound_g**2) / TWELVE)
    out = {name: getattr(used, name) for name in ("made_g", "left_g", "moved_g", "waste_g")}
    parts = {"gone_g": gone_g, "dried_g": dried_g, "tools_g": tools_g}
    usual = {"usual_g": used.tools_g, "gone_g": gone_g, "dried_g": dried_g}
    doubt = {"n": readings_count, "step_g": scale_step_g, "bound_g": used.bound_g}
    left = "max({made_g} − {left_g} − {moved_g} − {waste_g}, 0)"
    half, bound = "min({bound_g} ÷ 2, {gone_g})", {"bound_g": used.bound_g, "gone_g": gone_g}
    kept, on = "min({usual_g}, {gone_g} − {dried_g})", "{gone_g} − {dried_g} − {tools_g}"
    off = "√(({n} × {step_g}² + {bound_g}²) ÷ 12)"
    working = (
        step("gone_g", left, gone_g, CONSERVED, **out),
        step("dried_g", half, dried_g, PROJECT, **bound),
        step("tools_g", kept, tools_g, CONSERVED, **usual),
        step("walls_g", on, walls_g, CONSERVED, **parts),
        step("u_g", off, u_g, FLAT, **doubt),
    )
    return Account(walls_g, tools_g, dried_g, u_g, working)
