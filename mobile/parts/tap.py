"""Whatever can be tapped: one surface, its role and its spoken label."""

from collections.abc import Callable
from dataclasses import dataclass
from inspect import isawaitable
from typing import Any, TypeVar

import flet as ft

from mobile import theme as t

Do = Callable[[], Any]  # a verb, plain or async


@dataclass(frozen=True, slots=True)
class Action:
    """A button's words and what it does; without `do` it stands there and can't be tapped."""

    words: str
    do: Do | None = None
    small: str = ""
    key: str | None = None


C = TypeVar("C", bound=ft.Control)


def grow(control: C, share: int = 1) -> C:
    """Let a control take the room that is left in its row or column."""
    control.expand = share
    return control


def grow_loosely(control: C) -> C:
    """Let a text wrap rather than push its neighbours out; it takes no more than it needs."""
    control.expand, control.expand_loose = True, True
    return control


def spread(controls: list[ft.Control], spacing: float = 12) -> ft.Control:
    """Put controls at both ends of a line; those that don't fit go under the first."""
    return ft.Row(
        controls,
        wrap=True,
        spacing=spacing,
        run_spacing=4,
        alignment=ft.MainAxisAlignment.SPACE_BETWEEN,
        vertical_alignment=ft.CrossAxisAlignment.CENTER,
    )


def surface(
    content: ft.Control,
    *,
    fill: ft.ColorValue | None = None,
    edge: ft.BorderSide | None = None,
    radius: float = t.BUTTON_RADIUS,
    padding: ft.PaddingValue = 0,
) -> ft.Container:
    """Give the face of a button."""
    border = ft.Border(edge, edge, edge, edge) if edge else None
    return ft.Container(
        content,
        bgcolor=fill,
        border=border,
        border_radius=radius,
        padding=padding,
    )


def awaited(do: Do) -> Do:
    """Wait for what a plain function hands back (`lambda: verb()`); Flet would let it drop."""

    async def run() -> None:
        done = do()
        if isawaitable(done):
            await done

    return run


def tap(
    face: ft.Container,
    do: Do | None,
    label: str = "",
    *,
    chosen: bool | None = None,
    key: str | None = None,
) -> ft.Control:
    """Make a face a button of one node; a label is read in place of what the face says."""
    face.on_click, face.key = awaited(do) if do else None, key
    face.ink = do is not None
    face.ink_color = ft.Colors.with_opacity(0.14, t.TEXT)
    if not label:
        return ft.Semantics(button=True, selected=chosen, container=True, content=face)
    face.content = ft.Semantics(
        button=True, label=label, selected=chosen, exclude_semantics=True, content=face.content
    )
    return ft.MergeSemantics(face)
