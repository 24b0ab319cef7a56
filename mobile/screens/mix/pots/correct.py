"""Correct the colour: what a dried brush-out lacks, and the smallest addition that mends it."""

from functools import partial

import flet as ft

from core.errors import Refused
from core.mixing.correct import Correction
from core.mixing.least import least_part_g
from mobile import theme as t
from mobile.parts.boards import board
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.choice import segmented
from mobile.parts.page import header, screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action
from mobile.screens.mix.pots.lack_form import DAY, LAMP, RIGHT, LackForm
from mobile.session.address import HOW, go
from mobile.session.forms import Edit, use_form
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import in_paints
from mobile.session.mix.pot_again import as_poured, correct_form, correct_pot, correction
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import advice, places
from mobile.words import grams as in_grams
from mobile.words import pot as words

LESS = 4  # the steps down, and none


@ft.component
def Correct(known: Known, pot: Pot, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Ask, paint by paint, what the brush-out lacks; the addition follows."""
    view, session = use_view(), use_session()
    paints = in_paints(known, pot.holds)
    typed_form, edit, _ = use_form(correct_form(pot), LackForm())
    form = typed_form.of_paints(len(paints))
    light, show = ft.use_state(DAY)
    made = reckoned(known, pot, form)
    use_how(how(known, pot, made, view) if how_up and made else None)

    async def mend() -> None:
        verb = correct_pot(session, pot, edit.now.of_paints(len(paints)).lacks)
        await session.attempt(verb, then=lambda _: go(places.MIX, "weigh"))

    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    lines: list[ft.Control] = [
        header(words.CORRECT, pot.started.name, outline_button(back, "back")),
        t.say(words.LACKS, t.SMALL, t.SOFT),
        t.say(words.SIGNS, t.SMALL),
        segmented(
            words.LIGHTS,
            words.LIGHTS[light][0],
            lambda k: show(DAY if k == "day" else LAMP),
            view.text_ratio,
            "light",
        ),
        *(
            steps_of(paint_of(known, one.paint).name, (at, light), form, edit)
            for at, one in enumerate(paints)
        ),
        *said(known, pot, form, made),
        ft.Row([outline_button(Action(places.HOW, partial(go_how, pot), key="how"))]),
        t.say(words.STEPS_NOTE, t.CAPTION, t.SOFT),
        t.say(words.TARE_FIRST, t.SMALL, t.SOFT),
    ]
    adds = as_poured(pot, made.adds) if made else ()
    text = in_grams.tenths(sum(one.net_g for one in adds)) if adds else ""
    why = words.TOO_LITTLE_TO_ADD if made and not adds else ""
    action = Action(words.add_grams(text), mend if adds else None, why, "mend")
    return screen(lines, [main_button(action)])


def go_how(pot: Pot) -> None:
    """Show how the addition comes about."""
    go(places.MIX, "pots", pot.id, "correct", HOW)


def steps_of(name: str, cell: tuple[int, int], form: LackForm, edit: Edit[LackForm]) -> ft.Control:
    """Ask for the steps of one paint, in the light that is shown: a row of the form, a column."""
    at, light = cell

    def choose(step: str) -> None:
        edit(lambda now: now.of_paints(len(form.steps)).chosen(at, light, step))

    chosen = form.steps[at][light]
    named = t.say(name, t.NAME, weight=t.MEDIUM)
    rows = (words.STEPS[:LESS], words.STEPS[LESS:])  # seven beside each other are too small to tap
    return board([named, *(segmented(row, chosen, choose, 1.0, f"steps {at}") for row in rows)])


def how(known: Known, pot: Pot, made: Correction, view: View) -> How:
    """Say how the addition comes about, paint by paint."""
    names = tuple(paint_of(known, one.paint).name for one in made.adds)
    return how_of(pot.started.name, words.CORRECT, made.working, view, {"add_g": names})


def reckoned(known: Known, pot: Pot, form: LackForm) -> Correction | None:
    """Find the addition; None while nothing, or all alike, is asked."""
    try:
        return correction(known, pot, form.lacks)
    except Refused:
        return None


def said(known: Known, pot: Pot, form: LackForm, made: Correction | None) -> list[ft.Control]:
    """Say what is poured, what the pot weighs then, and which addition is small for the scale."""
    if made is None:
        asked = any(step != RIGHT for row in form.steps for step in row)
        return [t.say(words.SAME_FOR_ALL if asked else words.NOTHING_ASKED, t.NAME, t.SOFT)]
    adds = tuple((paint_of(known, one.paint).name, one.net_g) for one in as_poured(pot, made.adds))
    if not adds:
        return []  # the button says why
    lines = [words.add_these(adds), words.then_weighs(made.total_g)]
    least_g = least_part_g(pot.plan.scale_step_g)
    small = tuple(
        advice.too_small(in_grams.tenths(net_g), name, in_grams.tenths(least_g))
        for name, net_g in adds
        if net_g < least_g
    )
    return [
        *(t.say(in_grams.unbroken(line), t.NAME) for line in lines),
        *(t.say(in_grams.unbroken(line), t.SMALL, t.CAUTION) for line in small),
    ]
