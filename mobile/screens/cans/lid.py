"""A lid that was off: how long, in what air; part of the paint dried off."""

from dataclasses import dataclass, replace

import flet as ft

from core.cans.drying import ACROSS_M, AIR_C, OPEN_S, RH_RATIO, Air, DriedOff, dried_off
from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.cans.goes_over import across_of, last_air, lid_form, lid_off
from mobile.session.forms import Edit, use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.records import Can
from mobile.words import cans as words
from mobile.words import places

STILL, MOVING = "still", "moving"
DRAUGHT_M_PER_S = 0.3  # a draught that one feels; common practice, no published source


@dataclass(frozen=True, slots=True)
class LidForm:
    """What has been typed, untouched."""

    off: str = ""
    across: str = ""
    air: str = ""
    humidity: str = ""
    moves: str = STILL

    def read(self, view: View) -> tuple[float, float, Air]:
        """Read the form; raise `Refused` at the first field that can't be."""
        open_s = view.read("open_s", self.off)
        across_m = view.read("across_m", self.across)
        air_c = view.read("air_c", self.air)
        rh_ratio = view.read("rh_ratio", self.humidity)
        moving = DRAUGHT_M_PER_S if self.moves == MOVING else 0.0
        return open_s, across_m, Air(air_c, rh_ratio, moving)

    def dried(self, view: View) -> DriedOff | None:
        """Find what dried off at the most; None while that can't be said."""
        try:
            return dried_off(*self.read(view))
        except Refused:
            return None


def form_of(known: Known, can: Can, view: View) -> LidForm:
    """Fill in what is known: the can's size, the air typed last."""
    across = view.typed("across_m", across_of(can))
    last = last_air(known)
    if last is None:
        return LidForm(across=across)
    air, humidity = view.typed("air_c", last.air_c), view.typed("rh_ratio", last.rh_ratio)
    return LidForm("", across, air, humidity)


@ft.component
def LidScreen(known: Known, can: Can, *, key: str | None = None) -> ft.Control:
    """Ask how long a lid was off, and say what dried off at the most."""
    session, view = use_session(), use_view()
    form, edit, earlier = use_form(lid_form(can), form_of(known, can, view))

    async def keep() -> None:
        try:
            told = edit.now.read(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        verb = lid_off(session, can, *told)
        await session.attempt(verb, then=lambda _: go(places.CANS, can.id))

    back = Action(places.BACK, lambda: go(places.CANS, can.id), key="back")
    dried = form.dried(view)
    said = words.dried(view.show("net_g", dried.bound_g, 2)) if dried else words.LID_MORE
    small = places.DRAFT if earlier else words.can(can.number)
    lines = [
        header(words.LID, small, outline_button(back, "back")),
        *fields(form, edit, view),
        t.say(said, t.NAME, t.SOFT),
    ]
    return screen(lines, [main_button(Action(words.KEEP_LID, keep, key="keep"))])


def fields(form: LidForm, edit: Edit[LidForm], view: View) -> list[ft.Control]:
    """Ask for the time, the can's size and the air."""

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    asked = (
        ("off", words.LID_OFF_FOR, "open_s", form.off, OPEN_S),
        ("across", words.ACROSS, "across_m", form.across, ACROSS_M),
        ("air", words.AIR, "air_c", form.air, AIR_C),
        ("humidity", words.HUMIDITY, "rh_ratio", form.humidity, RH_RATIO),
    )
    several = tuple(
        Field(name, view.label(label, quantity), text, view.error(quantity, text, limits))
        for name, label, quantity, text, limits in asked
    )
    moves = segmented(
        words.DRAUGHTS, form.moves, lambda key: typed("moves", key), view.text_ratio, "moves"
    )
    return [Fields(several, typed), moves]
