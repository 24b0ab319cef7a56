"""What a gram of each paint is worth, as far as its sizes have prices."""

from core.cans.price import worth
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.store.pot import Pot
from mobile.store.records import Paint


def price_per_g(paint: Paint) -> float | None:
    """Give the price of a gram in minor units; None while a price or the density is unknown."""
    if paint.density_g_ml is None or all(size.price is None for size in paint.sizes):
        return None
    return worth(paint.sizes, paint.density_g_ml).price_per_g


def prices_per_g(known: Known, pot: Pot) -> tuple[float | None, ...]:
    """Give the price of a gram of each part of a pot, in pouring order."""
    return tuple(price_per_g(paint_of(known, one.paint)) for one in pot.plan.portions)
