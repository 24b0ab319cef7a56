"""Buttons: the one main action in amber, the others raised, *How?* in outline."""

import flet as ft

from mobile import theme as t
from mobile.parts.icons import icon
from mobile.parts.tap import Action, grow, surface, tap

CENTER = ft.TextAlign.CENTER


def lines(action: Action, size: float, ink: ft.ColorValue, small_ink: ft.ColorValue) -> ft.Control:
    """Set a button's words, with the small line under them."""
    weight = t.STRONG if ink == t.INK else t.MEDIUM
    words = ft.Text(action.words, style=t.style(size, ink, weight), text_align=CENTER)
    if not action.small:
        return words
    small_size, small_weight = (t.SMALL, t.MEDIUM) if ink == t.INK else (t.CAPTION, t.NORMAL)
    style = t.style(small_size, small_ink, small_weight)
    small = ft.Text(action.small, style=style, text_align=CENTER)
    return ft.Column(
        [words, small],
        spacing=2,
        tight=True,
        alignment=ft.MainAxisAlignment.CENTER,
        horizontal_alignment=ft.CrossAxisAlignment.CENTER,
    )


def padded(height: float, action: Action, size: float, side: float) -> ft.Padding:
    """Pad a face so that it is at least so high, and grows with the text size."""
    text = size * t.line_height(size) + (t.CAPTION * 1.25 + 2 if action.small else 0)
    above = max(4.0, (height - text) / 2)
    return ft.Padding(side, above, side, above)


def main_button(action: Action, size: float = t.FACT, height: float = t.MAIN) -> ft.Control:
    """Offer the one main action of a screen."""
    face = surface(
        lines(action, size, t.INK, t.INK) if action.do else lines(action, size, t.SOFT2, t.SOFT2),
        fill=t.FILL if action.do else t.RAISED,
        edge=ft.BorderSide(3, t.RIM if action.do else t.RAISED),
        padding=padded(height - 6, action, size, 10),
    )
    face.alignment = ft.Alignment.CENTER
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
    face.alignment, face.width = ft.Alignment.CENTER, width
    return tap(face, action.do, key=action.key)


def outline_button(action: Action, sign: str = "") -> ft.Control:
    """Offer a small action in outline only: *How?*, *Leave* with the sign "back"."""
    words = ft.Text(action.words, style=t.style(t.SMALL, t.TEXT, t.MEDIUM), text_align=CENTER)
    content: ft.Control = words
    if sign:
        mark = icon(sign, 18, t.TEXT)
        content = ft.Row([mark, words], spacing=4, tight=True)
    face = surface(
        content,
        edge=ft.BorderSide(1.5, t.EDGE),
        radius=t.HOW_RADIUS,
        padding=padded(t.TARGET - 3, Action(""), t.SMALL, 13),
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


def thumb_block(
    upper: tuple[Action, Action],
    main: Action,
    earlier: Action,
    later: Action,
    text_ratio: float = 1.0,
) -> ft.Control:
    """Build the block in the thumb's reach: two buttons, below them −5 | main | +5."""
    above = stack_or_row([second_button(action, height=58) for action in upper], text_ratio)
    button = main_button(main, height=78)
    if text_ratio >= t.STACKED_FROM:
        sides = [second_button(side, t.FACT, 78) for side in (earlier, later)]
        rows: list[ft.Control] = [above, stack_or_row(sides, 1.0), button]
    else:
        sides = [second_button(side, t.FACT, 78, 64) for side in (earlier, later)]
        middle = ft.Row(
            [sides[0], grow(button), sides[1]],
            spacing=t.GAP,
            intrinsic_height=True,
            vertical_alignment=ft.CrossAxisAlignment.STRETCH,
        )
        rows = [above, middle]
    return ft.Column(
        rows, spacing=t.GAP, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )
