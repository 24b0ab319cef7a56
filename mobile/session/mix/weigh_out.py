"""Verbs of a weigh-out: log what was poured, put a wrong pour right, finish the pot."""

from dataclasses import replace

from core.errors import Refused, require
from core.mixing.over_pour import Make
from core.mixing.plan import CAN, EACH, Pour
from core.mixing.portions import Portion
from core.mixing.restart import Restart, offset_after_restart
from core.mixing.scale import shown_g
from core.mixing.weigh_out import next_pour, poured_g
from core.units import typed
from mobile import clock
from mobile.session.cans.can import can_for
from mobile.session.known import Known
from mobile.session.mix.begin import bands_of, can_keep, lots_of
from mobile.session.mix.cans_hold import lacking, taken_from
from mobile.session.mix.pot_again import CORRECTION, MORE
from mobile.session.mix.pots import AT_SCALE, READING, RESTART, next_number, tipped_before
from mobile.session.mix.recipes import uncorrected
from mobile.session.session import Declined, Session, Undo
from mobile.store.entries import (
    AimChanged,
    Entry,
    KeptOver,
    MadeMore,
    PotStarted,
    Poured,
    ScaleRestarted,
    Stirred,
    TippedOut,
    Undone,
)
from mobile.store.pot import Pot
from mobile.store.records import Draft, Record
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

UNDER_CUP = "reads_under_cup_g"  # of a reading that is less than the cup alone
BOUNCE_S = 0.8  # a wet glove touches twice; nobody pours a part in that time


def bounced(pot: Pot) -> bool:
    """Tell whether a touch comes too soon after what was logged last to be meant."""
    return 0 <= clock.now_s() - pot.at_s < BOUNCE_S


async def on_the_mark(session: Session, pot: Pot) -> None:
    """Log the pour under way as within its band."""
    target = pot.target
    if target is None:
        return
    pours = pours_of(session, pot, Pour(target.paint, target.net_g), None)
    await session.keep(*pours, forget=(READING,))
    session.tell(weigh_words.poured(target.net_g), Undo(entries=tuple(one.id for one in pours)))


def pours_of(session: Session, pot: Pot, pour: Pour, reads_g: float | None) -> tuple[Poured, ...]:
    """Give the entries of one pour: one for each can that it came from, of one instant."""
    _, at_s, device = session.stamp()
    came = taken_from(session.known, pour.paint, pot.can(pour.paint), pour.net_g)
    return tuple(
        Poured(session.stamp()[0], at_s, device, pot.id, pour.paint, can, net_g, reads_g)
        for can, net_g in came
    )


def net_of(known: Known, pot: Pot, reads_g: float) -> float:
    """Find what was poured by a reading; raise `Refused` for one that can't be.

    A can on the scale reads less than nothing: its sign goes without saying.
    """
    require("reads_g", reads_g, 0.0, known.settings.scale_capacity_g - unseen_g(pot))
    return poured_g(pot.plan, pot.poured, -reads_g if pot.plan.way == CAN else reads_g)


def unseen_g(pot: Pot) -> float:
    """Give what stands on the scale and is in no reading: what was tared away."""
    cup_g = pot.started.cup_g or 0.0
    if pot.plan.way == EACH:  # but for what went in of this part: the reading has that
        return cup_g + pot.in_cup_g - (pot.target.before_g if pot.target else 0.0)
    return 0.0 if pot.plan.way == CAN else max(0.0, cup_g - pot.plan.offset_g + pot.strays_g)


async def scale_reads(session: Session, pot: Pot, reads_g: float) -> None:
    """Log what was really poured, from a typed reading."""
    target = pot.target
    if target is None:
        return
    net_g = net_of(session.known, pot, reads_g)
    pours = pours_of(session, pot, Pour(target.paint, net_g), reads_g)
    await session.keep(*pours, forget=(READING,))
    session.tell(weigh_words.poured(net_g), Undo(entries=tuple(one.id for one in pours)))


async def make_more(session: Session, pot: Pot, make: Make) -> None:
    """Answer an over-pour with a bigger batch, if cup, scale and cans have it."""
    if not make.fits:
        raise Declined(weigh_words.TOO_MUCH_TO_MAKE)
    entry = MadeMore(*session.stamp(), pot.id, make.factor_ratio)
    await session.keep(entry)
    session.tell(weigh_words.made_more(make.total_g), Undo(entries=(entry.id,)))


async def keep_over(session: Session, pot: Pot, paint: str) -> None:
    """Answer an over-pour, or a stray, by leaving it; cup and scale must take what comes to it."""
    if not can_keep(session.known, pot):
        raise Declined(weigh_words.TOO_HEAVY)
    entry = KeptOver(*session.stamp(), pot.id, paint)
    await session.keep(entry)
    session.tell(weigh_words.KEPT_OVER, Undo(entries=(entry.id,)))


async def tip_out(session: Session, pot: Pot) -> None:
    """Give the pot up and put a new cup on the scale for the same batch, if the cans have it."""
    old = pot.started
    portions = new_cup_of(pot)
    step_g = pot.plan.scale_step_g
    short = lacking(session.known, portions)
    if short or any(one.net_g < step_g for one in portions):
        await give_up(session, pot)
        told = session.shown.told
        if short:
            session.tell(words.cans_lack(short), told.undo if told else None)
        return
    tipped = TippedOut(*session.stamp(), pot.id)
    number, again_id = next_number(session.known, old.job), session.stamp()[0]
    again = replace(
        old, id=again_id, at_s=tipped.at_s, device=tipped.device, number=number
    )  # of the same instant: one act
    if portions != old.portions:
        again = aimed(session.known, again, portions)
    await session.keep(tipped, again, forget=AT_SCALE)
    undo = Undo(entries=(tipped.id, again.id))
    session.tell(weigh_words.tipped(old.number, pot.in_cup_g, again=True), undo)


def new_cup_of(pot: Pot) -> tuple[Portion, ...]:
    """Give the portions of a new cup for a pot: of one that was put back, what it was to be."""
    if not {MORE, CORRECTION} & set(pot.fates):
        return pot.started.portions
    step_g = pot.plan.scale_step_g
    return tuple(Portion(one.paint, shown_g(one.net_g, step_g)) for one in pot.plan.portions)


def aimed(known: Known, started: PotStarted, portions: tuple[Portion, ...]) -> PotStarted:
    """Give a pot's start with other portions, each from the can that it comes from now."""
    cans = tuple(can_for(known, one.paint, one.net_g) for one in portions)
    bands, lots = bands_of(known, portions), lots_of(known, cans)
    return replace(started, portions=portions, cans=cans, parts_band_ratio=bands, lots=lots)


async def give_up(session: Session, pot: Pot) -> None:
    """End a pot without a new one: all of it is waste; where nothing was poured there was none.

    One that was put back and got nothing more is as it was before.
    """
    if not pot.in_cup_g:
        await session.keep(Undone(*session.stamp(), pot.id), forget=AT_SCALE)
        session.hush()
        return
    if pot.put_back:
        await session.keep(*taken_back(session, pot.idle), forget=AT_SCALE)
        session.tell(words.off_the_scale(pot.started.number))
        return
    tipped = TippedOut(*session.stamp(), pot.id)
    await session.keep(tipped, forget=AT_SCALE)
    session.tell(weigh_words.tipped(pot.started.number, pot.in_cup_g), Undo(entries=(tipped.id,)))


def taken_back(session: Session, entries: tuple[Entry, ...]) -> tuple[Record, ...]:
    """Give what takes entries back; with a correction its recipe is as it was, too."""
    aims = (entry for entry in entries if isinstance(entry, AimChanged))
    recipes = tuple(mix for aim in aims for mix in uncorrected(session.known, aim))
    return (*(Undone(*session.stamp(), entry.id) for entry in entries), *recipes)


def restart_of(known: Known, pot: Pot, reads_g: float) -> Restart:
    """Find what a reading says after the scale went off; raise `Refused` for one that can't be."""
    require("reads_g", reads_g, 0.0, known.settings.scale_capacity_g)
    cup_g = pot.started.cup_g
    # What is in no portion stands there like a heavier cup.
    stands_g = None if cup_g is None else cup_g + pot.strays_g
    try:
        return offset_after_restart(pot.plan, pot.poured, reads_g, stands_g)
    except Refused as refusal:
        if refusal.name != "reads_g" or cup_g is None:
            raise
        low_g, name = (cup_g, UNDER_CUP) if reads_g < cup_g else (refusal.low, "reads_with_cup_g")
        raise Refused(name, reads_g, low_g, refusal.high) from None


async def scale_restarted(session: Session, pot: Pot, reads_g: float) -> Restart:
    """Carry on after the scale went off; what was poured and not logged is found and logged."""
    restart = restart_of(session.known, pot, reads_g)
    entry = ScaleRestarted(*session.stamp(), pot.id, reads_g, restart.offset_g)
    target = pot.target
    pours: tuple[Poured, ...] = ()
    if target and restart.missed_g:
        found = pours_of(session, pot, Pour(target.paint, restart.missed_g), reads_g)
        pours = tuple(replace(one, at_s=entry.at_s) for one in found)  # of the same instant
    await session.keep(entry, *pours, forget=(READING, RESTART))
    undo = Undo(entries=(entry.id, *(pour.id for pour in pours)))
    session.tell(weigh_words.restarted(restart.missed_g), undo)
    return restart


async def stirred(session: Session, pot: Pot) -> None:
    """Finish a pot."""
    entry = Stirred(*session.stamp(), pot.id)
    await session.keep(entry, forget=AT_SCALE)
    session.tell(words.stirred(pot.started.number, pot.in_cup_g), Undo(entries=(entry.id,)))


async def undo_last(session: Session, pot: Pot) -> None:
    """Take back what was logged last in a weigh-out; in a new cup, that the old one was tipped."""
    last: tuple[Entry, ...] = pot.last
    if not last and (tipped := tipped_before(session.known, pot)):
        last = (tipped, pot.started)
    if not last:
        return
    await session.keep(*taken_back(session, last), forget=(READING,))
    session.hush()


def typed_at(pot: Pot) -> str:
    """Say where in the weigh-out the reading was typed that was logged last."""
    if any(isinstance(entry, ScaleRestarted) for entry in pot.last):
        return "scale"
    pours = tuple(entry for entry in pot.last if isinstance(entry, Poured))
    if not pours:
        return "reads"
    before = next_pour(pot.plan, pot.poured[: len(pot.poured) - len(pours)])
    return "reads" if before and before.paint == pours[0].paint else "wrong"


async def back_to_reading(session: Session, pot: Pot) -> None:
    """Take a reading back that was too much; its digits stand where they were typed."""
    taken = taken_back(session, pot.last)
    pour = next((entry for entry in pot.last if isinstance(entry, Poured)), None)
    form = {"reads": READING, "scale": RESTART}.get(typed_at(pot))
    if pour is None or pour.reads_g is None or form is None:
        await session.keep(*taken)
        return
    fields = (("reads", typed("reads_g", pour.reads_g)), ("fresh", "reads"))
    await session.keep(*taken, Draft(*session.stamp(form), fields))
    session.hush()
