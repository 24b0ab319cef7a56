"""How a wall stands, large: *Ready*, *Too late*, or the hour at which it will be."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import COLORS, SIGNS, State
from mobile.parts.icons import icon
from mobile.screens.coats.scene import Scene
from mobile.session.coats.standing import CoatNow
from mobile.session.times import minutes_s, when
from mobile.words import coats as words

START, END = ft.CrossAxisAlignment.START, ft.CrossAxisAlignment.END
HOUR = 5  # characters: 14:36; another day's name makes it longer
GOOD: State = "good"
CAUTION: State = "caution"
SIGN = 38.0


def standing_side(coat: CoatNow, scene: Scene) -> ft.Control:
    """Give the right side of a board's head."""
    drying, now_s = coat.drying, scene.now_s
    if drying is None:
        return t.say(words.TO_START, t.NAME, weight=t.MEDIUM)
    stands = coat.state(now_s)
    if stands == "rolling":
        return timed(words.ENDS_AT, drying.finished_at_s, scene)
    if stands == "drying":
        return timed(words.READY_AT, drying.ready_at_s, scene)
    late_s = drying.late_at_s if stands == "too late" else None
    since = words.since(when(drying.ready_at_s if late_s is None else late_s, now_s))
    said = (words.READY, GOOD) if late_s is None else (words.TOO_LATE, CAUTION)
    return stated(*said, since)


def stated(said: str, state: State, since: str) -> ft.Control:
    """Say a state in a word, with its sign, and since when."""
    word = t.say(said, t.STATE if state == GOOD else t.ANSWER, COLORS[state])
    sign = icon(SIGNS[state], SIGN, COLORS[state], heavy=True)
    top = ft.Row([sign, word], spacing=10, tight=True)
    side: list[ft.Control] = [top, t.say(since, t.SMALL)]
    return ft.Column(side, spacing=2, tight=True, horizontal_alignment=END if aside() else START)


def timed(before: str, at_s: float, scene: Scene) -> ft.Control:
    """Say an hour, and how long it is until then."""
    hour = when(at_s, scene.now_s)
    wait = words.within(scene.view.show("wait_s", minutes_s(scene.now_s, at_s)))
    small = t.say(before if len(hour) == HOUR else words.READY_ON, t.SMALL)
    big = t.say_right(hour, t.STATE if len(hour) == HOUR else t.FACT)
    top: list[ft.Control] = [small, big]  # under each other where the hour would be cut
    if aside():
        top = [ft.Row(top, spacing=8, tight=True, vertical_alignment=END)]
    side: list[ft.Control] = [*top, t.say_right(wait, t.SMALL)]
    return ft.Column(side, spacing=2, tight=True, horizontal_alignment=END if aside() else START)


def aside() -> bool:
    """Tell whether it stands beside the wall's name, not under it."""
    return not t.large()
