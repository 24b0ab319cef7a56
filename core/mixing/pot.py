"""What is in a pot, and how high it stands in the cup."""

from dataclasses import dataclass
from math import pi

from core.errors import require
from core.mixing.plan import Pour
from core.mixing.portions import Portion
from core.paints.blend import DENSITY_G_ML, ML_PER_L
from core.working import Working, step

CUP_M = 0.01, 1.0  # a medicine cup to a mixing tub
NET_G = 0.0, 1e5
L_PER_M3 = 1e3
HAIR_RATIO = 1e-9  # a cup filled to the brim is full, whatever binary makes of it

GEOMETRY = "volume of a conical frustum, geometry"
DEFINITION = "definition of density, ISO 80000-4"
FRUSTUM = "π × {height_m} ÷ 12 × ({bottom_m}² + {bottom_m} × {top_m} + {top_m}²) × 1000"
SLANTED = (
    "(∛({bottom_m}³ + {filled_l} ÷ {cup_l} × ({top_m}³ − {bottom_m}³)) − {bottom_m})"
    " ÷ ({top_m} − {bottom_m})"
)


@dataclass(frozen=True, slots=True)
class Cup:
    """A cup that widens upwards, or a straight one: inside diameters and height, m."""

    bottom_m: float
    top_m: float
    height_m: float


@dataclass(frozen=True, slots=True)
class Levels:
    """How high each layer's top stands: shares of the cup's height, lowest layer first."""

    tops_ratio: tuple[float, ...]
    working: Working


def contents(poured: tuple[Pour, ...]) -> tuple[Portion, ...]:
    """Find how much of each paint is in the pot.

    Parameters
    ----------
    poured
        What went in, each 0 to 100 000 g.

    Returns
    -------
        One portion a paint, in the order in which each was first poured.

    Source: conservation of mass.

    >>> contents((Pour("yellow", 19.3), Pour("orange", 50.0), Pour("orange", 8.0)))[1].net_g
    58.0
    """
    masses_g: dict[str, float] = {}
    for pour in poured:
        require("net_g", pour.net_g, *NET_G)
        masses_g[pour.paint] = masses_g.get(pour.paint, 0.0) + pour.net_g
    return tuple(Portion(paint, net_g) for paint, net_g in masses_g.items())


def total_g(poured: tuple[Pour, ...]) -> float:
    """Find how much is in the pot.

    Parameters
    ----------
    poured
        What went in, each 0 to 100 000 g.

    Returns
    -------
        Net mass, g.

    Source: conservation of mass.

    >>> total_g((Pour("yellow", 19.3), Pour("orange", 58.0)))
    77.3
    """
    return sum(portion.net_g for portion in contents(poured))


def holds_l(cup: Cup) -> float:
    """Find what a cup holds to the brim.

    Parameters
    ----------
    cup
        Inside diameters and height, 0.01 to 1 m.

    Returns
    -------
        Volume, L.

    Source: volume of a conical frustum, pi h / 12 (d1² + d1 d2 + d2²), geometry.

    >>> round(holds_l(Cup(bottom_m=0.068, top_m=0.084, height_m=0.066)), 3)
    0.301
    """
    for name, size_m in (("bottom_m", cup.bottom_m), ("top_m", cup.top_m)):
        require(name, size_m, *CUP_M)
    require("height_m", cup.height_m, *CUP_M)
    squares_m2 = cup.bottom_m**2 + cup.bottom_m * cup.top_m + cup.top_m**2
    return pi * cup.height_m / 12 * squares_m2 * L_PER_M3


def level_ratio(cup: Cup, volume_l: float) -> float:
    """Find how high a volume stands in a cup.

    Parameters
    ----------
    cup
        Inside diameters and height, 0.01 to 1 m.
    volume_l
        0 to what the cup holds, L.

    Returns
    -------
        Share of the cup's height, 0 to 1.

    Source: the frustum's volume solved for the height, geometry.

    >>> round(level_ratio(Cup(bottom_m=0.30, top_m=0.35, height_m=0.14), 5.81849), 4)
    0.5382
    """
    full_l = holds_l(cup)
    require("volume_l", volume_l, 0.0, full_l * (1 + HAIR_RATIO))
    share_ratio = min(1.0, volume_l / full_l)
    bottom, top = cup.bottom_m, cup.top_m
    if _straight(cup):
        return share_ratio
    across_m: float = (bottom**3 + share_ratio * (top**3 - bottom**3)) ** (1 / 3)
    return min(1.0, max(0.0, (across_m - bottom) / (top - bottom)))


def levels(portions: tuple[Portion, ...], densities_g_ml: tuple[float, ...], cup: Cup) -> Levels:
    """Find how high each paint would stand in a cup, one on the other, not stirred.

    Parameters
    ----------
    portions
        Lowest first, each 0 to 100 000 g; together no more than the cup holds.
    densities_g_ml
        One a portion, g/mL, 0.5 to 3.
    cup
        Inside diameters and height, 0.01 to 1 m.

    Returns
    -------
        The top of each layer as a share of the cup's height.

    Source: volume = mass / density; the frustum's volume solved for the height, geometry.

    >>> tub = Cup(bottom_m=0.1, top_m=0.1, height_m=0.1)
    >>> halves = levels((Portion("white", 471.2), Portion("blue", 235.6)), (1.2, 1.2), tub)
    >>> [round(top, 2) for top in halves.tops_ratio]
    [0.5, 0.75]
    """
    require("densities_count", len(densities_g_ml), len(portions), len(portions))
    full_l, filled_l = holds_l(cup), 0.0
    steps = [step("cup_l", FRUSTUM, full_l, GEOMETRY, **_sizes_m(cup))]
    tops = []
    for portion, density_g_ml in zip(portions, densities_g_ml, strict=True):
        require("net_g", portion.net_g, *NET_G)
        require("density_g_ml", density_g_ml, *DENSITY_G_ML)
        layer_l = portion.net_g / density_g_ml / ML_PER_L
        filled_l += layer_l
        top_ratio = level_ratio(cup, filled_l)
        tops.append(top_ratio)
        mass = {"net_g": portion.net_g, "density_g_ml": density_g_ml}
        filled = {"filled_l": filled_l, "cup_l": full_l} | _sizes_m(cup)
        steps += [
            step("layer_l", "{net_g} ÷ {density_g_ml} ÷ 1000", layer_l, DEFINITION, **mass),
            step("top_ratio", _height(cup), top_ratio, GEOMETRY, **filled),
        ]
    return Levels(tuple(tops), tuple(steps))


def _sizes_m(cup: Cup) -> dict[str, float]:
    return {"bottom_m": cup.bottom_m, "top_m": cup.top_m, "height_m": cup.height_m}


def _straight(cup: Cup) -> bool:
    return abs(cup.top_m - cup.bottom_m) <= HAIR_RATIO * cup.bottom_m


def _height(cup: Cup) -> str:
    return "{filled_l} ÷ {cup_l}" if _straight(cup) else SLANTED
