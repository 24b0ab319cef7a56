"""What is typed on the own keypad: kept as a draft with each key, and offered after a restart."""

from collections.abc import Callable
from dataclasses import dataclass, replace

import flet as ft

from mobile.parts.keypad import Typing, press
from mobile.session.drafts import Drafts, Fields
from mobile.session.session import use_session

FRESH = "fresh"  # a draft's field: the figure whose digits give way to the first key


@dataclass(frozen=True, slots=True)
class Typed:
    """The figures of one keypad, by their names."""

    figures: tuple[tuple[str, Typing], ...]

    def of(self, name: str) -> Typing:
        """Give a figure."""
        return next(typing for own, typing in self.figures if own == name)

    def press(self, name: str, key: str) -> "Typed":
        """Give the figures after a key was pressed on one of them."""
        return replace(
            self,
            figures=tuple(
                (own, press(typing, key) if own == name else typing) for own, typing in self.figures
            ),
        )

    def draft(self) -> Fields:
        """Give what was really typed, as a draft keeps it."""
        return tuple((name, typing.text) for name, typing in self.figures if not typing.fresh)


def typed_of(prefilled: Fields, draft: dict[str, str]) -> Typed:
    """Put the figures together: as drafted, else prefilled and fresh."""
    return Typed(
        tuple(
            (name, Typing(draft.get(name, text), name not in draft or draft.get(FRESH) == name))
            for name, text in prefilled
        )
    )


class Press:
    """Presses keys. `now` is what stands typed, however late the screen is: what a tap uses."""

    def __init__(self, form: str, first: Typed, drafts: Drafts) -> None:
        self.now = first
        self.draw: Callable[[Typed], None] = lambda _: None
        self._form, self._drafts = form, drafts

    def __call__(self, name: str, key: str) -> None:
        """Press a key on a figure, and let what is typed be kept as a draft."""
        self.now = self.now.press(name, key)
        self._drafts.typed(self._form, self.now.draft())
        self.draw(self.now)

    def put(self, name: str, text: str) -> None:
        """Put a figure there as if it had been typed."""
        figures = tuple((own, Typing(text) if own == name else t) for own, t in self.now.figures)
        self.now = Typed(figures)
        self._drafts.typed(self._form, self.now.draft())
        self.draw(self.now)


def use_typing(form: str, prefilled: Fields) -> tuple[Typed, Press]:
    """Give the figures typed at an address, and what to do with a key on one of them."""
    session = use_session()
    first = typed_of(prefilled, session.draft(form))  # used at the first drawing only
    typed, set_typed = ft.use_state(first)
    (pressed,), _ = ft.use_state((Press(form, first, session.drafts),))
    pressed.draw = set_typed
    return typed, pressed
