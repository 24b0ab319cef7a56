"""*Cans*: from the address to its screen."""

import flet as ft

from mobile.screens.cans.can import CanScreen
from mobile.screens.cans.pick import Pick
from mobile.screens.cans.shelf import AllCans
from mobile.screens.cans.weigh import WeighCan
from mobile.session.address import EDIT, NEW, PICK, with_sheet
from mobile.session.known import Known, found


@ft.component
def CansPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show all cans, the choice of one, one on the scale, or what one is."""
    at, how_up = with_sheet(at)
    can_id, _, rest = at.partition("/")
    can = found(known.cans, can_id)
    if can_id == NEW or (can and (rest == EDIT or can.tare_g is None)):
        return CanScreen(known, can, rest == EDIT, key=f"{can_id} {EDIT}")
    if can:
        return WeighCan(known, can, how_up, key=can_id)
    if can_id == PICK and any(not can.gone for can in known.cans):
        return Pick(known, key=PICK)
    return AllCans(known, key="all")
