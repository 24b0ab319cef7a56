"""Verbs of what goes wrong at the scale besides too much: the wrong can, a cup knocked over."""

from dataclasses import dataclass

from core.errors import Refused, require
from core.mixing.plan import CAN, DUST_G, NET_G, TOTAL, Pour, targets_g
from core.mixing.portions import Portion
from core.mixing.scale import READING_G, shown_g
from core.mixing.spill import Spilt as Left
from core.mixing.spill import reads_below, spilt
from core.mixing.stray import Stray, stray
from mobile.session.cans.can import can_for
from mobile.session.cans.prices import price_per_g
from mobile.session.known import Known
from mobile.session.mix.begin import takes_g
from mobile.session.mix.cans_hold import require_cans
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.pots import AT_SCALE
from mobile.session.mix.weigh_out import UNDER_CUP, net_of, pours_of
from mobile.session.session import Declined, Session, Undo
from mobile.store.entries import AimChanged, MadeMore, Poured, Spilt, StrayPoured
from mobile.store.pot import SPILT, Pot
from mobile.store.records import Paint
from mobile.words import mishaps as words
from mobile.words import weigh_out as weigh_words


def other_paints(known: Known, pot: Pot) -> tuple[Paint, ...]:
    """Give the paints that a wrong can may have held: all but that of the part under way.

    Those that have a can stand first.
    """
    target = pot.target
    stocked = {can.paint for can in known.cans if not can.gone}
    others = [paint for paint in known.paints if target is None or paint.id != target.paint]
    return tuple(sorted(others, key=lambda paint: paint.id not in stocked))


def went_in_g(known: Known, pot: Pot, reads_g: float) -> float:
    """Find what the wrong can gave, from what the scale reads now.

    With the can on the scale the wrong one stood there, tared for itself.
    """
    return reads_g if pot.plan.way == CAN else net_of(known, pot, reads_g)


async def wrong_can(session: Session, pot: Pot, paint: str, reads_g: float) -> None:
    """Log what went in of another can; one that is in the recipe is a pour of its part."""
    known = session.known
    net_g = went_in_g(known, pot, reads_g)
    require("stray_g", net_g, pot.plan.scale_step_g, NET_G[1])
    can = can_for(known, paint, net_g)
    entries: tuple[Poured | StrayPoured, ...] = (
        StrayPoured(*session.stamp(), pot.id, paint, can, net_g),
    )
    if any(portion.paint == paint for portion in pot.plan.portions):
        entries = pours_of(session, pot, Pour(paint, net_g), reads_g)
    await session.keep(*entries, forget=AT_SCALE)
    session.tell(words.logged(net_g), Undo(entries=tuple(one.id for one in entries)))


def saved(known: Known, pot: Pot) -> Stray:
    """Find what can be saved of a pot with a stray in it."""
    kept_g = pot.strays_g - pot.stray_g  # they take their part of the room
    return stray(pot.plan, pot.poured, pot.stray_g, max(0.0, takes_g(known, pot) - kept_g))


def hiding(pot: Pot, found: Stray) -> tuple[Portion, ...]:
    """Give what is to be poured of each part for a batch in which nobody sees the stray."""
    return tuple(
        Portion(one.paint, max(0.0, found.factor_ratio * one.net_g - pot.paint_g(one.paint)))
        for one in pot.plan.portions
    )


@dataclass(frozen=True, slots=True)
class Worth:
    """What it costs to hide a stray, and what tipping it out loses; None where a price lacks."""

    extra_price: float | None
    lost_price: float | None


def worth_of(known: Known, pot: Pot, found: Stray) -> Worth:
    """Find what the two ways that keep the colour cost."""
    before = pot.plan.factor_ratio
    more = tuple(
        Portion(one.paint, one.net_g * (found.factor_ratio - before)) for one in pot.plan.portions
    )
    return Worth(_price(known, more), _price(known, pot.went_in))


def _price(known: Known, parts: tuple[Portion, ...]) -> float | None:
    each = [(one.net_g, price_per_g(paint_of(known, one.paint))) for one in parts if one.net_g]
    told = [net_g * price for net_g, price in each if price is not None]
    return sum(told) if len(told) == len(each) else None


def best_of(found: Stray, worth: Worth) -> str:
    """Name the cheaper way that keeps the colour: by price where all are known, else by mass."""
    if not found.fits or worth.extra_price is None or worth.lost_price is None:
        return found.best
    return "make" if worth.extra_price <= worth.lost_price else "tip"


async def hide_stray(session: Session, pot: Pot) -> None:
    """Make the batch so big that nobody sees the stray."""
    found = saved(session.known, pot)
    if not found.fits:
        raise Declined(weigh_words.TOO_MUCH_TO_MAKE)
    entry = MadeMore(*session.stamp(), pot.id, found.factor_ratio)
    await session.keep(entry)
    session.tell(words.hidden(found.hidden_g), Undo(entries=(entry.id,)))


def left_of(pot: Pot, reads_g: float) -> Left:
    """Find what is left in a cup that was knocked over, from what the scale shows with it back.

    Where the scale counts up from part to part it shows the rest as it would the whole, or, where
    that is less than nothing, it begins anew with the cup; else the cup's own weight is taken off
    by the person, or by a tare.
    """
    off_g = 0.0
    if reads_below(pot.plan, pot.strays_g):
        off_g = pot.started.cup_g or 0.0
    elif pot.plan.way == TOTAL:
        off_g = pot.plan.offset_g - pot.strays_g
    left_g = reads_g - off_g
    near_g = pot.plan.scale_step_g + DUST_G  # the last digit of a scale flickers
    if left_g < -near_g:
        raise Refused(UNDER_CUP, reads_g, off_g, READING_G[1])
    if left_g > pot.in_cup_g + near_g:
        raise Refused("left_g", left_g, 0.0, pot.in_cup_g)
    return spilt((*pot.poured, *pot.strays), min(max(left_g, 0.0), pot.in_cup_g))


def asks_cup_anew(pot: Pot) -> bool:
    """Tell whether the cup is to be weighed on a scale that begins at zero without it."""
    return pot.started.cup_g is not None and reads_below(pot.plan, pot.strays_g)


def asks_net(pot: Pot) -> bool:
    """Tell whether what is left is to be told without the cup's own weight."""
    below = reads_below(pot.plan, pot.strays_g)
    return pot.plan.way != TOTAL or (below and pot.started.cup_g is None)


async def pour_again(session: Session, pot: Pot, reads_g: float) -> None:
    """Keep the batch as planned: what went over is poured again."""
    found = left_of(pot, reads_g)
    require_cans(session.known, again_g(pot, found))
    entry = Spilt(*session.stamp(), pot.id, pot.in_cup_g - found.lost_g)
    await session.keep(entry, forget=AT_SCALE)
    session.tell(words.gone(found.lost_g), Undo(entries=(entry.id,)))


def again_g(pot: Pot, found: Left) -> tuple[Portion, ...]:
    """Give what is to be poured after a spill: what went over, and what was to come."""
    left = {one.paint: one.net_g for one in found.left}
    return tuple(
        Portion(one.paint, max(0.0, want_g - left.get(one.paint, 0.0)))
        for one, want_g in zip(pot.plan.portions, targets_g(pot.plan), strict=True)
    )


def smaller(pot: Pot, found: Left) -> tuple[Portion, ...]:
    """Give the portions of a pot that only as much is made of as the spill left; none if too few.

    What is in stays as it is; each part is as much smaller as the spill made what is in.
    """
    step_g = pot.plan.scale_step_g
    wanted = targets_g(pot.plan)
    parts = tuple(
        Portion(one.paint, shown_g(want_g * found.left_ratio, step_g))
        for one, want_g in zip(pot.plan.portions, wanted, strict=True)
    )
    return parts if all(part.net_g >= step_g for part in parts) else ()


async def make_smaller(session: Session, pot: Pot, reads_g: float) -> None:
    """Go on with what is left: the batch is as much smaller."""
    found = left_of(pot, reads_g)
    entry = Spilt(*session.stamp(), pot.id, pot.in_cup_g - found.lost_g)
    same = (session.stamp()[0], entry.at_s, entry.device)
    portions = smaller(pot, found)
    if not portions:
        raise Declined(words.TOO_LITTLE)
    aim = AimChanged(*same, pot.id, portions, pot.cans, pot.plan.parts_band_ratio, SPILT)
    await session.keep(entry, aim, forget=AT_SCALE)
    session.tell(words.gone(found.lost_g), Undo(entries=(entry.id, aim.id)))
