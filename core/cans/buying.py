"""Which cans to buy for what is needed: the cheapest set of sizes that holds it."""

from dataclasses import dataclass
from math import ceil

from core.cans.price import Size, require_sizes
from core.errors import require
from core.working import Step, Working, step

NEED_L = 0.0, 1e4
MARGIN_RATIO = 0.0, 1.0
SIZES_COUNT = 1, 4  # each more makes the search many times longer
CANS_COUNT = 0, 80  # of the smallest size: more is bought by the bucket
HAIR_L = 1e-9  # less than a drop: sums of litres in binary
LEAST = "this project"


@dataclass(frozen=True, slots=True)
class Basket:
    """How many cans of each size, in the order given; their price, None where one has none.

    `spare_l` is what they hold above the need, the margin not counted.
    """

    counts: tuple[int, ...]
    holds_l: float
    price: float | None
    spare_l: float
    working: Working


def basket(need_l: float, sizes: tuple[Size, ...], margin_ratio: float = 0.05) -> Basket:
    """Find the cheapest set of cans that holds a need and a margin.

    Parameters
    ----------
    need_l
        L, 0 to 10 000, with the margin no more than 80 of the largest can.
    sizes
        1 to 4 sizes, 0.001 to 1000 L. If one has no price, the set with the fewest litres is found.
    margin_ratio
        What is bought above the need, as a share of it, 0 to 1.

    Returns
    -------
        Of the cheapest sets the one with fewer litres, then with fewer cans.

    Source: this project's planning model; checked against an integer programme.

    >>> basket(2.625, (Size(1.0, 2400.0), Size(2.5, 5200.0), Size(5.0, 9600.0))).counts
    (3, 0, 0)
    """
    require("need_l", need_l, *NEED_L)
    require("margin_ratio", margin_ratio, *MARGIN_RATIO)
    require_sizes(sizes)
    require("sizes_count", len(sizes), *SIZES_COUNT)
    wanted_l = need_l * (1 + margin_ratio)
    require("cans_count", wanted_l / max(size.label_l for size in sizes), *CANS_COUNT)
    priced = all(size.price is not None for size in sizes)
    prices = tuple(size.price or 0.0 if priced else 0.0 for size in sizes)
    counts = min(_sets(wanted_l, sizes), key=lambda some: _cost(some, sizes, prices))
    holds_l = sum(n * size.label_l for n, size in zip(counts, sizes, strict=True))
    price = _cost(counts, sizes, prices)[0] if priced else None
    inputs = {"need_l": need_l, "margin_ratio": margin_ratio}
    margin = step("wanted_l", "{need_l} × (1 + {margin_ratio})", wanted_l, LEAST, **inputs)
    return Basket(counts, holds_l, price, holds_l - need_l, (margin, _held(counts, sizes, holds_l)))


def _sets(wanted_l: float, sizes: tuple[Size, ...]) -> list[tuple[int, ...]]:
    """List every set worth a look: the smallest size fills up what the larger ones leave."""
    small_first = sorted(range(len(sizes)), key=lambda i: sizes[i].label_l)
    found: list[dict[int, int]] = [{}]
    for i in reversed(small_first[1:]):
        found = [
            some | {i: n}
            for some in found
            for n in range(_fill(_left_l(some, sizes, wanted_l), sizes[i]) + 1)
        ]
    least = small_first[0]
    full = [some | {least: _fill(_left_l(some, sizes, wanted_l), sizes[least])} for some in found]
    return [tuple(some[i] for i in range(len(sizes))) for some in full]


def _left_l(some: dict[int, int], sizes: tuple[Size, ...], wanted_l: float) -> float:
    return wanted_l - sum(n * sizes[i].label_l for i, n in some.items())


def _fill(left_l: float, size: Size) -> int:
    return max(0, ceil((left_l - HAIR_L) / size.label_l))


def _cost(
    some: tuple[int, ...], sizes: tuple[Size, ...], prices: tuple[float, ...]
) -> tuple[float, float, int]:
    price = sum(n * one for n, one in zip(some, prices, strict=True))
    litres = sum(n * size.label_l for n, size in zip(some, sizes, strict=True))
    return price, round(litres, 9), sum(some)


def _held(counts: tuple[int, ...], sizes: tuple[Size, ...], holds_l: float) -> Step:
    inputs: dict[str, float] = {}
    terms: list[str] = []
    for i, (count, size) in enumerate(zip(counts, sizes, strict=True), 1):
        if count:
            inputs |= {f"cans_{i}_count": float(count), f"size_{i}_l": size.label_l}
            terms.append(f"{{cans_{i}_count}} × {{size_{i}_l}}")
    return step("holds_l", " + ".join(terms) or "0", holds_l, LEAST, **inputs)
