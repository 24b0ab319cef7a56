"""*Walls*: from the address to its screen."""

import flet as ft

from mobile.screens.walls.survey import Survey
from mobile.screens.walls.wall import WallScreen
from mobile.session.address import NEW, with_sheet
from mobile.session.known import Known, found


@ft.component
def WallsPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show all walls, or the one that is measured."""
    wall_id, how = with_sheet(at)
    wall = found(known.walls, wall_id)
    if wall or wall_id == NEW:
        return WallScreen(known, wall, how, key=wall_id)
    return Survey(known, key="survey")
