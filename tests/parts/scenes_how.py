"""What all scenes share."""

import flet as ft

from mobile.parts.buttons import outline_button
from mobile.parts.tap import Action


def nothing() -> None:
    """Do nothing."""


def how_button() -> ft.Control:
    return outline_button(Action("How?", nothing))
