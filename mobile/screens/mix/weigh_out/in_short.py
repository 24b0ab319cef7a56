"""What is worth knowing before a weigh-out, in a line that stands over the keypad."""

from dataclasses import dataclass
from math import floor

import flet as ft

from core.mixing.portions import Portion
from mobile import theme as t
from mobile.parts.icons import icon
from mobile.parts.measure import lines_in
from mobile.parts.tap import grow
from mobile.screens.mix.weigh_out.lines import lowered
from mobile.screens.mix.weigh_out.room import figure_first, inside
from mobile.screens.mix.weigh_out.start_form import Batch
from mobile.session.known import Known
from mobile.session.mix.advice import off_g, small_part, spoilt
from mobile.session.mix.cans_hold import limiting
from mobile.session.mix.from_cans import paint_of
from mobile.session.view import View
from mobile.store.records import Mix
from mobile.words import advice as words
from mobile.words import grams as in_grams

SIGN, GAP = 20.0, 8.0


@dataclass(frozen=True, slots=True)
class Short:
    """What is worth knowing, in short; `caution` where it speaks against these grams."""

    said: str = ""
    caution: bool = False


def in_short(known: Known, mix: Mix, batch: Batch) -> Short:
    """Give every caution in short, or what the cans allow; the advice below says the rest."""
    if batch.grams_g is None:
        return Short()
    step_g, portions = (
        known.settings.scale_step_g,
        tuple(Portion(one.paint.id, one.net_g) for one in batch.parts),
    )
    most_g = limiting(known, mix).most_g
    allowed = [] if most_g is None else [words.at_most(in_grams.whole(float(floor(most_g))))]
    small = small_part(known, portions)
    cautions = allowed if most_g is not None and batch.grams_g > most_g else []
    if small:
        cautions = [*cautions, words.small(paint_of(known, small.paint).name)]
    if spoilt(known, portions):
        cautions = [*cautions, words.off(in_grams.scale(abs(off_g(known)), step_g))]
    return Short(" ".join(cautions or allowed), bool(cautions))


def short_high(short: Short, view: View) -> float:
    """Find how high that line is over the keypad, with its gap; 0 where it is not there."""
    if not short.said or figure_first(view):
        return 0.0
    size = t.SMALL * view.text_ratio
    room = inside(view) - (SIGN + GAP if short.caution else 0.0)
    return lines_in(short.said, size, room) * size * t.line_height(t.SMALL) + t.GAP


def headed(
    head: list[ft.Control], figure: ft.Control, short: Short, view: View
) -> tuple[list[ft.Control], list[ft.Control]]:
    """Give what stands first, and what is pinned over the keypad.

    Where the keypad would hide the figure it comes first, and the line with it.
    """
    if figure_first(view):
        return [lowered(figure), *short_line(short), *reversed(head)], []
    return [*head, figure], short_line(short)


def short_line(short: Short) -> list[ft.Control]:
    """Show that line; nothing where there is nothing to say."""
    if not short.said:
        return []
    color = t.CAUTION if short.caution else t.SOFT
    sign = [icon("warning", SIGN, color, heavy=True)] if short.caution else []
    weight = t.MEDIUM if short.caution else t.NORMAL
    line = ft.Row([*sign, grow(t.say(short.said, t.SMALL, color, weight))], spacing=GAP)
    return [ft.Semantics(live_region=True, container=True, content=line)]
