"""Fields for what is typed: kept exactly as typed, with what would be right beside them."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.tap import awaited

Typed = Callable[[str], Any]


@dataclass(frozen=True, slots=True)
class Field:
    """A field: its name in the form, its label with the unit, what is typed, what is wrong."""

    name: str
    label: str
    value: str = ""
    error: str = ""
    number: bool = True


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
        capitalization=None if field.number else ft.TextCapitalization.SENTENCES,
        autocorrect=not field.number,
        enable_suggestions=not field.number,
        smart_dashes_type=False,
        smart_quotes_type=False,
        border=rims(),
        cursor_color=t.TEXT,
        filled=True,
        fill_color=t.BOARD,
        content_padding=ft.Padding(16, 18, 16, 14),
    )


class Typing:
    """What a field remembers between two paintings, so that quick fingers lose nothing.

    A text comes back from the form one painting after it was typed. By then more may stand in the
    field; to send the older text to the page would wipe that. So what merely comes back is left
    alone, and only a text from elsewhere (a draft, another unit, *Clear*) is shown.
    """

    def __init__(self) -> None:
        self.given: str | None = None
        self.sent: list[str] = []
        self.control: ft.TextField | None = None

    def shown(self, given: str) -> str:
        """Say what to show, given what the form holds."""
        back = given in self.sent
        if back:
            del self.sent[: self.sent.index(given) + 1]
        live = self.control if back or given == self.given else None
        self.given = given
        return live.value if live else given


@ft.component
def EntryField(
    field: Field,
    on_change: Typed,
    on_enter: Callable[[], Any] | None = None,
    ref: ft.Ref[ft.TextField] | None = None,
    *,
    key: str | None = None,
) -> ft.Control:
    """Ask for one text or number; all of it is selected on entry, and Enter goes on."""
    nothing: ft.TextSelection | None = None
    chosen, choose = ft.use_state(nothing)
    typing: Typing = ft.use_memo(Typing, [])

    async def typed(event: ft.Event[ft.TextField]) -> None:
        choose(None)
        typing.sent.append(event.control.value)
        await awaited(partial(on_change, event.control.value))()

    control = text_field(field, ref)
    control.value = typing.shown(field.value)
    control.selection = chosen
    control.on_change = typed
    control.on_submit = awaited(on_enter) if on_enter else None
    control.on_focus = lambda event: choose(ft.TextSelection(0, len(event.control.value)))
    control.on_blur = lambda: choose(None)
    typing.control = control
    return control


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
