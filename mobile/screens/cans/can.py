"""What a can is: its number, its paint, what its label says, what it weighs empty."""

import flet as ft

from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.notices import notice
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.cans.fields import Filling, label_fields, tare_fields, what_fields
from mobile.screens.cans.form import form_of, meant, problem
from mobile.session.address import go
from mobile.session.cans.can import can_gone, keep_can, next_number
from mobile.session.forms import use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import use_view
from mobile.store.records import Can
from mobile.words import cans as words
from mobile.words import places


@ft.component
def CanScreen(known: Known, can: Can | None, change: bool, *, key: str | None = None) -> ft.Control:
    """Write a can down, or change it; one without an empty weight is asked for it first."""
    session, view = use_session(), use_view()
    blank = form_of(known, can, next_number(known), view)
    form, edit, earlier = use_form(f"cans/{can.id if can else 'new'}", blank)
    tried, try_it = ft.use_state(False)
    looks_up, show_looks = ft.use_state(False)
    wrong = problem(known, can, form, view)
    filling = Filling(form, edit, wrong, tried, view)

    async def keep() -> None:
        if refusal := problem(known, can, edit.now, view):
            try_it(True)
            session.refuse(refusal)
            return
        said = meant(known, can, edit.now, (session.stamp(edit.id), session.stamp()), view)
        verb = keep_can(session, said.can, said.paint, said.unopened_gross_g)
        await session.attempt(verb, then=lambda kept: go(places.CANS, after(kept)))

    def after(kept: Can) -> str:
        return "" if change or can is None or kept.tare_g is None else kept.id

    async def gone() -> None:
        if can:
            await session.attempt(can_gone(session, can), then=lambda _: go(places.CANS))

    title = words.can(can.number) if can else words.NEW
    back = Action(places.BACK, lambda: go(places.CANS), key="back")
    asked = [notice(words.TARE_FIRST)] if can and not change else []
    rows = [
        header(title, places.DRAFT if earlier else "", outline_button(back, "back")),
        *asked,
        *what_fields(known, filling, looks_up, lambda: show_looks(lambda up: not up)),
        label_fields(filling),
        *tare_fields(filling),
    ]
    if can and change:
        rows.append(second_button(Action(words.PUT_AWAY, gone, key="put away")))
    return screen(rows, [main_button(Action(words.keep(form.number.strip()), keep, key="keep"))])
