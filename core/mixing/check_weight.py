"""A known mass on the scale, once a day: how far it is off, and which parts suffer."""

from dataclasses import dataclass

from core.errors import require
from core.mixing.scale import SCALE_STEP_G, band_g
from core.working import Working, step

CHECK_G = 1.0, 1e5
SHOWN_G = 0.0, 2e5
DEFINITION = "error of indication, OIML V 1"


@dataclass(frozen=True, slots=True)
class ScaleError:
    """How much too much the scale shows, g, less than 0 for too little."""

    error_g: float
    speaks: bool  # more than the last digit can hide
    working: Working


def scale_error(known_g: float, reads_g: float, scale_step_g: float) -> ScaleError:
    """Find how far off a scale is.

    Parameters
    ----------
    known_g
        The mass, g, 1 to 100 000.
    reads_g
        What the scale shows, g, 0 to 200 000.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        The error; it speaks from one and a half steps on: half a step is rounding, and the last
        digit flickers.

    Source: error of indication, OIML V 1 (vocabulary of legal metrology).

    >>> round(scale_error(200.0, 199.4, 0.1).error_g, 6), scale_error(200.0, 200.1, 0.1).speaks
    (-0.6, False)
    """
    require("known_g", known_g, *CHECK_G)
    require("reads_g", reads_g, *SHOWN_G)
    require("scale_step_g", scale_step_g, *SCALE_STEP_G)
    error_g = round(reads_g - known_g, 6)
    inputs = {"reads_g": reads_g, "known_g": known_g}
    line = step("error_g", "{reads_g} − {known_g}", error_g, DEFINITION, **inputs)
    return ScaleError(error_g, abs(error_g) >= 1.5 * scale_step_g - 1e-9, (line,))


def suffers(part_g: float, error_g: float, scale_step_g: float) -> bool:
    """Tell whether an error of the scale is more than a part's band.

    A scale that is off by a share shows all parts off by that share, and the colour stays; one
    that is off by so many grams spoils small parts. One mass can't tell them apart, so the grams
    count.

    Parameters
    ----------
    part_g
        The part, g, 0 to 100 000.
    error_g
        The error, g.
    scale_step_g
        The step that the scale shows, g, 0.01 to 10.

    Returns
    -------
        True if the part's band is smaller than the error.

    Source: this project; a band of 1 % is common practice, no published source.

    >>> suffers(20.0, -0.6, 0.1), suffers(150.0, -0.6, 0.1)
    (True, False)
    """
    return abs(error_g) > band_g(part_g, scale_step_g)
