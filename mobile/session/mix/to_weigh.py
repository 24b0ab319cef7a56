"""What is to be weighed: each mix's loads, less the pots that are made already."""

from dataclasses import dataclass
from functools import lru_cache
from math import floor

from core.coats.places import ZONED, Coat
from core.errors import Refused
from core.mixing.loads import loads
from mobile.session.coats.standing import job_coats, to_do
from mobile.session.known import Known, found
from mobile.session.mix.cans_hold import limiting
from mobile.session.mix.jars import moved_g
from mobile.session.mix.pots import pots, under_way
from mobile.session.walls.amounts import Amount, amount_of, load_most_g
from mobile.store.entries import ThrownAway
from mobile.store.pot import Pot
from mobile.store.records import Mix

LEAST_G = 1.0  # with less in the cans there is no load; beginning one then says what is short
DONE_RATIO = 0.01  # so little short is within what pouring by hand is off


@dataclass(frozen=True, slots=True)
class Load:
    """One load of a mix: its grams, and which of how many it is."""

    mix: Mix
    load_g: float
    number: int = 1
    of: int = 1


@lru_cache(maxsize=64)  # asked by several screens, and known is replaced whole
def amount_or_none(known: Known, mix: Mix) -> Amount | None:
    """Give what a mix needs; None where it can't be reckoned."""
    try:
        return amount_of(known, mix)
    except Refused:
        return None


def made_g(known: Known, mix: Mix) -> tuple[float, ...]:
    """Give the grams of each finished pot of a mix, less what went on from its jars elsewhere.

    What was thrown away is not made, while a coat of it is still to come. Of a pot that was tipped
    out counts what had gone out of it before.
    """
    own = ((pot, out_g(pot)) for pot in pots(known) if pot.started.mix == mix.id and pot.ended)
    waste_g = wasted_g(known) if coats_to_come(known, mix) else {}
    return tuple(
        max(0.0, went_g - moved_g(known, pot.id) - waste_g.get(pot.id, 0.0))
        for pot, went_g in own
        if went_g
    )


def out_g(pot: Pot) -> float:
    """Give what was made of a pot that is over, or what had gone out as the rest was lost."""
    return pot.made_g if pot.ended == "stirred" else pot.used_g


def wasted_g(known: Known) -> dict[str, float]:
    """Give what was thrown away of each pot, by its id."""
    out: dict[str, float] = {}
    for entry in known.of(ThrownAway):
        out[entry.pot] = out.get(entry.pot, 0.0) + entry.net_g
    return out


def coats_to_come(known: Known, mix: Mix) -> bool:
    """Tell whether a mix has still to be painted; one that is planned for no place always has."""
    own = coats_of_mix(known, mix)
    return not own or not to_do(known).isdisjoint(own)


def coats_of_mix(known: Known, mix: Mix) -> tuple[Coat, ...]:
    """Give the coats of a mix: in its zones, or of its use on the walls that it goes on."""
    zones = {zone.id for zone in known.job_zones if zone.mix == mix.id}
    if mix.use in ZONED and zones:
        return tuple(coat for coat in job_coats(known) if coat.place in zones)
    steps = {step.id for step in (known.job.steps if known.job else ()) if step.use == mix.use}
    return tuple(
        coat
        for coat in job_coats(known)
        if coat.step in steps
        and coat.place == coat.wall
        and (not mix.walls or coat.wall in mix.walls)
    )


def next_load(known: Known, mix: Mix) -> Load | None:
    """Find a mix's next load: of the grams typed, else of what its walls and zones need.

    None once all is made, while nothing is needed, and for paint that comes straight from its can.
    """
    made = made_g(known, mix)
    if mix.planned_g is not None:
        done = sum(made) > DONE_RATIO * mix.planned_g  # else all of it was thrown away
        return None if done else Load(mix, mix.planned_g)
    amount = amount_or_none(known, mix)
    if amount is None or amount.loads is None or len(mix.parts) == 1:
        return None
    left_g = amount.loads.batch_g - sum(made)
    if left_g <= DONE_RATIO * amount.loads.batch_g:
        return None
    rest = loads(left_g, most_g(known, mix, amount))
    return Load(mix, rest.load_g, len(made) + 1, len(made) + rest.loads_count)


def most_g(known: Known, mix: Mix, amount: Amount) -> float:
    """Give the most for one load: what scale and bucket take, less where the cans hold less."""
    room = load_most_g(known, amount.blend.density_g_ml)
    allowed_g = limiting(known, mix).most_g
    return room if allowed_g is None or allowed_g < LEAST_G else min(room, float(floor(allowed_g)))


def to_weigh_next(known: Known) -> Load | None:
    """Give the load to weigh next, in the order of the list; None while one is on the scale."""
    if under_way(known):
        return None
    waiting = (next_load(known, mix) for mix in known.job_mixes)
    return next((load for load in waiting if load), None)


def in_loads(known: Known, pot: Pot) -> bool:
    """Tell whether a pot is one load of several of its mix."""
    mix = found(known.mixes, pot.started.mix)
    amount = amount_or_none(known, mix) if mix else None
    return bool(amount and amount.loads and amount.loads.loads_count > 1)
