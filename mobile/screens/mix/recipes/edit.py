"""What a touch or a letter does to a typed recipe."""

from dataclasses import replace

from mobile.screens.mix.recipes.form import DAY, LAMP, NEW_PART, PAINT, RecipeForm
from mobile.screens.mix.recipes.paints import paint_named
from mobile.session.known import Known
from mobile.store.records import Paint


def row_set(form: RecipeForm, at: int, column: int, text: str) -> RecipeForm:
    """Put a text into a row."""
    rows = list(form.parts)
    if at < len(rows):
        rows[at] = tuple(text if own == column else was for own, was in enumerate(rows[at]))
    return replace(form, parts=tuple(rows))


def looks_filled(known: Known, form: RecipeForm, at: int, column: int) -> RecipeForm:
    """Take a known paint's looks along once its name is typed."""
    if column != PAINT or at >= len(form.parts):
        return form
    paint = paint_named(known, form.parts[at][PAINT], set())
    if paint is None:
        return form
    return row_set(row_set(form, at, DAY, paint.day), at, LAMP, paint.lamp)


def chosen(form: RecipeForm, at: int, paint: Paint) -> RecipeForm:
    """Take a known paint into a row."""
    named = row_set(form, at, PAINT, paint.name)
    return row_set(row_set(named, at, DAY, paint.day), at, LAMP, paint.lamp)


def more(form: RecipeForm) -> RecipeForm:
    """Add a row."""
    return replace(form, parts=(*form.parts, NEW_PART))


def dropped(form: RecipeForm, at: int) -> RecipeForm:
    """Take a row away; one always stays."""
    rows = tuple(row for own, row in enumerate(form.parts) if own != at)
    return replace(form, parts=rows or (NEW_PART,))
