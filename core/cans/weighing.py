"""Weigh a can: tare, net, litres, how full it is."""

from dataclasses import dataclass

from core.errors import require
from core.paints.blend import DENSITY_G_ML, ML_PER_L
from core.working import Working, step

GROSS_G = 0.0, 1e5  # up to four 20 L buckets
LABEL_L = 0.01, 60.0
NET_G = 0.0, 1e5

DENSITY = "definition of density, ISO 80000-4"
DIFFERENCE = "net = gross − tare, OIML R 76-1, terms"


@dataclass(frozen=True, slots=True)
class Tare:
    """What a can weighs without paint."""

    tare_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Net:
    """What the paint in a can weighs."""

    net_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Volume:
    """How much room the paint in a can takes up."""

    volume_l: float
    working: Working


@dataclass(frozen=True, slots=True)
class Fill:
    """How full a can is: 1 holds what its label says."""

    full_ratio: float
    working: Working


def tare_from_unopened(gross_g: float, label_l: float, density_g_ml: float) -> Tare:
    """Find what a can weighs empty, from the unopened can.

    Cans are filled to about 1 % of their label (from memory), and that goes straight into the
    tare: weigh the can itself once it is empty and scraped.

    Parameters
    ----------
    gross_g
        The unopened can, g, no less than the paint in it.
    label_l
        What the label says is in it, L, 0.01 to 60.
    density_g_ml
        The paint's, g/mL, 0.5 to 3.

    Returns
    -------
        The tare, g.

    Source: net = gross - tare (OIML R 76-1); mass = volume x density.

    >>> round(tare_from_unopened(gross_g=341.6, label_l=0.25, density_g_ml=1.14).tare_g, 6)
    56.6
    """
    require("label_l", label_l, *LABEL_L)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    paint_g = label_l * density_g_ml * ML_PER_L
    require("gross_g", gross_g, paint_g, GROSS_G[1])
    tare_g = gross_g - paint_g
    of_label = {"label_l": label_l, "density_g_ml": density_g_ml}
    both = {"gross_g": gross_g, "paint_g": paint_g}
    working = (
        step("paint_g", "{label_l} × {density_g_ml} × 1000", paint_g, DENSITY, **of_label),
        step("tare_g", "{gross_g} − {paint_g}", tare_g, DIFFERENCE, **both),
    )
    return Tare(tare_g, working)


def net(gross_g: float, tare_g: float) -> Net:
    """Find what the paint in a can weighs.

    Parameters
    ----------
    gross_g
        The can with its paint, g, no less than the tare.
    tare_g
        The can without, g, 0 to 100 000.

    Returns
    -------
        Net mass, g.

    Source: net = gross - tare (OIML R 76-1).

    >>> round(net(gross_g=257.7, tare_g=56.6).net_g, 6)
    201.1
    """
    require("tare_g", tare_g, *GROSS_G)
    require("gross_g", gross_g, tare_g, GROSS_G[1])
    net_g = gross_g - tare_g
    inputs = {"gross_g": gross_g, "tare_g": tare_g}
    return Net(net_g, (step("net_g", "{gross_g} − {tare_g}", net_g, DIFFERENCE, **inputs),))


def volume(net_g: float, density_g_ml: float) -> Volume:
    """Find the litres of so much paint.

    Parameters
    ----------
    net_g
        Net mass, g, 0 to 100 000.
    density_g_ml
        The paint's, g/mL, 0.5 to 3.

    Returns
    -------
        Volume, L.

    Source: definition of density, ISO 80000-4.

    >>> round(volume(net_g=201.1, density_g_ml=1.14).volume_l, 6)
    0.176404
    """
    require("net_g", net_g, *NET_G)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    volume_l = net_g / density_g_ml / ML_PER_L
    inputs = {"net_g": net_g, "density_g_ml": density_g_ml}
    formula = "{net_g} ÷ {density_g_ml} ÷ 1000"
    return Volume(volume_l, (step("volume_l", formula, volume_l, DENSITY, **inputs),))


def fill(net_g: float, label_l: float, density_g_ml: float) -> Fill:
    """Find how full a can is, beside what its label says.

    Parameters
    ----------
    net_g
        Net mass, g, 0 to 100 000.
    label_l
        What the label says the full can holds, L, 0.01 to 60.
    density_g_ml
        The paint's, g/mL, 0.5 to 3.

    Returns
    -------
        Share of the label's litres; above 1 where the can was filled above its label.

    Source: definition of density, ISO 80000-4.

    >>> round(fill(net_g=142.5, label_l=0.25, density_g_ml=1.14).full_ratio, 9)
    0.5
    """
    require("label_l", label_l, *LABEL_L)
    litres = volume(net_g, density_g_ml)
    full_ratio = litres.volume_l / label_l
    inputs = {"volume_l": litres.volume_l, "label_l": label_l}
    share = step("full_ratio", "{volume_l} ÷ {label_l}", full_ratio, "definition", **inputs)
    return Fill(full_ratio, (*litres.working, share))
