"""The five places: a bar under the phone's screen, a rail beside the laptop's."""

from dataclasses import dataclass

import flet as ft

from mobile import theme as t
from mobile.parts.icons import icon
from mobile.parts.tap import tap

CENTER = ft.CrossAxisAlignment.CENTER
STRETCH = ft.CrossAxisAlignment.STRETCH
MARK_WIDE, MARK = 54, 5
LETTERS, LETTER = 5.4, 0.56  # of the longest place's word, and the width of one, em


@dataclass(frozen=True, slots=True)
class Place:
    """A place: its word, its icon's name, its address."""

    words: str
    sign: str
    address: str


def word_size(width: float, text_ratio: float) -> float:
    """Find the size of the words that lets five stand side by side at the phone's text size."""
    room = width / 5 / (LETTERS * LETTER)
    return min(t.CAPTION, room / text_ratio)


@ft.component
def _Spot(place: Place, chosen: bool, size: float, rail: bool) -> ft.Control:
    def go() -> None:
        ft.context.page.navigate(place.address)

    color = t.TEXT if chosen else t.SOFT
    style = t.style(size, color, t.STRONG if chosen else t.NORMAL)
    words = ft.Text(place.words, style=style, no_wrap=True)
    mark = t.TEXT if chosen else t.CLEAR
    sign = icon(place.sign, 28, t.TEXT if chosen else t.EDGE, heavy=chosen)
    if rail:
        bar = ft.Container(
            width=MARK, height=52, bgcolor=mark, border_radius=ft.BorderRadius(0, 3, 0, 3)
        )
        middle = ft.Column([sign, words], spacing=4, tight=True, horizontal_alignment=CENTER)
        sides = ft.Row(
            [bar, ft.Container(middle, expand=True), ft.Container(width=MARK)], spacing=0
        )
        face = ft.Container(sides, padding=ft.Padding(0, 10, 0, 10))
    else:
        bar = ft.Container(
            width=MARK_WIDE, height=MARK, bgcolor=mark, border_radius=ft.BorderRadius(0, 0, 3, 3)
        )
        under = [bar, ft.Container(height=6), sign, words]
        face = ft.Container(
            ft.Column(under, spacing=2, tight=True, horizontal_alignment=CENTER),
            padding=ft.Padding(0, 0, 0, 10),
        )
        face.alignment = ft.Alignment.TOP_CENTER
    return tap(face, go, place.words, chosen=chosen, key=place.words)


Spot = ft.memo(_Spot)


@ft.component
def _PlaceBar(
    places: tuple[Place, ...], current: tuple[str, ...], width: float, text_ratio: float
) -> ft.Control:
    size = word_size(width, text_ratio)
    spots: list[ft.Control] = []
    for place in places:
        spot = Spot(place, place.words in current, size, False)
        spots.append(ft.Container(spot, expand=True, key=place.words))
    return ft.Container(
        ft.Row(spots, spacing=0),
        bgcolor=t.GROUND,
        border=ft.Border(top=ft.BorderSide(1.5, t.LINE)),
    )


@ft.component
def _PlaceRail(places: tuple[Place, ...], current: tuple[str, ...]) -> ft.Control:
    spots = [Spot(place, place.words in current, t.CAPTION, True) for place in places]
    return ft.Container(
        ft.Column(spots, spacing=0, horizontal_alignment=STRETCH),
        width=t.RAIL,
        padding=ft.Padding(0, 20, 0, 0),
        border=ft.Border(right=ft.BorderSide(1.5, t.LINE)),
    )


PlaceBar, PlaceRail = ft.memo(_PlaceBar), ft.memo(_PlaceRail)


@ft.component
def _LockedLine(title: str, small: str) -> ft.Control:
    words = ft.Column(
        [t.say(title, t.SMALL, weight=t.MEDIUM), t.say(small, t.CAPTION, t.SOFT)],
        spacing=1,
        tight=True,
        expand=True,
    )
    return ft.Container(
        ft.Row([icon("lock", 28), words], spacing=16),
        bgcolor=t.GROUND,
        border=ft.Border(top=ft.BorderSide(1.5, t.LINE)),
        padding=ft.Padding(20, 17, t.MARGIN, 17),
    )


LockedLine = ft.memo(_LockedLine)  # stands where the places were, and nothing in it can be tapped
