"""What is said before a weigh-out: parts too small for the scale, the limiting can, its error."""

from dataclasses import dataclass
from math import ceil

from core.errors import Refused
from core.mixing.least import LetDown, batch_for_g, least_part_g, let_down
from core.mixing.portions import Portion
from mobile.session.known import Known
from mobile.session.mix.begin import density_of
from mobile.session.mix.cans_hold import limiting
from mobile.session.mix.scale import error_g, part_suffers, room_g
from mobile.store.records import Mix


@dataclass(frozen=True, slots=True)
class SmallPart:
    """A part under what the scale weighs to 1 %: the pot that would do, or a let-down of it.

    `carrier` is the paint that it is let down with; no let-down where none is large enough.
    """

    paint: str
    net_g: float
    least_g: float
    batch_g: float
    carrier: str = ""
    let_down: LetDown | None = None


def small_part(known: Known, portions: tuple[Portion, ...]) -> SmallPart | None:
    """Find the smallest part, where it is too small for the scale; None where all will do."""
    least_g = least_part_g(known.settings.scale_step_g)
    smallest = min(portions, key=lambda one: one.net_g)
    if smallest.net_g >= least_g or len(portions) == 1:
        return None
    batch_g = float(ceil(batch_for_g(portions, least_g)))
    carrier = max(portions, key=lambda one: one.net_g)
    try:
        weaker = let_down(smallest.net_g, carrier.net_g, least_g)
    except Refused:
        return SmallPart(smallest.paint, smallest.net_g, least_g, batch_g)
    return SmallPart(smallest.paint, smallest.net_g, least_g, batch_g, carrier.paint, weaker)


def allowed_g(known: Known, mix: Mix) -> float:
    """Give the largest batch that scale, bucket and cans allow."""
    room = room_g(known, density_of(known, mix.parts))
    most_g = limiting(known, mix).most_g
    return room if most_g is None else min(room, most_g)


def spoilt(known: Known, portions: tuple[Portion, ...]) -> tuple[str, ...]:
    """Give the paints of the parts that are so small that the scale's error spoils them."""
    return tuple(one.paint for one in portions if part_suffers(known, one.net_g))


def off_g(known: Known) -> float:
    """Give how far off the scale is today."""
    return error_g(known)
