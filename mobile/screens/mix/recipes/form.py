"""What is typed of a recipe, and how it is read."""

from dataclasses import dataclass

from core.errors import Refused
from core.paints.recipe import Part, shares
from mobile.session.cans.looks import look_error
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.view import View
from mobile.store.records import Mix
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

PAINT, PARTS, DAY, LAMP = 0, 1, 2, 3  # the columns of a part's row
NEW_PART = ("", "", "", "")
PLANNED_G = 1.0, 1e5


@dataclass(frozen=True, slots=True)
class RecipeForm:
    """What has been typed, untouched; a part is paint, parts, look by day, look under the lamp."""

    name: str = ""
    use: str = "glaze"
    planned: str = ""
    typed_as: str = "parts"
    notes: str = ""
    day: str = ""
    lamp: str = ""
    parts: tuple[tuple[str, ...], ...] = (NEW_PART, NEW_PART)

    @property
    def written(self) -> tuple[tuple[str, ...], ...]:
        """The rows in which something stands."""
        return tuple(row for row in self.parts if row[PAINT].strip() or row[PARTS].strip())


def form_of(known: Known, mix: Mix | None, view: View) -> RecipeForm:
    """Write a kept recipe as one would type it."""
    if mix is None:
        return RecipeForm()
    rows = []
    for part in mix.parts:
        paint = paint_of(known, part.paint)
        rows.append(
            (paint.name, view.typed("parts_count", part.parts_count), paint.day, paint.lamp)
        )
    planned = view.typed("planned_g", mix.planned_g)
    own = mix.typed_as, mix.notes, mix.day, mix.lamp
    return RecipeForm(mix.name, mix.use, planned, *own, tuple(rows))


def parts_error(row: tuple[str, ...], view: View) -> str:
    """Say what is wrong with a part's number, once something is typed."""
    if not row[PARTS].strip():
        return ""
    try:
        shares((Part("", view.read("parts_count", row[PARTS])),))
    except Refused as refusal:
        return weigh_words.refused(refusal, view.show)
    return ""


def paint_error(form: RecipeForm, at: int) -> str:
    """Say that a paint is in the recipe twice."""
    name = plain(form.parts[at][PAINT])
    before = {plain(row[PAINT]) for row in form.parts[:at]}
    return words.twice(form.parts[at][PAINT].strip()) if name and name in before else ""


def planned_error(form: RecipeForm, view: View) -> str:
    """Say what is wrong with the planned grams."""
    try:
        planned_of(form, view)
    except Refused as refusal:
        return weigh_words.refused(refusal, view.show)
    return ""


def planned_of(form: RecipeForm, view: View) -> float | None:
    """Read the planned grams; None where none are typed."""
    if not form.planned.strip():
        return None
    planned_g = view.read("planned_g", form.planned)
    if not PLANNED_G[0] <= planned_g <= PLANNED_G[1]:
        raise Refused("planned_g", planned_g, *PLANNED_G)
    return planned_g


def plain(name: str) -> str:
    """Write a name so that the same names are the same."""
    return " ".join(name.split()).casefold()


def todo(form: RecipeForm, view: View) -> str:
    """Say what keeps a recipe from being kept; "" where nothing does."""
    rows = form.written
    if not rows:
        return words.TODO_PARTS
    if any(not row[PAINT].strip() for row in rows):
        return words.TODO_PAINT
    if any(not row[PARTS].strip() for row in rows):
        return words.TODO_NUMBER
    wrong = [
        parts_error(row, view) or look_error(row[DAY]) or look_error(row[LAMP]) for row in rows
    ]
    wrong += [paint_error(form, at) for at in range(len(form.parts))]
    wrong += [planned_error(form, view), look_error(form.day), look_error(form.lamp)]
    return next((words.TODO_WRONG for said in wrong if said), "")


def shares_now(form: RecipeForm, view: View) -> tuple[float | None, ...]:
    """Find each row's share, as far as the rows' numbers can be read; None where one can't."""
    ready = [row[PARTS].strip() and not parts_error(row, view) for row in form.parts]
    parts = tuple(
        Part(str(at), view.read("parts_count", row[PARTS]))
        for at, (row, ok) in enumerate(zip(form.parts, ready, strict=True))
        if ok
    )
    ratios = iter(shares(parts) if parts else ())
    return tuple(next(ratios) if ok else None for ok in ready)
