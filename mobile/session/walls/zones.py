"""Verbs and views of zones: parts of a wall, each with its area and so many coats of a mix."""

from dataclasses import replace

from core.coats.need import AREA_M2, COATS_COUNT
from core.errors import require
from mobile.session.known import Known, found
from mobile.session.mix.pots import pots
from mobile.session.session import Session, Undo
from mobile.session.walls.walls import area_of
from mobile.store.pot import Pot
from mobile.store.records import Wall, Zone
from mobile.words import walls as words

LEAST_M2 = 0.001
WHOLE = "promoter", "base", "clear"  # mixes that lie on whole walls


def zones_of(known: Known, wall: Wall) -> tuple[Zone, ...]:
    """Give a wall's zones, in their order."""
    return tuple(zone for zone in known.zones if zone.wall == wall.id)


def zones_m2(known: Known, wall: Wall) -> float:
    """Sum the areas of a wall's zones; zones may lie on each other."""
    return sum(zone.area_m2 for zone in zones_of(known, wall))


def pots_for(known: Known, wall: Wall) -> tuple[Pot, ...]:
    """Give the pots of the mixes that lie on a wall, newest first."""
    zoned = {zone.mix for zone in zones_of(known, wall)}
    whole = {
        mix.id
        for mix in known.job_mixes
        if mix.use in WHOLE and (not mix.walls or wall.id in mix.walls)
    }
    own = zoned | whole
    return tuple(p for p in reversed(pots(known)) if p.started.mix in own and p.poured)


def next_zone_name(known: Known, wall: Wall) -> str:
    """Give a name for the next zone."""
    taken = {zone.name for zone in zones_of(known, wall)}
    number = len(taken) + 1
    while words.zone(number) in taken:
        number += 1
    return words.zone(number)


async def keep_zone(session: Session, zone: Zone) -> Zone:
    """Keep a zone, new or changed; one larger than its wall is refused."""
    known = session.known
    wall = found(known.walls, zone.wall)
    most_m2 = area_of(known, wall.shape).gross_m2 if wall else AREA_M2[1]
    require("zone_area_m2", zone.area_m2, LEAST_M2, most_m2)
    require("coats_count", zone.coats_count, *COATS_COUNT)
    old = found(known.zones, zone.id)
    zone_id, at_s, device = session.stamp(zone.id)
    kept = replace(zone, id=zone_id, at_s=at_s, device=device)
    await session.keep(kept, forget=(f"walls/{zone.wall}/zones/{zone.id if old else 'new'}",))
    session.tell(words.kept(kept.name), Undo(things=(old,)) if old else Undo(forget=(kept.id,)))
    return kept


async def remove_zone(session: Session, zone: Zone) -> None:
    """Take a zone off its wall; coats that were finished there stay in the book."""
    await session.keep(forget=(zone.id,))
    session.tell(words.zone_removed(zone.name), Undo(things=(zone,)))
