"""Verbs of *Mix*: keep a recipe, weigh it out, put a wrong pour right."""

from dataclasses import replace

from core.errors import require
from core.mixing.over_pour import Make
from core.mixing.portions import Portion, portions, pouring_order
from core.mixing.pot import contents
from core.mixing.restart import Restart, offset_after_restart
from core.mixing.weigh_out import poured_g
from core.paints.recipe import Part, shares
from core.units import typed
from mobile import clock
from mobile.session.amounts import amount_of
from mobile.session.cans import can_for
from mobile.session.job import job_or_new, settings_now
from mobile.session.known import Known, found
from mobile.session.pots import next_number, tipped_before, under_way
from mobile.session.session import Session, Undo
from mobile.session.to_weigh import to_weigh_next
from mobile.store.entries import (
    CautionRead,
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
from mobile.store.records import Draft, Mix, Paint
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

READING, RESTART = "weigh", "weigh/scale"  # drafts: what is typed of a reading
STIR = "stir the cans"  # asked once a day
BOUNCE_S = 0.3  # a wet knuckle touches twice; nobody pours a part in that time


async def keep_mix(session: Session, mix: Mix, paints: tuple[Paint, ...] = ()) -> Mix:
    """Keep a recipe and the paints that are new or changed; pots keep their own composition."""
    known = session.known
    shares(mix.parts)
    job, made = job_or_new(session)
    old = found(known.mixes, mix.id)
    mix_id, at_s, device = session.stamp(mix.id)
    kept = replace(mix, id=mix_id, at_s=at_s, device=device, job=job.id)
    forget = (f"mix/{mix.id if old else 'new'}",)
    await session.keep(*made, *paints, kept, forget=forget)
    before = [found(known.paints, paint.id) for paint in paints]
    new = tuple(p.id for p, was in zip(paints, before, strict=True) if was is None)
    things = tuple(thing for thing in (old, *before) if thing)
    session.tell(words.kept(kept.name), Undo(things=things, forget=(*new, *_gone(old, kept))))
    return kept


async def keep_amount(session: Session, mix: Mix) -> None:
    """Keep what a mix takes: its rate, losses, tools, cups, kit and walls."""
    known = session.known
    amount_of(known, mix)
    old = found(known.mixes, mix.id)
    mix_id, at_s, device = session.stamp(mix.id)
    kept = replace(mix, id=mix_id, at_s=at_s, device=device)
    await session.keep(kept, forget=(f"mix/{mix.id}/amount",))
    session.tell(words.kept(kept.name), Undo(things=(old,)) if old else None)


def _gone(old: Mix | None, kept: Mix) -> tuple[str, ...]:
    return () if old else (kept.id,)


async def remove_mix(session: Session, mix: Mix) -> None:
    """Take a recipe off the job; its pots stay."""
    await session.keep(forget=(mix.id, f"mix/{mix.id}", f"mix/{mix.id}/weigh"))
    session.tell(words.removed(mix.name), Undo(things=(mix,)))


def split(known: Known, mix: Mix, batch_g: float, cup_g: float | None) -> tuple[Portion, ...]:
    """Split a batch into portions in pouring order; raise `Refused` where the scale can't."""
    settings = known.settings
    require("cup_g", cup_g or 0.0, 0.0, settings.scale_capacity_g)
    require("batch_g", batch_g, settings.scale_step_g, settings.scale_capacity_g - (cup_g or 0.0))
    return pouring_order(portions(mix.parts, batch_g, settings.scale_step_g), batch_g)


async def start_pot(
    session: Session, mix: Mix, batch_g: float, cup_g: float | None, like: str = ""
) -> PotStarted:
    """Put a cup on the scale: fix the portions, their order and their cans.

    There is one scale: while a pot is under way that one is given, and no other is begun. `like`
    is the pot whose composition `mix` repeats.
    """
    known = session.known
    if pot := under_way(known):
        return pot.started
    parts = split(known, mix, batch_g, cup_g)
    cans = tuple(can_for(known, part.paint, part.net_g) for part in parts)
    number, settings = next_number(known, mix.job), known.settings
    at_scale = settings.scale_step_g, cup_g, settings.way
    stamp = session.stamp()
    started = PotStarted(*stamp, mix.job, mix.id, mix.name, number, parts, cans, *at_scale, like)
    forms = (f"mix/{mix.id}/weigh", *([f"mix/pots/{like}/more"] if like else []))
    forget = (*forms, READING, RESTART)
    await session.keep(started, replace(settings_now(session), cup_g=cup_g), forget=forget)
    session.hush()
    return started


def like_pot(pot: Pot) -> Mix:
    """Give a pot as a recipe: parts as they were really poured."""
    parts = tuple(Part(one.paint, one.net_g) for one in contents(pot.poured) if one.net_g)
    started = pot.started
    stamp = started.mix, started.at_s, started.device
    return Mix(*stamp, started.job, started.name, parts)


async def start_planned(session: Session) -> PotStarted | None:
    """Put the next load on the scale; the way to `/mix/weigh` is short.

    A pot that is under way is given back instead; None where nothing is planned.
    """
    known = session.known
    if pot := under_way(known):
        return pot.started
    load = to_weigh_next(known)
    if load is None:
        return None
    return await start_pot(session, load.mix, load.load_g, known.settings.cup_g)


def bounced(pot: Pot) -> bool:
    """Tell whether a touch comes too soon after what was logged last to be meant."""
    return 0 <= clock.now_s() - pot.at_s < BOUNCE_S


async def on_the_mark(session: Session, pot: Pot) -> None:
    """Log the pour under way as within its band."""
    target = pot.target
    if target is None:
        return
    can = pot.can(target.paint)
    pour = Poured(*session.stamp(), pot.id, target.paint, can, target.net_g, None)
    await session.keep(pour, forget=(READING,))
    session.tell(weigh_words.poured(target.net_g), Undo(entries=(pour.id,)))


def net_of(known: Known, pot: Pot, reads_g: float) -> float:
    """Find what was poured by a reading; raise `Refused` for one that can't be."""
    require("reads_g", reads_g, 0.0, known.settings.scale_capacity_g)
    return poured_g(pot.plan, pot.poured, reads_g)


async def scale_reads(session: Session, pot: Pot, reads_g: float) -> None:
    """Log what was really poured, from a typed reading."""
    target = pot.target
    if target is None:
        return
    net_g = net_of(session.known, pot, reads_g)
    can = pot.can(target.paint)
    pour = Poured(*session.stamp(), pot.id, target.paint, can, net_g, reads_g)
    await session.keep(pour, forget=(READING,))
    session.tell(weigh_words.poured(net_g), Undo(entries=(pour.id,)))


async def make_more(session: Session, pot: Pot, make: Make) -> None:
    """Answer an over-pour with a bigger batch."""
    entry = MadeMore(*session.stamp(), pot.id, make.factor_ratio)
    await session.keep(entry)
    session.tell(weigh_words.made_more(make.total_g), Undo(entries=(entry.id,)))


async def keep_over(session: Session, pot: Pot, paint: str) -> None:
    """Answer an over-pour by leaving it."""
    entry = KeptOver(*session.stamp(), pot.id, paint)
    await session.keep(entry)
    session.tell(weigh_words.KEPT_OVER, Undo(entries=(entry.id,)))


async def tip_out(session: Session, pot: Pot) -> None:
    """Give the pot up and put a new cup on the scale for the same batch."""
    old = pot.started
    tipped = TippedOut(*session.stamp(), pot.id)
    number, again_id = next_number(session.known, old.job), session.stamp()[0]
    again = replace(
        old, id=again_id, at_s=tipped.at_s, device=tipped.device, number=number
    )  # of the same instant: one act
    await session.keep(tipped, again, forget=(READING,))
    undo = Undo(entries=(tipped.id, again.id))
    session.tell(weigh_words.tipped(old.number, pot.in_cup_g), undo)


async def give_up(session: Session, pot: Pot) -> None:
    """End a pot without a new one: nothing was poured, or all of it is waste."""
    tipped = TippedOut(*session.stamp(), pot.id)
    await session.keep(tipped, forget=(READING, RESTART))
    session.tell(weigh_words.tipped(pot.started.number, pot.in_cup_g), Undo(entries=(tipped.id,)))


def restart_of(known: Known, pot: Pot, reads_g: float) -> Restart:
    """Find what a reading says after the scale went off; raise `Refused` for one that can't be."""
    require("reads_g", reads_g, 0.0, known.settings.scale_capacity_g)
    return offset_after_restart(pot.plan, pot.poured, reads_g, pot.started.cup_g)


async def scale_restarted(session: Session, pot: Pot, reads_g: float) -> Restart:
    """Carry on after the scale went off; what was poured and not logged is found and logged."""
    restart = restart_of(session.known, pot, reads_g)
    entry = ScaleRestarted(*session.stamp(), pot.id, reads_g, restart.offset_g)
    target = pot.target
    pours: tuple[Poured, ...] = ()
    if target and restart.missed_g:
        same_instant = (session.stamp()[0], entry.at_s, entry.device)
        can = pot.can(target.paint)
        pours = (Poured(*same_instant, pot.id, target.paint, can, restart.missed_g, reads_g),)
    await session.keep(entry, *pours, forget=(READING, RESTART))
    undo = Undo(entries=(entry.id, *(pour.id for pour in pours)))
    session.tell(weigh_words.restarted(restart.missed_g), undo)
    return restart


async def stirred(session: Session, pot: Pot) -> None:
    """Finish a pot."""
    entry = Stirred(*session.stamp(), pot.id)
    await session.keep(entry, forget=(READING, RESTART))
    session.tell(words.stirred(pot.started.number, pot.in_cup_g), Undo(entries=(entry.id,)))


async def undo_last(session: Session, pot: Pot) -> None:
    """Take back what was logged last in a weigh-out; in a new cup, that the old one was tipped."""
    last = [entry.id for entry in pot.last]
    if not last and (tipped := tipped_before(session.known, pot)):
        last = [tipped.id, pot.id]
    if not last:
        return
    taken = tuple(Undone(*session.stamp(), entry) for entry in last)
    await session.keep(*taken, forget=(READING,))
    session.hush()


async def back_to_reading(session: Session, pot: Pot) -> None:
    """Take a reading back that was too much; its digits stand on the keypad again."""
    taken = tuple(Undone(*session.stamp(), entry.id) for entry in pot.last)
    pour = next((entry for entry in pot.last if isinstance(entry, Poured)), None)
    if pour is None or pour.reads_g is None:
        await session.keep(*taken)
        return
    fields = (("reads", typed("reads_g", pour.reads_g)), ("fresh", "reads"))
    await session.keep(*taken, Draft(*session.stamp(READING), fields))
    session.hush()


def stir_due(known: Known, pot: Pot) -> bool:
    """Tell whether to ask if the cans are stirred: once a day, before the first pour."""
    today, job = clock.day(clock.now_s()), pot.started.job
    said = (e for e in known.of(CautionRead) if e.caution == STIR and e.job == job)
    return not pot.last and all(entry.day != today for entry in said)


async def said_stirred(session: Session, pot: Pot) -> None:
    """Log that the cans were stirred today."""
    day = clock.day(clock.now_s())
    await session.keep(CautionRead(*session.stamp(), pot.started.job, STIR, day))


def next_name(known: Known) -> str:
    """Give a name for the next mix."""
    taken = {mix.name for mix in known.job_mixes}
    number = len(taken) + 1
    while words.mix_number(number) in taken:
        number += 1
    return words.mix_number(number)
