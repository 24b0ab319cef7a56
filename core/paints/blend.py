"""Density and volume of a mix."""

from dataclasses import dataclass

from core.errors import require
from core.paints.recipe import Part, shares
from core.working import Working, step

DENSITY_G_ML = 0.5, 3.0  # a solvent to a heavy filler; house paint is 1.0 to 1.6
SOLIDS_RATIO = 0.01, 1.0  # by volume: a stain to a coat without solvent
MASS_G = 0.0, 1e6
ML_PER_L = 1e3  # SI prefix
MIXED = "volume solids of the parts by their volumes, ideal mixing"
DEFINITION = "definition of density, ISO 80000-4"


@dataclass(frozen=True, slots=True)
class Blend:
    """A mix as one paint: its density, and the volume of the mass asked for."""

    density_g_ml: float
    volume_l: float
    working: Working


def blend(parts: tuple[Part, ...], densities_g_ml: tuple[float, ...], mass_g: float) -> Blend:
    """Find density and volume of a mix, as if paints neither shrank nor swelled on mixing.

    Parameters
    ----------
    parts
        The recipe by mass.
    densities_g_ml
        One a part, g/mL, 0.5 to 3.
    mass_g
        How much of the mix, g, 0 to 1 000 000.

    Returns
    -------
        Density, g/mL, and volume, L, with their working.

    Source: ideal mixing, density = 1 / sum(share / density); water-borne paints keep to it
    within about 1 %, common practice, no published source.

    >>> mix = blend((Part("glycerol", 1), Part("water", 1)), (1.26, 1.0), 226.0)
    >>> round(mix.density_g_ml, 4), round(mix.volume_l, 4)
    (1.115, 0.2027)
    """
    require("mass_g", mass_g, *MASS_G)
    weights = shares(parts)
    require("densities_count", len(densities_g_ml), len(parts), len(parts))
    for density_g_ml in densities_g_ml:
        require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    pairs = tuple(zip(weights, densities_g_ml, strict=True))
    density_g_ml = 1 / sum(share / density for share, density in pairs)
    terms: list[str] = []
    inputs: dict[str, float] = {}
    for i, (share, density) in enumerate(pairs, 1):
        inputs |= {f"share_{i}_ratio": share, f"density_{i}_g_ml": density}
        terms.append(f"{{share_{i}_ratio}} ÷ {{density_{i}_g_ml}}")
    formula = f"1 ÷ ({' + '.join(terms)})"
    volume_l = mass_g / density_g_ml / ML_PER_L
    of_mass = {"mass_g": mass_g, "density_g_ml": density_g_ml}
    working = (
        step("density_g_ml", formula, density_g_ml, "ideal mixing", **inputs),
        step("volume_l", "{mass_g} ÷ {density_g_ml} ÷ 1000", volume_l, DEFINITION, **of_mass),
    )
    return Blend(density_g_ml, volume_l, working)


@dataclass(frozen=True, slots=True)
class Solids:
    """The volume solids of a mix, as a share."""

    solids_ratio: float
    working: Working


def solids(
    parts: tuple[Part, ...], densities_g_ml: tuple[float, ...], solids_shares: tuple[float, ...]
) -> Solids:
    """Find the volume solids of a mix from those of its paints.

    Parameters
    ----------
    parts
        The recipe by mass.
    densities_g_ml
        One a part, g/mL, 0.5 to 3.
    solids_shares
        One a part, by volume, 0.01 to 1.

    Returns
    -------
        The share that stays on the wall, with its working.

    Source: volumes add (ideal mixing), as in `blend`.

    >>> boxed = Part("fluorescent violet", 62), Part("standard aubergine", 38)
    >>> round(solids(boxed, (1.12, 1.31), (0.36, 0.39)).solids_ratio, 6)
    0.370315
    """
    weights = shares(parts)
    require("densities_count", len(densities_g_ml), len(parts), len(parts))
    require("solids_count", len(solids_shares), len(parts), len(parts))
    for density_g_ml, solids_ratio in zip(densities_g_ml, solids_shares, strict=True):
        require("density_g_ml", density_g_ml, *DENSITY_G_ML)
        require("solids_ratio", solids_ratio, *SOLIDS_RATIO)
    volumes = [share / density for share, density in zip(weights, densities_g_ml, strict=True)]
    mixed = sum(v * s for v, s in zip(volumes, solids_shares, strict=True)) / sum(volumes)
    inputs: dict[str, float] = {}
    over: list[str] = []
    under: list[str] = []
    for i, (share, density) in enumerate(zip(weights, densities_g_ml, strict=True), 1):
        inputs |= {f"share_{i}_ratio": share, f"density_{i}_g_ml": density}
        inputs[f"solids_{i}_ratio"] = solids_shares[i - 1]
        under.append(f"{{share_{i}_ratio}} ÷ {{density_{i}_g_ml}}")
        over.append(f"{under[-1]} × {{solids_{i}_ratio}}")
    formula = f"({' + '.join(over)}) ÷ ({' + '.join(under)})"
    return Solids(mixed, (step("solids_ratio", formula, mixed, MIXED, **inputs),))
