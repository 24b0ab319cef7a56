"""Jars of leftovers as paints: a name, two looks, a density, what is left of each."""

from dataclasses import replace
from itertools import takewhile

from core.colours.look import look_of
from core.colours.mixture import looks_of, mixed
from core.mixing.portions import Portion
from core.mixing.use_up import use_up
from core.paints.blend import blend
from core.paints.recipe import Part, shares
from mobile.session.known import Known, found
from mobile.session.mix.pots import pot_by
from mobile.store.entries import LeftoverKept, PotStarted, Poured
from mobile.store.pot_of import OfAPot, pot_of
from mobile.store.records import Mix, Paint
from mobile.words import cups as words

LEAST_G = 0.05  # what is less is an empty jar


def jar_of(known: Known, paint_id: str) -> LeftoverKept | None:
    """Find the jar that a part names; None where it names a paint."""
    return found(known.of(LeftoverKept), paint_id)


def left_g(known: Known, jar: LeftoverKept) -> float:
    """Give what is still in a jar."""
    out_g = sum(pour.net_g for pour in known.of(Poured) if pour.paint == jar.id)
    return max(0.0, jar.net_g - out_g)


def moved_g(known: Known, pot_id: str) -> float:
    """Give what went out of a pot's jars into pots that are over; it counts as made there."""
    jars = {jar.id for jar in known.of(LeftoverKept) if jar.pot == pot_id}
    pours = (pour for pour in known.of(Poured) if pour.paint in jars)
    return sum(one.net_g for one in pours if (pot := pot_by(known, one.pot)) and pot.ended)


def holds(known: Known, jar: LeftoverKept) -> tuple[str, tuple[Portion, ...]]:
    """Give the name of a jar's mix, and what had gone into its pot when it was filled.

    A pot can be added to or corrected later; that changes no jar.
    """
    started = found(known.of(PotStarted), jar.pot)
    if started is None:
        return "", ()
    entries = takewhile(lambda entry: entry.id != jar.id, known.entries)
    own = tuple(one for one in entries if isinstance(one, OfAPot) and one.pot == jar.pot)
    return started.name, pot_of(started, own).went_in


def jar_paint(known: Known, jar: LeftoverKept) -> Paint:
    """Give a jar as a paint: mixed of what was really poured into its pot."""
    mix, parts = holds(known, jar)
    blank = Paint(jar.id, jar.at_s, jar.device, words.leftover(jar.number, mix))
    told = tuple(paint for one in parts if (paint := found(known.paints, one.paint)))
    if not parts or len(told) < len(parts):
        return blank  # of another leftover, or of a paint that is off the list
    day, lamp = _looks(parts, told)
    return replace(blank, day=day, lamp=lamp, density_g_ml=_density_g_ml(parts, told))


def _looks(parts: tuple[Portion, ...], paints: tuple[Paint, ...]) -> tuple[str, str]:
    if not all(paint.day and paint.lamp for paint in paints):
        return "", ""
    weights = shares(tuple(Part(one.paint, one.net_g) for one in parts))
    day, lamp = mixed(weights, tuple(looks_of(paint.day, paint.lamp) for paint in paints))
    return look_of(day), look_of(lamp)


def _density_g_ml(parts: tuple[Portion, ...], paints: tuple[Paint, ...]) -> float | None:
    told = tuple(paint.density_g_ml for paint in paints if paint.density_g_ml is not None)
    if len(told) < len(parts):
        return None
    mixed = tuple(Part(one.paint, one.net_g) for one in parts)
    return blend(mixed, told, 1.0).density_g_ml


def in_paints(known: Known, parts: tuple[Portion, ...]) -> tuple[Portion, ...]:
    """Give parts paint by paint: a jar counts as what had really gone into its pot.

    A jar of which nobody knows what is in it stays one.
    """
    out: dict[str, float] = {}
    for one in parts:
        jar = jar_of(known, one.paint)
        inside = in_paints(known, holds(known, jar)[1]) if jar else ()
        whole_g = sum(each.net_g for each in inside)
        for each in inside or (one,):
            net_g = one.net_g * each.net_g / whole_g if inside else one.net_g
            out[each.paint] = out.get(each.paint, 0.0) + net_g
    return tuple(Portion(paint, net_g) for paint, net_g in out.items())


def job_jars(known: Known) -> tuple[LeftoverKept, ...]:
    """Give the open job's jars that still hold something."""
    job = known.job
    return tuple(
        jar
        for jar in known.of(LeftoverKept)
        if (pot := pot_by(known, jar.pot))
        and job
        and pot.started.job == job.id
        and left_g(known, jar) > LEAST_G
    )


def all_paints(known: Known) -> tuple[Paint, ...]:
    """Give the paints of the shop, and the open job's jars as paints."""
    return (*known.paints, *(jar_paint(known, jar) for jar in job_jars(known)))


def jars_for(known: Known, mix: Mix) -> tuple[LeftoverKept, ...]:
    """Give the jars that may hold a mix's colour: leftovers of its own pots."""
    return tuple(
        jar
        for jar in job_jars(known)
        if (pot := pot_by(known, jar.pot)) and pot.started.mix == mix.id
    )


def with_jar(known: Known, mix: Mix, batch_g: float, jar: LeftoverKept) -> Mix | None:
    """Give a mix for one pot that uses a jar up, its parts in grams; None where it can't be.

    What the jar holds counts as what was really poured into its pot, a jar in there as its own.
    A part of which less than a step of the scale is missing then is left out: no scale shows it.
    """
    inside = in_paints(known, holds(known, jar)[1])
    if not inside:
        return None
    whole = shares(mix.parts)
    batch = tuple(
        Portion(part.paint, batch_g * share) for part, share in zip(mix.parts, whole, strict=True)
    )
    found_g = use_up(batch, inside, left_g(known, jar))
    if found_g.used_g <= LEAST_G:
        return None
    least_g = max(LEAST_G, known.settings.scale_step_g)
    rest = tuple(Part(one.paint, one.net_g) for one in found_g.rest if one.net_g >= least_g)
    return replace(mix, parts=(Part(jar.id, found_g.used_g), *rest))
