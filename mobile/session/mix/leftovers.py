"""What is left of a pot and its cups: weighed back, put into a jar, thrown away."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TypeVar

from core.cans.drying import OPEN_S, Air, DriedOff, dried_off
from core.errors import Refused, require
from core.mixing.plan import NET_G
from mobile import clock
from mobile.session.cans.can import air_of
from mobile.session.cans.goes_over import last_air
from mobile.session.known import Known
from mobile.session.mix.cup import cup_for, volume_l
from mobile.session.mix.cups import CUP_ACROSS_M, HAIR_G, cups_of
from mobile.session.mix.pots import pot_by
from mobile.session.session import Declined, Session, Undo
from mobile.store.entries import LeftoverKept, StoodOpen, ThrownAway, WeighedBack
from mobile.store.pot import Pot
from mobile.words import cups as words

MONTHS_COUNT = 1, 120
COLDEST_C = -60.0, 60.0
FREEZES_C = 0.0  # water; paint a little below, its label says
S_PER_MONTH = 30.44 * 86400  # a mean month: a use-by is no appointment
S_PER_H = 3600.0
USUAL_AIR = Air(23.0, 0.5)  # conditioning of paints, ISO 3270, from memory

G = TypeVar("G", bound=LeftoverKept | ThrownAway)
Into = Callable[[tuple[str, float, str], float], G]


@dataclass(frozen=True, slots=True)
class Back:
    """What stood on the scale again: each vessel with what is left in it; how long all were open.

    A vessel is a cup's id, "" for the pot itself.
    """

    left: tuple[tuple[str, float], ...]
    open_s: float = 0.0

    @property
    def left_g(self) -> float:
        """All that is left."""
        return sum(net_g for _, net_g in self.left)


def left_form(pot: Pot) -> str:
    """Give the address under which it is typed."""
    return f"mix/pots/{pot.id}/left"


def _require_left(known: Known, pot: Pot, back: Back) -> None:
    most = {cup.id: cup.net_g for cup in cups_of(known, pot)}
    if not back.left:
        raise Refused("left_g", "", 0.0, pot.in_cup_g)
    for cup, net_g in back.left:
        require("left_g", net_g, 0.0, most.get(cup, pot.in_cup_g) + HAIR_G)
    require("open_s", back.open_s, *OPEN_S)
    _require_in_all(known, pot, back)


def _require_in_all(known: Known, pot: Pot, back: Back) -> None:
    """Raise `Declined` for more in all vessels together than what has not left them for good."""
    pot = pot_by(known, pot.id) or pot  # the screen's may be older than the newest cup
    now_g = {cup.id: cup.now_g for cup in cups_of(known, pot)} | {"": pot.left_g}
    in_all_g = sum((now_g | dict(back.left)).values())
    kept_g = sum(jar.net_g for jar in jars_of(known, pot))
    waste_g = sum(e.net_g for e in known.of(ThrownAway) if e.pot == pot.id)
    most_g = max(0.0, pot.made_g - kept_g - waste_g)
    # Each vessel, and the pot as it was weighed out, can be half a step off.
    if in_all_g > most_g + HAIR_G + pot.plan.scale_step_g * (len(now_g) + 1) / 2:
        raise Declined(words.more_than_all(in_all_g, most_g))


def _back(session: Session, pot: Pot, back: Back) -> tuple[WeighedBack | StoodOpen, ...]:
    weighed = (WeighedBack(*session.stamp(), pot.id, cup, net_g) for cup, net_g in back.left)
    if not back.open_s:
        return tuple(weighed)
    held_g = {cup.id: cup.now_g for cup in cups_of(session.known, pot)} | {"": pot.left_g}
    full = (cup for cup, _ in back.left if held_g.get(cup, 0.0) > HAIR_G)
    return (*weighed, *(_stood_open(session, pot, cup, back.open_s) for cup in full))


def _stood_open(session: Session, pot: Pot, cup: str, open_s: float) -> StoodOpen:
    across_m, air = _across_m(session.known, pot, cup), air_now(session.known)
    size = open_s, across_m, air.air_c, air.rh_ratio, air.air_m_per_s
    return StoodOpen(*session.stamp(), pot.id, cup, *size)


def _across_m(known: Known, pot: Pot, cup: str) -> float:
    """Give a vessel's diameter: a usual cup's, or that of the usual one that takes the pot."""
    return CUP_ACROSS_M if cup else cup_for(volume_l(known, pot.went_in)).top_m


async def weigh_back(session: Session, pot: Pot, back: Back) -> None:
    """Log what is left in a pot and in its cups: each, and all, no more than went in."""
    _require_left(session.known, pot, back)
    entries = _back(session, pot, back)
    await session.keep(*entries, forget=(left_form(pot),))
    session.tell(words.weighed_back(back.left_g), Undo(entries=tuple(e.id for e in entries)))


async def _empty_out(session: Session, pot: Pot, back: Back, into: Into[G]) -> tuple[G, Undo]:
    """Log that what is left goes elsewhere; return where to, and what takes that back.

    Each vessel is weighed back first, so that what went onto walls is known, and is empty then.
    """
    _require_left(session.known, pot, back)
    require("left_g", back.left_g, HAIR_G, NET_G[1])
    where = into(session.stamp(), back.left_g)
    empty = Back(tuple((cup, 0.0) for cup, _ in back.left))
    entries = (*_back(session, pot, back), where, *_back(session, pot, empty))
    await session.keep(*entries, forget=(left_form(pot),))
    return where, Undo(entries=tuple(entry.id for entry in entries))


async def throw_away(session: Session, pot: Pot, back: Back) -> None:
    """Log that what is left in a pot and its cups goes to waste."""

    def waste(stamp: tuple[str, float, str], net_g: float) -> ThrownAway:
        return ThrownAway(*stamp, pot.id, net_g)

    gone, undo = await _empty_out(session, pot, back, waste)
    session.tell(words.wasted(gone.net_g), undo)


async def keep_leftover(
    session: Session, pot: Pot, back: Back, months: float | None, coldest_c: float | None
) -> LeftoverKept:
    """Put what is left in a pot and its cups into a jar with a number of its own."""
    use_by = ""
    if months is not None:
        require("months_count", months, *MONTHS_COUNT)
        use_by = clock.day(clock.now_s() + months * S_PER_MONTH)
    if coldest_c is not None:
        require("coldest_c", coldest_c, *COLDEST_C)
    number = next_jar(session.known)

    def filled(stamp: tuple[str, float, str], net_g: float) -> LeftoverKept:
        return LeftoverKept(*stamp, pot.id, number, net_g, use_by, coldest_c)

    jar, undo = await _empty_out(session, pot, back, filled)
    session.tell(words.in_jar(number, jar.net_g), undo)
    return jar


def next_jar(known: Known) -> int:
    """Give the next jar's number."""
    return 1 + max((jar.number for jar in known.of(LeftoverKept)), default=0)


def jars_of(known: Known, pot: Pot) -> tuple[LeftoverKept, ...]:
    """Give the jars of a pot."""
    return tuple(jar for jar in known.of(LeftoverKept) if jar.pot == pot.id)


def doubt_of(jar: LeftoverKept) -> str:
    """Say what speaks against a jar: its use-by is past, or it may have frozen; "" if nothing."""
    if jar.use_by_day and clock.days_from_now(jar.use_by_day) < 0:
        return words.PAST
    if jar.coldest_c is not None and jar.coldest_c <= FREEZES_C:
        return words.FROZEN
    return ""


def air_now(known: Known) -> Air:
    """Give the air that was typed last, else that of a usual room."""
    lid = last_air(known)
    return air_of(lid) if lid else USUAL_AIR


def dries(known: Known) -> tuple[DriedOff, Air]:
    """Find what an open cup can lose in an hour at the most, and the air that this is said of."""
    air = air_now(known)
    return dried_off(S_PER_H, CUP_ACROSS_M, air), air
