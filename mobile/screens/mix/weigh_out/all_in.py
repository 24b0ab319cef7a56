"""All is in: the pot's number for its cup, what is in it, what each can has left."""

import flet as ft

from mobile import theme as t
from mobile.parts.bucket import Bucket, Cup
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.page import screen
from mobile.parts.tap import Action, grow
from mobile.screens.mix.pots.contents import how, in_pot, list_of
from mobile.screens.mix.weigh_out.drawn import in_cup
from mobile.screens.mix.weigh_out.lines import narrow, parted, undo_words
from mobile.screens.mix.weigh_out.room import FOOT, over_keys
from mobile.session.address import HOW, go
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.mix.to_weigh import in_loads
from mobile.session.mix.weigh_out import stirred, undo_last
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mishaps, places
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

CUP, SMALL_CUP = Cup(120.0, labels=False), Cup(72.0, labels=False)
MAIN_HIGH = 96.0


@ft.component
def AllIn(known: Known, pot: Pot, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Show what is in the pot; *Stirred, done* ends the weigh-out."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    use_how(how(known, pot, view) if how_up else None)
    parts = in_pot(known, pot)

    async def done() -> None:
        await touch(lambda: stirred(session, pot), lambda: go(places.MIX, "pots", pot.id))

    async def undo() -> None:
        await touch(lambda: undo_last(session, pot), None)

    leave = outline_button(Action(weigh_words.LEAVE, lambda: go(places.MIX), key="leave"), "back")
    back = outline_button(Action(undo_words(pot), undo, key="undo pour"))
    why = Action(places.HOW, lambda: go(places.MIX, "weigh", HOW), key="how")
    fell = Action(mishaps.SPILT, lambda: go(places.MIX, "weigh", "spilt"), key="spilt")
    rows: list[ft.Control] = [
        parted([leave, back], ft.Container()),
        cup_label(known, pot, view),
        *([t.say(weigh_words.BOX, t.SMALL)] if in_loads(known, pot) else []),
        list_of(parts, pot.plan.scale_step_g, view, True),
        ft.Row([outline_button(why), outline_button(fell)], spacing=t.GAP, wrap=True),
    ]
    high = over_keys(view) - FOOT if t.sideways() else MAIN_HIGH
    return screen(
        rows, [main_button(Action(weigh_words.STIRRED, done, key="stirred"), t.ZONE, high)]
    )


def cup_label(known: Known, pot: Pot, view: View) -> ft.Control:
    """Say what goes on the cup, beside the cup with its layers."""
    in_all = in_grams.grams_at(pot.in_cup_g, pot.plan.scale_step_g)
    said = ft.Column(
        [
            t.say(words.pot(pot.started.number), t.STATE),
            t.say(pot.started.name, t.FACT),
            t.say(words.all_in(in_all), t.NAME, t.SOFT),
        ],
        spacing=4,
        tight=True,
    )
    size = SMALL_CUP if narrow(view) else CUP
    cup = Bucket(in_cup(known, pot.went_in), weigh_words.IN_THE_CUP, size)
    head = ft.Semantics(header=True, container=True, content=said)
    if view.text_ratio >= t.STACKED_FROM:
        return head
    return ft.Row([grow(head), cup], spacing=12)
