"""How the person looks at it: room, text size, units. Screens ask for it with `use_view`."""

from dataclasses import dataclass
from typing import Final

import flet as ft

from core.errors import Refused, require
from core.units import System, read, show, typed, unit_of
from mobile import theme as t
from mobile.words.trouble import refused

Limits = tuple[float, float]


@dataclass(frozen=True, slots=True)
class View:
    """The room for one place (dp), the phone's text size as a ratio, and the units chosen."""

    width: float = 412.0
    height: float = 915.0
    text_ratio: float = 1.0
    system: System = System.METRIC

    def show(self, name: str, value: float, digits: int | None = None) -> str:
        """Write a quantity with its unit, as this person reads it."""
        return show(name, value, self.system, digits)

    def read(self, name: str, text: str) -> float:
        """Read a quantity as this person types it; raise `Refused` if there is none."""
        return read(name, text, self.system)

    def error(self, name: str, text: str, within: Limits | None = None) -> str:
        """Say what is wrong with what was typed into a field; nothing while it is empty.

        `within` are the least and the most that would do, in the unit of the name.
        """
        if not text.strip():
            return ""
        try:
            value = self.read(name, text)
            require(name, value, *within or (value, value))
        except Refused as refusal:
            limits = (refusal.low, refusal.high) if isinstance(refusal.value, str) else within
            bounded = Refused(name, refusal.value, *limits or (refusal.low, refusal.high))
            return refused(bounded, self.show)
        return ""

    def typed(self, name: str, value: float | None) -> str:
        """Write a quantity as this person would type it, to the last bit; nothing for None."""
        return "" if value is None else typed(name, value, self.system)

    def label(self, words: str, name: str) -> str:
        """Put the unit behind a field's label."""
        unit = unit_of(name, self.system)
        return f"{words}, {unit}" if unit else words


def lies(size: tuple[float, float], text_ratio: float) -> bool:
    """Tell whether a page is so low and wide that nothing may be pinned under its rows."""
    return size[0] >= t.ASIDE_FROM and size[1] / text_ratio < t.SHORT


def view_of(
    size: tuple[float, float], text_ratio: float, system: System, *, aside: bool = False
) -> View:
    """Give the view of a place on a page, or of each side where two stand beside each other."""
    return View(size[0] / 2 if aside else size[0], size[1], text_ratio, system)


VIEW: Final = ft.create_context(View())


def use_view() -> View:
    """Give the view to a component."""
    return ft.use_context(VIEW)
