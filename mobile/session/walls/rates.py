"""What one coat of a mix takes: as typed, off its label, or the usual while nobody said."""

from dataclasses import dataclass

from core.coats.rate import Rate, rate_of_film, rate_of_spreading
from core.paints.blend import Blend, blend, solids
from core.working import step
from mobile.store.records import Mix, Paint

# What stands in while nobody said: common practice, no published source.
USUAL_G_M2 = {"promoter": 100.0, "base": 115.0, "glaze": 55.0, "opaque": 115.0, "clear": 100.0}
USUAL_DENSITY_G_ML = 1.1
USUAL_SOLIDS_RATIO = 0.35
USUAL = "common practice, no published source"
TYPED, LABEL = "typed", "the label"


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A mix as one paint, what a coat of it takes; `stands_in` names what nobody said yet."""

    blend: Blend
    rate: Rate
    stands_in: tuple[str, ...]


def rate_of(mix: Mix, paints: tuple[Paint, ...]) -> Reckoned:
    """Find what a coat of a mix takes; raise `Refused` if it can't be."""
    densities = tuple(paint.density_g_ml or USUAL_DENSITY_G_ML for paint in paints)
    lacking = ("density",) if any(paint.density_g_ml is None for paint in paints) else ()
    one = blend(mix.parts, densities, 0.0)
    if mix.g_m2 is not None:
        return Reckoned(one, _said(mix.g_m2, TYPED), lacking)
    if mix.dft_um is not None:
        rate, more = _of_film(mix, mix.dft_um, paints, densities, one)
        return Reckoned(one, rate, (*lacking, *more))
    spread_m2_l = mix.spread_m2_l or (paints[0].spread_m2_l if len(paints) == 1 else None)
    if spread_m2_l is not None:
        rate = rate_of_spreading(spread_m2_l, one.density_g_ml, mix.loss_ratio)
        return Reckoned(one, rate, lacking)
    label_g_m2 = paints[0].g_m2 if len(paints) == 1 else None
    usual = _said(USUAL_G_M2[mix.use], USUAL)
    rate = usual if label_g_m2 is None else _said(label_g_m2, LABEL)
    return Reckoned(one, rate, (*lacking, *(["rate"] if rate == usual else [])))


def _of_film(
    mix: Mix, dft_um: float, paints: tuple[Paint, ...], densities: tuple[float, ...], one: Blend
) -> tuple[Rate, tuple[str, ...]]:
    ratios = tuple(paint.solids_ratio or USUAL_SOLIDS_RATIO for paint in paints)
    lacking = ("solids",) if any(paint.solids_ratio is None for paint in paints) else ()
    mixed = solids(mix.parts, densities, ratios)
    film = rate_of_film(dft_um, one.density_g_ml, mixed.solids_ratio, mix.loss_ratio)
    return Rate(film.g_m2, (*mixed.working, *film.working)), lacking


def _said(g_m2: float, source: str) -> Rate:
    return Rate(g_m2, (step("rate_g_m2", "{said_g_m2}", g_m2, source, said_g_m2=g_m2),))
