"""What the two other mishaps at the scale share: which one it was, its reading, the keypad."""

from collections.abc import Callable
from typing import Any

import flet as ft

from core.errors import Refused
from mobile.parts.choice import segmented
from mobile.parts.keypad import Keypad
from mobile.parts.tap import Action
from mobile.screens.mix.weigh_out.room import inside, mishap_keys_high
from mobile.session.address import go
from mobile.session.view import View
from mobile.words import mishaps as words
from mobile.words import places


def which_mishap(chosen: str, view: View) -> ft.Control:
    """Offer what may have gone wrong."""
    return segmented(words.WHAT, chosen, lambda k: go(places.MIX, "weigh", k), view.text_ratio)


def reads_of(text: str, view: View) -> float | None:
    """Read what is typed; None where it is no number."""
    try:
        return view.read("reads_g", text)
    except Refused:
        return None


def keys(action: Action, press: Callable[[str], Any], text: str, view: View) -> ft.Control:
    """Give the keypad."""
    return Keypad(action, press, inside(view), mishap_keys_high(view, text), view.text_ratio)
