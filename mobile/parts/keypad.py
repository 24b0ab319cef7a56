"""The own keypad, for gloves: no phone keyboard over the figure."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import main_button
from mobile.parts.icons import icon
from mobile.parts.measure import text_width, unparted
from mobile.parts.tap import Action, surface, tap
from mobile.words import parts as words

DELETE = "delete"
POINT = "."
MOST = 7  # characters: 99999.9
KEY, COLUMNS, LINES = 77.0, 4, 4
OnKey = Callable[[str], Any]


@dataclass(frozen=True, slots=True)
class Typing:
    """What stands on the keypad's figure; a fresh one gives way to the first key."""

    text: str
    fresh: bool = False


def press(typing: Typing, key: str) -> Typing:
    """Give what stands there after a key.

    >>> press(Typing("77.3", fresh=True), "8").text
    '8'
    >>> press(Typing("8."), ".").text
    '8.'
    """
    text = typing.text
    if key == DELETE:
        return Typing(text[:-1])
    if typing.fresh:
        text = ""
    if len(text) >= MOST or (key == POINT and POINT in text):
        return Typing(text)
    if key == POINT and not text:
        text = "0"
    return Typing(key if text == "0" and key != POINT else text + key)


def key_face(content: ft.Control, width: float, height: float) -> ft.Container:
    """Give a key its face."""
    face = surface(content, fill=t.RAISED, edge=ft.BorderSide(1.5, t.EDGE), radius=t.KEY_RADIUS)
    face.width, face.height, face.alignment = width, height, ft.Alignment.CENTER
    return face


def pad_height(page_height: float) -> float:
    """Find how high a keypad may be: less than half the page, keys of 48 to 92."""
    key = (0.42 * page_height - (LINES - 1) * t.GAP) / LINES
    return LINES * min(max(key, t.TARGET), 92.0) + (LINES - 1) * t.GAP


def digit_size(width: float, height: float, text_ratio: float) -> float:
    """Find the size of a digit that stays inside its key at the phone's text size."""
    return min(34.0, width * 0.9 / 0.6 / text_ratio, height * 0.8 / t.line_height(34) / text_ratio)


def action_size(action: Action, width: float) -> float:
    """Find the size at which the longest word of the main action stays inside its key."""
    longest = max((text_width(word, 1) for word in action.words.split(" ")), default=1.0)
    return min(t.FACT - 1.0, (width - 10) / max(longest, 1.0))


@ft.component
def _Keys(
    on_key: OnKey, width: float, height: float, text_ratio: float, stacked: bool
) -> ft.Control:
    size = digit_size(width, height, text_ratio)

    def key(sign: str, wide: float = width) -> ft.Control:
        text = ft.Text(sign, style=t.style(size, t.TEXT, t.MEDIUM))
        label = words.POINT if sign == POINT else sign
        return tap(key_face(text, wide, height), lambda: on_key(sign), label, key=f"key {sign}")

    delete = tap(
        key_face(icon("backspace", 30, t.TEXT), width, height),
        lambda: on_key(DELETE),
        words.DELETE,
        key="key delete",
    )
    lines = [[key(sign) for sign in line] for line in ("789", "456", "123")]
    if stacked:
        lines[0].append(delete)
        lines[1].append(key(POINT))
        lines[2].append(key("0"))
    else:
        lines.append([key(POINT), key("0", 2 * width + t.GAP)])
    column = ft.Column([ft.Row(line, spacing=t.GAP) for line in lines], spacing=t.GAP, tight=True)
    if stacked:
        return column
    return ft.Stack([column, ft.Container(delete, left=3 * (width + t.GAP), top=0)])


Keys = ft.memo(_Keys)


def _call(latest: list[OnKey], sign: str) -> Any:
    return latest[0](sign)


@ft.component
def Keypad(
    action: Action,
    on_key: OnKey,
    width: float,
    height: float = 4 * KEY + 3 * t.GAP,
    text_ratio: float = 1.0,
) -> ft.Control:
    """Show the keypad with the main action; each key calls `on_key` with its sign or `DELETE`."""
    latest = ft.use_memo(lambda: [on_key], [])
    latest[0] = on_key  # the keys keep one callback, so that they are drawn once
    pressed: OnKey = ft.use_callback(lambda sign: _call(latest, sign), [])
    stacked = text_ratio >= t.STACKED_FROM
    key_wide = (width - (COLUMNS - 1) * t.GAP) / COLUMNS
    keys_high = height - (t.MAIN * text_ratio + t.GAP if stacked else 0)
    count = LINES - 1 if stacked else LINES
    key_high = max(t.TARGET, (keys_high - (count - 1) * t.GAP) / count)
    keys = Keys(pressed, key_wide, key_high, text_ratio, stacked)
    if stacked:
        return ft.Column(
            [keys, main_button(replace(action, words=unparted(action.words)))],
            spacing=t.GAP,
            tight=True,
            horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
        )
    whole = replace(action, words=unparted(action.words))
    button = ft.Container(
        main_button(whole, action_size(whole, key_wide) / text_ratio, side=0),
        left=3 * (key_wide + t.GAP),
        top=key_high + t.GAP,
        width=key_wide,
        height=3 * key_high + 2 * t.GAP,
    )
    high = 4 * key_high + 3 * t.GAP
    return ft.Stack([keys, button], width=width, height=high)
