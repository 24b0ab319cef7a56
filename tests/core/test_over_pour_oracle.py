"""The bigger batch against a linear programme: no exact batch with less paint exists."""

import random

import pytest

linprog = pytest.importorskip("scipy.optimize").linprog

from core.mixing.limit import most_in_cup_g  # noqa: E402
from core.mixing.over_pour import answers  # noqa: E402
from core.mixing.plan import Plan, Pour  # noqa: E402
from core.mixing.portions import Portion  # noqa: E402
from core.mixing.weigh_out import over  # noqa: E402

SAME_G = 1e-6  # the solver's own tolerance, on batches of up to 3 kg


def least_total_g(portions_g: list[float], in_cup_g: list[float]) -> float:
    """Find the least total of a batch that holds the ratio and what is in the cup.

    Unknowns: the factor, then what to add of each; add = factor x portion - in the cup >= 0.
    """
    count = len(portions_g)
    equal = [
        [portion, *(-1.0 if i == j else 0.0 for j in range(count))]
        for i, portion in enumerate(portions_g)
    ]
    found = linprog([0.0, *[1.0] * count], A_eq=equal, b_eq=in_cup_g)  # least added paint
    assert found.status == 0
    return float(found.fun + sum(in_cup_g))


def test_no_exact_batch_is_smaller() -> None:
    chance = random.Random(1)
    compared = 0
    for _ in range(300):
        portions_g = [round(chance.uniform(2, 600), 1) for _ in range(chance.randint(1, 5))]
        in_cup_g = [round(p * chance.choice((0, 0.4, 1, 1, 1.3)), 1) for p in portions_g]
        plan = Plan(tuple(Portion(str(i), p) for i, p in enumerate(portions_g)))
        poured = tuple(Pour(str(i), g) for i, g in enumerate(in_cup_g) if g)
        if over(plan, poured) is None:
            continue
        compared += 1
        make = answers(plan, poured, (None,) * len(portions_g), None).make
        assert make.total_g == pytest.approx(least_total_g(portions_g, in_cup_g), abs=SAME_G)
    assert compared > 100


def test_no_larger_batch_of_the_ratio_comes_out_of_the_cans() -> None:
    """Unknown is the factor: factor x portion <= in the cup + in the can, as large as can be."""
    chance = random.Random(2)
    for _ in range(200):
        portions_g = [round(chance.uniform(2, 600), 1) for _ in range(chance.randint(1, 5))]
        in_cup_g = [round(p * chance.choice((0, 0.4, 1, 1.3)), 1) for p in portions_g]
        has_g = [round(p * chance.uniform(0, 3), 1) for p in portions_g]
        plan = Plan(tuple(Portion(str(i), p) for i, p in enumerate(portions_g)))
        poured = tuple(Pour(str(i), g) for i, g in enumerate(in_cup_g) if g)
        there = [cup + can for cup, can in zip(in_cup_g, has_g, strict=True)]
        found = linprog([-1.0], A_ub=[[p] for p in portions_g], b_ub=there)
        assert found.status == 0
        in_all = (max(found.x[0] * p, g) for p, g in zip(portions_g, in_cup_g, strict=True))
        assert most_in_cup_g(plan, poured, tuple(has_g)) == pytest.approx(sum(in_all), abs=SAME_G)
