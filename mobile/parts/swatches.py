"""Colours to choose a paint's look from: plain ones, and the one that it has."""

from collections.abc import Callable
from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.tap import Action, tap
from mobile.words import looks
from mobile.words.places import UNKNOWN

# Plain colours by the names that `words.looks` gives them; a paint's own is offered beside them.
SWATCHES = (
    *("#f4f2ea", "#8d8d8d", "#101010", "#e0202c", "#ff7a1a", "#f2ee2c"),
    *("#57e03c", "#1fd0c4", "#2b5cff", "#7a4fd0", "#ff3f8f", "#5a3a22"),
)
SIZE, DOT = t.TARGET, 36.0


@ft.component
def Swatches(
    label: str, chosen: str, on_choose: Callable[[str], None], *, key: str | None = None
) -> ft.Control:
    """Choose a look for one light; what nobody knows stays unknown."""
    shown = ft.use_context(t.LOOK).name
    own = (chosen,) if chosen and chosen not in SWATCHES else ()
    spots = [
        _swatch(color, color == chosen, partial(on_choose, color), label, shown)
        for color in (*own, *SWATCHES)
    ]
    unknown = outline_button(Action(UNKNOWN, partial(on_choose, ""), key=f"{label} unknown"))
    title = t.say(f"{label}: {looks.colour(chosen)}", t.SMALL)
    row = ft.Row([*spots, unknown], spacing=4, run_spacing=4, wrap=True)
    return ft.Column([title, row], spacing=6, tight=True)


def _swatch(
    color: str, chosen: bool, choose: Callable[[], None], label: str, shown: str
) -> ft.Control:
    """Offer one colour; the chosen one has a ring."""
    dot = ft.Container(width=DOT, height=DOT, border_radius=DOT, bgcolor=t.paint(color, shown))
    face = ft.Container(
        dot,
        width=SIZE,
        height=SIZE,
        alignment=ft.Alignment.CENTER,
        border=ft.Border.all(3 if chosen else 1.5, t.TEXT if chosen else t.EDGE),
        border_radius=SIZE,
    )
    said = f"{label}: {looks.colour(color)}"
    return tap(face, choose, said, chosen=chosen, key=f"{label} {color}")
