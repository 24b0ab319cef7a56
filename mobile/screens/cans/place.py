"""*Cans*: from the address to its screen."""

import flet as ft

from mobile.screens.cans.can import CanScreen
from mobile.screens.cans.lid import LidScreen
from mobile.screens.cans.paint import PaintScreen
from mobile.screens.cans.paints import Paints
from mobile.screens.cans.pick import Pick
from mobile.screens.cans.pours import Pours
from mobile.screens.cans.shelf import AllCans
from mobile.screens.cans.weigh import WeighCan
from mobile.session.address import EDIT, LID, NEW, PAINTS, PICK, POURS, with_sheet
from mobile.session.known import Known, found
from mobile.store.records import Can


@ft.component
def CansPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show all cans, the choice of one, one on the scale, or what one is."""
    at, how_up = with_sheet(at)
    can_id, _, rest = at.partition("/")
    can = found(known.cans, can_id)
    if can_id == PAINTS:
        return paints(known, rest)
    if can_id == NEW or (can and (rest == EDIT or can.tare_g is None)):
        return CanScreen(known, can, rest == EDIT, key=f"{can_id} {EDIT}")
    return one_can(known, can, rest, how_up) if can else cans(known, can_id)


def one_can(known: Known, can: Can, rest: str, how_up: bool) -> ft.Control:
    """Show a can on the scale, what went out of it, or ask how long its lid was off."""
    if rest == POURS:
        return Pours(known, can, key=f"{can.id} {POURS}")
    if rest == LID:
        return LidScreen(known, can, key=f"{can.id} {LID}")
    return WeighCan(known, can, how_up, key=can.id)


def cans(known: Known, at: str) -> ft.Control:
    """Show all cans, or the choice of one."""
    if at == PICK and any(not can.gone for can in known.cans):
        return Pick(known, key=PICK)
    return AllCans(known, key="all")


def paints(known: Known, paint_id: str) -> ft.Control:
    """Show all paints, or what the label of one says."""
    paint = found(known.paints, paint_id)
    if paint or paint_id == NEW:
        return PaintScreen(known, paint, key=f"paint {paint_id}")
    return Paints(known, key="paints")
