"""What a weighing step's figure and cup get: what the words around them leave of the screen."""

from dataclasses import dataclass
from math import floor

from mobile import theme as t
from mobile.parts.bucket import CUP_HIGH, Cup
from mobile.parts.figure import LEAST, figure_size
from mobile.parts.measure import lines_in, text_width
from mobile.screens.mix.weigh_out.room import (
    ABOVE,
    BESIDE_CAN,
    CAN,
    CUP_EDGE,
    CUP_LEAST,
    CUP_RATIO,
    CUP_WIDE,
    FIGURE_RATIO,
    FOOT,
    LEAST_WIDE,
    LOCKED_LINE,
    PILLS,
    beside,
    block_high,
    inside,
    low,
    one_line,
)
from mobile.session.view import View

WHY, AROUND = 78.0, 41.0  # *How?* and its gap; what an outlined button has around its words
CLOSE_ROW = 2 * t.TARGET + t.GAP


@dataclass(frozen=True, slots=True)
class Said:
    """The words of a step."""

    part: str
    reads: str
    name: str
    should: str
    limits: str
    more: str = ""
    offered: str = ""


@dataclass(frozen=True, slots=True)
class StepRoom:
    """Whether lines stand close, the sizes of name and figure, and the cup."""

    close: bool
    name_size: float
    figure_most: float
    cup: Cup


def step_room(said: Said, view: View) -> StepRoom:
    """Find the room of a step: all as it is drawn, or close where the cup would be cut."""
    if beside(view):
        return StepRoom(False, t.ZONE, t.READS, Cup(CUP_HIGH, True, CUP_WIDE))
    figure = FIGURE_RATIO * figure_size(said.reads, "g", inside(view), t.READS)
    left = apart_left(said, view) - figure
    broken = t.sideways() and view.width < LEAST_WIDE  # the name's words would be
    usual = (low(view) or left >= CUP_LEAST) and not t.sideways()
    if view.text_ratio >= t.STACKED_FROM or broken or usual:
        high = max(CUP_LEAST, min(CUP_HIGH, CUP_RATIO * view.height, left))
        return StepRoom(False, t.ZONE, t.READS, Cup(float(floor(high)), True, inside(view)))
    left = close_left(said, view)
    under = 0.0 if t.sideways() else under_high(left)
    most = (left - under - (0 if t.sideways() else t.GAP)) / FIGURE_RATIO
    cup = Cup(CUP_LEAST, under != CLOSE_ROW, inside(view))  # labelled where it has a row
    return StepRoom(True, close_name(said, view), max(LEAST, min(t.READS, most)), cup)


def high(words: str, size: float, width: float, view: View) -> float:
    """Find how high a text stands in a width."""
    real = t.grown(size) * view.text_ratio
    return lines_in(words, real, width) * real * t.line_height(size)


def corners_high(said: Said, view: View) -> float:
    """Find how high the corners are: one line, or the part under them."""
    return ABOVE + t.BUTTON + (0 if one_line(said.part, view) else t.GAP + PILLS)


def apart_left(said: Said, view: View) -> float:
    """Find what figure and cup have between them where every line stands alone."""
    offered = text_width(said.offered, t.SMALL) + AROUND if said.offered else 0.0
    width = inside(view)
    limits = high(said.limits, t.FACT, width - offered, view)
    if said.more:
        limits += 2 + high(said.more, t.SMALL, width - offered, view)
    rows = (
        corners_high(said, view),
        max(CAN, high(said.name, t.ZONE, width - BESIDE_CAN, view)),
        max(t.TARGET, high(said.should, t.NAME, width - WHY, view)),
        max(t.TARGET if said.offered else 0.0, limits),
    )
    foot = LOCKED_LINE + FOOT + block_high(view)
    return view.height - foot - sum(rows) - 6 * t.GAP - CUP_EDGE


def close_left(said: Said, view: View) -> float:
    """Find what figure, buttons and cup have between them where lines stand close."""
    width = inside(view)
    name = high(said.name, close_name(said, view), name_wide(view), view)
    rows = (
        corners_high(said, view),
        max(CAN, name + 2 + high(said.should, t.NAME, name_wide(view), view)),
        high(said.limits, t.FACT, width, view),
        2 + high(said.more, t.SMALL, width, view) if said.more else 0.0,
    )
    if t.sideways():
        return view.height - LOCKED_LINE - sum(rows[:2]) - max(t.TARGET, sum(rows[2:])) - 4 * t.GAP
    return view.height - LOCKED_LINE - FOOT - block_high(view) - sum(rows) - 4 * t.GAP


def under_high(left: float) -> float:
    """Find how high the row under the band is: buttons beside the cup, side by side, or below."""
    most = left - LEAST * FIGURE_RATIO
    return next((one for one in (CLOSE_ROW, float(t.TARGET)) if one + t.GAP <= most), -t.GAP)


def name_wide(view: View) -> float:
    """Find how wide a name may run that stands close: beside the can, on its side *How?* too."""
    return inside(view) - BESIDE_CAN - (WHY if t.sideways() else 0.0)


def close_name(said: Said, view: View) -> float:
    """Find the size of a name that stands close: the usual one if it takes one line."""
    size = t.ZONE * view.text_ratio
    return t.ZONE if lines_in(said.name, size, name_wide(view)) == 1 else t.FACT
