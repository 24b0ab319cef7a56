"""What all boards of *Coats* share, and what their buttons do."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from mobile.parts.waits import Clock
from mobile.screens.coats.thumb import Aim
from mobile.session.coats.standing import CoatNow
from mobile.session.known import Known
from mobile.session.session import Session
from mobile.session.view import View


@dataclass(frozen=True, slots=True)
class Scene:
    """What all boards share: the instant, the view, the one clock, what is chosen and next."""

    now_s: float
    view: View
    clock: Clock | None
    chosen: str
    last: str  # the wall with the last strip: the bob hangs there
    soonest: str
    bell: bool


@dataclass(frozen=True, slots=True)
class Hands:
    """What a board's buttons do."""

    choose: Callable[[CoatNow], Any]
    tacky: Callable[[CoatNow], Any]
    again: Callable[[CoatNow], Any]
    calendar: Callable[[CoatNow], Any]


@dataclass(frozen=True, slots=True)
class Seen:
    """What is drawn: for whom, of which state, at which instant."""

    session: Session
    known: Known
    view: View
    aim: Aim
    now_s: float
    set_aim: Callable[[Aim | Callable[[Aim], Aim]], None]
