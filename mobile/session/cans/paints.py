"""Verbs and views of paints: what a label says, where it is missing, a starter set."""

import json
from dataclasses import replace
from typing import Any

from core.cans.price import require_sizes
from core.cans.weighing import LABEL_L
from core.coats.rate import G_M2, SPREAD_M2_L
from core.errors import Refused, require
from core.paints.blend import DENSITY_G_ML, ML_PER_L, SOLIDS_RATIO
from core.waits.pair import require_wait
from mobile.session.cans.can import paint_named
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.store.records import Paint
from mobile.store.shipped import shipped
from mobile.words import paints as words

FILE = "paints/starter.json"
MASS_G = 1.0, 1e5


def density_of(mass_g: float, volume_l: float) -> float:
    """Find a density, g/mL, from a mass and its volume; raise `Refused` if it is no paint's."""
    require("density_mass_g", mass_g, *MASS_G)
    require("density_l", volume_l, *LABEL_L)
    density_g_ml = mass_g / volume_l / ML_PER_L
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    return density_g_ml


def checked(known: Known, paint: Paint) -> Paint:
    """Give a paint; refuse a name that another has, and figures that are no paint's."""
    name = " ".join(paint.name.split())
    same = paint_named(known, name)
    if not name:
        raise Refused("name", paint.name, 1, 80)
    if same and same.id != paint.id:
        raise Refused("paint_taken", name, 0, 0)
    asked = (
        ("density_g_ml", paint.density_g_ml, DENSITY_G_ML),
        ("solids_ratio", paint.solids_ratio, SOLIDS_RATIO),
        ("spread_m2_l", paint.spread_m2_l, SPREAD_M2_L),
        ("rate_g_m2", paint.g_m2, G_M2),
    )
    for quantity, value, limits in asked:
        if value is not None:
            require(quantity, value, *limits)
    if paint.sizes:
        require_sizes(paint.sizes)
    for label in paint.waits:
        require_wait(label.wait)
    return replace(paint, name=name)


async def keep_paint(session: Session, paint: Paint) -> Paint:
    """Keep a paint, new or changed."""
    known = session.known
    kept = checked(known, paint)
    old = found(known.paints, kept.id)
    paint_id, at_s, device = session.stamp(kept.id)
    kept = replace(kept, id=paint_id, at_s=at_s, device=device)
    await session.keep(kept, forget=(f"cans/paints/{paint.id if old else 'new'}",))
    session.tell(words.kept(kept.name), Undo(things=(old,)) if old else Undo(forget=(kept.id,)))
    return kept


def in_use(known: Known, paint: Paint) -> bool:
    """Tell whether a can or a recipe has this paint: then it stays."""
    in_can = any(can.paint == paint.id for can in known.cans)
    return in_can or any(part.paint == paint.id for mix in known.mixes for part in mix.parts)


async def remove_paint(session: Session, paint: Paint) -> None:
    """Take a paint off the list that no can and no recipe has."""
    if in_use(session.known, paint):
        raise Refused("paint_in_use", paint.name, 0, 0)
    await session.keep(forget=(paint.id,))
    session.tell(words.removed(paint.name), Undo(things=(paint,)))


async def take_starter(session: Session) -> None:
    """Put the starter paints on the list, but for those whose names are there."""
    told: list[dict[str, Any]] = json.loads(shipped(FILE))
    new = [
        Paint(
            *session.stamp(),
            p["name"],
            p["day"],
            p["lamp"],
            p["density_g_ml"],
            p["solids_ratio"],
            p["spread_m2_l"],
        )
        for p in told
        if paint_named(session.known, p["name"]) is None
    ]
    await session.keep(*new)
    session.tell(words.starter(len(new)), Undo(forget=tuple(paint.id for paint in new)))


def lacks(paint: Paint) -> tuple[str, ...]:
    """Name what the label says and nobody typed yet."""
    rate = paint.solids_ratio or paint.spread_m2_l or paint.g_m2
    missing = (
        ("density", paint.density_g_ml is None),
        ("rate", not rate),
        ("price", not any(size.price is not None for size in paint.sizes)),
    )
    return tuple(name for name, lacking in missing if lacking)
