"""What a gram of a paint is worth, from the sizes of can that it is sold in."""

from dataclasses import dataclass

from core.errors import require
from core.paints.blend import DENSITY_G_ML, ML_PER_L
from core.working import Working, step

SIZES_COUNT = 1, 20
SIZE_L = 0.001, 1000.0
PRICE = 0.0, 1e9
CHEAPEST = "this project"


@dataclass(frozen=True, slots=True)
class Size:
    """A can as it is sold: litres on the label, its price in any one currency's smallest unit.

    The price is None while nobody said.
    """

    label_l: float
    price: float | None = None


@dataclass(frozen=True, slots=True)
class Worth:
    """What a gram is worth, in the unit of the prices."""

    price_per_g: float
    working: Working


def worth(sizes: tuple[Size, ...], density_g_ml: float) -> Worth:
    """Find what a gram is worth at the size that is cheapest by the litre.

    Parameters
    ----------
    sizes
        1 to 20 sizes, 0.001 to 1000 L, prices 0 to 1e9, one of them at least with a price.
    density_g_ml
        Of the paint, g/mL, 0.5 to 3.

    Returns
    -------
        The price of a gram, with its working.

    Source: this project's planning model: what is spoilt is replaced at the best price.

    >>> round(worth((Size(0.25, 1480.0), Size(1.0, 4700.0)), 1.14).price_per_g, 4)
    4.1228
    """
    require_sizes(sizes)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    priced = [(size.label_l, size.price) for size in sizes if size.price is not None]
    require("priced_sizes_count", len(priced), *SIZES_COUNT)
    label_l, price = min(priced, key=lambda one: one[1] / one[0])
    price_per_g = price / label_l / density_g_ml / ML_PER_L
    inputs = {"price": price, "label_l": label_l, "density_g_ml": density_g_ml}
    formula = "{price} ÷ {label_l} ÷ {density_g_ml} ÷ 1000"
    return Worth(price_per_g, (step("price_per_g", formula, price_per_g, CHEAPEST, **inputs),))


def require_sizes(sizes: tuple[Size, ...]) -> None:
    """Refuse sizes that no can is sold in.

    Parameters
    ----------
    sizes
        1 to 20 sizes, 0.001 to 1000 L, prices 0 to 1e9.

    >>> require_sizes((Size(0.25, 1480.0), Size(1.0)))
    """
    require("sizes_count", len(sizes), *SIZES_COUNT)
    for size in sizes:
        require("size_l", size.label_l, *SIZE_L)
        require("price", size.price or 0.0, *PRICE)
