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
STACK_GROWS, ACTION_GROWS, LOCKED_GROWS = 22.0, 40.0, 41.0  # added at twice the text size
CAN, FIGURE_RATIO, FOOT, CUP_EDGE = 64.0, 0.84, 19.0, 8.0
VERDICT, GAUGE, GAUGE_ROWS = 44.0, 80.0, 6
ANSWER_ROWS, ANSWER_CUP = 520.0, (56.0, 110.0)
KEYS_LEAST, KEYS_MOST = 4 * t.TARGET + 3 * t.GAP, 4 * 1.2 * KEY + 3 * t.GAP
HEAD, PART = 64.0, 75.0
PANE_MOST, BESIDE_FROM, CUP_WIDE = 752.0, 640.0, 330.0
KEYS_LARGE = 330.0  # three rows of keys and the main button under them
NARROW, LEAST_WIDE, TIGHT = 380.0, 320.0, 760.0
CLOSE_READS, CLOSE_MISHAP, MISHAP = 240.0, 237.0, 345.0  # their rows but the figure
MISHAP_LEAST, BESIDE_BUTTON, START_LOW = 62.0, 92.0, 620.0


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
    return max(t.MAIN, view.height - LOCKED_LINE - LOCKED_GROWS * more - FOOT - over)


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


def tight(view: View) -> bool:
    """Tell whether a screen with a keypad is so low that its lines stand close."""
    return view.text_ratio < t.STACKED_FROM and view.height < TIGHT * view.text_ratio


def over_keys(view: View) -> float:
    """Find what stands over the smallest keypad; on a phone on its side it stands beside."""
    return view.height - LOCKED_LINE - (0 if t.sideways() else FOOT + KEYS_LEAST)


def close_figure(view: View, rows: float, least: float = LEAST) -> float:
    """Find how large a typed figure may be over a keypad whose other lines are so high."""
    if not tight(view):
        return figure_most(view)
    left = (over_keys(view) - rows * view.text_ratio) / FIGURE_RATIO
    return max(least, min(figure_most(view), left))


def mishap_figure(view: View) -> float:
    """Find how large the figure of a mishap may be: all that is said stands over the keys."""
    return close_figure(view, CLOSE_MISHAP, MISHAP_LEAST)


def crowded(view: View) -> bool:
    """Tell whether a mishap's second button has room only beside its figure."""
    return tight(view) and over_keys(view) < CLOSE_MISHAP + FIGURE_RATIO * MISHAP_LEAST


def figure_first(view: View) -> bool:
    """Tell whether the grams before a weigh-out come first, or the keypad would hide them."""
    return low(view) or view.text_ratio >= t.STACKED_FROM or view.height < START_LOW


def keys_beside(view: View, rows: float, foot: float = LOCKED_LINE) -> float:
    """Find how high the keypad is, if the rows over it are so high; beside them it has it all."""
    if view.text_ratio >= t.STACKED_FROM:
        return KEYS_LARGE
    left = view.height - foot - FOOT - (0 if t.sideways() else rows)
    return max(KEYS_LEAST, min(KEYS_MOST, left))


def keys_high(view: View, reads: str) -> float:
    """Find how high the keypad is: what the figure and the gauge leave."""
    most = close_figure(view, CLOSE_READS)
    figure = FIGURE_RATIO * figure_size(reads or "0", "g", inside(view), most)
    rows = ABOVE + t.BUTTON + CAN + VERDICT + GAUGE + GAUGE_ROWS * t.GAP
    return keys_beside(view, figure + (CLOSE_READS if tight(view) else rows))


def mishap_keys_high(view: View, reads: str) -> float:
    """Find how high the keypad of a mishap is: what all that may be said leaves."""
    figure = FIGURE_RATIO * figure_size(reads or "0", "g", inside(view), mishap_figure(view))
    return keys_beside(view, figure + (CLOSE_MISHAP if tight(view) else MISHAP))


def start_keys_high(view: View, parts_count: int, noted: float = 0.0) -> float:
    """Find how high the keypad is before a weigh-out: what figure, parts and note leave."""
    figure = FIGURE_RATIO * t.CAN
    rows = HEAD + t.BUTTON + figure + t.TARGET + PART * parts_count + 5 * t.GAP
    return keys_beside(view, rows, t.BAR + noted)
