"""Verbs of *Mix*: keep a recipe, weigh it out, put a wrong pour right."""

from core.errors import require
from core.mixing.portions import portions, pouring_order
from core.mixing.weigh_out import offset_after_restart, poured_by
from core.paints.recipe import Part, shares
from mobile.session.cans import can_for
from mobile.session.job import changed, job_or_new
from mobile.session.pots import Pot, pots, under_way
from mobile.session.session import Session, Undo
from mobile.store.records import (
    KeptOver,
    MadeMore,
    Mix,
    Paint,
    PotStarted,
    Poured,
    ScaleRestarted,
    Stirred,
    TippedOut,
)
from mobile.words import mix as words


async def keep_mix(session: Session, mix: Mix, new_paints: tuple[Paint, ...] = ()) -> Mix:
    """Keep a recipe, new or changed; pots already weighed keep their own composition."""
    shares(mix.parts)
    job, made = job_or_new(session)
    old = next((kept for kept in session.known.mixes if kept.id == mix.id), None)
    kept = Mix(*session.stamp(mix.id), job.id, mix.name, mix.parts, mix.use, mix.planned_g)
    forget = (f"mix/{mix.id if old else 'new'}",)
    await session.keep(*made, *new_paints, kept, forget=forget)
    session.tell(words.kept(kept.name), Undo(things=(old,)) if old else Undo(forget=(kept.id,)))
    return kept


async def remove_mix(session: Session, mix: Mix) -> None:
    """Take a recipe off the job; its pots stay."""
    await session.keep(forget=(mix.id,))
    session.tell(words.removed(mix.name), Undo(things=(mix,)))


async def start_pot(session: Session, mix: Mix, batch_g: float, cup_g: float | None) -> PotStarted:
    """Put a cup on the scale: fix the portions, their order and their cans."""
    settings = session.known.settings
    require("batch_g", batch_g, settings.scale_step_g, settings.scale_capacity_g - (cup_g or 0.0))
    step_g = settings.scale_step_g
    split = pouring_order(portions(mix.parts, batch_g, step_g), batch_g)
    cans = tuple(can_for(session.known, part.paint, part.net_g) for part in split)
    number = 1 + max((pot.started.number for pot in pots(session.known)), default=0)
    stamp = session.stamp()
    pot = PotStarted(*stamp, mix.job, mix.id, mix.name, number, split, cans, step_g, cup_g)
    await session.keep(pot, changed(session, cup_g=cup_g), forget=(f"mix/{mix.id}/weigh",))
    session.hush()
    return pot


async def on_the_mark(session: Session, pot: Pot) -> None:
    """Log the pour under way as within its band."""
    target = pot.target
    if target is None:
        return
    pour = Poured(*session.stamp(), pot.id, target.paint, pot.can(target.paint), target.net_g, None)
    await session.keep(pour, forget=("weigh",))
    session.tell(words.poured(target.net_g), Undo(entries=(pour.id,)))


async def scale_reads(session: Session, pot: Pot, reads_g: float) -> None:
    """Log what was really poured, from a typed reading."""
    target = pot.target
    if target is None:
        return
    require("reads_g", reads_g, 0.0, session.known.settings.scale_capacity_g)
    net_g = poured_by(pot.plan, pot.poured, reads_g)
    pour = Poured(*session.stamp(), pot.id, target.paint, pot.can(target.paint), net_g, reads_g)
    await session.keep(pour, forget=("weigh",))
    session.tell(words.poured(net_g), Undo(entries=(pour.id,)))


async def make_more(session: Session, pot: Pot, factor_ratio: float) -> None:
    """Answer an over-pour with a bigger batch."""
    entry = MadeMore(*session.stamp(), pot.id, factor_ratio)
    await session.keep(entry)
    session.tell(words.made_more(pot.batch_g * factor_ratio), Undo(entries=(entry.id,)))


async def keep_over(session: Session, pot: Pot, paint: str) -> None:
    """Answer an over-pour by leaving it."""
    entry = KeptOver(*session.stamp(), pot.id, paint)
    await session.keep(entry)
    session.tell(words.KEPT_OVER, Undo(entries=(entry.id,)))


async def tip_out(session: Session, pot: Pot) -> None:
    """Give the pot up and put a new cup on the scale for the same batch."""
    old = pot.started
    tipped = TippedOut(*session.stamp(), pot.id)
    number = 1 + max(other.started.number for other in pots(session.known))
    again = PotStarted(
        *session.stamp(),
        *(old.job, old.mix, old.name, number, old.portions, old.cans, old.scale_step_g, old.cup_g),
    )
    await session.keep(tipped, again)
    undo = Undo(entries=(tipped.id, again.id))
    session.tell(words.tipped(pot.started.number, pot.in_cup_g), undo)


async def give_up(session: Session, pot: Pot) -> None:
    """End a pot without a new one: nothing was poured, or all of it is waste."""
    tipped = TippedOut(*session.stamp(), pot.id)
    await session.keep(tipped)
    session.tell(words.tipped(pot.started.number, pot.in_cup_g), Undo(entries=(tipped.id,)))


async def scale_restarted(session: Session, pot: Pot, reads_g: float, cup_g: float | None) -> None:
    """Carry on after the scale went off; what was poured and not logged yet is found and logged."""
    require("reads_g", reads_g, -session.known.settings.scale_capacity_g, 1e5)
    restart = offset_after_restart(pot.plan, pot.poured, reads_g, cup_g)
    entry = ScaleRestarted(*session.stamp(), pot.id, reads_g, restart.offset_g)
    target = pot.target
    found: tuple[Poured, ...] = ()
    if target is not None and restart.missed_g > pot.plan.scale_step_g:
        can = pot.can(target.paint)
        stamp = session.stamp()
        found = (Poured(*stamp, pot.id, target.paint, can, restart.missed_g, reads_g),)
    await session.keep(entry, *found, forget=("weigh", "weigh/restart"))
    undo = Undo(entries=(entry.id, *(pour.id for pour in found)))
    session.tell(words.restarted(restart.missed_g if found else 0.0), undo)


async def stirred(session: Session, pot: Pot) -> None:
    """Finish a pot."""
    entry = Stirred(*session.stamp(), pot.id)
    await session.keep(entry)
    session.tell(words.stirred(pot.started.number, pot.in_cup_g), Undo(entries=(entry.id,)))


def planned_next(session: Session) -> Mix | None:
    """Give the mix to weigh next: planned grams and no finished pot, in the order of the list."""
    known = session.known
    if under_way(known):
        return None
    done = {pot.started.mix for pot in pots(known) if pot.ended == "stirred"}
    mixes = [mix for mix in known.job_mixes if mix.planned_g and mix.id not in done]
    return mixes[0] if mixes else None


def parts_of(pairs: tuple[tuple[str, float], ...]) -> tuple[Part, ...]:
    """Make parts of paints and numbers."""
    return tuple(Part(paint, parts_count) for paint, parts_count in pairs)
