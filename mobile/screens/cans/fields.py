"""The fields of a can."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import outline_button
from mobile.parts.chip import TwoLight
from mobile.parts.choice import segmented
from mobile.parts.fields import EntryField, Field, Fields
from mobile.parts.swatches import Swatches
from mobile.parts.tap import Action, grow
from mobile.screens.cans.form import CanForm, suggested
from mobile.session.cans.can import EMPTY, UNOPENED
from mobile.session.cans.looks import look_error, look_of
from mobile.session.forms import Edit
from mobile.session.known import Known
from mobile.session.view import View
from mobile.store.records import Paint
from mobile.words import cans as words
from mobile.words import looks, trouble

STRETCH = ft.CrossAxisAlignment.STRETCH
TARES = ((EMPTY, words.EMPTY_WEIGHS), (UNOPENED, words.UNOPENED_WEIGHS))
# The field of a quantity that was refused.
FIELD_OF = {
    "can_number": "number",
    "number_taken": "number",
    "paint_name": "paint",
    "label_l": "label",
    "density_g_ml": "density",
    "tare_g": "grams",
    "gross_g": "grams",
}


@dataclass(frozen=True, slots=True)
class Filling:
    """A form that is being filled in: how to change it, what is wrong, whether *Keep* was tried."""

    form: CanForm
    edit: Edit[CanForm]
    problem: Refused | None
    tried: bool
    view: View

    def typed(self, name: str, text: str) -> None:
        """Change a field."""
        self.edit(lambda now: replace(now, **{name: text}))

    def field(self, name: str, label: str, text: str, *, number: bool = True) -> Field:
        """Give a field; what is wrong is said once something is typed, or *Keep* was tried."""
        wrong = self.problem is not None and FIELD_OF.get(self.problem.name) == name
        error = ""
        if self.problem and wrong and (text.strip() or self.tried):
            error = trouble.refused(self.problem, self.view.show)
        return Field(name, label, text, error, number)


def what_fields(
    known: Known, filling: Filling, looks_up: bool, flip: Callable[[], None]
) -> list[ft.Control]:
    """Ask for the number, the paint and its looks."""
    form = filling.form
    several = (
        filling.field("number", words.NUMBER, form.number),
        filling.field("paint", words.PAINT, form.paint, number=False),
    )
    rows: list[ft.Control] = [Fields(several, filling.typed, key="what")]
    if paints := suggested(known, form):
        buttons: list[ft.Control] = [suggestion(paint, filling) for paint in paints]
        rows.append(t.say(words.KNOWN_PAINTS, t.CAPTION, t.SOFT))
        rows.append(ft.Row(buttons, spacing=t.GAP, run_spacing=t.GAP, wrap=True))
    day, lamp = look_of(form.day), look_of(form.lamp)
    chip = TwoLight(day, lamp, looks.two_lights(form.paint, day, lamp), 40)
    change = outline_button(Action(words.LOOKS, flip, key="looks"))
    rows.append(ft.Row([chip, grow(change)], spacing=12))
    if looks_up:
        rows += [
            Swatches(light, typed, look_error(typed), partial(filling.typed, name))
            for light, name, typed in (
                (looks.BY_DAY, "day", form.day),
                (looks.UNDER_LAMP, "lamp", form.lamp),
            )
        ]
    return rows


def suggestion(paint: Paint, filling: Filling) -> ft.Control:
    """Offer a known paint, with all that is known of it."""
    density = filling.view.typed("density_g_ml", paint.density_g_ml)
    fields = (("paint", paint.name), ("day", paint.day), ("lamp", paint.lamp), ("density", density))

    def take() -> None:
        filling.edit(lambda now: replace(now, **dict(fields)))

    return outline_button(Action(paint.name, take, key=f"paint {paint.name}"))


def label_fields(filling: Filling) -> ft.Control:
    """Ask for what the label says."""
    form, view = filling.form, filling.view
    several = (
        filling.field("label", view.label(words.LABEL, "label_l"), form.label),
        filling.field("density", view.label(words.DENSITY, "density_g_ml"), form.density),
        filling.field("lot", words.LOT, form.lot, number=False),
    )
    return Fields(several, filling.typed, key="label")


def tare_fields(filling: Filling) -> list[ft.Control]:
    """Ask for the empty weight: of the empty can, or by weighing it unopened."""
    form, view = filling.form, filling.view
    unopened = form.tare == UNOPENED
    label = words.UNOPENED_GRAMS if unopened else words.EMPTY_GRAMS
    field = filling.field("grams", view.label(label, "gross_g"), form.grams)
    choose = segmented(TARES, form.tare, lambda key: filling.typed("tare", key), view.text_ratio)
    hint = words.UNOPENED_HINT if unopened else words.EMPTY_HINT
    return [
        choose,
        EntryField(field, lambda text: filling.typed("grams", text), key="grams"),
        t.say(hint, t.CAPTION, t.SOFT),
    ]
