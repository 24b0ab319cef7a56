"""How much room a weigh-out's parts get: no swipe is needed on a usual phone."""

from dataclasses import replace
from math import floor

from mobile import theme as t
from mobile.parts.bucket import Cup
from mobile.parts.figure import LEAST, figure_size
from mobile.parts.keypad import KEY
from mobile.parts.measure import text_width
from mobile.session.view import View

LOCKED_LINE = 79.0  # under the screen while the places are locked
TYPED_RATIO, BLOCK_RATIO, CUP_RATIO, CUP_LEAST = 0.158, 0.26, 0.25, 96.0
ABOVE, PILLS, BESIDE_CAN = 12.0, 44.0, 70.0  # over a screen's first line; part n of m; can and gap
CORNERS = 192.0  # *Leave*, *Scale went off* and the gaps beside what stands between them
STACK_GROWS, ACTION_GROWS = 22.0, 40.0  # what a button's words add at twice the text size
CAN, FIGURE_RATIO, FOOT, CUP_EDGE = 64.0, 0.84, 19.0, 8.0
VERDICT, GAUGE, GAUGE_ROWS = 44.0, 80.0, 6
ANSWER_ROWS, ANSWER_CUP = 520.0, (56.0, 110.0)
KEYS_LEAST, KEYS_MOST = 4 * t.TARGET + 3 * t.GAP, 4 * 1.2 * KEY + 3 * t.GAP
HEAD, PART = 64.0, 75.0
PANE_MOST, BESIDE_FROM, CUP_WIDE = 752.0, 640.0, 330.0
KEYS_LARGE = 330.0  # three rows of keys and the main button under them
NARROW = 380.0


def inside(view: View) -> float:
    """Give the width inside the margins."""
    return view.width - 2 * t.MARGIN


def narrowed(view: View) -> View:
    """Give the view that a weigh-out gets: on a laptop no more than a pane."""
    return replace(view, width=min(view.width, PANE_MOST))


def beside(view: View) -> bool:
    """Tell whether the cup has room beside the figure."""
    return view.width >= BESIDE_FROM and view.text_ratio < t.STACKED_FROM and not low(view)


def low(view: View) -> bool:
    """Tell whether the screen is so low, as on a phone on its side, that the figure comes first."""
    return view.height < t.SHORT


def figure_wide(view: View) -> float:
    """Find how wide the figure may be."""
    return inside(view) - (CUP_WIDE + t.MARGIN if beside(view) else 0)


def block_high(view: View) -> float:
    """Find how high the thumb's block is: about a quarter of the screen."""
    return max(t.MAIN, BLOCK_RATIO * (view.height - LOCKED_LINE))


def side_high(view: View) -> float:
    """Find how high the thumb's button is on a phone on its side: what those over it leave."""
    more = view.text_ratio - 1
    count = 2 if view.text_ratio >= t.STACKED_FROM else 1
    over = count * (t.BUTTON + STACK_GROWS * more + t.GAP) + ACTION_GROWS * min(more, 0.5)
    return max(t.MAIN, view.height - LOCKED_LINE - FOOT - over)


def one_line(part: str, view: View) -> bool:
    """Tell whether part n of m has room between *Leave* and *Scale went off*."""
    usual = view.text_ratio < t.STACKED_FROM
    return t.sideways() or (
        usual and CORNERS + text_width(part, t.FACT) * view.text_ratio <= inside(view)
    )


def answer_cup(view: View) -> Cup:
    """Find how high the three cups of an over-pour's answers may be."""
    least, most = ANSWER_CUP
    high = (view.height - LOCKED_LINE - ANSWER_ROWS) / 3
    return Cup(float(floor(max(least, min(most, high)))), labels=False)


def figure_most(view: View) -> float:
    """Find how large a typed figure may be: on a low screen the keys need the room."""
    return max(LEAST, min(t.TYPED, TYPED_RATIO * view.height))


def keys_high(view: View, reads: str) -> float:
    """Find how high the keypad is: what the figure and the gauge leave."""
    figure = FIGURE_RATIO * figure_size(reads or "0", "g", inside(view), figure_most(view))
    rows = 12 + t.BUTTON + CAN + figure + VERDICT + GAUGE + GAUGE_ROWS * t.GAP
    left = view.height - LOCKED_LINE - FOOT - rows
    return (
        KEYS_LARGE if view.text_ratio >= t.STACKED_FROM else max(KEYS_LEAST, min(KEYS_MOST, left))
    )


def start_keys_high(view: View, parts_count: int) -> float:
    """Find how high the keypad is before a weigh-out: what the figure and the parts leave."""
    figure = FIGURE_RATIO * t.CAN
    rows = HEAD + t.BUTTON + figure + t.TARGET + PART * parts_count + 5 * t.GAP
    left = view.height - t.BAR - FOOT - rows
    return (
        KEYS_LARGE if view.text_ratio >= t.STACKED_FROM else max(KEYS_LEAST, min(KEYS_MOST, left))
    )
