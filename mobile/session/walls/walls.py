"""Verbs and views of *Walls*."""

from core.errors import Refused
from core.walls.area import PaintedArea, painted_area
from core.walls.shape import Wall as Shape
from mobile.session.job.jobs import job_or_new
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.store.records import Wall
from mobile.words import walls as words


def area_of(known: Known, shape: Shape) -> PaintedArea:
    """Find what is painted of a shape under the job's rule; raise `Refused` if it can't be."""
    job = known.job
    return painted_area(shape, job.deducted_above_m2) if job else painted_area(shape)


def job_area_m2(known: Known) -> float:
    """Sum the painted areas of the open job's walls."""
    return sum(area_of(known, wall.shape).net_m2 for wall in known.job_walls)


def place_area_m2(known: Known, place_id: str) -> float:
    """Give the painted area of a whole wall, or the typed one of a zone; 0 for what is gone."""
    wall, zone = found(known.walls, place_id), found(known.zones, place_id)
    if zone:
        return zone.area_m2
    return area_of(known, wall.shape).net_m2 if wall else 0.0


def next_name(known: Known) -> str:
    """Give a name for the next wall."""
    taken = {wall.name for wall in known.job_walls}
    number = len(taken) + 1
    while words.wall(number) in taken:
        number += 1
    return words.wall(number)


def others(known: Known, wall_id: str) -> tuple[Wall, ...]:
    """Give the open job's walls but for one: lines on other screens tell walls by their names."""
    return tuple(wall for wall in known.job_walls if wall.id != wall_id)


async def keep_wall(session: Session, wall_id: str, name: str, shape: Shape) -> Wall:
    """Keep a wall, new or changed, with its draft dropped; an empty name becomes the next one."""
    known = session.known
    area_of(known, shape)
    job, made = job_or_new(session)
    old = found(known.walls, wall_id)
    called = name.strip() or next_name(known)
    if any(other.name.casefold() == called.casefold() for other in others(known, wall_id)):
        raise Refused("wall_taken", called, 0, 0)
    wall = Wall(*session.stamp(wall_id), job.id, called, shape)
    await session.keep(*made, wall, forget=(f"walls/{wall_id if old else 'new'}",))
    undo = Undo(things=(old,)) if old else Undo(forget=(wall.id,))
    session.tell(words.kept(wall.name), undo)
    return wall


async def remove_wall(session: Session, wall: Wall) -> None:
    """Take a wall off the job."""
    await session.keep(forget=(wall.id,))
    session.tell(words.removed(wall.name), Undo(things=(wall,)))
