"""How much of everything: of each paint for the whole job, and which cans to buy."""

from dataclasses import dataclass

from core.cans.buying import Basket, basket
from core.coats.schedule import PlannedStep
from core.errors import Refused
from core.paints.blend import ML_PER_L
from core.paints.recipe import shares
from mobile.session.cans.can import cans_now
from mobile.session.coats.standing import job_coats
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.to_weigh import amount_or_none
from mobile.session.walls.rates import USUAL_DENSITY_G_ML
from mobile.session.walls.walls import place_area_m2
from mobile.store.records import Paint

USES_MIXED = ("promoter", "base", "glaze", "opaque", "clear")


@dataclass(frozen=True, slots=True)
class Wanted:
    """So much of a paint for all mixes of the job; the cans for it, None where no size is known."""

    paint: Paint
    net_g: float
    volume_l: float
    basket: Basket | None


def wanted(known: Known) -> tuple[Wanted, ...]:
    """Sum what the mixes of the job need of each paint, in the order of the mixes."""
    grams: dict[str, float] = {}
    for mix in known.job_mixes:
        amount = amount_or_none(known, mix)
        if amount is None:
            continue
        for part, share_ratio in zip(mix.parts, shares(mix.parts), strict=True):
            grams[part.paint] = grams.get(part.paint, 0.0) + share_ratio * amount.need.need_g
    return tuple(_wanted(known, paint, net_g) for paint, net_g in grams.items() if net_g)


def _wanted(known: Known, paint_id: str, net_g: float) -> Wanted:
    paint = paint_of(known, paint_id)
    volume_l = net_g / (paint.density_g_ml or USUAL_DENSITY_G_ML) / ML_PER_L
    return Wanted(paint, net_g, volume_l, _basket(known, paint, volume_l))


def _basket(known: Known, paint: Paint, volume_l: float) -> Basket | None:
    if not paint.sizes:
        return None
    try:
        return basket(volume_l, paint.sizes, known.settings.margin_ratio)
    except Refused:
        return None


def price_of_all(several: tuple[Wanted, ...]) -> float | None:
    """Sum the prices; None while one is unknown."""
    prices = [one.basket.price if one.basket else None for one in several]
    known = [price for price in prices if price is not None]
    return sum(known) if known and len(known) == len(prices) else None


@dataclass(frozen=True, slots=True)
class OnStep:
    """What one step puts on the wall of one mix, tools and cups not counted."""

    step: str
    mix: str
    mix_id: str
    coated_m2: float
    wall_g: float
    assumed: bool  # what a coat takes is the usual


def on_steps(known: Known) -> tuple[OnStep, ...]:
    """Give, step by step, what each mix takes on its walls and zones."""
    told: list[OnStep] = []
    for step in known.job.steps if known.job else ():
        coated = _coated_m2(known, step)
        told += [
            OnStep(
                step.name,
                mix.name,
                mix.id,
                coated[mix.id],
                coated[mix.id] * amount.rate.g_m2,
                "rate" in amount.stands_in,
            )
            for mix in known.job_mixes
            if mix.id in coated and (amount := amount_or_none(known, mix))
        ]
    return tuple(told)


def _coated_m2(known: Known, step: PlannedStep) -> dict[str, float]:
    """Find the m² times coats that a step gives each mix."""
    zones = {zone.id: zone for zone in known.job_zones}
    found: dict[str, float] = {}
    for coat in job_coats(known):
        if coat.step != step.id:
            continue
        zone = zones.get(coat.place)
        whole = (
            mix.id
            for mix in known.job_mixes
            if mix.use == step.use and (not mix.walls or coat.wall in mix.walls)
        )
        for mix_id in [zone.mix] if zone else whole:
            area_m2 = place_area_m2(known, coat.place) * coat.coats_count
            found[mix_id] = found.get(mix_id, 0.0) + area_m2
    return found


def unmixed(known: Known) -> tuple[str, ...]:
    """Name the steps that put a mix on the walls and have none yet: their paint is not counted."""
    have = {one.step for one in on_steps(known)}
    steps = known.job.steps if known.job else ()
    return tuple(step.name for step in steps if step.use in USES_MIXED and step.name not in have)


def assumed(known: Known, paint: Paint) -> bool:
    """Tell whether the grams of a paint rest on something that nobody said yet."""
    told = [(mix, amount_or_none(known, mix)) for mix in known.job_mixes]
    return any(
        amount.stands_in
        for mix, amount in told
        if amount and any(part.paint == paint.id for part in mix.parts)
    )


def on_shelf_g(known: Known, paint: Paint) -> float | None:
    """Give what the cans of a paint should hold; None where none was weighed."""
    held = [now.balance.should_be_g for now in cans_now(known) if now.can.paint == paint.id]
    told = [max(0.0, net_g) for net_g in held if net_g is not None]
    return sum(told) if told else None
