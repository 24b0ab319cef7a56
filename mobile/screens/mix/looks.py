"""The two looks of a paint: swatches to tap, or `#rrggbb` typed."""

from collections.abc import Callable
from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import board
from mobile.parts.buttons import outline_button
from mobile.parts.fields import EntryField, Field
from mobile.parts.tap import Action, tap
from mobile.screens.mix.recipe_form import look_error
from mobile.words import looks
from mobile.words import mix as words

# By the names that `words.looks` gives them.
SWATCHES = (
    *("#f4f2ea", "#8d8d8d", "#101010", "#e0202c", "#ff7a1a", "#f2ee2c"),
    *("#57e03c", "#1fd0c4", "#2b5cff", "#7a4fd0", "#ff3f8f", "#5a3a22"),
)
SIZE, DOT = t.TARGET, 36.0
Choose = Callable[[str], None]


@ft.component
def Looks(
    day: str, lamp: str, on_day: Choose, on_lamp: Choose, *, key: str | None = None
) -> ft.Control:
    """Choose how a paint looks by day and under the lamp; what nobody knows stays unknown."""
    shown = ft.use_context(t.LOOK).name
    return board(
        [
            *one_light(words.BY_DAY, day, on_day, shown),
            *one_light(words.UNDER_LAMP, lamp, on_lamp, shown),
        ],
        spacing=10,
    )


def one_light(label: str, chosen: str, choose: Choose, shown: str) -> list[ft.Control]:
    """Offer swatches and a field for one light."""
    spots: list[ft.Control] = [
        swatch(color, color == chosen.strip().lower(), partial(choose, color), label, shown)
        for color in SWATCHES
    ]
    unknown = outline_button(Action(words.NOT_KNOWN, partial(choose, ""), key=f"{label} unknown"))
    field = Field(label, words.look_label(label), chosen, look_error(chosen), number=False)
    return [
        EntryField(field, choose, key=f"look {label}"),
        ft.Row([*spots, unknown], spacing=4, run_spacing=4, wrap=True),
    ]


def swatch(
    color: str, chosen: bool, choose: Callable[[], None], label: str, shown: str
) -> ft.Control:
    """Offer one colour; the chosen one has a ring."""
    dot = ft.Container(width=DOT, height=DOT, border_radius=DOT, bgcolor=t.paint(color, shown))
    edge = ft.BorderSide(3, t.TEXT) if chosen else ft.BorderSide(1, t.LINE)
    face = ft.Container(
        dot,
        width=SIZE,
        height=SIZE,
        alignment=ft.Alignment.CENTER,
        border=ft.Border.all(edge.width, edge.color),
        border_radius=SIZE,
    )
    said = f"{label}: {looks.colour(color)}"
    return tap(face, choose, said, chosen=chosen, key=f"{label} {color}")
