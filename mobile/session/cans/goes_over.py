"""How much wall a can still goes over, and what went out of it."""

from dataclasses import dataclass

from core.cans.drying import Air, dried_off
from core.coats.rate import goes_over_m2
from core.errors import Refused
from core.working import Working
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.session import Session, Undo
from mobile.session.walls.rates import rate_of
from mobile.store.entries import CanWeighed, LidOff, PotStarted, Poured, StrayPoured
from mobile.store.records import Can
from mobile.words import cans as words

# Usual cans, their litres and inside diameters, m: common practice, no published source.
ACROSS_M = (0.25, 0.085), (0.5, 0.086), (1.0, 0.108), (2.5, 0.153), (5.0, 0.18), (20.0, 0.29)


@dataclass(frozen=True, slots=True)
class GoesOver:
    """A coat that comes straight from the can, and the wall that its paint still goes over."""

    mix: str
    over_m2: float
    working: Working
    assumed: bool


def goes_over(known: Known, can: Can, net_g: float) -> tuple[GoesOver, ...]:
    """Find how far a can goes, for each mix of the job that is this paint alone."""
    told = []
    for mix in known.job_mixes:
        if [part.paint for part in mix.parts] != [can.paint]:
            continue
        try:
            reckoned = rate_of(mix, (paint_of(known, can.paint),))
            over_m2 = goes_over_m2(net_g, reckoned.rate.g_m2)
        except Refused:
            continue
        assumed = bool(reckoned.stands_in)
        told.append(GoesOver(mix.name, over_m2, reckoned.rate.working, assumed))
    return tuple(told)


@dataclass(frozen=True, slots=True)
class Happened:
    """One thing that happened to a can: a pour with its pot, a weighing, a lid that was off."""

    entry: Poured | StrayPoured | CanWeighed | LidOff
    pot: PotStarted | None = None


def happened_to(known: Known, can: Can) -> tuple[Happened, ...]:
    """Give what happened to a can, newest first."""
    pots = {pot.id: pot for pot in known.of(PotStarted)}
    own = [
        entry
        for entry in known.entries
        if isinstance(entry, Poured | StrayPoured | CanWeighed | LidOff) and entry.can == can.id
    ]
    return tuple(
        Happened(entry, pots.get(entry.pot) if isinstance(entry, Poured | StrayPoured) else None)
        for entry in reversed(own)
    )


async def lid_off(session: Session, can: Can, open_s: float, across_m: float, air: Air) -> LidOff:
    """Log that a can stood open: half of what can have dried off at most comes off."""
    dried_off(open_s, across_m, air)
    size = open_s, across_m, air.air_c, air.rh_ratio, air.air_m_per_s
    entry = LidOff(*session.stamp(), can.id, *size)
    await session.keep(entry, forget=(lid_form(can),))
    session.tell(words.lid_kept(can.number), Undo(entries=(entry.id,)))
    return entry


def lid_form(can: Can) -> str:
    """Give the address under which it is typed."""
    return f"cans/{can.id}/lid"


def across_of(can: Can) -> float | None:
    """Give a can's diameter: as kept, else that of a usual can of its litres, else nothing."""
    if can.across_m is not None:
        return can.across_m
    return next((m for label_l, m in ACROSS_M if can.label_l and can.label_l <= label_l), None)


def last_air(known: Known) -> LidOff | None:
    """Give the lid whose air was typed last."""
    return next(iter(reversed(known.of(LidOff))), None)
