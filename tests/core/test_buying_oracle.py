"""Which cans to buy, against an integer programme (SciPy's `milp`, HiGHS)."""

from random import Random

import pytest

optimize = pytest.importorskip("scipy.optimize")

from core.cans.buying import basket  # noqa: E402
from core.cans.price import Size  # noqa: E402

CASES = 150


def test_no_cheaper_set_of_cans_holds_the_need() -> None:
    chance = Random(19)
    for _ in range(CASES):
        litres = sorted(chance.sample((0.25, 0.5, 0.75, 1.0, 2.5, 5.0, 10.0), chance.randint(1, 4)))
        prices = [round(size * chance.uniform(1500, 6000)) for size in litres]
        need_l = chance.uniform(0.01, 12 * max(litres))  # more is only slower
        ours = basket(need_l, tuple(map(Size, litres, map(float, prices))))
        bound = optimize.LinearConstraint([litres], lb=need_l * 1.05)
        theirs = optimize.milp(prices, constraints=bound, integrality=[1] * len(litres))
        assert ours.price == pytest.approx(theirs.fun, abs=0.5)
        assert ours.holds_l >= need_l * 1.05 - 1e-9
