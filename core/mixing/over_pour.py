"""Too much in the cup: make more, keep it, or tip it out, each with its cost."""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import FACTOR_RATIO, Plan, Pour
from core.mixing.portions import Portion
from core.mixing.weigh_out import over
from core.working import Step, Working, step

PRICE_PER_G = 0.0, 1e6  # in any money, minor units or not
CAPACITY_G = 0.0, 1e6
LEAST = "the least batch that holds the ratio: algebra, no published source"
DEFINITION = "definition of the mass fraction, ISO 80000-9"


@dataclass(frozen=True, slots=True)
class _Share:
    """One portion beside what is in the cup of its paint."""

    paint: str
    portion_g: float
    in_cup_g: float
    price_per_g: float | None
    kept: bool


@dataclass(frozen=True, slots=True)
class Make:
    """Make a bigger batch of the same colour.

    `factor_ratio` is to the plan's portions; `adds` are all of them, with 0 g where nothing is
    missing. `extra_price` is None where a price is unknown.
    """

    factor_ratio: float
    total_g: float
    adds: tuple[Portion, ...]
    extra_g: float
    extra_price: float | None
    fits: bool
    working: Working


@dataclass(frozen=True, slots=True)
class Keep:
    """Keep it as it is: this paint is more of the mix than planned."""

    paint: str
    share_ratio: float
    planned_ratio: float
    total_g: float
    working: Working


@dataclass(frozen=True, slots=True)
class Tip:
    """Tip it out and start again."""

    lost_g: float
    lost_price: float | None
    working: Working


@dataclass(frozen=True, slots=True)
class Answers:
    """The three answers; `best` is "make" or "tip", the cheaper that keeps the colour."""

    make: Make
    keep: Keep
    tip: Tip
    best: str

    @property
    def working(self) -> Working:
        """Put the three workings one after the other."""
        return self.make.working + self.keep.working + self.tip.working


def answers(
    plan: Plan,
    poured: tuple[Pour, ...],
    prices_per_g: tuple[float | None, ...],
    capacity_g: float | None,
    kept: tuple[str, ...] = (),
) -> Answers:
    """Find what each answer to an over-pour costs.

    Parameters
    ----------
    plan
        As for the weigh-out.
    poured
        What is in the cup; at least one paint of it over its band.
    prices_per_g
        One a portion, 0 to 1 000 000 a gram, None where unknown.
    capacity_g
        What the cup and the scale hold, g of paint, 0 to 1 000 000; None if unknown.
    kept
        Paints whose over-pour was kept before: they need no bigger batch.

    Returns
    -------
        Masses in g; prices in the money of `prices_per_g`. Make and tip are compared by price
        where all are known, else by mass; a batch that does not fit, or is over 100 times the
        plan's portions, is never the best.

    Source: over-pour, algebra: a batch s times the plan holds the ratio if s × portion covers
    what is in the cup of each, so the least s is the largest of poured / portion.

    >>> ember = Plan((Portion("FY", 19.3), Portion("FO", 58.0), Portion("CM", 154.7)))
    >>> three = answers(ember, (Pour("FY", 19.3), Pour("FO", 62.6)), (None, None, None), 300.0)
    >>> round(three.make.total_g, 1), round(three.keep.share_ratio, 4), three.tip.lost_g, three.best
    (250.4, 0.2646, 81.9, 'make')
    """
    too_much = over(plan, poured, kept)
    if too_much is None:
        raise Refused("over_g", 0.0, plan.scale_step_g, sum(p.net_g for p in plan.portions))
    require("prices_count", len(prices_per_g), len(plan.portions), len(plan.portions))
    for price in prices_per_g:
        require("price_per_g", price or 0.0, *PRICE_PER_G)
    if capacity_g is not None:
        require("capacity_g", capacity_g, *CAPACITY_G)
    shares = tuple(
        _Share(
            portion.paint,
            portion.net_g,
            sum((pour.net_g for pour in poured if pour.paint == portion.paint), 0.0),
            price,
            portion.paint in kept,
        )
        for portion, price in zip(plan.portions, prices_per_g, strict=True)
    )
    make, tip = _make(shares, plan.factor_ratio, capacity_g), _tip(shares)
    keep = _keep(shares[too_much.index], shares, plan.factor_ratio)
    return Answers(make, keep, tip, _best(make, tip))


def _make(shares: tuple[_Share, ...], factor_ratio: float, capacity_g: float | None) -> Make:
    most = max((s for s in shares if not s.kept), key=lambda s: s.in_cup_g / s.portion_g)
    bigger_ratio = most.in_cup_g / most.portion_g
    adds_g = tuple(max(bigger_ratio * s.portion_g - s.in_cup_g, 0.0) for s in shares)
    planned_g = tuple(_planned_g(s, factor_ratio) for s in shares)
    in_all_g = tuple(s.in_cup_g + add_g for s, add_g in zip(shares, adds_g, strict=True))
    extras_g = tuple(all_g - plan_g for all_g, plan_g in zip(in_all_g, planned_g, strict=True))
    total_g, worth = sum(in_all_g), _worth("extra_price", shares, extras_g)
    by = {"part_in_cup_g": most.in_cup_g, "portion_g": most.portion_g}
    sums = {"in_cup_g": sum(s.in_cup_g for s in shares), "adds_g": sum(adds_g)}
    beyond = {"total_g": total_g, "planned_g": sum(planned_g)}
    working = (
        step("factor_ratio", "{part_in_cup_g} ÷ {portion_g}", bigger_ratio, LEAST, **by),
        *(_add(bigger_ratio, s, add_g) for s, add_g in zip(shares, adds_g, strict=True)),
        step("total_g", "{in_cup_g} + {adds_g}", total_g, LEAST, **sums),
        step("extra_g", "{total_g} − {planned_g}", sum(extras_g), LEAST, **beyond),
        *worth,
    )
    return Make(
        bigger_ratio,
        total_g,
        tuple(Portion(s.paint, add_g) for s, add_g in zip(shares, adds_g, strict=True)),
        sum(extras_g),
        worth[0].value if worth else None,
        (capacity_g is None or total_g <= capacity_g) and bigger_ratio <= FACTOR_RATIO[1],
        working,
    )


def _add(factor_ratio: float, share: _Share, add_g: float) -> Step:
    formula = "max({factor_ratio} × {portion_g} − {part_in_cup_g}, 0)"
    inputs = {"portion_g": share.portion_g, "part_in_cup_g": share.in_cup_g}
    return step("add_g", formula, add_g, LEAST, factor_ratio=factor_ratio, **inputs)


def _planned_g(share: _Share, factor_ratio: float) -> float:
    """Find what was to be in the cup at last: what was kept over counts as planned."""
    target_g = share.portion_g * factor_ratio
    return max(target_g, share.in_cup_g) if share.kept else target_g


def _keep(worst: _Share, shares: tuple[_Share, ...], factor_ratio: float) -> Keep:
    """Find the share if the rest is poured to its mark."""
    in_all_g = sum(max(s.portion_g * factor_ratio, s.in_cup_g) for s in shares)
    share_ratio = worst.in_cup_g / in_all_g
    portions_g = sum(s.portion_g for s in shares)
    planned_ratio = worst.portion_g / portions_g
    now = {"part_in_cup_g": worst.in_cup_g, "total_g": in_all_g}
    before = {"portion_g": worst.portion_g, "portions_g": portions_g}
    working = (
        step("planned_ratio", "{portion_g} ÷ {portions_g}", planned_ratio, DEFINITION, **before),
        step("share_ratio", "{part_in_cup_g} ÷ {total_g}", share_ratio, DEFINITION, **now),
    )
    return Keep(worst.paint, share_ratio, planned_ratio, in_all_g, working)


def _tip(shares: tuple[_Share, ...]) -> Tip:
    parts_g = tuple(s.in_cup_g for s in shares)
    names = tuple(f"part_{i}_g" for i in range(1, len(parts_g) + 1))
    formula = " + ".join(f"{{{name}}}" for name in names)
    lost = Step("lost_g", formula, tuple(zip(names, parts_g, strict=True)), sum(parts_g), LEAST)
    worth = _worth("lost_price", shares, parts_g)
    price = worth[0].value if worth else None
    return Tip(round(sum(parts_g), 6), price, (lost, *worth))


def _worth(name: str, shares: tuple[_Share, ...], masses_g: tuple[float, ...]) -> Working:
    """Find what masses are worth: one step, or none if a price is missing that is needed."""
    needed = [(s, mass_g) for s, mass_g in zip(shares, masses_g, strict=True) if mass_g]
    if any(s.price_per_g is None for s, _ in needed):
        return ()
    inputs: dict[str, float] = {}
    terms: list[str] = []
    for i, (share, mass_g) in enumerate(needed, 1):
        inputs |= {f"part_{i}_g": mass_g, f"price_{i}_per_g": share.price_per_g or 0.0}
        terms.append(f"{{part_{i}_g}} × {{price_{i}_per_g}}")
    value = sum(mass_g * (share.price_per_g or 0.0) for share, mass_g in needed)
    return (step(name, " + ".join(terms) or "0", value, "the prices of the cans", **inputs),)


def _best(make: Make, tip: Tip) -> str:
    """Choose the cheaper of the two that keep the colour."""
    if not make.fits:
        return "tip"
    if make.extra_price is None or tip.lost_price is None:
        return "make" if make.extra_g <= tip.lost_g else "tip"
    return "make" if make.extra_price <= tip.lost_price else "tip"
