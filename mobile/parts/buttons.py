"""Buttons: the one main action in amber, the others raised, *How?* in outline."""

from dataclasses import replace

import flet as ft

from mobile import theme as t
from mobile.parts.icons import icon
from mobile.parts.tap import Action, grow, grow_loosely, surface, tap

CENTER = ft.TextAlign.CENTER


def lines(action: Action, size: float, ink: ft.ColorValue, small_ink: ft.ColorValue) -> ft.Control:
    """Set a button's words, with the small line under them."""
    weight = t.STRONG if ink == t.INK else t.MEDIUM
    words = ft.Text(action.words, style=t.style(size, ink, weight), text_align=CENTER)
    if not action.small:
        return middle(words)
    small_size, small_weight = (t.SMALL, t.MEDIUM) if ink == t.INK else (t.CAPTION, t.NORMAL)
    style = t.style(small_size, small_ink, small_weight)
    small = ft.Text(action.small, style=style, text_align=CENTER)
    both = ft.Column(
        [words, small],
        spacing=2,
        tight=True,
        alignment=ft.MainAxisAlignment.CENTER,
        horizontal_alignment=ft.CrossAxisAlignment.CENTER,
    )
    return middle(both)


def middle(content: ft.Control) -> ft.Control:
    """Stand in the middle of the room that is given, and ask for none beyond the content."""
    return ft.Row([grow_loosely(content)], alignment=ft.MainAxisAlignment.CENTER, tight=True)


def padded(height: float, action: Action, size: float, side: float) -> ft.Padding:
    """Pad a face so that it is at least so high, and grows with the text size."""
    text = size * t.line_height(size) + (t.CAPTION * 1.25 + 2 if action.small else 0)
    above = max(4.0, (height - text) / 2)
    return ft.Padding(side, above, side, above)


def main_button(
    action: Action, size: float = t.FACT, height: float = t.MAIN, side: float = 10
) -> ft.Control:
    """Offer the one main action of a screen; `side` is the room beside its words."""
    face = surface(
        lines(action, size, t.INK, t.INK) if action.do else lines(action, size, t.SOFT2, t.SOFT2),
        fill=t.FILL if action.do else t.RAISED,
        edge=ft.BorderSide(3, t.RIM if action.do else t.RAISED),
        padding=padded(height - 6, action, size, side),
    )
    return tap(face, action.do, key=action.key)


def second_button(
    action: Action, size: float = t.NAME, height: float = t.BUTTON, width: float | None = None
) -> ft.Control:
    """Offer another action; it is as wide as its words where no width is given."""
    ink = t.TEXT if action.do else t.SOFT2
    face = surface(
        lines(action, size, ink, t.SOFT2),
        fill=t.RAISED,
        edge=ft.BorderSide(1.5, t.EDGE),
        padding=padded(height - 3, action, size, 4 if width else 12),
    )
    face.width = width
    return tap(face, action.do, key=action.key)


def outline_button(action: Action, sign: str = "") -> ft.Control:
    """Offer a small action in outline only: *How?*, *Leave* with the sign "back"."""
    words = ft.Text(action.words, style=t.style(t.SMALL, t.TEXT, t.MEDIUM), text_align=CENTER)
    content: ft.Control = words
    if sign:
        mark = icon(sign, 20, t.TEXT, heavy=True)
        words.expand, words.expand_loose = True, True
        content = ft.Row([mark, words], spacing=3, tight=True)
    face = surface(
        content,
        edge=ft.BorderSide(1.5, t.EDGE),
        radius=t.HOW_RADIUS,
        padding=padded(t.TARGET - 3, Action(""), t.SMALL, 8 if sign else 13),
    )
    return tap(face, action.do, key=action.key)


def stack_or_row(controls: list[ft.Control], text_ratio: float) -> ft.Control:
    """Stand controls side by side, or under each other where the text is large."""
    if text_ratio >= t.STACKED_FROM:
        return ft.Column(
            controls, spacing=t.GAP, horizontal_alignment=ft.CrossAxisAlignment.STRETCH, tight=True
        )
    return ft.Row(
        [grow(control) for control in controls],
        spacing=t.GAP,
        intrinsic_height=True,
        vertical_alignment=ft.CrossAxisAlignment.STRETCH,
    )


def pair(actions: tuple[Action, ...], text_ratio: float = 1.0) -> ft.Control:
    """Stand two second buttons side by side, or under each other where the text is large."""
    return stack_or_row([second_button(action, height=58) for action in actions], text_ratio)


def thumb_block(
    upper: tuple[Action, ...],
    main: Action,
    earlier: Action,
    later: Action,
    text_ratio: float = 1.0,
) -> ft.Control:
    """Build the block in the thumb's reach: two buttons, below them −5 | main | +5.

    Where the text is large, give no `upper` and let their `pair` scroll: the block stays low.
    """
    above = [pair(upper, text_ratio)] if upper else []
    button = main_button(main, height=78)
    if text_ratio >= t.STACKED_FROM:
        joined = [
            replace(one, words=f"{one.words} {one.small}", small="") for one in (earlier, later)
        ]
        sides = [second_button(side) for side in joined]
        rows: list[ft.Control] = [*above, stack_or_row(sides, 1.0), button]
    else:
        sides = [second_button(side, t.FACT, 78, 64) for side in (earlier, later)]
        line = ft.Row(
            [sides[0], grow(button), sides[1]],
            spacing=t.GAP,
            intrinsic_height=True,
            vertical_alignment=ft.CrossAxisAlignment.STRETCH,
        )
        rows = [*above, line]
    return ft.Column(
        rows, spacing=t.GAP, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )


def option(
    action: Action,
    detail: str,
    drawing: ft.Control | None = None,
    main: bool = False,
    text_ratio: float = 1.0,
) -> ft.Control:
    """Offer one answer of several as a large board: what, at what cost, drawn and in detail."""
    ink = t.INK if main else t.TEXT
    words = ft.Text(action.words, style=t.style(t.ZONE, ink, t.STRONG))
    cost = ft.Text(action.small, style=t.style(t.FACT, ink, t.MEDIUM))
    more = ft.Text(detail, style=t.style(t.SMALL + 1, ink if main else t.TEXT))
    shown: list[ft.Control] = [more]
    if drawing:
        dark = ft.Container(
            drawing,
            bgcolor=t.GROUND if main else None,
            border_radius=t.HOW_RADIUS,
            padding=ft.Padding(6, 8, 6, 6),
        )
        shown = [dark, more]
    stacked = text_ratio >= t.STACKED_FROM
    if not stacked:
        grow(more)
    under = ft.Column(shown, tight=True) if stacked else ft.Row(shown, spacing=16)
    face = surface(
        ft.Column([words, cost, under], spacing=6, tight=True),
        fill=t.FILL if main else t.RAISED,
        edge=ft.BorderSide(3, t.RIM) if main else ft.BorderSide(1.5, t.EDGE),
        radius=t.BOARD_RADIUS,
        padding=ft.Padding(15, 14, 15, 14),
    )
    return tap(face, action.do, key=action.key)
