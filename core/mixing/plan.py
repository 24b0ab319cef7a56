"""What is to be in a cup, and what went into it."""

from dataclasses import dataclass
from itertools import takewhile

from core.errors import Refused, require
from core.mixing.portions import Portion
from core.mixing.scale import BAND_RATIO, READING_G, SCALE_STEP_G, band_g

FACTOR_RATIO = 1.0, 100.0  # an over-pour only ever makes a batch bigger
NET_G = 0.0, 1e5
PORTIONS_COUNT = 1, 24
TOTAL, EACH, CAN = WAYS = "total", "each", "can"
HAIR_G = 1e-12  # more than nothing
DUST_G = 1e-6  # sums of decimal readings are off by less; no scale shows as little


@dataclass(frozen=True, slots=True)
class Pour:
    """So many grams of one paint went into the cup."""

    paint: str
    net_g: float


@dataclass(frozen=True, slots=True)
class Plan:
    """What is to be in the cup: portions in pouring order, all times `factor_ratio`.

    `offset_g` is what the scale reads before anything is poured: 0 for a tared cup, and less than
    0 by what was in it as it was tared again. `way` says what the scale shows: the running "total"
    in the cup; "each" part alone, tared before it; or the "can" that is poured from, tared before
    it, so that it reads less than nothing.
    `parts_band_ratio` holds one share a portion; none are 1 % each.
    """

    portions: tuple[Portion, ...]
    factor_ratio: float = 1.0
    scale_step_g: float = 0.1
    offset_g: float = 0.0
    way: str = TOTAL
    parts_band_ratio: tuple[float, ...] = ()


def each_in_cup_g(plan: Plan, poured: tuple[Pour, ...]) -> tuple[float, ...]:
    """Find how much of each portion's paint is in the cup; refuse what nobody can weigh out.

    Parameters
    ----------
    plan
        1 to 24 different paints, each a step of the scale or more, or with some of it in already
        (what is left of a small part needs no pour); factor 1 to 100; step 0.01 to 10 g; offset
        -100 000 to 100 000 g; one of the three ways; no bands or one a portion.
    poured
        What went into the cup so far, each 0 to 100 000 g; only paints of the plan.

    Returns
    -------
        Net mass, g, one a portion.

    Source: conservation of mass.

    >>> each_in_cup_g(Plan((Portion("yellow", 19.3),)), (Pour("yellow", 9.0), Pour("yellow", 1.0)))
    (10.0,)
    """
    paints = [portion.paint for portion in plan.portions]
    require("portions_count", len(paints), *PORTIONS_COUNT)
    require("different_paints_count", len(set(paints)), len(paints), len(paints))
    require("factor_ratio", plan.factor_ratio, *FACTOR_RATIO)
    require("offset_g", plan.offset_g, *READING_G)
    require("scale_step_g", plan.scale_step_g, *SCALE_STEP_G)
    if plan.way not in WAYS:
        raise Refused("way", plan.way, 0, len(WAYS))
    if plan.parts_band_ratio:
        require("bands_count", len(plan.parts_band_ratio), len(paints), len(paints))
        for band_ratio in plan.parts_band_ratio:
            require("band_ratio", band_ratio, 0.0, 1.0)
    for pour in poured:
        require("net_g", pour.net_g, *NET_G)
    inside = {pour.paint for pour in poured if pour.net_g}
    for portion in plan.portions:
        least_g = HAIR_G if portion.paint in inside else plan.scale_step_g - DUST_G
        require("portion_g", portion.net_g, least_g, NET_G[1])
    strays = sum(pour.paint not in paints for pour in poured)
    require("unplanned_paints_count", strays, 0, 0)
    return tuple(sum((p.net_g for p in poured if p.paint == paint), 0.0) for paint in paints)


def since_tare_g(plan: Plan, poured: tuple[Pour, ...], paint: str) -> float:
    """Find what went in of the part under way since the tare, where each part is tared.

    Nobody tares in the middle of a part, but for what makes it needed: a pot put back, a scale
    that went off, a wrong can, a spill. The plan's offset tells what was in by then.

    Parameters
    ----------
    plan
        For its offset; as for `each_in_cup_g`.
    poured
        What went into the cup so far.
    paint
        The paint of the part under way.

    Returns
    -------
        What went in of it last, without another paint between and since the tare, g, 0 or more.

    Source: weighing part by part, common practice, no published source.

    >>> one = Plan((Portion("yellow", 58.0),), offset_g=-30.0, way=EACH)
    >>> since_tare_g(one, (Pour("yellow", 30.0), Pour("yellow", 8.0)), "yellow")
    8.0
    """
    all_g = sum(each_in_cup_g(plan, poured))
    run = takewhile(lambda pour: pour.paint == paint, reversed(poured))
    run_g = sum(pour.net_g for pour in run)
    return max(0.0, round(min(run_g, plan.offset_g + all_g), 6))  # sums leave binary dust


def targets_g(plan: Plan) -> tuple[float, ...]:
    """Find what each portion is to weigh in the end.

    Parameters
    ----------
    plan
        1 to 24 portions and a factor of 1 to 100.

    Returns
    -------
        g, one a portion.

    Source: the recipe.

    >>> targets_g(Plan((Portion("yellow", 20.0),), factor_ratio=1.5))
    (30.0,)
    """
    require("factor_ratio", plan.factor_ratio, *FACTOR_RATIO)
    return tuple(portion.net_g * plan.factor_ratio for portion in plan.portions)


def band_of_g(plan: Plan, index: int) -> float:
    """Find how far off its mark a portion may be.

    Parameters
    ----------
    plan
        1 to 24 portions.
    index
        Which one.

    Returns
    -------
        g either way, on the scale's step.

    Source: the plan's band of that part; 1 % without one, common practice, no published source.

    >>> band_of_g(Plan((Portion("yellow", 58.0),)), 0)
    0.6
    """
    band_ratio = plan.parts_band_ratio[index] if plan.parts_band_ratio else BAND_RATIO
    return band_g(targets_g(plan)[index], plan.scale_step_g, band_ratio)
