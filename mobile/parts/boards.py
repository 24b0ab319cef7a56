"""Boards and what stands on them: rows, facts, tiles, answers."""

from dataclasses import dataclass
from typing import Literal

import flet as ft
import flet.canvas as cv

from mobile import theme as t
from mobile.parts.buttons import stack_or_row
from mobile.parts.drawing import drawn, rounded
from mobile.parts.icons import icon
from mobile.parts.measure import longest_word, text_width
from mobile.parts.tap import Do, grow, grow_loosely, spread, surface, tap

State = Literal["", "good", "caution"]
COLORS = {"": t.TEXT, "good": t.GOOD, "caution": t.CAUTION}
SIGNS = {"good": "check", "caution": "warning"}
PADDING = ft.Padding(16, 14, 16, 14)
START, STRETCH = ft.CrossAxisAlignment.START, ft.CrossAxisAlignment.STRETCH


@dataclass(frozen=True, slots=True)
class Fact:
    """A figure and what it is."""

    value: str
    caption: str
    state: State = ""


@dataclass(frozen=True, slots=True)
class Row:
    """A line of a list: name and use on the left, figure and state on the right."""

    name: str
    small: str = ""
    value: str = ""
    under: str = ""
    state: State = ""


def board(
    controls: list[ft.Control], state: State = "", spacing: float = t.GAP, key: str | None = None
) -> ft.Control:
    """Put controls on a board; its rim says good (ready) or caution."""
    rim = ft.BorderSide(2 if state else 1.5, COLORS[state] if state else t.LINE)
    face = surface(
        ft.Column(
            controls,
            spacing=spacing,
            tight=True,
            horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
        ),
        fill=t.BOARD,
        edge=rim,
        radius=t.BOARD_RADIUS,
        padding=PADDING,
    )
    face.key = key
    return face


@ft.component
def BoardToCome(name: str, small: str, value: str, *, key: str | None = None) -> ft.Control:
    """Show what is still to come: a dashed edge and no fill."""
    size, set_size = ft.use_state((0.0, 0.0))

    def measured(event: cv.CanvasResizeEvent) -> None:
        set_size((event.width, event.height))

    wide, high = size
    edge = cv.Path(
        [rounded(1, 1, max(wide - 1, 1), max(high - 1, 1), t.BOARD_RADIUS)],
        drawn(t.EDGE, 1.5, [5, 4]),
    )
    content = ft.Container(
        head(name, small, t.say_right(value, t.NAME, weight=t.MEDIUM), t.NAME), padding=PADDING
    )
    return cv.Canvas([edge] if wide else [], content=content, on_resize=measured)


def head(
    name: str, small: str = "", right: ft.Control | None = None, size: float = t.ZONE
) -> ft.Control:
    """Say what and where on the left; the answer stands on the right."""
    words: list[ft.Control] = [t.say(name, size, weight=t.STRONG)]
    if small:
        words.append(t.say(small, t.SMALL if size > t.NAME else t.CAPTION, t.SOFT))
    left = ft.Column(words, spacing=3, tight=True)
    return spread([left, *([right] if right else [])])


def answer(words: str, state: State = "", size: float = t.ANSWER) -> ft.Control:
    """Give an answer in words, with the sign of its state."""
    text = grow_loosely(t.say(words, size, COLORS[state]))
    sign = [icon(SIGNS[state], size * 0.85, COLORS[state], heavy=True)] if state else []
    return ft.Row([*sign, text], spacing=10, tight=True)


def fact(one: Fact, size: float = t.FACT, align: ft.CrossAxisAlignment = START) -> ft.Control:
    """Show a figure over its caption."""
    soft = t.CAUTION if one.state == "caution" else t.SOFT
    if t.large():
        align = START  # facts stand under each other then
    right = align == ft.CrossAxisAlignment.END
    say = t.say_right if right else t.say
    return ft.Column(
        [say(one.value, size, COLORS[one.state]), say(one.caption, t.CAPTION, soft)],
        spacing=2,
        tight=True,
        horizontal_alignment=align,
    )


def facts(several: tuple[Fact, ...], text_ratio: float = 1.0) -> ft.Control:
    """Show figures side by side, under each other where they don't fit or the text is large."""
    if text_ratio >= t.STACKED_FROM:
        return ft.Column([fact(one) for one in several], spacing=t.GAP, tight=True)
    last = len(several) - 1
    ends = [ft.CrossAxisAlignment.END if at == last == 1 else START for at in range(last + 1)]
    return spread([fact(one, align=end) for one, end in zip(several, ends, strict=True)])


def mark(words: str, state: State) -> ft.Control:
    """Say a state in a word, with its sign."""
    color = COLORS[state] if state else t.SOFT
    text = ft.Text(words, style=t.style(t.SMALL, color, t.MEDIUM), text_align=ft.TextAlign.RIGHT)
    sign = [icon(SIGNS[state], 17, color, heavy=True)] if state else []
    return ft.Row([*sign, grow_loosely(text)], spacing=6, tight=True)


def row(
    line: Row,
    do: Do | None = None,
    lead: ft.Control | None = None,
    text_ratio: float = 1.0,
    room: float = 0.0,
) -> ft.Control:
    """Show a line of a list; the whole line is the target.

    Where `room`, the width for name and figure, has both beside each other, the name wraps first.
    """
    stacked = text_ratio >= t.STACKED_FROM
    name = t.say(line.name, t.HEADING if line.small else t.NAME, weight=t.MEDIUM)
    value = [t.say_right(line.value, t.FACT)] if line.value else []
    small = t.say(line.small, t.CAPTION, t.SOFT) if line.small or line.under else None
    under = [mark(line.under, line.state)] if line.under else []
    if stacked:
        lines: list[ft.Control] = [name, *([small] if line.small and small else []), *value, *under]
    else:
        beside = value and longest_word(line.name, t.HEADING) + value_wide(line.value) <= room
        lines = [ft.Row([grow(name), *value], spacing=12) if beside else spread([name, *value])]
        if small:
            lines.append(spread([small, *under]))
    middle = grow(
        ft.Column(lines, spacing=1, tight=True, horizontal_alignment=START if stacked else STRETCH)
    )
    above = 11 if line.small else 13
    face = ft.Container(
        ft.Row([*([lead] if lead else []), middle], spacing=14),
        padding=ft.Padding(16, above, 16, above),
    )
    return tap(face, do, key=line.name) if do else face


def value_wide(value: str) -> float:
    """Find how wide the figure of a row runs, with its gap."""
    return text_width(value, t.FACT) + 12


def rows(lines: list[ft.Control]) -> ft.Control:
    """Put lines on one board, with a thin division between them."""
    parted: list[ft.Control] = []
    for line in lines:
        if parted:
            parted.append(ft.Container(height=1.5, bgcolor=t.LINE))
        parted.append(line)
    return ft.Container(
        ft.Column(
            parted, spacing=0, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
        ),
        bgcolor=t.BOARD,
        border=ft.Border.all(1.5, t.LINE),
        border_radius=t.BOARD_RADIUS,
        clip_behavior=ft.ClipBehavior.ANTI_ALIAS,
    )


def tile(sign: str, name: str, small: str, do: Do, key: str | None = None) -> ft.Control:
    """Offer a drawer of the job: an icon, its name, what is in it."""
    words = ft.Column(
        [t.say(name, t.SMALL, weight=t.STRONG), t.say(small, t.CAPTION, t.SOFT)],
        spacing=1,
        tight=True,
    )
    content = ft.Row([icon(sign, 26), grow(words)], spacing=10)
    face = surface(
        content,
        fill=t.BOARD,
        edge=ft.BorderSide(1.5, t.LINE),
        radius=t.KEY_RADIUS,
        padding=ft.Padding(14, 8, 10, 8),
    )
    return tap(face, do, key=key or name)


def tiles(several: list[ft.Control], width: float = 412.0, text_ratio: float = 1.0) -> ft.Control:
    """Lay tiles two by two, or under each other where a word would break in two."""
    pairs = [several[at : at + 2] for at in range(0, len(several), 2)]
    lines = [stack_or_row([*pair], text_ratio) for pair in pairs]
    return ft.Column(
        several if width < t.TILES_FROM * text_ratio else lines,
        spacing=t.GAP,
        tight=True,
        horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
    )
