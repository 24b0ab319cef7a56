"""The fields of a recipe that are not its parts: name, use, planned grams."""

from dataclasses import replace

import flet as ft

from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.screens.mix.recipe_form import (
    RecipeForm,
    planned_error,
)
from mobile.session.forms import Edit
from mobile.session.view import View
from mobile.words import mix as words

USES = tuple((use, said.capitalize()) for use, said in words.USES.items())


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
