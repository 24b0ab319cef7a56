"""Mass is conserved: what left the cans is in the pots, within what the scales can show."""

from dataclasses import dataclass
from random import Random

import pytest

from core.cans.ledger import balance, doubt, gap
from core.mixing.plan import Plan, Pour
from core.mixing.portions import portions, pouring_order
from core.mixing.pot import total_g
from core.mixing.scale import shown_g
from core.mixing.weigh_out import next_pour, poured_g
from core.paints.recipe import Part

JOBS = 1000
PAINTS = "orange", "yellow", "pink", "medium"
STEPS_G = 0.01, 0.1, 1.0


@dataclass
class Can:
    """What is really in a can, and what its ledger was told."""

    holds_g: float
    weighed_g: float
    logged_g: tuple[float, ...] = ()


def poured_pot(chance: Random, cans: dict[str, Can], step_g: float) -> tuple[float, float, int]:
    """Weigh a pot out by readings; return what is really in it, what was logged, the readings."""
    paints = chance.sample(PAINTS, chance.randint(1, 4))
    parts = tuple(Part(paint, chance.choice((1.0, 2.0, 3.0, 8.0))) for paint in paints)
    batch_g = shown_g(chance.uniform(50, 400), step_g)
    order = pouring_order(portions(parts, batch_g, step_g), batch_g)
    plan, really_g = Plan(order, 1.0, step_g), 0.0
    poured: tuple[Pour, ...] = ()
    while target := next_pour(plan, poured):
        slip_g = chance.gauss(0, 0.3 * target.band_g)
        shot_g = max(target.net_g + slip_g, step_g)
        really_g += shot_g
        cans[target.paint].holds_g -= shot_g
        net_g = poured_g(plan, poured, max(shown_g(really_g, step_g), total_g(poured)))
        poured = (*poured, Pour(target.paint, net_g))
        cans[target.paint].logged_g += (net_g,)
        if len(poured) > 60:
            raise AssertionError("the weigh-out does not end")
    return really_g, total_g(poured), len(poured)


@pytest.mark.parametrize("seed", range(0, JOBS, 100))
def test_a_hundred_random_jobs_close_within_what_the_scales_show(seed: int) -> None:
    for number in range(seed, seed + 100):
        chance = Random(number)
        cup_step_g, can_step_g = chance.choice(STEPS_G[:2]), chance.choice(STEPS_G)
        cans = {}
        for paint in PAINTS:
            holds_g = chance.uniform(1500, 3000)
            cans[paint] = Can(holds_g, shown_g(holds_g, can_step_g))
        bought_g = sum(can.holds_g for can in cans.values())
        pots = [poured_pot(chance, cans, cup_step_g) for _ in range(chance.randint(1, 3))]
        left_g = sum(can.holds_g for can in cans.values())
        assert bought_g == pytest.approx(left_g + sum(really for really, _, _ in pots))
        for really_g, logged_g, count in pots:
            assert abs(really_g - logged_g) <= cup_step_g * (1 + count / 2) + 1e-6
        for can in cans.values():
            should_be_g = balance(can.weighed_g, can.logged_g).should_be_g
            assert should_be_g is not None
            missing = gap(shown_g(can.holds_g, can_step_g), should_be_g)
            pours = len(can.logged_g)
            assert abs(missing.gap_g) <= can_step_g + pours * cup_step_g + 1e-6
            assert doubt(can_step_g, cup_step_g, pours).u_g <= can_step_g + pours * cup_step_g


def test_a_leak_larger_than_the_doubt_is_found() -> None:
    chance = Random(7)
    for _ in range(200):
        pours = tuple(shown_g(chance.uniform(5, 80), 0.1) for _ in range(chance.randint(1, 6)))
        off = doubt(0.1, 0.1, len(pours))
        leak_g = 2 * off.u_g + chance.uniform(0.2, 30)
        should_be_g = balance(800.0, pours).should_be_g
        assert should_be_g is not None
        found = gap(should_be_g - leak_g, should_be_g)
        assert found.gap_g > 2 * off.u_g
