"""Split a batch into portions that the scale can show, and put them in pouring order."""

from dataclasses import dataclass
from fractions import Fraction
from math import sqrt

from core.errors import Refused, require
from core.mixing.scale import on_step_g, steps_count
from core.paints.recipe import Part, require_recipe

BATCH_G = 1.0, 1e5  # a dab for a sample to four 20 L buckets
SLIP_G = 0.01, 100.0


@dataclass(frozen=True, slots=True)
class Portion:
    """So many grams of one paint; `paint` is its key."""

    paint: str
    net_g: float


def portions(parts: tuple[Part, ...], batch_g: float, scale_step_g: float) -> tuple[Portion, ...]:
    """Split a batch by largest remainder, so that the portions add up to it on the scale.

    Parameters
    ----------
    parts
        The recipe by mass.
    batch_g
        What is to be in the pot, g, 1 to 100 000; taken to the nearest step of the scale.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        One portion a part, in the same order, each within a step of its exact share; of equal
        remainders the first listed is rounded up. A part too small for the scale is refused.

    Source: method of largest remainders (Hamilton, 1792); the rule for ties is this project's.

    >>> ember = Part("orange", 3), Part("yellow", 1), Part("medium", 8)
    >>> [portion.net_g for portion in portions(ember, batch_g=232.0, scale_step_g=0.1)]
    [58.0, 19.3, 154.7]
    """
    require_recipe(parts)
    require("batch_g", batch_g, *BATCH_G)
    counts = [Fraction(repr(part.parts_count)) for part in parts]
    steps = steps_count(batch_g, scale_step_g)
    exact = [count * steps / sum(counts) for count in counts]
    whole = [int(share) for share in exact]
    by_remainder = sorted(range(len(parts)), key=lambda i: whole[i] - exact[i])
    for i in by_remainder[: steps - sum(whole)]:
        whole[i] += 1
    for count, share in zip(whole, exact, strict=True):
        if not count:
            raise Refused("portion_g", float(share) * scale_step_g, scale_step_g, batch_g)
    return tuple(
        Portion(part.paint, on_step_g(count, scale_step_g))
        for part, count in zip(parts, whole, strict=True)
    )


def small_below_g(batch_g: float, slip_g: float = 3.0) -> float:
    """Find the portion below which a slip is cheaper tipped out than made good.

    A slip of e grams in a portion of t costs e × batch / t to make good, and what is in the cup to
    tip out. So small portions go first, while little is in the cup.

    Parameters
    ----------
    batch_g
        What is to be in the pot, g, 1 to 100 000.
    slip_g
        A usual slip of the hand, g, 0.01 to 100; 3 is common practice, no published source.

    Returns
    -------
        sqrt(slip × batch), g.

    Source: this project's planning model.

    >>> round(small_below_g(232.0), 1)
    26.4
    """
    require("batch_g", batch_g, *BATCH_G)
    require("slip_g", slip_g, *SLIP_G)
    return sqrt(slip_g * batch_g)


def pouring_order(
    portions: tuple[Portion, ...], batch_g: float, slip_g: float = 3.0
) -> tuple[Portion, ...]:
    """Put portions in pouring order: small ones first, smallest first, the rest ascending.

    Parameters
    ----------
    portions
        What is to be poured; equal ones keep their order.
    batch_g
        What is to be in the pot, g, 1 to 100 000.
    slip_g
        A usual slip of the hand, g, 0.01 to 100.

    Returns
    -------
        The same portions in order.

    Source: this project's planning model; a strong tint goes last only when matching by eye.

    >>> pouring_order((Portion("orange", 58.0), Portion("yellow", 19.3)), batch_g=77.3)[0].paint
    'yellow'
    """
    small_g = small_below_g(batch_g, slip_g)
    return tuple(sorted(portions, key=lambda portion: (portion.net_g >= small_g, portion.net_g)))
