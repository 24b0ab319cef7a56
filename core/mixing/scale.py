"""What a scale can show."""

from fractions import Fraction
from functools import lru_cache

from core.errors import require

SCALE_STEP_G = 0.01, 10.0  # a letter scale to a parcel scale
READING_G = -1e5, 1e5
BAND_RATIO = 0.01  # common practice, no published source


@lru_cache(maxsize=4096)  # a weigh-out asks the same many times, and fractions are slow
def steps_count(mass_g: float, scale_step_g: float) -> int:
    """Find how many steps of the scale a mass comes to, halves up.

    Parameters
    ----------
    mass_g
        A mass or a reading, g, -100 000 to 100 000.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        Whole steps; decimal figures are taken as they are written, so 0.3 is three of 0.1.

    Source: rounding of a digital display, common practice, no published source.

    >>> steps_count(0.3, 0.1), steps_count(19.25, 0.1)
    (3, 193)
    """
    require("mass_g", mass_g, *READING_G)
    require("scale_step_g", scale_step_g, *SCALE_STEP_G)
    exact = Fraction(repr(mass_g)) / Fraction(repr(scale_step_g))
    return int((2 * exact + 1) // 2)


def on_step_g(count: int, scale_step_g: float) -> float:
    """Find the mass of so many steps, free of binary dust: three of 0.1 are 0.3.

    Parameters
    ----------
    count
        Whole steps.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        The mass, g.

    Source: rounding of a digital display, common practice, no published source.

    >>> on_step_g(3, 0.1)
    0.3
    """
    require("scale_step_g", scale_step_g, *SCALE_STEP_G)
    return float(count * Fraction(repr(scale_step_g)))


def shown_g(mass_g: float, scale_step_g: float) -> float:
    """Find what the scale shows for a mass.

    Parameters
    ----------
    mass_g
        A mass, g, -100 000 to 100 000.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        The nearest step, g, halves up.

    Source: rounding of a digital display, common practice, no published source.

    >>> shown_g(83.4307, 0.1), shown_g(83.4307, 1.0)
    (83.4, 83.0)
    """
    return on_step_g(steps_count(mass_g, scale_step_g), scale_step_g)


def band_g(target_g: float, scale_step_g: float, band_ratio: float = BAND_RATIO) -> float:
    """Find how far off its target a portion may be: a share of it, at least one step of the scale.

    Parameters
    ----------
    target_g
        The whole portion, g, 0 to 100 000.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.
    band_ratio
        The share, 0 to 1; 1 % where nothing is known of the colour.

    Returns
    -------
        The band either way, on the scale's step, g.

    Source: common practice, no published source.

    >>> band_g(58.0, 0.1), band_g(0.8, 0.1)
    (0.6, 0.1)
    """
    require("target_g", target_g, 0.0, READING_G[1])
    require("band_ratio", band_ratio, 0.0, 1.0)
    steps = steps_count(target_g * band_ratio, scale_step_g)
    return on_step_g(max(1, steps), scale_step_g)
