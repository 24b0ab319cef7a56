"""Splitting what a mix needs into loads that the scale carries."""

from dataclasses import dataclass
from math import ceil

from core.errors import require
from core.working import Working, step

NEED_G = 0.1, 1e6
CAPACITY_G = 1.0, 1e5
LOADS_COUNT = 1, 1000
WHOLE = "this project"
HAIR_G = 1e-9  # a sum of grams in binary may be a hair above the grams


@dataclass(frozen=True, slots=True)
class Loads:
    """So many loads of one size, in whole grams; `batch_g` is all of them together."""

    loads_count: int
    load_g: float
    batch_g: float
    working: Working


def loads(need_g: float, capacity_g: float) -> Loads:
    """Find the fewest loads of one size that the scale carries, none short of what is needed.

    Loads of one size close to one ratio each and match each other on the wall.

    Parameters
    ----------
    need_g
        What the coats need, g, 0.1 to 1 000 000.
    capacity_g
        What the scale takes of paint, g, 1 to 100 000: its capacity less the bucket.

    Returns
    -------
        How many, and how much each and all are, in whole grams.

    Source: this project's planning model.

    >>> boxed = loads(8967.7251, 5000.0)
    >>> boxed.loads_count, boxed.load_g, boxed.batch_g
    (2, 4484.0, 8968.0)
    """
    require("need_g", need_g, *NEED_G)
    require("capacity_g", capacity_g, *CAPACITY_G)
    whole_g = int(capacity_g)
    count = ceil((need_g - HAIR_G) / whole_g)
    require("loads_count", count, *LOADS_COUNT)
    load_g = float(ceil(need_g / count - HAIR_G))
    each = {"need_g": need_g, "loads_count": float(count)}
    all_of = {"loads_count": float(count), "load_g": load_g}
    working = (
        step("load_g", "⌈{need_g} ÷ {loads_count}⌉", load_g, WHOLE, **each),
        step("batch_g", "{loads_count} × {load_g}", count * load_g, WHOLE, **all_of),
    )
    return Loads(count, load_g, count * load_g, working)
