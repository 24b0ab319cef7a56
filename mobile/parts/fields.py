"""Fields for what is typed: kept exactly as typed, with what would be right beside them."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.tap import awaited

Typed = Callable[[str], Any]
NAME_MOST = 40  # letters: a name has to stand on a screen beside a figure


@dataclass(frozen=True, slots=True)
class Field:
    """A field: its name in the form, its label with the unit, what is typed, what is wrong."""

    name: str
    label: str
    value: str = ""
    error: str = ""
    number: bool = True
    most: int = NAME_MOST  # letters, of what is no number


def rims() -> dict[ft.ControlState, ft.InputBorder]:
    """Give a field's rims: thick where one types, in the caution's colour where it is wrong."""
    sides = {
        ft.ControlState.ERROR: ft.BorderSide(2, t.CAUTION),
        ft.ControlState.FOCUSED: ft.BorderSide(3, t.TEXT),
        ft.ControlState.DEFAULT: ft.BorderSide(1.5, t.EDGE),
    }
    radius = ft.BorderRadius.all(t.HOW_RADIUS)
    return {
        state: ft.OutlineInputBorder(side=side, border_radius=radius)
        for state, side in sides.items()
    }


def no_count() -> ft.Control:
    """Give a text no count of its letters, and what is wrong with it all the room."""
    return ft.Container(width=0, height=0)


def text_field(field: Field, ref: ft.Ref[ft.TextField] | None = None) -> ft.TextField:
    """Give a field its looks."""
    return ft.TextField(
        ref=ref,
        key=field.name,
        label=field.label,
        value=field.value,
        error=field.error or None,
        error_max_lines=4,
        error_style=t.style(t.SMALL, t.CAUTION),
        label_style=t.style(t.NAME, t.SOFT),
        text_style=t.style(t.HEADING, t.TEXT, t.MEDIUM),
        keyboard_type=ft.KeyboardType.NUMBER if field.number else ft.KeyboardType.TEXT,
        max_length=None if field.number else field.most,
        counter=None if field.number else no_count(),
        capitalization=None if field.number else ft.TextCapitalization.SENTENCES,
        autocorrect=not field.number,
        enable_suggestions=not field.number,
        smart_dashes_type=False,
        smart_quotes_type=False,
        border=rims(),
        cursor_color=t.TEXT,
        filled=True,
        fill_color=t.BOARD,
        content_padding=ft.Padding(16, 8 + 10 * t.LOOK.default_value.text_ratio, 16, 14),
    )


class Written:
    """What stands in a field on the page, and what of it the app has heard.

    The page tells each key twice: it writes the text into the mounted control, then calls
    `on_change`. A painting that says what was typed one key ago would wipe the newest key, so each
    painting says what the mounted control holds, and Flet finds nothing to send. A text that only
    the app can have set (a draft, a suggestion, *Clear*) makes a new field: keys that were on their
    way to the old one go nowhere, on the page and here alike, so both always agree.
    """

    def __init__(self, text: str) -> None:
        self.heard = text
        self.control: ft.TextField | None = None

    def into(self, field: Field) -> Field:
        """Give the field with what stands in it."""
        return replace(field, value=self.control.value) if self.control else field


@ft.component
def EntryField(
    field: Field,
    on_change: Typed,
    on_enter: Callable[[], Any] | None = None,
    ref: ft.Ref[ft.TextField] | None = None,
    *,
    key: str | None = None,
) -> ft.Control:
    """Ask for one text or number; Enter goes on.

    `on_change` changes the form before it awaits anything. The cursor is the person's: the page
    itself selects all on entry (`select.js`), for a selection sent from here would come late.
    """
    written: Written = ft.use_memo(lambda: Written(field.value), [])
    mounts, mount = ft.use_state(0)

    async def typed(event: ft.Event[ft.TextField]) -> None:
        written.heard = event.control.value
        await awaited(partial(on_change, event.control.value))()

    def follow() -> None:
        # An effect, not the painting: only when all is painted has every part the newest form.
        if field.value != written.heard:
            written.heard, written.control = field.value, None
            mount(mounts + 1)

    ft.use_effect(follow)
    control = text_field(written.into(field), ref)
    control.on_change = typed
    control.on_submit = awaited(on_enter) if on_enter else None
    written.control = control
    return ft.Container(control, key=f"{field.name} {mounts}")  # another key makes a new field


@ft.component
def Fields(
    fields: tuple[Field, ...],
    on_change: Callable[[str, str], Any],
    on_done: Callable[[], Any] | None = None,
    *,
    key: str | None = None,
) -> ft.Control:
    """Ask for several in a column; Enter goes to the next, and from the last to `on_done`."""
    doors: list[ft.Ref[ft.TextField]] = ft.use_memo(list[ft.Ref[ft.TextField]], [])
    doors.extend(ft.Ref[ft.TextField]() for _ in range(len(fields) - len(doors)))

    def enter(at: int) -> Callable[[], Any] | None:
        if at + 1 == len(fields):
            return on_done

        async def go_on() -> None:
            following = doors[at + 1].current  # asked for now: a painting may have replaced it
            if following:
                await following.focus()

        return go_on

    def change(name: str) -> Typed:
        return lambda text: on_change(name, text)

    controls: list[ft.Control] = [
        EntryField(field, change(field.name), enter(at), doors[at], key=f"entry {field.name}")
        for at, field in enumerate(fields)
    ]
    return ft.Column(
        controls, spacing=14, tight=True, horizontal_alignment=ft.CrossAxisAlignment.STRETCH
    )
