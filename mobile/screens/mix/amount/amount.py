"""How much of a mix: on the wall, in tools and cups, for the kit; what a coat of it takes."""

import flet as ft

from core.errors import Refused
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.page import header, screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action
from mobile.screens.mix.amount.fields import rate_fields, tool_fields, walls
from mobile.screens.mix.amount.form import AmountForm, form_of
from mobile.screens.mix.amount.said import said
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.recipes import keep_amount
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.session.walls.amounts import Amount, amount_of
from mobile.store.records import Mix
from mobile.words import amounts as words
from mobile.words import places


@ft.component
def AmountScreen(known: Known, mix: Mix, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Say what a mix needs; the answer follows each digit."""
    view, session = use_view(), use_session()
    form, edit, earlier = use_form(f"mix/{mix.id}/amount", form_of(mix, view))
    amount = reckoned(known, form, mix, view)
    last = ft.use_ref(amount)
    last.current = amount or last.current
    use_how(how(mix, amount, view) if how_up else None)

    async def keep() -> None:
        try:
            made = edit.now.into(mix, view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        await session.attempt(keep_amount(session, made), then=lambda _: go(places.MIX))

    async def back() -> None:
        await session.drafts.flush()
        go(places.MIX, mix.id, "weigh")

    leave = outline_button(Action(places.BACK, back, key="back"), "back")
    lines = [
        header(words.amount_title(mix.name), places.DRAFT if earlier else "", leave),
        *said(known, last.current, mix, view, wrong=amount is None),
        *rate_fields(form, edit, view),
        *tool_fields(form, edit, view),
        *walls(known, mix, form, edit),
    ]
    return screen(lines, [main_button(Action(words.KEEP_AMOUNT, keep, key="keep"))])


def reckoned(known: Known, form: AmountForm, mix: Mix, view: View) -> Amount | None:
    """Give what is needed by what is typed; None while that can't be reckoned."""
    try:
        return amount_of(known, form.into(mix, view))
    except Refused:
        return None


def how(mix: Mix, amount: Amount | None, view: View) -> How | None:
    """Say how the grams come about."""
    if amount is None or not amount.patches:
        return None
    return how_of(mix.name, words.HOW_AMOUNT, amount.working, view)
