"""A pot that is done: its number, what was really poured, what was planned, each part's share."""

from functools import partial

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.parts.bucket import Bucket, Cup
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow
from mobile.screens.mix.pots.contents import how, in_pot, list_of
from mobile.screens.mix.pots.outcome import came_out
from mobile.screens.mix.pots.vessels import vessels
from mobile.screens.mix.weigh_out.drawn import in_cup
from mobile.screens.mix.weigh_out.lines import narrow
from mobile.session.address import HOW, go
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.mix.cup import volume_l
from mobile.session.mix.cups import HAIR_G, in_pot_and_cups_g
from mobile.session.mix.label import lots_in
from mobile.session.mix.ways import ways_of
from mobile.session.times import when
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import cups as of_cups
from mobile.words import grams as in_grams
from mobile.words import label as of_label
from mobile.words import mix as words
from mobile.words import places
from mobile.words import pot as of_pot
from mobile.words import weigh_out as weigh_words

CUP = Cup(96.0, labels=False)
WAYS = (
    ("add", of_pot.ADD),
    ("correct", of_pot.CORRECT),
    ("cups", of_cups.CUPS),
    ("left", of_cups.LEFT),
    ("went", of_cups.WENT),
    ("label", of_label.LABEL),
)


@ft.component
def PotScreen(known: Known, pot: Pot, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Show a pot as it came out."""
    view = use_view()
    use_how(how(known, pot, view) if how_up else None)
    back = outline_button(Action(places.BACK, lambda: go(places.MIX), key="back"), "back")
    why = Action(places.HOW, lambda: go(places.MIX, "pots", pot.id, HOW), key="how")
    rows: list[ft.Control] = [
        header(words.pot(pot.started.number), pot.started.name, back, t.ZONE),
        in_all(known, pot, view),
        *vessels(known, pot, view),
        *([ways_on(known, pot)] if pot.ended else []),
        list_of(in_pot(known, pot), pot.plan.scale_step_g, view, False),
        ft.Row([outline_button(why)]),
    ]
    if not pot.ended:  # *Stirred, done* was taken back
        on = words.carry_on(pot.started.name, words.pot(pot.started.number).lower())
        button = Action(on, lambda: go(places.MIX, "weigh"), key="carry on")
        return screen(rows, [main_button(button)])
    if not pot.in_cup_g:
        return screen(rows)
    more = Action(words.MORE_OF_SAME, lambda: go(places.MIX, "pots", pot.id, "more"), key="more")
    return screen(rows, [main_button(more)])


def ways_on(known: Known, pot: Pot) -> ft.Control:
    """Offer what can be done with a pot that is done."""
    offered = ways_of(known, pot)
    buttons: list[ft.Control] = [
        outline_button(Action(said, partial(to, pot, at), key=at))
        for at, said in WAYS
        if at in offered
    ]
    return ft.Row(buttons, spacing=t.GAP, run_spacing=t.GAP, wrap=True)


def to(pot: Pot, at: str) -> None:
    """Go to one of them."""
    go(places.MIX, "pots", pot.id, at)


def in_all(known: Known, pot: Pot, view: View) -> ft.Control:
    """Say how much is in it still, and how it came out, beside the cup."""
    came, state = came_out(known, pot)
    color = t.CAUTION if state == "caution" else t.SOFT
    small = (
        when(pot.started.at_s, clock.now_s()),
        of_label.by(pot.started.who),
        of_label.lots(lots_in(known, pot)),
    )
    facts = ft.Column(
        [
            *(t.say(said, size) for said, size in how_much(known, pot, view)),
            t.say(came, t.NAME, color),
            t.say(", ".join(one for one in small if one), t.SMALL, t.SOFT),
        ],
        spacing=4,
        tight=True,
    )
    if view.text_ratio >= t.STACKED_FROM:
        return facts
    inside = pot.holds if pot.ended == "stirred" else pot.went_in
    cup = Bucket(in_cup(known, inside, volume_l(known, pot.went_in)), weigh_words.IN_THE_CUP, CUP)
    return ft.Container(ft.Row([grow(facts), cup], spacing=12), padding=ft.Padding(4, 0, 4, 8))


def how_much(known: Known, pot: Pot, view: View) -> tuple[tuple[str, float], ...]:
    """Say what is left, its cups counted, and of how much; each with its size."""
    large = t.FACT if narrow(view) else t.STATE
    in_all = in_grams.grams_at(pot.in_cup_g, pot.plan.scale_step_g)
    if pot.ended != "stirred" or not pot.drawn_g:
        return ((in_all, large),)
    left_g = in_pot_and_cups_g(known, pot)
    left = in_grams.grams_at(left_g, pot.plan.scale_step_g)
    said = of_cups.left_of(left, pot.left_g < HAIR_G < left_g)
    return ((said, large), (of_cups.of_all(in_all), t.NAME))
