"""The check weight: a known mass once a day, and what the scale shows for it."""

from dataclasses import dataclass, replace

import flet as ft

from core.errors import Refused
from core.mixing.check_weight import CHECK_G, SHOWN_G, scale_error
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.known import Known
from mobile.session.mix.scale import CHECK_FORM, check_scale
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.words import places
from mobile.words import scale as words


@dataclass(frozen=True, slots=True)
class CheckForm:
    """What has been typed, untouched."""

    mass: str = ""
    shows: str = ""

    def read(self, view: View) -> tuple[float, float]:
        """Read the known mass and what the scale shows."""
        return view.read("known_g", self.mass), view.read("reads_g", self.shows)


@ft.component
def CheckScreen(known: Known, *, key: str | None = None) -> ft.Control:
    """Take a known mass and what the scale shows for it; the error follows each digit."""
    session, view = use_session(), use_view()
    blank = CheckForm(view.typed("known_g", known.settings.check_g))
    form, edit, _ = use_form(CHECK_FORM, blank)

    async def keep() -> None:
        try:
            found = edit.now.read(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        done = check_scale(session, *found)
        await session.attempt(done, then=lambda _: go(places.JOB, "scale"))

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    back = Action(places.BACK, lambda: go(places.JOB, "scale"), key="back")
    lines: list[ft.Control] = [
        header(words.CHECK, "", outline_button(back, "back")),
        t.say(words.CHECK_MORE, t.SMALL, t.SOFT),
        Fields(fields(form, view), typed),
        t.say(found_said(known, form, view), t.FACT),
        t.say(words.CHECK_NOTE, t.CAPTION, t.SOFT),
    ]
    return screen(lines, [main_button(Action(words.KEEP_CHECK, keep, key="keep"))])


def fields(form: CheckForm, view: View) -> tuple[Field, ...]:
    """Ask for the known mass and what the scale shows."""
    wrong = view.error("known_g", form.mass, CHECK_G)
    shows = view.error("reads_g", form.shows, SHOWN_G)
    return (
        Field("mass", view.label(words.KNOWN, "known_g"), form.mass, wrong),
        Field("shows", view.label(words.SHOWS, "reads_g"), form.shows, shows),
    )


def found_said(known: Known, form: CheckForm, view: View) -> str:
    """Say how far off the scale is, once both are typed."""
    try:
        known_g, reads_g = form.read(view)
        step_g = known.settings.scale_step_g
        return words.checked(scale_error(known_g, reads_g, step_g).error_g, step_g)
    except Refused:
        return ""
