"""A paint's look in one light: swatches to tap, or `#rrggbb` typed."""

from collections.abc import Callable
from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.fields import EntryField, Field
from mobile.parts.tap import Action, tap
from mobile.words import looks

# Plain colours by the names that `words.looks` gives them; any other is typed.
SWATCHES = (
    *("#f4f2ea", "#8d8d8d", "#101010", "#e0202c", "#ff7a1a", "#f2ee2c"),
    *("#57e03c", "#1fd0c4", "#2b5cff", "#7a4fd0", "#ff3f8f", "#5a3a22"),
)
SIZE, DOT = t.TARGET, 36.0
Choose = Callable[[str], None]


@ft.component
def Swatches(
    light: str, typed: str, wrong: str, choose: Choose, *, key: str | None = None
) -> ft.Control:
    """Choose a look for one light; what nobody knows stays unknown."""
    shown = ft.use_context(t.LOOK).name
    spots: list[ft.Control] = [
        swatch(color, color == typed.strip().lower(), partial(choose, color), light, shown)
        for color in SWATCHES
    ]
    unknown = outline_button(Action(looks.NOT_KNOWN, partial(choose, ""), key=f"{light} unknown"))
    field = Field(light, looks.label(light), typed, wrong, number=False)
    entry = EntryField(field, choose, key=f"look {light}")
    row = ft.Row([*spots, unknown], spacing=4, run_spacing=4, wrap=True)
    return ft.Column(
        [entry, row], spacing=10, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )


def swatch(
    color: str, chosen: bool, choose: Callable[[], None], light: str, shown: str
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
    said = f"{light}: {looks.colour(color)}"
    return tap(face, choose, said, chosen=chosen, key=f"{light} {color}")
