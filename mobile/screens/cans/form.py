"""What is typed of a can, and how it is read."""

from dataclasses import dataclass, replace

from core.errors import Refused, require
from mobile.session.cans.can import EMPTY, UNOPENED, checked, paint_named
from mobile.session.cans.looks import LOOK_LONG, look_error, look_of
from mobile.session.known import Known, found
from mobile.session.view import View
from mobile.store.records import Can, Paint

NUMBERS, NAME_COUNT = (1, 9999), (1, 80)
SUGGESTED_MOST = 16
Stamp = tuple[str, float, str]
Stamps = tuple[Stamp, Stamp]  # of a new can, of a new paint
NOBODY: Stamps = (("", 0.0, ""), ("", 0.0, ""))


@dataclass(frozen=True, slots=True)
class CanForm:
    """What has been typed, untouched."""

    number: str = ""
    paint: str = ""
    day: str = ""
    lamp: str = ""
    label: str = ""
    density: str = ""
    tare: str = EMPTY
    grams: str = ""
    lot: str = ""


@dataclass(frozen=True, slots=True)
class Meant:
    """What a form means: a can, its paint, and what the unopened can weighed."""

    can: Can
    paint: Paint
    unopened_gross_g: float | None = None


def form_of(known: Known, can: Can | None, number: int, view: View) -> CanForm:
    """Write a kept can as one would type it."""
    if can is None:
        return CanForm(number=str(number))
    paint = found(known.paints, can.paint)
    return CanForm(
        str(can.number),
        paint.name if paint else "",
        paint.day if paint else "",
        paint.lamp if paint else "",
        view.typed("label_l", can.label_l),
        view.typed("density_g_ml", paint.density_g_ml if paint else None),
        EMPTY,
        view.typed("tare_g", can.tare_g),
        can.lot,
    )


def meant(known: Known, can: Can | None, form: CanForm, stamps: Stamps, view: View) -> Meant:
    """Read a form; raise `Refused` at the first field that can't be."""
    number = view.read("can_number", form.number)
    if number != int(number):
        raise Refused("can_number", form.number, *NUMBERS)
    require("can_number", number, *NUMBERS)
    if not form.paint.strip():
        raise Refused("paint_name", form.paint, *NAME_COUNT)
    label_l = optional("label_l", form.label, view)
    paint = paint_of(
        known,
        form,
        optional("density_g_ml", form.density, view),
        stamps[1],
        can.paint if can else "",
    )
    unopened = form.tare == UNOPENED
    gross_g = view.read("gross_g", form.grams) if unopened else None
    tare_g = None if unopened else optional("tare_g", form.grams, view)
    whence = can.tare_from if can and can.tare_g == tare_g else EMPTY
    made = replace(
        can or Can(*stamps[0], int(number), paint.id),
        at_s=stamps[0][1],
        device=stamps[0][2],
        number=int(number),
        paint=paint.id,
        label_l=label_l,
        tare_g=tare_g,
        tare_from="" if tare_g is None else whence,
        lot=form.lot.strip(),
    )
    return Meant(checked(known, made, paint, gross_g), paint, gross_g)


def problem(known: Known, can: Can | None, form: CanForm, view: View) -> Refused | None:
    """Say what can't be kept yet of what is typed."""
    try:
        meant(known, can, form, NOBODY, view)
    except Refused as refusal:
        return refusal
    return None


def look(name: str, text: str) -> str:
    """Read a look that may stay unknown; raise `Refused` where it is no colour."""
    if look_error(text):
        raise Refused(name, text, LOOK_LONG, LOOK_LONG)
    return look_of(text)


def optional(name: str, text: str, view: View) -> float | None:
    """Read a field that may stay empty."""
    return view.read(name, text) if text.strip() else None


def paint_of(
    known: Known, form: CanForm, density_g_ml: float | None, stamp: Stamp, shown: str
) -> Paint:
    """Give the paint that is meant: a known one, with what is new of it, or a new one.

    `shown` is the paint that the form was filled in from.
    """
    kept = paint_named(known, form.paint)
    day, lamp = look("day", form.day), look("lamp", form.lamp)
    if kept is None:
        return Paint(*stamp, " ".join(form.paint.split()), day, lamp, density_g_ml)
    density = density_g_ml
    if kept.id != shown:  # a field left empty tells nothing new; one that was emptied does
        density = kept.density_g_ml if density_g_ml is None else density_g_ml
        day, lamp = day or kept.day, lamp or kept.lamp
    if (day, lamp, density) == (kept.day, kept.lamp, kept.density_g_ml):
        return kept
    _, at_s, device = stamp
    return replace(kept, at_s=at_s, device=device, day=day, lamp=lamp, density_g_ml=density)


def suggested(known: Known, form: CanForm) -> tuple[Paint, ...]:
    """Give the known paints that a half-typed name may mean; none once it is one of them."""
    if paint_named(known, form.paint):
        return ()
    typed = form.paint.strip().casefold()
    return tuple(p for p in known.paints if typed in p.name.casefold())[:SUGGESTED_MOST]
