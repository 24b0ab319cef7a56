"""What each kind of tool keeps when it is wetted, and how much is bought above the need."""

from dataclasses import dataclass, replace

import flet as ft

from core.cans.buying import MARGIN_RATIO
from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.session.walls.amounts import KEEPS_G, TOOLS, keeps_g, set_keeps
from mobile.store.records import ToolKeeps
from mobile.words import amounts as words
from mobile.words import places


@dataclass(frozen=True, slots=True)
class ToolsForm:
    """What has been typed, untouched: a row a tool, its name and its grams."""

    tools: tuple[tuple[str, ...], ...] = ()
    margin: str = ""

    def read(self, view: View) -> tuple[tuple[ToolKeeps, ...], float]:
        """Read the form; raise `Refused` at the first field that gives no number."""
        keeps = tuple(ToolKeeps(tool, view.read("hold_up_g", text)) for tool, text in self.tools)
        return keeps, view.read("margin_ratio", self.margin)


def form_of(known: Known, view: View) -> ToolsForm:
    """Write what is kept, or usual, as one would type it."""
    rows = tuple((tool, view.typed("hold_up_g", keeps_g(known, tool))) for tool in TOOLS)
    return ToolsForm(rows, view.typed("margin_ratio", known.settings.margin_ratio))


@ft.component
def ToolsScreen(known: Known, *, key: str | None = None) -> ft.Control:
    """Ask what each tool keeps: weighed scraped, less weighed dry."""
    session, view = use_session(), use_view()
    form, edit, earlier = use_form("job/tools", form_of(known, view))

    async def keep() -> None:
        try:
            keeps, margin_ratio = edit.now.read(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        verb = set_keeps(session, keeps, margin_ratio)
        await session.attempt(verb, then=lambda _: go(places.JOB, "settings"))

    def typed(name: str, text: str) -> None:
        def changed(now: ToolsForm) -> ToolsForm:
            return replace(
                now, tools=tuple((tool, text if tool == name else old) for tool, old in now.tools)
            )

        edit(changed)

    def margin(_name: str, text: str) -> None:
        edit(lambda now: replace(now, margin=text))

    fields = tuple(
        Field(
            tool,
            view.label(words.KEEPS_OF[tool], "hold_up_g"),
            text,
            view.error("hold_up_g", text, KEEPS_G),
        )
        for tool, text in form.tools
    )
    wrong = view.error("margin_ratio", form.margin, MARGIN_RATIO)
    more = Field("margin", view.label(words.MARGIN, "margin_ratio"), form.margin, wrong)
    back = Action(places.BACK, lambda: go(places.JOB, "settings"), key="back")
    small = places.DRAFT if earlier else ""
    lines = [
        header(words.TOOLS_KEEP, small, outline_button(back, "back")),
        t.say(words.TOOLS_KEEP_MORE, t.SMALL, t.SOFT),
        Fields(fields, typed, key="tools"),
        Fields((more,), margin, key="margin"),
    ]
    return screen(lines, [main_button(Action(places.KEEP, keep, key="keep"))])
