"""The root: five places, kept mounted, in one tree for phone and laptop."""

from collections.abc import Callable

import flet as ft

from mobile import theme as t
from mobile.device import page as device
from mobile.parts.bar import LockedLine, PlaceBar, PlaceRail
from mobile.parts.notices import Choice, NoticeBar
from mobile.screens.cans.place import CansPlace
from mobile.screens.coats.place import CoatsPlace
from mobile.screens.job.place import JobPlace
from mobile.screens.mix.place import MixPlace
from mobile.screens.walls.place import WallsPlace
from mobile.session.address import WEIGH_OUT, address, place_of
from mobile.session.coats import alarms
from mobile.session.known import Known
from mobile.session.pots import under_way
from mobile.session.session import SESSION, Session, Told
from mobile.words import mix as mix_words
from mobile.words import places as words

Screen = Callable[..., ft.Control]
SCREENS: dict[str, Screen] = {
    words.COATS: ft.memo(CoatsPlace),
    words.MIX: ft.memo(MixPlace),
    words.CANS: ft.memo(CansPlace),
    words.WALLS: ft.memo(WallsPlace),
    words.JOB: ft.memo(JobPlace),
}


def first_address(known: Known, route: str) -> str:
    """Say what opens: a weigh-out in progress at its step, else what the address says."""
    if under_way(known):
        return WEIGH_OUT
    place, rest = place_of(route)
    return address(place, rest)
