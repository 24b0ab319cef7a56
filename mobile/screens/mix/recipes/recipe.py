"""A recipe: its name, its use, its parts by mass, the grams planned."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, Do
from mobile.screens.mix.recipes.edit import chosen, dropped, looks_filled, more, row_set
from mobile.screens.mix.recipes.fields import (
    adding_up,
    name_field,
    notes_field,
    own_looks,
    planned_field,
    typed_as,
    uses,
)
from mobile.screens.mix.recipes.form import (
    RecipeForm,
    form_of,
    paint_error,
    parts_error,
    shares_now,
    todo,
)
from mobile.screens.mix.recipes.how import how
from mobile.screens.mix.recipes.paints import asking, records_of, suggested
from mobile.screens.mix.recipes.part_row import Part, part_row
from mobile.screens.mix.recipes.versions import versions
from mobile.session.address import HOW, NEW, go
from mobile.session.forms import Edit, use_form
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.mix.recipes import keep_mix, next_name, remove_mix
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.store.records import Mix
from mobile.words import mix as words
from mobile.words import places


@ft.component
def Recipe(known: Known, mix: Mix | None, how_up: bool, *, key: str | None = None) -> ft.Control:
    """Write a recipe; each part's share follows with each digit."""
    view, session = use_view(), use_session()
    mix_id = mix.id if mix else NEW
    form, edit, earlier = use_form(f"mix/{mix_id}", form_of(known, mix, view))
    looking, look = ft.use_state(-1)
    name = form.name.strip() or next_name(known)
    use_how(how(form, name, view) if how_up else None)
    wanting = todo(form, view)

    async def keep() -> None:
        form_now = edit.now
        called = form_now.name.strip() or next_name(known)
        kept, paints = records_of(session, form_now, mix, (called, edit.id), view)
        await session.attempt(keep_mix(session, kept, paints), then=lambda _: go(places.MIX))

    async def remove() -> None:
        if mix:
            await session.attempt(remove_mix(session, mix), then=lambda _: go(places.MIX))

    async def back() -> None:
        await session.drafts.flush()
        go(places.MIX, *([mix.id, "weigh"] if mix else []))

    def toggle(at: int) -> None:
        look(-1 if looking == at else at)

    rows: list[ft.Control] = [
        header(
            name,
            places.DRAFT if earlier else "",
            outline_button(Action(places.BACK, back, key="back"), "back"),
        ),
        name_field(form, edit),
        *uses(form, edit, view),
        *(
            row_of(known, part, edit, partial(toggle, part.at), view)
            for part in parts_of(known, form, looking, view)
        ),
        *adding_up(form, view),
        under_parts(edit, mix_id),
        planned_field(form, edit, view),
        t.say(words.PLANNED_MORE, t.CAPTION, t.SOFT),
        typed_as(form, edit, view),
        *own_looks(form, edit),
        notes_field(form, edit),
    ]
    rows += at_the_end(known, mix, remove, view)
    kept_action = Action(words.keep(name), None if wanting else keep, wanting, "keep")
    return screen(rows, [main_button(kept_action)])


def at_the_end(known: Known, mix: Mix | None, remove: Do, view: View) -> list[ft.Control]:
    """List a kept recipe's earlier versions, and offer to take it off."""
    if mix is None:
        return []
    off = second_button(Action(words.REMOVE_MIX, remove, key="remove"))
    return [*versions(known, mix, view), off]


def under_parts(edit: Edit[RecipeForm], mix_id: str) -> ft.Control:
    """Offer another part, and how the shares come about."""
    add = Action(words.ADD_PART, lambda: edit(more), key="add part")
    why = Action(places.HOW, lambda: go(places.MIX, mix_id, HOW), key="how")
    return ft.Row([outline_button(add), outline_button(why)], spacing=t.GAP, wrap=True)


def parts_of(known: Known, form: RecipeForm, looking: int, view: View) -> tuple[Part, ...]:
    """Put together what each row shows."""
    ratios = shares_now(form, view)
    asks = asking(known, form)
    return tuple(
        Part(
            at,
            row,
            "" if ratio is None else view.show("share_ratio", ratio),
            paint_error(form, at),
            parts_error(row, view),
            suggested(known, form, at) if at == asks else (),
            at == looking,
            form.typed_as,
        )
        for at, (row, ratio) in enumerate(zip(form.parts, ratios, strict=True))
    )


def row_of(
    known: Known, part: Part, edit: Edit[RecipeForm], look: "partial[None]", view: View
) -> ft.Control:
    """Lay out a row with what its keys and fields do to the form."""
    at = part.at

    def change(column: int, text: str) -> None:
        if column < 0:
            edit(lambda form: dropped(form, at))
        else:
            edit(lambda form: looks_filled(known, row_set(form, at, column, text), at, column))

    return part_row(part, change, lambda p: edit(lambda f: chosen(f, at, p)), look, view)
