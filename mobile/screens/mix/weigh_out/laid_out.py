"""Where the facts of a weighing step stand: the figure is on the screen, whatever else is."""

from dataclasses import dataclass

import flet as ft

from mobile import theme as t
from mobile.parts.bucket import Bucket, Layer
from mobile.parts.buttons import outline_button
from mobile.parts.figure import BigFigure
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.lines import large, lowered, name_size, narrow, poured_from
from mobile.screens.mix.weigh_out.room import NARROW, beside, figure_wide, low
from mobile.screens.mix.weigh_out.step_room import Said, StepRoom, step_room
from mobile.session.address import HOW, go
from mobile.session.mix.from_cans import FromCan
from mobile.session.view import View
from mobile.words import grams as in_grams
from mobile.words import places

START, STRETCH = ft.CrossAxisAlignment.START, ft.CrossAxisAlignment.STRETCH


@dataclass(frozen=True, slots=True)
class Step:
    """What a step shows: its words, its can, its cup, and what stands beside the band."""

    said: Said
    one: FromCan
    layers: tuple[Layer, ...]
    cup_said: str
    offered: Action | None = None


def laid_out(above: ft.Control, step: Step, view: View) -> list[ft.Control]:
    """Stack it all; on a laptop the cup stands beside, where room is short lines stand close."""
    room = step_room(step.said, view)
    figure = BigFigure(step.said.reads, "g", figure_wide(view), room.figure_most)
    cup = Bucket(step.layers, step.cup_said, room.cup)
    if room.close:
        return [above, *closely(step, room, figure, cup)]
    name, said = poured_from(step.one, size=name_size(view, t.ZONE)), should_read(step.said)
    under = band(step, view)
    facts = [name, said, figure, under]
    if beside(view):
        left = grow(ft.Column(facts, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH))
        return [above, ft.Row([left, cup], spacing=t.MARGIN)]
    if t.sideways() or low(view) or (large(view) and view.width < NARROW):
        facts = [figure, name, said, under]  # the figure must stand there, whatever else does
    if t.sideways() or not (large(view) or low(view)):
        return [above, *facts, cup]
    first, *others = facts
    return [lowered(first), *others, above, cup]


def closely(step: Step, room: StepRoom, figure: ft.Control, cup: ft.Control) -> list[ft.Control]:
    """Put what is said of the figure under the name, and the buttons beside the cup."""
    name = grow(poured_from(step.one, step.said.should, room.name_size))
    offered = [outline_button(step.offered)] if step.offered else []
    if t.sideways():
        under = ft.Row([grow(limits(step.said)), *offered], spacing=12)
        return [ft.Row([name, why()], spacing=12), figure, under, cup]
    first = [ft.Row([name]), figure, limits(step.said)]
    if room.cup.labels:
        return [*first, ft.Row([*offered, why()], spacing=t.GAP), cup]
    buttons = ft.Column([*offered, why()], spacing=t.GAP, tight=True, horizontal_alignment=START)
    return [*first, ft.Row([grow(buttons), cup])]


def why() -> ft.Control:
    """Offer *How?*."""
    return outline_button(Action(places.HOW, lambda: go(places.MIX, "weigh", HOW), key="how"))


def should_read(said: Said) -> ft.Control:
    """Say what the figure is; *How?* beside it."""
    return ft.Row([grow(t.say(said.should, t.NAME, t.SOFT)), why()], spacing=12)


def limits(said: Said) -> ft.Control:
    """Say the band; of a small part after a tare, how to pour it."""
    lines: list[ft.Control] = [t.say(in_grams.unbroken(said.limits), t.FACT)]
    if said.more:
        lines.append(t.say(said.more, t.SMALL, t.SOFT))
    return ft.Column(lines, spacing=2, tight=True)


def band(step: Step, view: View) -> ft.Control:
    """Say the band, and offer what stands beside it."""
    button = [outline_button(step.offered)] if step.offered else []
    if narrow(view):
        return ft.Column([limits(step.said), *button], spacing=t.GAP, tight=True)
    return ft.Row([grow(limits(step.said)), *button], spacing=12)
