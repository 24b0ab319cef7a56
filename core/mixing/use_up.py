"""A leftover in a new batch of the same colour: as much of it as the ratio allows."""

from dataclasses import dataclass

from core.errors import require
from core.mixing.plan import NET_G
from core.mixing.portions import Portion
from core.mixing.stray import UNSEEN_RATIO
from core.working import Working, step

LEAST = "the part that the leftover fills first: algebra, no published source"


@dataclass(frozen=True, slots=True)
class UsedUp:
    """So much of the leftover goes in, g; what is still to pour of each part, 0 g where none."""

    used_g: float
    rest: tuple[Portion, ...]
    working: Working


def use_up(batch: tuple[Portion, ...], leftover: tuple[Portion, ...], has_g: float) -> UsedUp:
    """Find how much of a leftover a batch takes, its ratio kept.

    Parameters
    ----------
    batch
        What is to be in the pot of each paint, g, each more than 0.
    leftover
        What the leftover consists of, g, at least one part more than 0; any mass, only the
        proportion counts.
    has_g
        How much of it there is, g, 0 to 100 000.

    Returns
    -------
        The most that goes in; 0 g where an eye sees what the leftover holds of paints that the
        batch has not.

    Source: the least of what a part takes divided by its share in the leftover, algebra, no
    published source; a stray under 1 % is not seen: common practice, no published source.

    >>> ember = (Portion("yellow", 20.0), Portion("orange", 60.0))
    >>> used = use_up(ember, (Portion("yellow", 1.0), Portion("orange", 1.0)), 100.0)
    >>> used.used_g, [one.net_g for one in used.rest]
    (40.0, [0.0, 40.0])
    """
    require("has_g", has_g, *NET_G)
    for portion in batch:
        require("portion_g", portion.net_g, 1e-9, NET_G[1])
    whole_g = sum(one.net_g for one in leftover)
    require("leftover_g", whole_g, 1e-9, 1e6)
    shares = {one.paint: one.net_g / whole_g for one in leftover if one.net_g}
    wanted = {one.paint: one.net_g for one in batch}
    fits = [wanted[paint] / share for paint, share in shares.items() if paint in wanted]
    strays_ratio = sum(share for paint, share in shares.items() if paint not in wanted)
    most_g = min(fits) if strays_ratio <= UNSEEN_RATIO else 0.0
    used_g = min(has_g, most_g)
    rest = tuple(
        Portion(one.paint, max(one.net_g - used_g * shares.get(one.paint, 0.0), 0.0))
        for one in batch
    )
    inputs = {"has_g": has_g, "fits_g": most_g}
    line = step("used_g", "min({has_g}, {fits_g})", used_g, LEAST, **inputs)
    return UsedUp(used_g, rest, (line,))
