"""Advice before a weigh-out: a part too small for the scale, the can that limits, its error."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from functools import partial
from math import floor

import flet as ft

from core.mixing.portions import Portion
from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.tap import Action, Do
from mobile.screens.mix.weigh_out.start_form import Batch, jars_to_use
from mobile.session.known import Known
from mobile.session.mix.advice import SmallPart, allowed_g, off_g, small_part, spoilt
from mobile.session.mix.cans_hold import limiting
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import left_g
from mobile.session.mix.leftovers import doubt_of
from mobile.session.view import View
from mobile.store.entries import LeftoverKept
from mobile.store.records import Mix
from mobile.words import advice as words
from mobile.words import grams as in_grams
from mobile.words import scale

Put = Callable[[str], None]  # other grams onto the keypad
Use = Callable[[Mix], Awaitable[None]]  # a mix that has a jar in it


@dataclass(frozen=True, slots=True)
class Doing:
    """What the advice's buttons do."""

    put: Put
    use: Use


def advice(known: Known, mix: Mix, batch: Batch, do: Doing, view: View) -> list[ft.Control]:
    """Say what speaks for another batch, each with the grams that would do."""
    put, use = do.put, do.use
    if batch.grams_g is None:
        return []
    portions = tuple(Portion(one.paint.id, one.net_g) for one in batch.parts)
    lines = can_lines(known, mix, batch.grams_g, put, view)
    jars = jars_to_use(known, mix, batch)
    lines += [jar_line(known, jar, partial(use, mixed)) for jar, mixed in jars]
    if small := small_part(known, portions):
        lines += small_lines(known, small, allowed_g(known, mix), put, view)
    if wrong := spoilt(known, portions):
        names = tuple(paint_of(known, paint).name for paint in wrong)
        said = scale.suffers(names, off_g(known), known.settings.scale_step_g)
        lines.append(t.say(said, t.SMALL, t.CAUTION))
    return lines


def can_lines(known: Known, mix: Mix, batch_g: float, put: Put, view: View) -> list[ft.Control]:
    """Say how much the cans allow, and which one runs out first."""
    most = limiting(known, mix)
    if most.most_g is None:
        return []
    grams, name = float(floor(most.most_g)), paint_of(known, most.paint).name
    said = words.cans_allow(in_grams.whole(grams), name)
    if batch_g <= most.most_g:
        return [t.say(said, t.CAPTION, t.SOFT)]
    return [t.say(said, t.SMALL, t.CAUTION), instead(grams, put, view)]


def jar_line(known: Known, jar: LeftoverKept, use: Do) -> ft.Control:
    """Offer a jar of this colour."""
    said = words.use_jar(jar.number, in_grams.grams(left_g(known, jar)))
    button = outline_button(Action(said, use, key=f"jar {jar.number}"))
    doubt = [t.say(doubt_of(jar), t.SMALL, t.CAUTION)] if doubt_of(jar) else []
    return ft.Row([button, *doubt], spacing=t.GAP, wrap=True)


def small_lines(
    known: Known, small: SmallPart, allowed_g: float, put: Put, view: View
) -> list[ft.Control]:
    """Say that a part is too small for the scale, and the ways out that scale and cans allow."""
    step_g = known.settings.scale_step_g
    name = paint_of(known, small.paint).name
    least = in_grams.scale(small.least_g, step_g)
    said = words.too_small(in_grams.scale(small.net_g, step_g), name, least)
    lines: list[ft.Control] = [t.say(said, t.SMALL, t.CAUTION)]
    if small.batch_g <= allowed_g:
        lines.append(instead(small.batch_g, put, view))
    if weaker := small.let_down:
        carrier = paint_of(known, small.carrier).name
        grams = (weaker.tint_g, weaker.carrier_g, weaker.use_g, weaker.carrier_left_g)
        lines.append(
            t.say(
                words.let_down(name, carrier, tuple(in_grams.scale(g, step_g) for g in grams)),
                t.CAPTION,
                t.SOFT,
            )
        )
    return lines


def instead(grams_g: float, put: Put, view: View) -> ft.Control:
    """Offer other grams at a tap."""
    text = view.typed("batch_g", grams_g)
    key = f"instead {text}"
    return ft.Row([outline_button(Action(words.instead(text), partial(put, text), key=key))])
