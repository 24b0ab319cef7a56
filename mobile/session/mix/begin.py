"""Verbs of *Mix*: put a cup on the scale for a mix."""

from dataclasses import replace

from core.colours.mixture import Looks, looks_of
from core.errors import require
from core.mixing.band import bands
from core.mixing.limit import most_in_cup_g
from core.mixing.portions import Portion, portions, pouring_order
from core.paints.blend import blend
from core.paints.recipe import Part
from mobile import clock
from mobile.session.cans.can import can_for
from mobile.session.job.jobs import settings_now
from mobile.session.known import Known, found
from mobile.session.mix.cans_hold import holds_g, require_cans
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import in_paints
from mobile.session.mix.pots import READING, RESTART, next_number, under_way
from mobile.session.mix.scale import room_g
from mobile.session.mix.to_weigh import to_weigh_next
from mobile.session.session import Session
from mobile.store.entries import (
    CanStirred,
    CautionRead,
    PotStarted,
)
from mobile.store.pot import Pot
from mobile.store.records import Mix

STIR = "stir the cans"  # asked once a day


def split(known: Known, mix: Mix, batch_g: float, cup_g: float | None) -> tuple[Portion, ...]:
    """Split a batch into portions in pouring order; raise `Refused` where the scale can't."""
    settings = known.settings
    require("cup_g", cup_g or 0.0, 0.0, settings.scale_capacity_g)
    require("batch_g", batch_g, settings.scale_step_g, settings.scale_capacity_g - (cup_g or 0.0))
    require("bucket_g", batch_g, 0.0, room_g(known, density_of(known, mix.parts), cup_g or 0.0))
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
    require_cans(known, parts)
    cans = tuple(can_for(known, part.paint, part.net_g) for part in parts)
    settings = known.settings
    started = PotStarted(
        *session.stamp(),
        job=mix.job,
        mix=mix.id,
        name=mix.name,
        number=next_number(known, mix.job),
        portions=parts,
        cans=cans,
        scale_step_g=settings.scale_step_g,
        cup_g=cup_g,
        way=settings.way,
        like=like,
        parts_band_ratio=bands_of(known, parts),
        who=settings.who,
        lots=lots_of(known, cans),
    )
    forms = (f"mix/{mix.id}/weigh", *([f"mix/pots/{like}/more"] if like else []))
    forget = (*forms, READING, RESTART)
    await session.keep(started, replace(settings_now(session), cup_g=cup_g), forget=forget)
    session.hush()
    return started


def bands_of(known: Known, parts: tuple[Portion, ...]) -> tuple[float, ...]:
    """Give each part's band from what a slip does to the colour; none where a look is missing."""
    looks = tuple(looks_known(known, part.paint) for part in parts)
    reckoned = bands(parts, looks)
    return reckoned.parts_ratio if reckoned.working else ()


def looks_known(known: Known, paint_id: str) -> Looks | None:
    """Give a paint's two looks as light; None where one is not known."""
    paint = paint_of(known, paint_id)
    return looks_of(paint.day, paint.lamp) if paint.day and paint.lamp else None


def lots_of(known: Known, cans: tuple[str, ...]) -> tuple[str, ...]:
    """Give the lot of each can, as its label has it."""
    return tuple(can.lot if (can := found(known.cans, one)) else "" for one in cans)


def density_of(known: Known, parts: tuple[Part, ...]) -> float | None:
    """Give the density of a mix; None where one of its paints has none."""
    densities = [paint_of(known, part.paint).density_g_ml for part in parts]
    told = tuple(one for one in densities if one is not None)
    return blend(parts, told, 1.0).density_g_ml if len(told) == len(densities) else None


def like_pot(known: Known, pot: Pot) -> Mix:
    """Give a pot as a recipe: parts as they were really poured, a jar as what it held."""
    parts = tuple(Part(one.paint, one.net_g) for one in in_paints(known, pot.went_in))
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


def not_stirred(known: Known, pot: Pot) -> tuple[str, ...]:
    """Give the cans of a pot that nobody has stirred through today."""
    today = clock.day(clock.now_s())
    done = {entry.can for entry in known.of(CanStirred) if entry.day == today}
    return tuple(dict.fromkeys(can for can in pot.cans if can and can not in done))


def stir_due(known: Known, pot: Pot) -> bool:
    """Tell whether to ask if the cans are stirred: each once a day, before the first pour.

    Where no paint has a can, it is asked once a day for the job.
    """
    if pot.last:
        return False
    if any(pot.cans):
        return bool(not_stirred(known, pot))
    today, job = clock.day(clock.now_s()), pot.started.job
    said = (e for e in known.of(CautionRead) if e.caution == STIR and e.job == job)
    return all(entry.day != today for entry in said)


async def said_stirred(session: Session, pot: Pot) -> None:
    """Log that the cans were stirred today, each can for itself."""
    day = clock.day(clock.now_s())
    if cans := not_stirred(session.known, pot):
        await session.keep(*(CanStirred(*session.stamp(), can, day) for can in cans))
        return
    await session.keep(CautionRead(*session.stamp(), pot.started.job, STIR, day))


def room_for_g(known: Known, pot: Pot) -> float:
    """Find how much paint cup, bucket and scale take for a pot, strays counted."""
    parts = tuple(Part(one.paint, one.net_g) for one in pot.plan.portions)
    cup_g = max(pot.started.cup_g or 0.0, pot.plan.offset_g - pot.strays_g)
    return room_g(known, density_of(known, parts), cup_g)


def takes_g(known: Known, pot: Pot) -> float:
    """Find how much paint cup, bucket, scale and cans allow for a pot, strays counted."""
    room = room_for_g(known, pot)
    has_g = tuple(holds_g(known, part.paint) for part in pot.plan.portions)
    most_g = most_in_cup_g(pot.plan, pot.poured, has_g)
    return room if most_g is None else min(room, most_g + pot.strays_g)


def can_keep(known: Known, pot: Pot) -> bool:
    """Tell whether cup, bucket and scale take a pot as it comes out if what is over stays."""
    return not too_heavy(known, pot, pot.comes_to_g)


def too_heavy(known: Known, pot: Pot, total_g: float) -> bool:
    """Tell whether so much paint in a pot is more than cup, bucket or scale take."""
    return total_g > room_for_g(known, pot)
