"""How a wall stands, large: *Ready*, *Too late*, or the hour at which it will be."""

from dataclasses import dataclass

import flet as ft

from mobile import theme as t
from mobile.parts.boards import COLORS, SIGNS, State
from mobile.parts.icons import icon
from mobile.session.coats import CoatNow
from mobile.session.times import minutes_s, when
from mobile.session.view import View
from mobile.words import coats as words

LETTER = 0.58  # of a semibold letter's width to its height
SIGN = 46.0
END = ft.CrossAxisAlignment.END
HOUR = 5  # characters: 14:36
GOOD: State = "good"
CAUTION: State = "caution"


@dataclass(frozen=True, slots=True)
class Standing:
    """A wall's coat at an instant, as the person reads it."""

    coat: CoatNow
    now_s: float
    view: View

    @property
    def room(self) -> float:
        """How wide the board is inside, dp."""
        return self.view.width - 4 * t.MARGIN - 3


def fitting(said: str, most: float, room: float, text_ratio: float) -> float:
    """Find the size at which words stay on one line, at most `most`."""
    return min(most, room / (LETTER * max(len(said), 1) * text_ratio))


def standing_side(standing: Standing) -> ft.Control:
    """Give the right side of a board's head."""
    coat, now_s = standing.coat, standing.now_s
    drying = coat.drying
    if drying is None:
        return t.say(words.TO_START, t.NAME, weight=t.MEDIUM)
    stands = coat.state(now_s)
    if stands == "rolling":
        return timed(words.ENDS_AT, drying.finished_at_s, standing)
    if stands == "drying":
        return timed(words.READY_AT, drying.ready_at_s, standing)
    late_s = drying.late_at_s if stands == "too late" else None
    since = words.since(when(drying.ready_at_s if late_s is None else late_s, now_s))
    said = (words.READY, GOOD) if late_s is None else (words.TOO_LATE, CAUTION)
    return stated(*said, since, standing)


def stated(said: str, state: State, since: str, standing: Standing) -> ft.Control:
    """Say a state in a word, with its sign, and since when."""
    most = t.STATE if state == "good" else t.ANSWER
    size = fitting(said, most, standing.room - SIGN, standing.view.text_ratio)
    word = t.say(said, size, COLORS[state])
    sign = icon(SIGNS[state], size * 0.85, COLORS[state], heavy=True)
    top = ft.Row([sign, word], spacing=10, tight=True)
    return ft.Column([top, t.say(since, t.SMALL)], spacing=2, tight=True, horizontal_alignment=END)


def timed(before: str, at_s: float, standing: Standing) -> ft.Control:
    """Say an hour, and how long it is until then."""
    hour = when(at_s, standing.now_s)
    view = standing.view
    size = fitting(hour, t.STATE, standing.room, view.text_ratio)
    wait = words.within(view.show("wait_s", minutes_s(standing.now_s, at_s)))
    far = len(hour) > HOUR  # another day: its name makes it long
    big = t.say_right(hour, min(size, t.FACT) if far else size)
    small = t.say(before, t.SMALL)
    stack = far or view.text_ratio >= t.STACKED_FROM
    top: ft.Control = (
        ft.Column([small, big], spacing=0, tight=True, horizontal_alignment=END)
        if stack
        else ft.Row([small, big], spacing=8, tight=True, vertical_alignment=END)
    )
    return ft.Column(
        [top, t.say_right(wait, t.SMALL)], spacing=2, tight=True, horizontal_alignment=END
    )
