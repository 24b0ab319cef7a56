"""Two records that tests keep: a pour, written once, and a draft, replaced."""

from mobile.store.entries import Poured
from mobile.store.records import Draft

PHONE = "6f1c2a34-0000-4000-8000-000000000001"


def poured(n: int, pot: str = "pot", paint: str = "paint", can: str = "can") -> Poured:
    """Give the nth pour."""
    return Poured(f"pour-{n}", 1.9e9 + n, PHONE, pot, paint, can, 77.3, 231.9)


def draft(n: int, form: str = "weigh") -> Draft:
    """Give a draft as typed the nth time."""
    return Draft(form, 1.9e9 + n, PHONE, (("grams", f"{n}."),))
