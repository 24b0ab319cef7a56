"""How much of a mix a coat needs: on the wall, in the tools and cups, and for touch-ups later."""

from dataclasses import dataclass

from core.coats.rate import G_M2
from core.errors import require
from core.paints.blend import DEFINITION, DENSITY_G_ML, ML_PER_L
from core.working import Step, Working, step

AREA_M2 = 0.0, 1e5
COATS_COUNT = 1, 20
HOLD_UP_G = 0.0, 1e4  # what one tool keeps
WETTINGS_COUNT = 0, 1000
LOSSES_COUNT = 0, 50
PATCHES_COUNT = 0, 1000

ON_THE_WALL = "area × rate × coats, definition of the spreading rate"
KEPT = "what a tool keeps, common practice, no published source"
MODEL = "this project"


@dataclass(frozen=True, slots=True)
class Patch:
    """So many m² that get so many coats."""

    area_m2: float
    coats_count: int = 1


@dataclass(frozen=True, slots=True)
class Coats:
    """What one mix goes on: patches of wall, each coat taking so many g/m²."""

    patches: tuple[Patch, ...]
    g_m2: float


@dataclass(frozen=True, slots=True)
class HoldUp:
    """What tools or cups of one kind keep: g each time one is wetted, and how many times."""

    name: str
    hold_up_g: float
    wettings_count: int


@dataclass(frozen=True, slots=True)
class Kit:
    """What is kept back for touch-ups: a share of the area, but no less than so many m².

    `cling_g` is what its own cup keeps.
    """

    share_ratio: float = 0.05
    least_m2: float = 0.2
    cling_g: float = 0.0


@dataclass(frozen=True, slots=True)
class Need:
    """Grams for all coats of a mix: on the wall, kept by tools and cups, for the kit, in all."""

    wall_g: float
    kept_g: float
    kit_g: float
    need_g: float
    need_l: float
    working: Working


def need(
    coats: Coats,
    density_g_ml: float,
    hold_ups: tuple[HoldUp, ...] = (),
    kit: Kit | None = None,
) -> Need:
    """Find how much of a mix to weigh for an area.

    Parameters
    ----------
    coats
        Up to 1000 patches of 0 to 100 000 m² and 1 to 20 coats; 0.1 to 100 000 g/m².
    density_g_ml
        Of the mix, g/mL, 0.5 to 3.
    hold_ups
        What stays in tools and cups, up to 50 kinds.
    kit
        What is kept for touch-ups, of one coat; None for none.

    Returns
    -------
        Grams and litres, with their working.

    Source: definition of the spreading rate (ISO 4618, from memory); what tools keep and the kit,
    common practice, no published source.

    >>> tools = (HoldUp("mini sleeve", 22.0, 2), HoldUp("brush", 8.0, 1), HoldUp("cup", 7.0, 2))
    >>> round(need(Coats((Patch(1.42, 2),), 52.0), 1.0619967, tools, Kit(cling_g=7.0)).need_g, 2)
    231.08
    """
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    require_coats(coats)
    on_wall, kept, kits = _wall(coats), _kept(hold_ups), _kit(coats, kit)
    wall = on_wall[-1]
    wall_g = wall.value
    kit_g = kits[-1].value if kits else 0.0
    need_g = wall_g + kept.value + kit_g
    parts = {"wall_g": wall_g, "kept_g": kept.value, "kit_g": kit_g}
    of_mass = {"need_g": need_g, "density_g_ml": density_g_ml}
    need_l = need_g / density_g_ml / ML_PER_L
    working = (
        *on_wall,
        kept,
        *kits,
        step("need_g", "{wall_g} + {kept_g} + {kit_g}", need_g, MODEL, **parts),
        step("need_l", "{need_g} ÷ {density_g_ml} ÷ 1000", need_l, DEFINITION, **of_mass),
    )
    return Need(wall_g, kept.value, kit_g, need_g, need_l, working)


def require_coats(coats: Coats) -> None:
    """Refuse coats that nobody paints.

    Parameters
    ----------
    coats
        Up to 1000 patches of 0 to 100 000 m² and 1 to 20 coats; 0.1 to 100 000 g/m².

    >>> require_coats(Coats((Patch(14.28, 3),), 116.4))
    """
    require("patches_count", len(coats.patches), *PATCHES_COUNT)
    require("g_m2", coats.g_m2, *G_M2)
    for patch in coats.patches:
        require("area_m2", patch.area_m2, *AREA_M2)
        require("coats_count", patch.coats_count, *COATS_COUNT)


def _wall(coats: Coats) -> Working:
    if len(coats.patches) == 1:
        (patch,) = coats.patches
        wall_g = patch.area_m2 * coats.g_m2 * patch.coats_count
        inputs = {"area_m2": patch.area_m2, "rate_g_m2": coats.g_m2}
        inputs["coats_count"] = patch.coats_count
        formula = "{area_m2} × {rate_g_m2} × {coats_count}"
        return (step("wall_g", formula, wall_g, ON_THE_WALL, **inputs),)
    each: dict[str, float] = {}
    terms: list[str] = []
    for i, patch in enumerate(coats.patches, 1):
        each |= {f"area_{i}_m2": patch.area_m2, f"coats_{i}_count": patch.coats_count}
        terms.append(f"{{area_{i}_m2}} × {{coats_{i}_count}}")
    coated_m2 = sum(patch.area_m2 * patch.coats_count for patch in coats.patches)
    wall_g = coated_m2 * coats.g_m2
    grams = {"coated_m2": coated_m2, "rate_g_m2": coats.g_m2}
    return (
        step("coated_m2", " + ".join(terms) or "0", coated_m2, ON_THE_WALL, **each),
        step("wall_g", "{coated_m2} × {rate_g_m2}", wall_g, ON_THE_WALL, **grams),
    )


def _kept(hold_ups: tuple[HoldUp, ...]) -> Step:
    require("hold_ups_count", len(hold_ups), *LOSSES_COUNT)
    inputs: dict[str, float] = {}
    terms: list[str] = []
    for i, one in enumerate(hold_ups, 1):
        require("hold_up_g", one.hold_up_g, *HOLD_UP_G)
        require("wettings_count", one.wettings_count, *WETTINGS_COUNT)
        inputs |= {f"wettings_{i}_count": one.wettings_count, f"hold_up_{i}_g": one.hold_up_g}
        terms.append(f"{{wettings_{i}_count}} × {{hold_up_{i}_g}}")
    kept_g = sum(one.wettings_count * one.hold_up_g for one in hold_ups)
    return step("kept_g", " + ".join(terms) or "0", kept_g, KEPT, **inputs)


def _kit(coats: Coats, kit: Kit | None) -> Working:
    if kit is None:
        return ()
    require("share_ratio", kit.share_ratio, 0.0, 1.0)
    require("least_m2", kit.least_m2, 0.0, 100.0)
    require("cling_g", kit.cling_g, *HOLD_UP_G)
    area_m2 = sum(patch.area_m2 for patch in coats.patches)
    kit_m2 = max(kit.share_ratio * area_m2, kit.least_m2)
    kit_g = kit_m2 * coats.g_m2 + kit.cling_g
    share = {"share_ratio": kit.share_ratio, "area_m2": area_m2, "least_m2": kit.least_m2}
    grams = {"kit_m2": kit_m2, "rate_g_m2": coats.g_m2, "cling_g": kit.cling_g}
    return (
        step("kit_m2", "max({share_ratio} × {area_m2}, {least_m2})", kit_m2, MODEL, **share),
        step("kit_g", "{kit_m2} × {rate_g_m2} + {cling_g}", kit_g, MODEL, **grams),
    )
