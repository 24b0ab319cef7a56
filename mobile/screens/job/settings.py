"""What this phone is set to."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass, replace
from typing import Any

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.job import jobs as verbs
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.store.records import Settings
from mobile.words import amounts, places, scale
from mobile.words import job as words

Choose = Callable[[Settings], Awaitable[None]]
Choice = tuple[str, tuple[tuple[str, str], ...], str, Callable[[str], Any]]


@dataclass(frozen=True, slots=True)
class SettingsForm:
    """What has been typed, untouched; choices are kept at once."""

    rule: str = ""
    who: str = ""


def form_of(known: Known, view: View) -> SettingsForm:
    """Write the typed settings as one would type them."""
    rule_m2 = known.job.deducted_above_m2 if known.job else None
    return SettingsForm(view.typed("deducted_above_m2", rule_m2), known.settings.who)


@ft.component
def SettingsScreen(known: Known, *, key: str | None = None) -> ft.Control:
    """Choose look, units, text size, bell; type who has the phone and the rule."""
    session, view = use_session(), use_view()
    form, edit, _ = use_form(f"job/settings/{known.settings.units}", form_of(known, view))
    settings = known.settings

    async def choose(after: Settings) -> None:
        await session.attempt(verbs.set_settings(session, after))

    async def keep() -> None:
        try:
            rule_m2 = view.read("deducted_above_m2", edit.now.rule) if known.job else None
        except Refused as refusal:
            session.refuse(refusal)
            return
        verb = verbs.set_who_and_rule(session, edit.now.who, rule_m2)
        await session.attempt(verb, then=lambda _: go(places.JOB))

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    rows: list[ft.Control] = [header(words.SETTINGS, "", back)]
    for title, options, chosen, do in choices(session, settings, choose):
        rows += [t.say(title, t.SMALL, t.SOFT), segmented(options, chosen, do, view.text_ratio)]
    fields = [Field("who", words.WHO, form.who, number=False)]
    if known.job:
        fields.append(field(view, "rule", words.RULE, "deducted_above_m2", form.rule))
    tools = Action(amounts.TOOLS_KEEP, lambda: go(places.JOB, "tools"), key="tools")
    at_scale = Action(scale.TITLE, lambda: go(places.JOB, "scale"), scale.MORE, "scale")
    rows += [Fields(tuple(fields), typed), second_button(at_scale), second_button(tools)]
    return screen(rows, [main_button(Action(places.KEEP, keep, key="keep"))])


def choices(session: Session, settings: Settings, choose: Choose) -> tuple[Choice, ...]:
    """Give what is chosen at a tap: its title, its options, what is chosen, what a tap does."""
    return (
        (
            words.LOOK,
            words.LOOKS,
            settings.look,
            lambda k: choose(replace(verbs.settings_now(session), look=k)),
        ),
        (
            words.UNITS,
            words.SYSTEMS,
            settings.units,
            lambda k: choose(replace(verbs.settings_now(session), units=k)),
        ),
        (
            words.TEXT,
            words.TEXTS,
            str(settings.text_ratio),
            lambda k: choose(replace(verbs.settings_now(session), text_ratio=float(k))),
        ),
        (
            words.RING,
            words.BELLS,
            bell(settings.bell),
            lambda k: choose(replace(verbs.settings_now(session), bell=k == "on")),
        ),
    )


def bell(on: bool) -> str:
    """Give the key of the bell's choice."""
    return "on" if on else "off"


def field(view: View, name: str, label: str, quantity: str, text: str) -> Field:
    """Ask for one measure."""
    return Field(name, view.label(label, quantity), text, view.error(quantity, text))
