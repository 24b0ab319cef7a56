"""A basement in which every gram is known: what the painter weighs is the truth, rounded.

Chance pours, slips, splits, paints, lets cups stand open and throws away; the session's own verbs
log what the scale shows of it; where each gram really is stands beside it.
"""

import asyncio
import random
from dataclasses import replace

from core.cans.drying import Air, dried_off
from core.mixing.scale import shown_g
from mobile.session.mix import cups, weigh_out
from mobile.session.mix.begin import start_pot
from mobile.session.mix.cup import cup_for, volume_l
from mobile.session.mix.leftovers import Back, jars_of, keep_leftover, throw_away, weigh_back
from mobile.session.mix.mishaps import left_of, make_smaller, smaller
from mobile.session.mix.pots import all_pots, pot_by, under_way
from mobile.session.session import Session
from mobile.store.entries import CanWeighed, LidOff
from mobile.store.pot import Pot
from tests.session.ember import EMBER, RECORDS, STAMP
from tests.session.shelf import Shelf

STEP_G = 0.1
CANS = "can7", "can8", "can12"
FULL = tuple(CanWeighed(f"full {can}", *STAMP, can, 9100.0, 100.0, 9000.0) for can in CANS)
AIR = LidOff("lid", *STAMP, "can7", 60.0, 0.085, 20.0, 0.5, 0.0)


class Basement:
    """One job: the session, and beside it where each gram really is."""

    def __init__(self, seed: int) -> None:
        self.chance = random.Random(seed)
        self.session = Session(Shelf(*RECORDS, *FULL, AIR), "phone")
        self.out_of_cans_g: dict[str, float] = {}
        self.tipped_g = self.on_walls_and_tools_g = self.dried_g = self.waste_g = 0.0
        self.in_vessels_g: dict[tuple[str, str], float] = {}  # by pot and cup, or jar
        self.readings_count = 0
        self.bound_g = 0.0

    def reads(self, mass_g: float) -> float:
        """Put a mass on the scale."""
        self.readings_count += 1
        return shown_g(mass_g, STEP_G)

    async def job(self) -> "Basement":
        """Mix and use a few pots."""
        for _ in range(self.chance.randint(1, 3)):
            await self.mix()
            await self.use()
        return self

    async def mix(self) -> None:
        """Weigh one pot out, with slips of grams."""
        batch_g = round(self.chance.uniform(60, 400), 1)
        await start_pot(self.session, replace(EMBER, planned_g=None), batch_g, None)
        in_cup_g = 0.0
        while (pot := under_way(self.session.known)) is not None:
            in_cup_g = await self.next_touch(pot, in_cup_g)
        done = all_pots(self.session.known)[-1]
        self.in_vessels_g[done.id, ""] = in_cup_g

    async def next_touch(self, pot: Pot, in_cup_g: float) -> float:
        """Answer an over-pour, pour the next part, or stir; return what is really in the cup."""
        if pot.over:
            return await self.answer(pot, in_cup_g)
        target = pot.target
        if target is None:
            await weigh_out.stirred(self.session, pot)
            return in_cup_g
        if in_cup_g and self.chance.random() < 0.03:
            return await self.knock_over(pot, in_cup_g)
        slip_g = self.chance.choice((0.0, self.chance.gauss(0, 0.3), self.chance.gauss(0, 4)))
        net_g = max(0.0, target.reads_g + slip_g - in_cup_g)
        self.out_of_cans_g[target.paint] = self.out_of_cans_g.get(target.paint, 0.0) + net_g
        read_g = self.reads(in_cup_g + net_g)
        await weigh_out.scale_reads(self.session, pot, read_g)
        return in_cup_g + net_g

    async def answer(self, pot: Pot, in_cup_g: float) -> float:
        """Make more, keep it, or tip it out."""
        said = pot.answers(3000.0)
        match self.chance.choice(("make", "keep", "tip")):
            case "make" if said.make.fits:
                await weigh_out.make_more(self.session, pot, said.make)
            case "tip":
                await weigh_out.tip_out(self.session, pot)
                self.tipped_g += in_cup_g
                return 0.0
            case _:
                assert pot.over
                await weigh_out.keep_over(self.session, pot, pot.over.paint)
        return in_cup_g

    async def knock_over(self, pot: Pot, in_cup_g: float) -> float:
        """Lose some, and make a smaller batch of what is left."""
        left_g = in_cup_g * self.chance.uniform(0.2, 0.9)
        read_g = self.reads(left_g)
        if left_of(pot, read_g).lost_g <= 0 or not smaller(pot, left_of(pot, read_g)):
            return in_cup_g
        await make_smaller(self.session, pot, read_g)
        self.tipped_g += in_cup_g - left_g
        return left_g

    async def use(self) -> None:
        """Split, paint, let stand open, weigh back; keep the rest, in a jar or not, or throw it."""
        pot = all_pots(self.session.known)[-1]
        if self.chance.random() < 0.5:
            await self.split(pot)
        open_s = self.chance.choice((0.0, 60.0 * self.chance.randint(10, 600)))
        vessels = [""] + [cup.id for cup in cups.cups_of(self.session.known, pot)]
        left = []
        for vessel in vessels:
            self.paint(pot, vessel, open_s)
            left.append((vessel, self.reads(self.in_vessels_g[pot.id, vessel])))
        pot = self.again(pot)
        most = {cup.id: cup.net_g for cup in cups.cups_of(self.session.known, pot)}
        left = [(one, min(g, most.get(one, pot.in_cup_g) + cups.HAIR_G)) for one, g in left]
        await self.empty(pot, Back(tuple(left), open_s))

    def paint(self, pot: Pot, vessel: str, open_s: float) -> None:
        """Put some of a vessel onto walls and tools; let some dry off."""
        here = pot.id, vessel
        used_g = self.in_vessels_g[here] * self.chance.choice((0.0, self.chance.random()))
        in_it = self.again(pot).went_in
        pot_m = cup_for(volume_l(self.session.known, in_it)).top_m
        across_m = cups.CUP_ACROSS_M if vessel else pot_m
        most_g = dried_off(open_s, across_m, Air(20.0, 0.5)).bound_g
        self.bound_g += most_g
        dried_g = min(self.chance.random() * most_g, self.in_vessels_g[here] - used_g)
        self.in_vessels_g[here] -= used_g + dried_g
        self.on_walls_and_tools_g += used_g
        self.dried_g += dried_g

    async def split(self, pot: Pot) -> None:
        """Fill cups on the scale, as it says; what it can't show stays in the pot."""
        count = self.chance.randint(2, 5)
        if pot.left_g < count:
            return
        some = cups.even(pot, count)[: self.chance.randint(1, count)]
        await cups.fill_cups(self.session, pot, some)
        for cup in cups.cups_of(self.session.known, pot):
            off_g = self.chance.uniform(-STEP_G / 2, STEP_G / 2)
            self.readings_count += 1
            net_g = min(max(0.0, cup.net_g + off_g), self.in_vessels_g[pot.id, ""])
            self.in_vessels_g[pot.id, cup.id] = net_g
            self.in_vessels_g[pot.id, ""] -= net_g

    async def empty(self, pot: Pot, back: Back) -> None:
        """Weigh back, then keep it as it is, put it into a jar, or throw it away."""
        kind = self.chance.choice(("keep", "jar", "waste"))
        if kind == "keep" or not cups.HAIR_G < back.left_g <= pot.in_cup_g:
            await weigh_back(self.session, pot, back)
            return
        own = [here for here in self.in_vessels_g if here[0] == pot.id]
        really_g = sum(self.in_vessels_g.pop(here) for here in own)
        if kind == "waste":
            await throw_away(self.session, pot, back)
            self.waste_g += really_g
            return
        await keep_leftover(self.session, pot, back, None, None)
        [jar] = jars_of(self.session.known, pot)
        self.in_vessels_g[pot.id, jar.id] = really_g

    def again(self, pot: Pot) -> Pot:
        """Give a pot as the session has it now."""
        found = pot_by(self.session.known, pot.id)
        assert found is not None
        return found


def job_done(seed: int) -> Basement:
    """Give a job when all is done."""
    return asyncio.run(Basement(seed).job())
