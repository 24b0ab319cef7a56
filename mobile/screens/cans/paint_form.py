"""What is typed of a paint's label, and how it is read."""

from dataclasses import dataclass

from core.cans.price import Size
from core.errors import Refused
from core.waits.pair import Wait
from mobile.session.cans.looks import look_error, look_of
from mobile.session.cans.paints import density_of
from mobile.session.view import View
from mobile.store.records import LabelWait, Paint

TYPED, LABEL, WEIGHED = "typed", "label", "weighed"
SIZE_ROW, WAIT_ROW = ("", ""), ("", "", "", "", "")
NONE, MOST = "none", "most"
MINOR = 100.0  # hundredths
Stamp = tuple[str, float, str]


@dataclass(frozen=True, slots=True)
class PaintForm:
    """What has been typed, untouched.

    A size is litres and price; a wait is the kind of step it is before, its minimum, none or most,
    the maximum, and what that counts from.
    """

    name: str = ""
    day: str = ""
    lamp: str = ""
    density_from: str = TYPED
    density: str = ""
    mass: str = ""
    volume: str = ""
    solids: str = ""
    spread: str = ""
    grams: str = ""
    sizes: tuple[tuple[str, ...], ...] = ()
    waits: tuple[tuple[str, ...], ...] = ()

    def density_g_ml(self, view: View) -> float | None:
        """Read the density as it was asked; None where nothing is typed."""
        if self.density_from == TYPED:
            return optional("density_g_ml", self.density, view)
        if not self.mass.strip() and not self.volume.strip():
            return None
        mass_g = view.read("density_mass_g", self.mass)
        return density_of(mass_g, view.read("density_l", self.volume))

    def paint(self, stamp: Stamp, view: View) -> Paint:
        """Read the form; raise `Refused` at the first field that can't be."""
        for name, text in (("day", self.day), ("lamp", self.lamp)):
            if look_error(text):
                raise Refused(name, text, 0, 0)
        return Paint(
            *stamp,
            self.name,
            look_of(self.day),
            look_of(self.lamp),
            self.density_g_ml(view),
            optional("solids_ratio", self.solids, view),
            optional("spread_m2_l", self.spread, view),
            optional("rate_g_m2", self.grams, view),
            tuple(_size(row, view) for row in self.sizes if any(cell.strip() for cell in row)),
            tuple(_wait(row, view) for row in self.waits if any(cell.strip() for cell in row)),
        )


def optional(name: str, text: str, view: View) -> float | None:
    """Read a field that may stay empty."""
    return view.read(name, text) if text.strip() else None


def _size(row: tuple[str, ...], view: View) -> Size:
    price = optional("price", row[1], view)
    return Size(view.read("size_l", row[0]), None if price is None else round(price * MINOR))


def _wait(row: tuple[str, ...], view: View) -> LabelWait:
    use, least, limit, most, most_from = row
    minimum_s = view.read("minimum_s", least)
    if not limit:
        raise Refused("limit", "", 0, 0)
    if limit == NONE:
        return LabelWait(use, Wait(minimum_s))
    if not most_from:
        raise Refused("limit_from", "", 0, 0)
    return LabelWait(use, Wait(minimum_s, view.read("maximum_s", most), "end", most_from))


def form_of(paint: Paint | None, view: View) -> PaintForm:
    """Write a kept paint as one would type it."""
    if paint is None:
        return PaintForm()
    return PaintForm(
        paint.name,
        paint.day,
        paint.lamp,
        TYPED,
        view.typed("density_g_ml", paint.density_g_ml),
        "",
        "",
        view.typed("solids_ratio", paint.solids_ratio),
        view.typed("spread_m2_l", paint.spread_m2_l),
        view.typed("rate_g_m2", paint.g_m2),
        tuple(_size_row(size, view) for size in paint.sizes),
        tuple(_wait_row(one, view) for one in paint.waits),
    )


def _size_row(size: Size, view: View) -> tuple[str, ...]:
    price = "" if size.price is None else f"{size.price / MINOR:.2f}"
    return view.typed("size_l", size.label_l), price


def _wait_row(one: LabelWait, view: View) -> tuple[str, ...]:
    wait = one.wait
    least, most = view.typed("minimum_s", wait.minimum_s), view.typed("maximum_s", wait.maximum_s)
    limited = wait.maximum_s is not None
    return one.use, least, MOST if limited else NONE, most, wait.maximum_from if limited else ""
