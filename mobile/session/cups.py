"""Cups of a pot, what is left of them, and jars: leftovers are paints of their own."""

from dataclasses import dataclass
from string import ascii_lowercase

from core.cans.drying import Air, dried_off
from core.errors import Refused, require
from core.mixing.cups import cups_g
from core.mixing.plan import NET_G
from mobile import clock
from mobile.session.amounts import amount_of
from mobile.session.cans import air_of
from mobile.session.known import Known, found
from mobile.session.left import last_air
from mobile.session.session import Session, Undo
from mobile.store.entries import CupFilled, LeftoverKept, WeighedBack
from mobile.store.pot import Pot
from mobile.words import cups as words

CUPS_COUNT = 2, len(ascii_lowercase)
MONTHS_COUNT = 1, 120
COLDEST_C = -60.0, 60.0
S_PER_MONTH = 30.44 * 86400  # a mean month: a use-by is no appointment
HAIR_G = 0.05
S_PER_H = 3600.0
CUP_ACROSS_M = 0.08  # a usual cup: common practice, no published source
USUAL_AIR = Air(23.0, 0.5)  # conditioning of paints, ISO 3270, from memory


@dataclass(frozen=True, slots=True)
class Cup:
    """A cup of a pot: its letter, for whom or where, what went in, what was weighed back."""

    id: str
    label: str
    whom: str
    net_g: float
    left_g: float | None


def cups_of(known: Known, pot: Pot) -> tuple[Cup, ...]:
    """Give the cups that were split off a pot."""
    back = {e.cup: e.net_g for e in known.of(WeighedBack) if e.pot == pot.id}
    return tuple(
        Cup(e.id, e.label, e.whom, e.net_g, back.get(e.id))
        for e in known.of(CupFilled)
        if e.pot == pot.id
    )


def places_of(known: Known, pot: Pot) -> tuple[tuple[str, float], ...]:
    """Give what a pot's mix goes on, each with its square metres times coats."""
    mix = found(known.mixes, pot.started.mix)
    patches = amount_of(known, mix).patches if mix else ()
    return tuple((name, patch.area_m2 * patch.coats_count) for name, patch in patches)


def even(pot: Pot, count: int) -> tuple[tuple[str, float], ...]:
    """Split what is in a pot into so many cups alike; nobody is named."""
    require("cups_count", count, *CUPS_COUNT)
    grams = cups_g(pot.left_g, (1.0,) * count, pot.plan.scale_step_g)
    return tuple(("", net_g) for net_g in grams)


def by_area(known: Known, pot: Pot) -> tuple[tuple[str, float], ...]:
    """Split what is in a pot over its walls and zones."""
    places = places_of(known, pot)
    require("cups_count", len(places), *CUPS_COUNT)
    grams = cups_g(pot.left_g, tuple(share for _, share in places), pot.plan.scale_step_g)
    return tuple((name, net_g) for (name, _), net_g in zip(places, grams, strict=True))


async def fill_cups(session: Session, pot: Pot, cups: tuple[tuple[str, float], ...]) -> None:
    """Log that a pot was split; each cup gets the next letter."""
    taken = len(cups_of(session.known, pot))
    require("cups_count", taken + len(cups), 1, CUPS_COUNT[1])
    require("in_pot_g", sum(net_g for _, net_g in cups), 0.0, pot.left_g + HAIR_G)
    letters = ascii_lowercase[taken:]
    entries = tuple(
        CupFilled(*session.stamp(), pot.id, letter, whom, net_g)
        for letter, (whom, net_g) in zip(letters, cups, strict=False)
    )
    await session.keep(*entries, forget=(f"mix/pots/{pot.id}/cups",))
    said = words.split(len(cups), pot.started.number)
    session.tell(said, Undo(entries=tuple(entry.id for entry in entries)))


Left = tuple[tuple[str, float], ...]  # cups by id, "" for the pot itself, and what is left in each


def _require_left(known: Known, pot: Pot, left: Left) -> None:
    most = {cup.id: cup.net_g for cup in cups_of(known, pot)}
    if not left:
        raise Refused("left_g", "", 0.0, pot.in_cup_g)
    for cup, net_g in left:
        require("left_g", net_g, 0.0, most.get(cup, pot.in_cup_g) + HAIR_G)


def _back(session: Session, pot: Pot, left: Left) -> tuple[WeighedBack, ...]:
    return tuple(WeighedBack(*session.stamp(), pot.id, cup, net_g) for cup, net_g in left)


async def weigh_back(session: Session, pot: Pot, left: Left) -> None:
    """Log what is left in a pot and in its cups, each no more than went in."""
    _require_left(session.known, pot, left)
    entries = _back(session, pot, left)
    await session.keep(*entries, forget=(f"mix/pots/{pot.id}/left",))
    in_all_g = sum(net_g for _, net_g in left)
    session.tell(words.weighed_back(in_all_g), Undo(entries=tuple(e.id for e in entries)))


def dries_g(known: Known) -> tuple[float, Air]:
    """Find what an open cup can lose in an hour at the most, and the air that this is said of.

    The air is that of the last lid that was off, else a usual room.
    """
    lid = last_air(known)
    air = air_of(lid) if lid else USUAL_AIR
    return dried_off(S_PER_H, CUP_ACROSS_M, air).bound_g, air


def next_jar(known: Known) -> int:
    """Give the next jar's number."""
    return 1 + max((jar.number for jar in known.of(LeftoverKept)), default=0)


async def keep_leftover(
    session: Session, pot: Pot, left: Left, months: float | None, coldest_c: float | None
) -> LeftoverKept:
    """Put what is left in a pot and its cups into a jar with a number of its own.

    Each is weighed back first, so that what went onto walls is known, and is empty then.
    """
    _require_left(session.known, pot, left)
    net_g = sum(one_g for _, one_g in left)
    require("left_g", net_g, HAIR_G, min(NET_G[1], pot.in_cup_g + HAIR_G))
    use_by = ""
    if months is not None:
        require("months_count", months, *MONTHS_COUNT)
        use_by = clock.day(clock.now_s() + months * S_PER_MONTH)
    if coldest_c is not None:
        require("coldest_c", coldest_c, *COLDEST_C)
    number, before = next_jar(session.known), _back(session, pot, left)
    jar = LeftoverKept(*session.stamp(), pot.id, number, net_g, use_by, coldest_c)
    after = _back(session, pot, tuple((cup, 0.0) for cup, _ in left))
    entries: tuple[WeighedBack | LeftoverKept, ...] = (*before, jar, *after)
    await session.keep(*entries, forget=(f"mix/pots/{pot.id}/left",))
    session.tell(words.in_jar(number, net_g), Undo(entries=tuple(e.id for e in entries)))
    return jar


def jars_of(known: Known, pot: Pot) -> tuple[LeftoverKept, ...]:
    """Give the jars of a pot."""
    return tuple(jar for jar in known.of(LeftoverKept) if jar.pot == pot.id)
