"""Which paints a typed recipe means: known ones, known ones that look different now, new ones."""

from dataclasses import replace

from core.paints.recipe import Part
from mobile.screens.mix.recipes.form import (
    DAY,
    LAMP,
    PAINT,
    PARTS,
    RecipeForm,
    plain,
    planned_of,
)
from mobile.session.cans.looks import look_of
from mobile.session.known import Known
from mobile.session.mix.jars import all_paints, jar_of
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.records import Mix, Paint


def records_of(
    session: Session, form: RecipeForm, mix: Mix | None, new: tuple[str, str], view: View
) -> tuple[Mix, tuple[Paint, ...]]:
    """Make the recipe, and the paints that are new or look different now.

    `new` is its name, and the id that it gets if there is no recipe yet.
    """
    name, new_id = new
    known = session.known
    parts, paints = [], []
    for row in form.written:
        paint = paint_for(session, row, mix)
        parts.append(Part(paint.id, view.read("parts_count", row[PARTS])))
        if paint not in known.paints and jar_of(known, paint.id) is None:
            paints.append(paint)
    job = known.job.id if known.job else ""
    stamp = session.stamp(mix.id if mix else new_id)
    planned_g = planned_of(form, view)
    made = mix or Mix(*stamp, job, name, tuple(parts))
    changed = replace(
        made,
        name=name,
        parts=tuple(parts),
        use=form.use,
        planned_g=planned_g,
        typed_as=form.typed_as,
        notes=form.notes.strip(),
        day=look_of(form.day),
        lamp=look_of(form.lamp),
    )
    return changed, tuple(paints)


def paint_for(session: Session, row: tuple[str, ...], mix: Mix | None) -> Paint:
    """Give a row's paint: a known one as it is, one with another look, or a new one."""
    day, lamp = look_of(row[DAY]), look_of(row[LAMP])
    own = {part.paint for part in mix.parts} if mix else set()
    paint = paint_named(session.known, row[PAINT], own)
    if paint is None:
        return Paint(*session.stamp(), " ".join(row[PAINT].split()), day, lamp)
    if (paint.day, paint.lamp) == (day, lamp) or jar_of(session.known, paint.id):
        return paint
    _, at_s, device = session.stamp()
    return replace(paint, at_s=at_s, device=device, day=day, lamp=lamp)


def paint_named(known: Known, name: str, own: set[str]) -> Paint | None:
    """Find a paint by its name: first among the recipe's own, then one with a can, then any."""
    same = [paint for paint in all_paints(known) if plain(paint.name) == plain(name)]
    stocked = {can.paint for can in known.cans if not can.gone}
    same.sort(key=lambda paint: (paint.id not in own, paint.id not in stocked))
    return same[0] if same else None


def suggested(known: Known, form: RecipeForm, at: int) -> tuple[Paint, ...]:
    """Give known paints that a row may mean: by what is typed, less those already in."""
    typed = plain(form.parts[at][PAINT])
    taken = {plain(row[PAINT]) for row in form.parts}
    named = {plain(one.name): one for one in all_paints(known) if plain(one.name) not in taken}
    return tuple(paint for name, paint in named.items() if typed in name)


def asking(known: Known, form: RecipeForm) -> int | None:
    """Find the row that known paints are offered for: the first whose paint is not known."""
    names = {plain(paint.name) for paint in all_paints(known)}
    unknown = (at for at, row in enumerate(form.parts) if plain(row[PAINT]) not in names)
    return next(unknown, None)
