"""How many grams of paint a square metre takes in one coat."""

from dataclasses import dataclass

from core.errors import require
from core.paints.blend import DENSITY_G_ML, SOLIDS_RATIO
from core.working import Working, step

FILM_UM = 1.0, 5000.0  # dry: a stain to a trowelled coat
SPREAD_M2_L = 0.1, 100.0
LOSS_RATIO = 0.0, 0.9  # of what leaves the can
G_M2 = 0.1, 1e5

FILM = "dry film from volume solids, MIL-HDBK-1110 / UFC 3-190-06, §2.1.5"
LOSSES = "losses divide, common practice, no published source"


@dataclass(frozen=True, slots=True)
class Rate:
    """What one coat takes of its mix, g/m², losses counted."""

    g_m2: float
    working: Working


def rate_of_film(
    dft_um: float, density_g_ml: float, solids_ratio: float, loss_ratio: float = 0.0
) -> Rate:
    """Find the grams a square metre takes for a dry film of a given thickness.

    Parameters
    ----------
    dft_um
        Dry film thickness, µm, 1 to 5000.
    density_g_ml
        Of the wet paint, g/mL, 0.5 to 3.
    solids_ratio
        Volume solids as a share, 0.01 to 1.
    loss_ratio
        The share of what leaves the can that never becomes film on the wall, 0 to 0.9.

    Returns
    -------
        g/m² for one coat, with its working.

    Source: a wet film is the dry one over its volume solids (MIL-HDBK-1110 / UFC 3-190-06,
    §2.1.5); 1 µm on 1 m² is 1 mL; losses divide, common practice, no published source.

    >>> round(rate_of_film(28.0, 1.04, 0.34, 0.1).g_m2, 2)
    95.16
    """
    require("dft_um", dft_um, *FILM_UM)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    require("solids_ratio", solids_ratio, *SOLIDS_RATIO)
    require("loss_ratio", loss_ratio, *LOSS_RATIO)
    wft_um = dft_um / solids_ratio
    g_m2 = density_g_ml * wft_um / (1 - loss_ratio)
    film = {"dft_um": dft_um, "solids_ratio": solids_ratio}
    grams = {"density_g_ml": density_g_ml, "wft_um": wft_um, "loss_ratio": loss_ratio}
    formula = "{density_g_ml} × {wft_um} ÷ (1 − {loss_ratio})"
    return Rate(
        g_m2,
        (
            step("wft_um", "{dft_um} ÷ {solids_ratio}", wft_um, FILM, **film),
            step("rate_g_m2", formula, g_m2, LOSSES, **grams),
        ),
    )


def rate_of_spreading(spread_m2_l: float, density_g_ml: float, loss_ratio: float = 0.0) -> Rate:
    """Find the grams a square metre takes from the label's spreading rate.

    Parameters
    ----------
    spread_m2_l
        Square metres a litre covers, m²/L, 0.1 to 100.
    density_g_ml
        Of the wet paint, g/mL, 0.5 to 3.
    loss_ratio
        The share of what leaves the can that never reaches the wall, 0 to 0.9.

    Returns
    -------
        g/m² for one coat, with its working.

    Source: definition of the spreading rate (ISO 4618, from memory); losses divide, as in
    `rate_of_film`.

    >>> round(rate_of_spreading(11.0, 1.02, 0.08).g_m2, 5)
    100.79051
    """
    require("spread_m2_l", spread_m2_l, *SPREAD_M2_L)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    require("loss_ratio", loss_ratio, *LOSS_RATIO)
    g_m2 = 1000 * density_g_ml / (spread_m2_l * (1 - loss_ratio))
    inputs = {
        "density_g_ml": density_g_ml,
        "spread_m2_l": spread_m2_l,
        "loss_ratio": loss_ratio,
    }
    formula = "1000 × {density_g_ml} ÷ ({spread_m2_l} × (1 − {loss_ratio}))"
    return Rate(g_m2, (step("rate_g_m2", formula, g_m2, LOSSES, **inputs),))


def goes_over_m2(net_g: float, g_m2: float) -> float:
    """Find how much wall an amount of paint goes over in one coat.

    Parameters
    ----------
    net_g
        Paint, g, 0 to 1 000 000.
    g_m2
        What one coat takes, g/m², 0.1 to 100 000.

    Returns
    -------
        m².

    Source: definition of the spreading rate (ISO 4618, from memory).

    >>> round(goes_over_m2(528.5, 100.790514), 2)
    5.24
    """
    require("net_g", net_g, 0.0, 1e6)
    require("g_m2", g_m2, *G_M2)
    return net_g / g_m2
