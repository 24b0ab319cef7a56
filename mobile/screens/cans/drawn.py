"""A can as it is drawn and said, wherever it stands."""

from core.units import System
from mobile.parts.can import CanFace
from mobile.session.cans.can import CanNow
from mobile.session.view import View
from mobile.words import cans as words
from mobile.words import places


def name_of(now: CanNow) -> str:
    """Name the paint in a can."""
    return now.paint.name if now.paint else places.UNKNOWN


def face_of(now: CanNow, level_ratio: float | None) -> CanFace:
    """Draw a can so full."""
    return CanFace(now.can.number, now.paint.day if now.paint else "", level_ratio)


def spoken(now: CanNow, level_ratio: float | None, view: View) -> str:
    """Say what a drawn can shows."""
    share = "" if level_ratio is None else view.show("full_ratio", level_ratio)
    return words.spoken(now.can.number, name_of(now), share)


def grams_of(now: CanNow, view: View) -> str:
    """Say what should be in a can; that it was never weighed."""
    net_g = now.balance.should_be_g
    return words.NEVER_WEIGHED if net_g is None else view.show("net_g", net_g)


def litres_of(now: CanNow, view: View) -> str:
    """Say the litres that should be in a can, and those of its label, as far as they are known."""
    litres_l, label_l = now.volume_l(now.balance.should_be_g), now.can.label_l
    left = "" if litres_l is None else litres(litres_l, view)
    return words.of_label(left, "" if label_l is None else litres(label_l, view))


def litres(volume_l: float, view: View) -> str:
    """Write litres no finer than a can is filled; fluid ounces as they are."""
    return view.show("volume_l", volume_l, 2 if view.system is System.METRIC else None)
