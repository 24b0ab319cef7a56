"""*Walls*: from the address to its screen."""

import flet as ft

from mobile.screens.walls.measure import MeasureScreen
from mobile.screens.walls.survey import Survey
from mobile.screens.walls.wall import WallScreen
from mobile.screens.walls.zone import ZoneScreen
from mobile.session.address import MEASURE, NEW, ZONES, with_sheet
from mobile.session.known import Known, found
from mobile.store.records import Wall


@ft.component
def WallsPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show all walls, one with its zones, one that is measured, or a zone."""
    at, how = with_sheet(at)
    wall_id, _, rest = at.partition("/")
    wall = found(known.walls, wall_id)
    if wall_id == NEW or (wall and rest == MEASURE):
        return MeasureScreen(known, wall, how, key=f"{wall_id} {MEASURE}")
    return one_wall(known, wall, rest) if wall else Survey(known, key="survey")


def one_wall(known: Known, wall: Wall, rest: str) -> ft.Control:
    """Show a wall, or one of its zones."""
    head, _, zone_id = rest.partition("/")
    if head == ZONES and zone_id:
        return ZoneScreen(known, wall, found(known.zones, zone_id), key=zone_id)
    return WallScreen(known, wall, key=wall.id)
