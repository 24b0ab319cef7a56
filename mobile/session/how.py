"""From a working to the *How?* sheet, in the person's words and units."""

from collections.abc import Mapping

import flet as ft

from core.working import Step, Working
from mobile import clock
from mobile.parts.sheet import How, HowStep, how_sheet
from mobile.session.address import HOW
from mobile.session.times import when
from mobile.session.view import View, use_view
from mobile.words import working as words
from mobile.words.grams import money, money_a_gram

NOTHING: Mapping[str, tuple[str, ...]] = {}
INSTANT = "_at_s"  # an instant, not a duration


def how_of(
    title: str,
    small: str,
    working: Working,
    view: View,
    about: Mapping[str, tuple[str, ...]] = NOTHING,
) -> How:
    """Say a working step by step; `about` says whom each of several like steps is about."""
    whom = {name: iter(several) for name, several in about.items()}
    said = (_said(step, view, next(whom.get(step.name, iter(())), "")) for step in working)
    return How(title, small, tuple(said))


def _said(step: Step, view: View, whom: str) -> HowStep:
    inputs = {name: _shown(name, value, view) for name, value in step.inputs}
    said = words.in_words(step.formula).format(**inputs)
    source = words.source_of(step.source)
    name = ", ".join(filter(None, (words.name_of(step.name), whom)))
    return HowStep(name, said, _shown(step.name, step.value, view), source)


def _shown(name: str, value: float, view: View) -> str:
    if "price" in name:
        return money(value) if name.endswith("price") else money_a_gram(value)
    return when(value, clock.now_s()) if name.endswith(INSTANT) else view.show(name, value)


def use_how(how: How | None) -> None:
    """Show the sheet while its address is up; closing it goes one address back."""
    page, view = ft.context.page, use_view()

    def close() -> None:
        if page.route.rstrip("/").endswith(f"/{HOW}"):
            page.navigate(page.route.rstrip("/").rpartition("/")[0])

    ft.use_dialog(how_sheet(how, close, view.height) if how else None)
