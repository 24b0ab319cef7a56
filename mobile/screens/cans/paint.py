"""One paint: its looks, its density, what a coat takes, its cans and prices, its label's waits."""

from dataclasses import replace
from functools import partial

import flet as ft

from core.errors import Refused
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.chip import TwoLight
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.swatches import Swatches
from mobile.parts.tap import Action, Do, grow
from mobile.screens.cans.paint_fields import density_fields, rate_fields, typed
from mobile.screens.cans.paint_form import PaintForm, form_of
from mobile.screens.cans.paint_rows import size_fields, wait_fields
from mobile.session.address import NEW, PAINTS, go
from mobile.session.cans.looks import look_error, look_of
from mobile.session.cans.paints import in_use, keep_paint, remove_paint
from mobile.session.forms import Edit, use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import use_view
from mobile.store.records import Paint
from mobile.words import looks, places
from mobile.words import paints as words

CHIP = 40.0


@ft.component
def PaintScreen(known: Known, paint: Paint | None, *, key: str | None = None) -> ft.Control:
    """Write down what a paint's label says."""
    session, view = use_session(), use_view()
    address = f"cans/paints/{paint.id if paint else NEW}"
    form, edit, earlier = use_form(address, form_of(paint, view))
    looks_up, show_looks = ft.use_state(False)

    async def keep() -> None:
        try:
            made = edit.now.paint(session.stamp(paint.id if paint else edit.id), view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        await session.attempt(keep_paint(session, made), then=lambda _: go(places.CANS, PAINTS))

    async def remove() -> None:
        if paint:
            verb = remove_paint(session, paint)
            await session.attempt(verb, then=lambda _: go(places.CANS, PAINTS))

    back = Action(places.BACK, lambda: go(places.CANS, PAINTS), key="back")
    title = form.name.strip() or words.NEW
    name = Field("name", words.NAME, form.name, number=False)
    lines: list[ft.Control] = [
        header(title, places.DRAFT if earlier else "", outline_button(back, "back")),
        Fields((name,), partial(typed, edit), key="naming"),
        *looks_of(form, edit, looks_up, lambda: show_looks(not looks_up)),
        *density_fields(form, edit, view),
        *rate_fields(form, edit, view),
        *size_fields(form, edit, view),
        *wait_fields(form, edit, view),
    ]
    if paint and not in_use(known, paint):
        lines.append(second_button(Action(words.REMOVE_PAINT, remove, key="remove")))
    keep_it = Action(words.keep(form.name.strip()), keep, key="keep")
    return screen(lines, [main_button(keep_it)])


def looks_of(form: PaintForm, edit: Edit[PaintForm], up: bool, flip: Do) -> list[ft.Control]:
    """Show the two looks, and let them be changed."""
    day, lamp = look_of(form.day), look_of(form.lamp)
    chip = TwoLight(day, lamp, looks.two_lights(form.name, day, lamp), CHIP)
    change = outline_button(Action(words.LOOKS, flip, key="looks"))
    lines: list[ft.Control] = [ft.Row([chip, grow(change)], spacing=12)]
    if up:
        for light, name, text in (
            (looks.BY_DAY, "day", form.day),
            (looks.UNDER_LAMP, "lamp", form.lamp),
        ):
            lines.append(Swatches(light, text, look_error(text), partial(set_look, edit, name)))
    return lines


def set_look(edit: Edit[PaintForm], name: str, look: str) -> None:
    """Take a look."""
    edit(lambda now: replace(now, **{name: look}))  # type: ignore[arg-type]
