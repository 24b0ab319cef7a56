"""Verbs of a pot that is done: more of it, its colour corrected; it goes back on the scale."""

from dataclasses import replace

from core.errors import require
from core.mixing.correct import Correction, Lack, correct
from core.mixing.cups import ADD_G, more_of_it
from core.mixing.plan import DUST_G, Pour
from core.mixing.portions import Portion, portions, pouring_order
from core.mixing.pot import contents
from core.mixing.scale import BAND_RATIO, shown_g
from core.paints.recipe import Part
from mobile.session.cans.can import can_for
from mobile.session.known import Known, found
from mobile.session.mix.begin import bands_of, density_of
from mobile.session.mix.cans_hold import require_cans
from mobile.session.mix.jars import in_paints
from mobile.session.mix.pots import READING, RESTART, under_way
from mobile.session.mix.recipes import changed_recipe
from mobile.session.mix.scale import room_g
from mobile.session.session import Declined, Session, Undo
from mobile.store.entries import AimChanged
from mobile.store.pot import Pot
from mobile.store.records import Mix
from mobile.words import pot as words

MORE, CORRECTION = "more", "correction"
LEAST_PERCENT = 0.01


def add_form(pot: Pot) -> str:
    """Give the address under which the grams to add are typed."""
    return f"mix/pots/{pot.id}/add"


def correct_form(pot: Pot) -> str:
    """Give the address under which a correction is chosen."""
    return f"mix/pots/{pot.id}/correct"


def with_more(pot: Pot, adds: tuple[Portion, ...]) -> tuple[Portion, ...]:
    """Give the portions of a pot with more in it, in pouring order."""
    parts = contents(tuple(Pour(one.paint, one.net_g) for one in (*pot.holds, *adds) if one.net_g))
    return pouring_order(parts, sum(part.net_g for part in parts))


def _aim(session: Session, pot: Pot, wanted: tuple[Portion, ...], why: str) -> AimChanged:
    known = session.known
    if under_way(known):
        raise Declined(words.SCALE_TAKEN)
    parts = tuple(Part(one.paint, one.net_g) for one in wanted)
    room = room_g(known, density_of(known, parts), pot.started.cup_g)
    require("batch_g", sum(one.net_g for one in wanted), 0.0, room)
    held = {one.paint: one.net_g for one in pot.holds}
    step_g = pot.plan.scale_step_g
    if any(one.paint not in held and one.net_g < step_g for one in wanted):
        raise Declined(words.TOO_LITTLE_TO_ADD)
    adds_g = tuple(one.net_g - held.get(one.paint, 0.0) for one in wanted)
    require_cans(known, tuple(Portion(one.paint, g) for one, g in zip(wanted, adds_g, strict=True)))
    cans = tuple(can_for(known, one.paint, g) for one, g in zip(wanted, adds_g, strict=True))
    ratios = bands_of(known, wanted) or (BAND_RATIO,) * len(wanted)
    # A band is a share of what is poured now: of the whole part it could swallow the addition.
    own = tuple(
        ratio * add_g / one.net_g for ratio, add_g, one in zip(ratios, adds_g, wanted, strict=True)
    )
    return AimChanged(*session.stamp(), pot.id, wanted, cans, own, why)


async def add_to_pot(session: Session, pot: Pot, add_g: float) -> None:
    """Put a pot back on the scale to make more of it, from what was really poured."""
    require("add_g", add_g, *ADD_G)
    adds = more_of_it(in_paints(session.known, pot.holds), add_g)
    entry = _aim(session, pot, with_more(pot, adds), MORE)
    await session.keep(entry, forget=(add_form(pot), READING, RESTART))
    session.tell(words.back_on(pot.started.number), Undo(entries=(entry.id,)))


def correction(known: Known, pot: Pot, lacks: tuple[Lack, ...]) -> Correction:
    """Find the smallest addition to what is in a pot now, paint by paint."""
    return correct(in_paints(known, pot.holds), lacks)


def as_poured(pot: Pot, adds: tuple[Portion, ...]) -> tuple[Portion, ...]:
    """Give what is to be added as the scale shows it, without what is no more than its step."""
    step_g = pot.plan.scale_step_g
    seen = (one for one in adds if one.net_g > step_g + DUST_G)  # the band of the least part
    return tuple(Portion(one.paint, shown_g(one.net_g, step_g)) for one in seen)


def corrected_mix(known: Known, pot: Pot, made: Correction, at_s: float) -> Mix | None:
    """Give the recipe's next version, of a given instant; None where it is off the list."""
    mix = found(known.mixes, pot.started.mix)
    if mix is None:
        return None
    whole = sum(part.parts_count for part in made.parts)
    seen = tuple(p for p in made.parts if 100 * p.parts_count >= LEAST_PERCENT * whole)
    hundred = portions(seen, 100.0, LEAST_PERCENT)  # so that they add up
    parts = tuple(Part(one.paint, one.net_g) for one in hundred)
    new = changed_recipe(mix, parts, "corrected")
    version = replace(new.versions[-1], until_s=at_s)  # so that it goes with its pot's
    return replace(new, versions=(*mix.versions, version), typed_as="percent")


async def correct_pot(session: Session, pot: Pot, lacks: tuple[Lack, ...]) -> None:
    """Put a pot back on the scale with what it lacks; its recipe gets its next version."""
    made = correction(session.known, pot, lacks)
    if not as_poured(pot, made.adds):
        raise Declined(words.TOO_LITTLE_TO_ADD)
    entry = _aim(session, pot, with_more(pot, made.adds), CORRECTION)
    old = found(session.known.mixes, pot.started.mix)
    new = corrected_mix(session.known, pot, made, entry.at_s)
    forget = (correct_form(pot), READING, RESTART)
    await session.keep(entry, *([new] if new else []), forget=forget)
    undo = Undo(entries=(entry.id,), things=(old,) if old else ())
    session.tell(words.corrected(pot.started.number), undo)
