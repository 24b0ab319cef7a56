"""An answer to a mishap as one button: what to do, its grams large, its cost, the cup after it."""

import flet as ft

from mobile import theme as t
from mobile.parts.bucket import Bucket
from mobile.parts.tap import Do, grow, surface, tap
from mobile.screens.mix.weigh_out.answers import Answer
from mobile.screens.mix.weigh_out.lines import narrow
from mobile.screens.mix.weigh_out.room import LEAST_WIDE, TIGHT, answer_cup
from mobile.session.view import View
from mobile.words import grams as in_grams
from mobile.words import weigh_out as weigh_words

STRETCH = ft.CrossAxisAlignment.STRETCH


def card(one: Answer, do: Do | None, best: bool, view: View) -> ft.Control:
    """Lay out an answer as one button: what to do, its cost, the cup after it, what follows.

    One that can't be done is no button: its edge is thin, its words are soft, and they say why.
    """
    ink = t.INK if best else t.TEXT if do else t.SOFT
    cost: ft.Control = t.say(one.cost, t.HEADING, ink, t.MEDIUM)
    if not in_grams.around_grams(one.name)[1]:
        cost = with_figure(one.cost, t.HEADING, ink, view, t.MEDIUM)
    heads: list[ft.Control] = [with_figure(one.name, t.FACT, ink, view), cost]
    said = t.say(in_grams.unbroken(one.more), t.SMALL, ink if best else t.SOFT2)
    cup = ft.Container(
        Bucket(one.cup, weigh_words.CUP_AFTER, answer_cup(view)),
        bgcolor=t.GROUND if best else None,
        border_radius=t.HOW_RADIUS,
        padding=ft.Padding(6, 8, 6, 4),
    )
    if view.text_ratio >= t.STACKED_FROM or not one.cup:
        under: ft.Control = said
    else:
        under = ft.Row([cup, grow(said)], spacing=14)
    content = ft.Column([*heads, under], spacing=6, tight=True, horizontal_alignment=STRETCH)
    edge = ft.BorderSide(3, t.RIM) if best else ft.BorderSide(1.5, t.EDGE if do else t.LINE)
    face = surface(
        content,
        fill=t.FILL if best else t.RAISED if do else t.GROUND,
        edge=edge,
        radius=t.BOARD_RADIUS,
        padding=ft.Padding(16, 12, 16, 12),
    )
    return tap(face, do, key=f"answer {one.key}")


def glance(view: View) -> float:
    """Find the size of a figure to be read at a glance, as far as its line has room."""
    if view.width < LEAST_WIDE + t.MARGIN or view.text_ratio >= t.STACKED_FROM:
        return t.ZONE
    return t.ANSWER if narrow(view) else t.STATE


def with_figure(
    said: str, size: float, ink: ft.ColorValue, view: View, weight: ft.FontWeight = t.STRONG
) -> ft.Control:
    """Say something with its grams large enough for a glance."""
    before, grams, after = in_grams.around_grams(said)
    large = glance(view) if view.height >= TIGHT else t.ZONE
    parts = ((before, size, weight), (grams, large, t.STRONG), (after, size, weight))
    spans = [ft.TextSpan(text, t.style(high, ink, heavy)) for text, high, heavy in parts if text]
    return ft.Text(spans=spans, style=t.style(size, ink, weight), semantics_label=said)
