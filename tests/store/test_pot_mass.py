"""Mass closes in a pot: what went in is what is in it, in cups and jars, on walls, or spilt."""

import random

import pytest

from core.mixing.portions import Portion
from mobile.store.entries import (
    AimChanged,
    CupFilled,
    PotStarted,
    Poured,
    Spilt,
    Stirred,
    StrayPoured,
    WeighedBack,
)
from mobile.store.pot_of import OfAPot, pot_of

PAINTS = "yellow", "orange", "medium"
JOBS = 1000
HAIR_G = 1e-6


class Kitchen:
    """One pot and a second book of it, kept by hand."""

    def __init__(self, chance: random.Random) -> None:
        self.chance = chance
        portions = tuple(Portion(paint, chance.uniform(20, 200)) for paint in PAINTS)
        head = ("pot", 1.0, "phone", "job", "mix", "ember", 1)
        self.started = PotStarted(*head, portions, ("",) * len(portions), 0.1, None)
        self.entries: list[OfAPot] = []
        self.poured_g = self.spilt_g = self.drawn_g = self.used_g = 0.0

    @property
    def in_it_g(self) -> float:
        """What must be in the pot by the second book."""
        return self.poured_g - self.spilt_g - self.drawn_g - self.used_g

    def stamp(self) -> tuple[str, float, str]:
        """Give the first fields of an entry."""
        return f"e{len(self.entries)}", 2.0 + len(self.entries), "phone"

    def pour(self) -> None:
        """Pour a part, or the wrong can."""
        net_g = round(self.chance.uniform(0.1, 90), 1)
        kind = self.chance.choice((*PAINTS, "white"))
        entry: OfAPot = StrayPoured(*self.stamp(), "pot", kind, "", net_g)
        if kind in PAINTS:
            entry = Poured(*self.stamp(), "pot", kind, "", net_g, None)
        self.entries.append(entry)
        self.poured_g += net_g

    def spill(self) -> None:
        """Knock it over; what had gone out of it before stays out."""
        if self.drawn_g or self.used_g:
            return
        left_g = self.in_it_g * self.chance.random()
        self.entries.append(Spilt(*self.stamp(), "pot", left_g))
        self.spilt_g += self.in_it_g - left_g

    def draw(self) -> None:
        """Fill a cup."""
        net_g = self.in_it_g * self.chance.random()
        self.entries.append(CupFilled(*self.stamp(), "pot", "a", "", net_g))
        self.drawn_g += net_g

    def use(self) -> None:
        """Paint with it, and weigh back what is left."""
        left_g = self.in_it_g * self.chance.random()
        self.entries.append(WeighedBack(*self.stamp(), "pot", "", left_g))
        self.used_g += self.in_it_g - left_g

    def add(self) -> None:
        """Put it back on the scale for more."""
        held = pot_of(self.started, tuple(self.entries)).holds
        if not held:
            return
        aim = tuple(Portion(one.paint, one.net_g + 10.0) for one in held)
        self.entries.append(Stirred(*self.stamp(), "pot"))
        self.entries.append(AimChanged(*self.stamp(), "pot", aim, ("",) * len(aim), (), "more"))


def test_a_thousand_pots_close() -> None:
    for seed in range(JOBS):
        kitchen = Kitchen(random.Random(seed))
        for _ in range(12):
            kitchen.chance.choice(
                (kitchen.pour, kitchen.pour, kitchen.spill, kitchen.draw, kitchen.use, kitchen.add)
            )()
            pot = pot_of(kitchen.started, tuple(kitchen.entries))
            assert pot.left_g == pytest.approx(kitchen.in_it_g, abs=HAIR_G)
            assert pot.made_g == pytest.approx(kitchen.poured_g - kitchen.spilt_g, abs=HAIR_G)
            assert sum(one.net_g for one in pot.holds) == pytest.approx(pot.left_g, abs=HAIR_G)
            assert all(one.net_g >= 0 for one in pot.holds)
