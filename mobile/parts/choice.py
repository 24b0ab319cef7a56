"""A choice of a few, side by side, and the pills that say which part one is at."""

from collections.abc import Callable
from functools import partial
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.tap import grow, tap

PILL_WIDE, PILL_HIGH = 38.0, 8.0
ROOM = 190.0


def segmented(
    options: tuple[tuple[str, str], ...],
    chosen: str,
    on_choose: Callable[[str], Any],
    text_ratio: float = 1.0,
    name: str = "choose",
) -> ft.Control:
    """Offer a few options as (key, words); the chosen one is filled and told as selected.

    `name` tells one choice of a screen from another.
    """
    cells: list[ft.Control] = []
    for key, words in options:
        here = key == chosen
        ink = t.GROUND if here else t.TEXT
        text = ft.Text(
            words,
            style=t.style(t.SMALL, ink, t.STRONG if here else t.MEDIUM),
            text_align=ft.TextAlign.CENTER,
        )
        face = ft.Container(
            text,
            bgcolor=t.TEXT if here else None,
            padding=ft.Padding(6, 14, 6, 14),
            alignment=ft.Alignment.CENTER,
        )
        cells.append(tap(face, partial(on_choose, key), chosen=here, key=f"{name} {key}"))
    stacked = text_ratio >= t.STACKED_FROM
    row: ft.Control = (
        ft.Column(cells, spacing=0, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH)
        if stacked
        else ft.Row(
            [grow(cell) for cell in cells],
            spacing=0,
            intrinsic_height=True,
            vertical_alignment=ft.CrossAxisAlignment.STRETCH,
        )
    )
    return ft.Container(
        row,
        border=ft.Border.all(1.5, t.EDGE),
        border_radius=t.HOW_RADIUS,
        clip_behavior=ft.ClipBehavior.ANTI_ALIAS,
    )


def any_of(
    options: tuple[tuple[str, str], ...],
    chosen: tuple[str, ...],
    on_choose: Callable[[tuple[str, ...]], Any],
) -> ft.Control:
    """Offer (key, words) of which any number may be chosen; none is all of them, and told so."""
    keys = tuple(key for key, _ in options)
    here = set(chosen) or set(keys)

    def flip(key: str) -> None:
        left = here ^ {key} or here  # the last one stays
        on_choose(() if len(left) == len(keys) else tuple(one for one in keys if one in left))

    cells = [segmented((one,), one[0] if one[0] in here else "", flip) for one in options]
    return ft.Column(
        cells, spacing=t.GAP, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )


def pills(at: int, of: int, words: str) -> ft.Control:
    """Say which part one is at: a filled pill for each begun, an outlined one for each to come."""
    wide = min(PILL_WIDE, (ROOM - 6 * (of - 1)) / max(of, 1))
    each: list[ft.Control] = [
        ft.Container(
            width=wide,
            height=PILL_HIGH,
            border_radius=4,
            bgcolor=t.TEXT if number <= at else None,
            border=None if number <= at else ft.Border.all(1.5, t.EDGE),
        )
        for number in range(1, of + 1)
    ]
    column = ft.Column(
        [t.say(words, t.FACT), ft.Row(each, spacing=6, tight=True)],
        spacing=8,
        tight=True,
    )
    return ft.Semantics(header=True, container=True, content=column)
