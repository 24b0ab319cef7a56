"""The *How?* sheet: each step with its inputs, value, unit and source."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Fact, fact
from mobile.parts.buttons import second_button
from mobile.parts.tap import Action, grow, spread
from mobile.words.places import CLOSE

TOP = 140.0
WIDEST = 640.0
STRETCH = ft.CrossAxisAlignment.STRETCH


@dataclass(frozen=True, slots=True)
class HowStep:
    """A step of the working in words: what comes out, from what, how much, by which source."""

    name: str
    inputs: str
    value: str
    source: str = ""


@dataclass(frozen=True, slots=True)
class How:
    """What a sheet says; its answers stand side by side over the steps."""

    title: str
    small: str
    steps: tuple[HowStep, ...]
    answers: tuple[Fact, ...] = ()
    note: str = ""


def answers_box(answers: tuple[Fact, ...]) -> ft.Control:
    """Frame the answers, with a division between them; large ones stand under each other."""
    frame = ft.Border.all(1.5, t.LINE)
    if t.large():
        stack = ft.Column([fact(one, t.ZONE) for one in answers], spacing=t.GAP, tight=True)
        return ft.Container(stack, border=frame, border_radius=t.BUTTON_RADIUS, padding=14)
    cells: list[ft.Control] = []
    for one in answers:
        if cells:
            cells.append(ft.Container(width=1.5, bgcolor=t.LINE))
        middle = fact(one, t.ZONE + 2, ft.CrossAxisAlignment.CENTER)
        cell = ft.Container(middle, alignment=ft.Alignment.CENTER, padding=ft.Padding(8, 10, 8, 10))
        cells.append(grow(cell))
    row = ft.Row(cells, spacing=0, intrinsic_height=True, vertical_alignment=STRETCH)
    return ft.Container(row, border=frame, border_radius=t.BUTTON_RADIUS)


def step_row(number: int, step: HowStep) -> ft.Control:
    """Show a step: its number, its name over its inputs and source, its value."""
    name = t.say(step.name, t.SMALL, weight=t.STRONG)
    value = t.say(step.value, t.NAME, weight=t.STRONG)
    under = [t.say(line, t.CAPTION, t.SOFT) for line in (step.inputs, step.source) if line]
    words = ft.Column(
        [spread([name, value]), *under], spacing=2, tight=True, horizontal_alignment=STRETCH
    )
    count = ft.Container(
        t.say(f"{number}", t.SMALL, t.SOFT, t.STRONG), padding=ft.Padding(0, 2, 4, 0)
    )
    row = ft.Row([count, grow(words)], spacing=10, vertical_alignment=ft.CrossAxisAlignment.START)
    return ft.Container(
        row, padding=ft.Padding(0, 8, 0, 10), border=ft.Border(top=ft.BorderSide(1.5, t.LINE))
    )


def how_sheet(how: How, on_close: Callable[[], Any], height: float) -> ft.BottomSheet:
    """Build the sheet for a page of this height, to hand to `ft.use_dialog` while it is up."""
    title = ft.Semantics(header=True, container=True, content=t.say(how.title, t.FACT))
    small = [t.say(how.small, t.SMALL, t.SOFT)] if how.small else []
    boxes = [answers_box(how.answers)] if how.answers else []
    steps = [step_row(at, step) for at, step in enumerate(how.steps, 1)]
    note = [t.say(how.note, t.CAPTION, t.SOFT)] if how.note else []
    scrolled = ft.ListView(
        [
            ft.Column([title, *small], spacing=4, tight=True),
            *boxes,
            ft.Column(steps, spacing=0, tight=True),
            *note,
        ],
        spacing=12,
        expand=True,
        padding=ft.Padding(0, 0, 0, 8),
    )
    close = second_button(Action(CLOSE, on_close, key="close sheet"), size=t.HEADING, height=68)
    content = ft.Container(
        ft.Column([scrolled, close], spacing=t.GAP, horizontal_alignment=STRETCH),
        height=max(height - TOP, height * 0.7),
        padding=ft.Padding(t.HEADER, 18, t.HEADER, 12),
    )
    shape = ft.RoundedRectangleBorder(
        radius=ft.BorderRadius(24, 24, 0, 0), side=ft.BorderSide(2, t.EDGE)
    )
    return ft.BottomSheet(
        content,
        bgcolor=t.BOARD,
        shape=shape,
        scrollable=True,
        on_dismiss=on_close,
        size_constraints=ft.BoxConstraints(max_width=WIDEST),
        barrier_color="#000000,0.62",
    )
