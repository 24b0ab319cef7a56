"""Verbs of *Mix*: keep a recipe, take it off the list."""

from dataclasses import replace

from core.paints.recipe import Part, shares
from mobile import clock
from mobile.session.job.jobs import job_or_new
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.session.walls.amounts import amount_of
from mobile.store.entries import AimChanged
from mobile.store.records import Mix, Paint, Version
from mobile.words import mix as words


async def keep_mix(session: Session, mix: Mix, paints: tuple[Paint, ...] = ()) -> Mix:
    """Keep a recipe and the paints that are new or changed; pots keep their own composition."""
    known = session.known
    shares(mix.parts)
    job, made = job_or_new(session)
    old = found(known.mixes, mix.id)
    mix_id, at_s, device = session.stamp(mix.id)
    if old and old.parts != mix.parts:
        mix = changed_recipe(replace(mix, parts=old.parts), mix.parts, "typed")
    kept = replace(mix, id=mix_id, at_s=at_s, device=device, job=job.id)
    forget = (f"mix/{mix.id if old else 'new'}",)
    await session.keep(*made, *paints, kept, forget=forget)
    before = [found(known.paints, paint.id) for paint in paints]
    new = tuple(p.id for p, was in zip(paints, before, strict=True) if was is None)
    things = tuple(thing for thing in (old, *before) if thing)
    session.tell(words.kept(kept.name), Undo(things=things, forget=(*new, *_gone(old, kept))))
    return kept


def changed_recipe(mix: Mix, parts: tuple[Part, ...], why: str) -> Mix:
    """Give a recipe with other parts; how it was stays among its versions."""
    now_s = clock.now_s()
    return replace(mix, parts=parts, versions=(*mix.versions, Version(now_s, mix.parts, why)))


def uncorrected(known: Known, entry: AimChanged) -> tuple[Mix, ...]:
    """Give the recipe as it was before a pot's correction, if nobody changed it since."""
    return tuple(
        replace(mix, parts=mix.versions[-1].parts, versions=mix.versions[:-1], typed_as="parts")
        for mix in known.mixes
        if mix.versions and mix.versions[-1].until_s == entry.at_s
    )


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


def next_name(known: Known) -> str:
    """Give a name for the next mix."""
    taken = {mix.name for mix in known.job_mixes}
    number = len(taken) + 1
    while words.mix_number(number) in taken:
        number += 1
    return words.mix_number(number)
