"""What is typed of the scale, as far as it makes sense yet."""

from dataclasses import dataclass

from core.errors import Refused
from mobile.session.cans.can import CanNow, Found, reading_of
from mobile.session.view import View


@dataclass(frozen=True, slots=True)
class Reading:
    """A reading as typed, its grams, and what it says of the can; None where it says nothing."""

    text: str
    gross_g: float | None = None
    found: Found | None = None


def read_scale(now: CanNow, text: str, scale_step_g: float, view: View) -> Reading:
    """Read what is typed; a half-typed number is no error."""
    if not text:
        return Reading(text)
    try:
        gross_g = view.read("gross_g", text)
        return Reading(text, gross_g, reading_of(now, gross_g, scale_step_g))
    except Refused:
        return Reading(text)
