"""The fields of a recipe that are not its parts: name, use, planned grams."""

from dataclasses import replace

import flet as ft

from mobile import theme as t
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.swatches import Swatches
from mobile.screens.mix.recipes.form import PARTS, RecipeForm, parts_error, planned_error
from mobile.session.cans.looks import look_error
from mobile.session.forms import Edit
from mobile.session.view import View
from mobile.words import looks
from mobile.words import mix as words

PERCENT, HUNDRED, HAIR = "percent", 100.0, 1e-6
USES = tuple((use, said.capitalize()) for use, said in words.USES.items())
NOTES_MOST = 400  # letters


def uses(form: RecipeForm, edit: Edit[RecipeForm], view: View) -> list[ft.Control]:
    """Ask what the mix is for, in two rows: five words don't fit beside each other."""

    def choose(use: str) -> None:
        edit(lambda now: replace(now, use=use))

    rows = (USES[:3], USES[3:])
    return [segmented(row, form.use, choose, view.text_ratio) for row in rows]


def name_field(form: RecipeForm, edit: Edit[RecipeForm]) -> ft.Control:
    """Ask for the name."""
    field = Field("name", words.NAME, form.name, number=False)
    return Fields((field,), lambda _, text: edit(lambda f: replace(f, name=text)), key="naming")


def planned_field(form: RecipeForm, edit: Edit[RecipeForm], view: View) -> ft.Control:
    """Ask for the planned grams."""
    label = view.label(words.PLANNED, "planned_g")
    field = Field("planned", label, form.planned, planned_error(form, view))
    return Fields((field,), lambda _, text: edit(lambda f: replace(f, planned=text)), key="plan")


def typed_as(form: RecipeForm, edit: Edit[RecipeForm], view: View) -> ft.Control:
    """Ask whether parts, percent or grams are typed: all are shares of the whole."""

    def choose(key: str) -> None:
        edit(lambda now: replace(now, typed_as=key))

    return segmented(words.TYPED_AS, form.typed_as, choose, view.text_ratio, "typed")


def adding_up(form: RecipeForm, view: View) -> list[ft.Control]:
    """Say so where percents don't add up to a hundred."""
    if form.typed_as != PERCENT:
        return []
    typed = (row for row in form.written if row[PARTS].strip())
    ready = [row[PARTS] for row in typed if not parts_error(row, view)]
    whole = sum(view.read("parts_count", text) for text in ready)
    if not ready or abs(whole - HUNDRED) < HAIR:
        return []
    return [t.say(words.adds_up(view.typed("parts_count", round(whole, 3))), t.SMALL, t.CAUTION)]


def notes_field(form: RecipeForm, edit: Edit[RecipeForm]) -> ft.Control:
    """Ask for notes."""
    field = Field("notes", words.NOTES, form.notes, number=False, most=NOTES_MOST)
    return Fields((field,), lambda _, text: edit(lambda f: replace(f, notes=text)), key="notes")


def own_looks(form: RecipeForm, edit: Edit[RecipeForm]) -> list[ft.Control]:
    """Ask how the mix itself looks by day and under the lamp."""

    def day(text: str) -> None:
        edit(lambda now: replace(now, day=text))

    def lamp(text: str) -> None:
        edit(lambda now: replace(now, lamp=text))

    return [
        t.say(words.OWN_LOOKS, t.SMALL, t.SOFT),
        Swatches(looks.BY_DAY, form.day, look_error(form.day), day, key="own day"),
        Swatches(looks.UNDER_LAMP, form.lamp, look_error(form.lamp), lamp, key="own lamp"),
    ]
