"""Cups of one pot, and what is left of it."""

from core.errors import require
from core.mixing.plan import DUST_G
from core.mixing.portions import Portion, portions
from core.mixing.scale import on_step_g, steps_count
from core.paints.recipe import Part

ADD_G = 0.01, 1e5


def cups_g(
    in_pot_g: float, cups_share: tuple[float, ...], scale_step_g: float
) -> tuple[float, ...]:
    """Split a pot into cups by weights: square metres, or one a person.

    Parameters
    ----------
    in_pot_g
        What is in the pot, g, 1 to 100 000.
    cups_share
        One a cup, each more than 0.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        g, one a cup; together what is in the pot, to the step of the scale and never more.

    Source: method of largest remainders (Hamilton, 1792).

    >>> cups_g(8968.0, (30.0, 27.0, 23.0, 20.0), 0.1)
    (2690.4, 2421.4, 2062.6, 1793.6)
    """
    parts = tuple(Part(str(number), share) for number, share in enumerate(cups_share))
    count = steps_count(in_pot_g, scale_step_g)
    if on_step_g(count, scale_step_g) > in_pot_g + DUST_G:
        count -= 1  # what the scale can't show stays in the pot
    return tuple(cup.net_g for cup in portions(parts, on_step_g(count, scale_step_g), scale_step_g))


def more_of_it(contents: tuple[Portion, ...], add_g: float) -> tuple[Portion, ...]:
    """Find what to pour so that a pot grows and stays the same colour.

    Parameters
    ----------
    contents
        What was really poured, at least one part more than 0 g.
    add_g
        By how much it is to grow, g, 0.01 to 100 000.

    Returns
    -------
        g of each paint, in its real proportion.

    Source: proportion.

    >>> ember = (Portion("yellow", 20.0), Portion("orange", 60.0))
    >>> [one.net_g for one in more_of_it(ember, 40.0)]
    [10.0, 30.0]
    """
    require("add_g", add_g, *ADD_G)
    whole_g = sum(one.net_g for one in contents)
    require("in_pot_g", whole_g, 1e-6, ADD_G[1])
    return tuple(Portion(one.paint, add_g * one.net_g / whole_g) for one in contents)
