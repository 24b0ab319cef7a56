"""A simulated scale weighs pots while things go wrong: what the screen asks is what it shows."""

import random

import pytest

from core.mixing.correct import Lack
from mobile.session.mix import begin, mishaps, pot_again, weigh_out
from mobile.session.mix.pots import pots
from mobile.session.session import Session
from tests.session.test_tared_ways import (
    FULL,
    HAIR_G,
    LACKS,
    WHITE,
    ways,
    weighed_by,
)
from tests.session.weighing import now, run


class Scale:
    """A scale with a cup, or a can, on it; the cup is 21.4 g and the person does as is said."""

    def __init__(self, way: str, seed: int) -> None:
        self.way, self.chance = way, random.Random(seed)
        self.in_cup_g = 0.0  # what is really in the cup
        self.zero_g = 0.0  # what was in it, or out of the can, at the tare; NaN where that is gone
        self.happened: list[object] = [way, seed]

    def shows_g(self) -> float:
        """Give what it shows, without the sign that a can's loss has."""
        return round(self.in_cup_g - self.zero_g, 1)

    async def pours(self, session: Session) -> None:
        """Pour what is asked for, or another amount; the figure asked for is what it then shows."""
        pot, target = now(session), now(session).target
        assert target is not None
        if not target.before_g:  # the step says: tared
            self.zero_g = self.in_cup_g
        assert self.shows_g() == pytest.approx(abs(target.before_g), abs=HAIR_G), self.happened
        wanted_g = next(one.net_g for one in pot.missing if one.paint == target.paint)
        shown_g = self.shows_g() + wanted_g
        assert abs(target.reads_g) == pytest.approx(shown_g, abs=HAIR_G), self.happened
        share = self.chance.choice((0.3, 0.7, 1.0, 1.0, 1.02))
        self.in_cup_g += round(max(0.1, wanted_g * share), 1)
        await weigh_out.scale_reads(session, pot, self.shows_g())

    async def strays(self, session: Session) -> None:
        net_g = round(self.chance.uniform(0.1, 1.5), 1)
        if not (target := now(session).target) or not target.before_g:
            self.zero_g = self.in_cup_g
        self.in_cup_g += net_g
        reads_g = net_g if self.way == "can" else self.shows_g()
        paint = self.chance.choice(
            [one.id for one in mishaps.other_paints(session.known, now(session))]
        )
        await mishaps.wrong_can(session, now(session), paint, reads_g)
        self.zero_g = float("nan")  # the step says to tare: what it shows till then says nothing

    async def goes_off(self, session: Session) -> None:
        found = self.chance.choice(("kept", "zero", "cup", "missed"))
        if found == "kept" and self.way == "each" and now(session).poured and self.stands():
            await weigh_out.scale_restarted(session, now(session), self.shows_g())
            return
        if found == "missed":
            self.in_cup_g += round(self.chance.uniform(0.3, 4.0), 1)
        reads_g = 0.0 if found == "zero" else round(21.4 + self.in_cup_g, 1)
        await weigh_out.scale_restarted(session, now(session), reads_g)
        self.zero_g = float("nan")

    def stands(self) -> bool:
        """Tell whether its zero is that of the part under way."""
        return self.zero_g == self.zero_g and self.shows_g() > HAIR_G

    async def is_knocked_over(self, session: Session) -> None:
        if not self.in_cup_g:
            return
        self.in_cup_g = round(self.in_cup_g * self.chance.uniform(0.3, 1.0), 1)
        found = mishaps.left_of(now(session), self.in_cup_g)
        less = self.chance.random() < 0.5 and mishaps.smaller(now(session), found)
        verb = mishaps.make_smaller if less else mishaps.pour_again
        await verb(session, now(session), self.in_cup_g)
        self.zero_g = float("nan")

    async def comes_back(self, session: Session) -> None:
        """Finish it, then put it back for more or for a correction."""
        await weigh_out.stirred(session, now(session))
        pot = pots(session.known)[-1]
        if self.chance.random() < 0.5 or len(pot.went_in) != len(LACKS):
            await pot_again.add_to_pot(session, pot, round(self.chance.uniform(20.0, 60.0), 1))
        else:
            lacks = list(LACKS)
            lacks[self.chance.randrange(len(lacks))] = Lack(day_count=1)
            await pot_again.correct_pot(session, pot, tuple(lacks))
        self.zero_g = float("nan")


async def goes_wrong(way: str, seed: int) -> None:
    """Weigh out a pot while things go wrong, and put it back once."""
    scale, session = Scale(way, seed), await weighed_by(way, WHITE, *FULL)
    await begin.start_planned(session)
    back = 1
    for _ in range(12):
        pot = now(session)
        assert pot.in_cup_g == pytest.approx(scale.in_cup_g, abs=HAIR_G), scale.happened
        if pot.over:
            await weigh_out.keep_over(session, pot, pot.over.paint)
        elif pot.strays_show:
            paint = next(one.paint for one in pot.strays if one.paint not in pot.kept)
            await weigh_out.keep_over(session, pot, paint)
        elif pot.target is None:
            if not back:
                return
            back -= 1
            scale.happened.append("comes_back")
            await scale.comes_back(session)
        else:
            does = scale.chance.choices(
                (scale.pours, scale.strays, scale.goes_off, scale.is_knocked_over), (12, 2, 3, 1)
            )[0]
            scale.happened.append(does.__name__)
            await does(session)


@ways
def test_whatever_goes_wrong_the_figure_is_what_the_scale_then_shows(way: str) -> None:
    async def story() -> None:
        for seed in range(100):
            await goes_wrong(way, seed)

    run(story())
