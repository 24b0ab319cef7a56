"""How much room the keypad and the figure get."""

from mobile import theme as t
from mobile.parts.can import LARGE_CAN
from mobile.session.view import View

KEYS_SHARE = 0.41  # of the screen: the thumb's half, less the bar of places
KEYS_LEAST, KEYS_MOST = 4 * 60.0 + 3 * t.GAP, 4 * 92.0 + 3 * t.GAP


def inside(view: View) -> float:
    """Give the width inside the margins."""
    return view.width - 2 * t.MARGIN


def figure_wide(view: View) -> float:
    """Give the width that is left beside the drawn can."""
    return inside(view) - LARGE_CAN[0] - t.MARGIN - t.GAP


def keys_high(view: View) -> float:
    """Find how high the keypad is."""
    return min(KEYS_MOST, max(KEYS_LEAST, KEYS_SHARE * view.height))
