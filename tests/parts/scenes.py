"""Screens made of parts alone, with the figures of the design pictures."""

from collections.abc import Callable

import flet as ft

from tests.parts.scenes_doing import Cans, Coats, Over, Pad, Weigh
from tests.parts.scenes_planning import Empty, Forms, Job, Mix, Notices, Walls

Scene = Callable[..., ft.Control]
SCENES: dict[str, Scene] = {
    "coats": Coats,
    "weigh": Weigh,
    "keypad": Pad,
    "over": Over,
    "cans": Cans,
    "mix": Mix,
    "walls": Walls,
    "job": Job,
    "notices": Notices,
    "forms": Forms,
    "empty": Empty,
}
