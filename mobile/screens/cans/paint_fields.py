"""The fields of a paint's density, and of what a coat takes."""

from dataclasses import replace
from functools import partial

import flet as ft

from core.cans.weighing import LABEL_L
from core.coats.rate import G_M2, SPREAD_M2_L
from core.errors import Refused
from core.paints.blend import DENSITY_G_ML, SOLIDS_RATIO
from mobile import theme as t
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.screens.cans.paint_form import TYPED, WEIGHED, PaintForm
from mobile.session.cans.paints import MASS_G
from mobile.session.forms import Edit
from mobile.session.view import View
from mobile.words import paints as words
from mobile.words import trouble


def typed(edit: Edit[PaintForm], name: str, text: str) -> None:
    """Change a field."""
    edit(lambda now: replace(now, **{name: text}))  # type: ignore[arg-type]


def density_fields(form: PaintForm, edit: Edit[PaintForm], view: View) -> list[ft.Control]:
    """Ask for the density: typed, from the label's mass and litres, or from weighing a measure."""
    change = partial(typed, edit)
    how = segmented(
        words.DENSITIES,
        form.density_from,
        partial(change, "density_from"),
        view.text_ratio,
        "density",
    )
    if form.density_from == TYPED:
        wrong = view.error("density_g_ml", form.density, DENSITY_G_ML)
        label = view.label(words.DENSITY, "density_g_ml")
        asked: tuple[Field, ...] = (Field("density", label, form.density, wrong),)
    else:
        asked = measured(form, view)
    said = words.DENSITY_MORE[form.density_from]
    lines: list[ft.Control] = [
        t.say(words.DENSITY, t.SMALL, t.SOFT),
        how,
        Fields(asked, change, key=form.density_from),
    ]
    return [*lines, t.say(outcome(form, view) or said, t.CAPTION, t.SOFT)]


def measured(form: PaintForm, view: View) -> tuple[Field, ...]:
    """Ask for a mass and its volume."""
    weighed = form.density_from == WEIGHED
    mass = words.WEIGHED if weighed else words.MASS
    volume = words.MEASURED if weighed else words.VOLUME
    return (
        Field(
            "mass",
            view.label(mass, "density_mass_g"),
            form.mass,
            view.error("density_mass_g", form.mass, MASS_G),
        ),
        Field(
            "volume",
            view.label(volume, "density_l"),
            form.volume,
            view.error("density_l", form.volume, LABEL_L),
        ),
    )


def outcome(form: PaintForm, view: View) -> str:
    """Say the density that mass and volume give, or why they can't be a paint's."""
    if form.density_from == TYPED or not (form.mass.strip() and form.volume.strip()):
        return ""
    try:
        density_g_ml = form.density_g_ml(view)
    except Refused as refusal:
        return trouble.refused(refusal, view.show)
    return (
        ""
        if density_g_ml is None
        else words.found_density(view.show("density_g_ml", density_g_ml, 3))
    )


def rate_fields(form: PaintForm, edit: Edit[PaintForm], view: View) -> list[ft.Control]:
    """Ask what the label says of solids and of what a coat takes."""
    asked = (
        ("solids", words.SOLIDS, "solids_ratio", form.solids, SOLIDS_RATIO),
        ("spread", words.SPREAD, "spread_m2_l", form.spread, SPREAD_M2_L),
        ("grams", words.GRAMS, "rate_g_m2", form.grams, G_M2),
    )
    fields = tuple(
        Field(name, view.label(label, quantity), text, view.error(quantity, text, limits))
        for name, label, quantity, text, limits in asked
    )
    more = t.say(words.RATE_MORE, t.CAPTION, t.SOFT)
    return [Fields(fields, partial(typed, edit), key="rates"), more]
