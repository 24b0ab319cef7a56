"""How a screen is laid out: a header, what scrolls, and the main action pinned under it."""

import flet as ft

from mobile import theme as t
from mobile.parts.tap import grow, spread

STRETCH = ft.CrossAxisAlignment.STRETCH


def header(
    title: str, small: str = "", right: ft.Control | None = None, size: float = t.FACT
) -> ft.Control:
    """Say where we are: a small line over the title, and something small on the right."""
    words: list[ft.Control] = [t.say(small, t.CAPTION, t.SOFT)] if small else []
    heading = t.say(title, size, weight=t.STRONG)
    words.append(ft.Semantics(header=True, container=True, content=heading))
    left = ft.Column(words, spacing=2, tight=True)
    content: ft.Control = left
    if right and t.large():
        content = spread([left, right])
    elif right:
        content = ft.Row([grow(left), right], spacing=12)
    return ft.Container(content, padding=ft.Padding(4, 10, 4, 4))


def screen(
    rows: list[ft.Control], pinned: list[ft.Control] | None = None, key: str | None = None
) -> ft.Control:
    """Let rows scroll under a pinned main action; both keep the side margin.

    On a phone on its side the main action stands beside them, or it would take all the height.
    """
    scrolled = ft.ListView(
        rows, spacing=t.GAP, expand=True, padding=ft.Padding(t.MARGIN, 0, t.MARGIN, t.GAP)
    )
    if pinned and t.sideways():
        beside = ft.ListView(
            pinned, spacing=t.GAP, expand=True, padding=ft.Padding(0, t.GAP, t.MARGIN, 11)
        )
        return ft.Row(
            [scrolled, beside], spacing=0, expand=True, vertical_alignment=STRETCH, key=key
        )
    foot = ft.Container(
        ft.Column(pinned or [], spacing=t.GAP, tight=True, horizontal_alignment=STRETCH),
        padding=ft.Padding(t.MARGIN, t.GAP, t.MARGIN, 11),
        visible=bool(pinned),
    )
    return ft.Column(
        [scrolled, foot], spacing=0, expand=True, horizontal_alignment=STRETCH, key=key
    )


def standing(
    rows: list[ft.Control],
    foot: ft.Control | None = None,
    scrolls: bool = False,
    key: str | None = None,
) -> ft.Control:
    """Fill the screen without scrolling: the foot takes what the rows leave (a weigh-out's step).

    Where the screen is low or the text large, `scrolls` lets the rows scroll over the foot.
    """
    column = ft.Column(rows, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH)
    upper: ft.Control = column
    if scrolls or foot is None:
        upper = ft.ListView([column], expand=True)
    lower = [] if foot is None else [foot if scrolls else grow(foot)]
    whole = ft.Column([upper, *lower], spacing=t.GAP, horizontal_alignment=STRETCH)
    return ft.Container(whole, padding=ft.Padding(t.MARGIN, 12, t.MARGIN, 11), expand=True, key=key)


def inset(control: ft.Control) -> ft.Control:
    """Move a control in as far as what stands on a board (the time axis over its strips)."""
    return ft.Container(control, padding=ft.Padding(17.5, 0, 17.5, 0))
