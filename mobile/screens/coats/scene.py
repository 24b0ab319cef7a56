"""What all boards of *Coats* share, and what their buttons do."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from mobile import theme as t
from mobile.parts.waits import Clock
from mobile.session.coats import CoatNow
from mobile.session.view import View

NARROW = 380.0  # dp; below it things stand under each other


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


def narrow(view: View) -> bool:
    """Tell whether what stands side by side has to stand under each other."""
    return view.text_ratio >= t.STACKED_FROM or view.width < NARROW
