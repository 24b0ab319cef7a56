"""How high paints stand in a cup, for a drawing of it."""

from core.mixing.portions import Portion
from core.mixing.pot import Cup, holds_l, levels
from core.paints.blend import ML_PER_L
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of

# A 300 mL mixing cup, inside; others are drawn in its shape. Common practice, no published source.
CUP = Cup(bottom_m=0.068, top_m=0.084, height_m=0.066)
CUPS_L = (0.1, 0.3, 0.6, 1.0, 2.5, 5.0, 10.0, 20.0, 30.0, 60.0, 125.0, 250.0)
FULL_RATIO = 0.8  # room to stir
DENSITY_G_ML = 1.1  # for a drawing, where a paint's own is not known


def cup_for(volume_l: float) -> Cup:
    """Choose the smallest of the usual cups that leaves room to stir."""
    fitting = (size_l for size_l in CUPS_L if volume_l <= FULL_RATIO * size_l)
    scale = (next(fitting, 2 * volume_l) / holds_l(CUP)) ** (1 / 3)
    return Cup(CUP.bottom_m * scale, CUP.top_m * scale, CUP.height_m * scale)


def tops_ratio(known: Known, parts: tuple[Portion, ...], room_l: float = 0.0) -> tuple[float, ...]:
    """Find how high each part stands in a cup that holds them all, and `room_l` if that is more."""
    densities = densities_g_ml(known, parts)
    cup = cup_for(max(volume_l(known, parts), room_l))
    return levels(parts, densities, cup).tops_ratio if parts else ()


def densities_g_ml(known: Known, parts: tuple[Portion, ...]) -> tuple[float, ...]:
    """Give each part's density, or a usual one where nobody knows it."""
    return tuple(paint_of(known, part.paint).density_g_ml or DENSITY_G_ML for part in parts)


def volume_l(known: Known, parts: tuple[Portion, ...]) -> float:
    """Find the volume of parts, for a drawing of it."""
    densities = densities_g_ml(known, parts)
    return sum(p.net_g / d for p, d in zip(parts, densities, strict=True)) / ML_PER_L
