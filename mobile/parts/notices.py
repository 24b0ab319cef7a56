"""What the app says by itself: told with Undo, notices, cautions, empty places, progress."""

from collections.abc import Callable
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.boards import State, board
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.icons import icon
from mobile.parts.tap import Action, Do, grow
from mobile.words.parts import CANCEL
from mobile.words.places import UNDO

STRETCH = ft.CrossAxisAlignment.STRETCH


def told(
    words: str, undo: Do | None = None, above: float = t.BAR + t.MAIN + 2 * t.MARGIN
) -> ft.SnackBar:
    """Float a line over the main button, with *Undo* (docked, it swallows the places' taps)."""
    text = grow(ft.Text(words, style=t.style(t.SMALL, t.TEXT, t.MEDIUM)))
    bar = ft.SnackBar(
        ft.Row([text]),
        bgcolor=t.RAISED,
        behavior=ft.SnackBarBehavior.FLOATING,
        margin=ft.Margin(t.MARGIN, 0, t.MARGIN, above),
        padding=ft.Padding(16, 8, 8, 8),
        shape=ft.RoundedRectangleBorder(radius=t.BUTTON_RADIUS, side=ft.BorderSide(1.5, t.EDGE)),
        duration=10_000,
        persist=False,
    )
    if undo is None:
        return bar

    def take_back() -> Any:
        bar.open = False
        bar.update()
        return undo()

    # The bar's own action would be 40 high; this one is as high as all targets.
    button = outline_button(Action(UNDO, take_back, key="undo"))
    bar.content = ft.Row([text, button], spacing=10)
    return bar


def notice(words: str, actions: tuple[Action, ...] = (), state: State = "") -> ft.Control:
    """Say something that holds until it is settled, with what can be done about it."""
    sign = "warning" if state == "caution" else "bell"
    color = t.CAUTION if state == "caution" else t.EDGE
    text = grow(t.say(words, t.SMALL, weight=t.MEDIUM))
    lines: list[ft.Control] = [ft.Row([icon(sign, 22, color), text], spacing=10)]
    if actions:
        buttons: list[ft.Control] = [outline_button(action) for action in actions]
        lines.append(ft.Row(buttons, spacing=t.GAP, wrap=True, run_spacing=t.GAP))
    content = ft.Column(lines, spacing=t.GAP, tight=True)
    rim = t.CAUTION if state == "caution" else t.LINE
    face = ft.Container(
        content,
        bgcolor=t.BOARD,
        border=ft.Border(bottom=ft.BorderSide(1.5, rim)),
        padding=ft.Padding(t.HEADER, 10, t.HEADER, 10),
    )
    return ft.Semantics(live_region=True, container=True, content=face)


def caution(
    title: str, lines: tuple[str, ...], decides: str, read: Action | None = None
) -> ft.Control:
    """Put a caution before its step: what can hurt, who decides, one tap to have read it.

    Without `read` the screen's main action says it was read.
    """
    head = ft.Row(
        [
            icon("warning", 30, t.CAUTION, heavy=True),
            grow(t.say(title, t.HEADING, t.CAUTION, t.STRONG)),
        ],
        spacing=10,
    )
    texts: list[ft.Control] = [t.say(line, t.SMALL) for line in lines]
    who = t.say(decides, t.SMALL, t.TEXT, t.STRONG)
    button = [second_button(read, height=64)] if read else []
    return board([head, *texts, who, *button], "caution", key=f"caution {title}")


def empty(
    first: str, small: str, main: Action, demo: Action | None = None, also: Action | None = None
) -> ft.Control:
    """Say what to do first, with the one button that does it; the demo job is one tap away."""
    words: list[ft.Control] = [t.say(first, t.ZONE)]
    if small:
        words.append(t.say(small, t.NAME, t.SOFT))
    buttons: list[ft.Control] = [second_button(one) for one in (also, demo) if one]
    foot = ft.Column(
        [*buttons, main_button(main)], spacing=t.GAP, tight=True, horizontal_alignment=STRETCH
    )
    texts = ft.ListView(
        [ft.Column(words, spacing=12, tight=True)], expand=True, padding=ft.Padding(4, 40, 4, 8)
    )
    column = ft.Column([texts, foot], expand=True, horizontal_alignment=STRETCH)
    return ft.Container(column, padding=ft.Padding(t.MARGIN, 12, t.MARGIN, 11), expand=True)


@ft.component
def Busy(
    words: str,
    done_ratio: float | None = None,
    on_cancel: Callable[[], Any] | None = None,
    *,
    key: str | None = None,
) -> ft.Control:
    """Show that something long is under way, how far it is, and a way out."""
    line = ft.ProgressBar(
        value=done_ratio,
        color=t.TEXT,
        bgcolor=t.RAISED,
        bar_height=8,
        border_radius=4,
        semantics_label=words,
    )
    text = ft.Semantics(live_region=True, container=True, content=t.say(words, t.NAME))
    rows: list[ft.Control] = [text, line]
    if on_cancel:
        rows.append(second_button(Action(CANCEL, on_cancel, key="cancel")))
    return board(rows, spacing=12)
