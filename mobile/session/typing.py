"""What is typed on the own keypad: kept as a draft with each key, and offered after a restart."""

from collections.abc import Callable
from dataclasses import dataclass, replace

import flet as ft

from mobile.parts.keypad import Typing, press
from mobile.session.drafts import Fields
from mobile.session.session import use_session

FRESH = "fresh"  # a draft's field: the figure whose digits give way to the first key
OnKey = Callable[[str, str], None]


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


def use_typing(form: str, prefilled: Fields) -> tuple[Typed, OnKey]:
    """Give the figures typed at an address, and what to do with a key on one of them."""
    session = use_session()
    typed, set_typed = ft.use_state(typed_of(prefilled, session.known.draft(form)))

    def on_key(name: str, key: str) -> None:
        def pressed(now: Typed) -> Typed:
            after = now.press(name, key)
            session.drafts.typed(form, after.draft())
            return after

        set_typed(pressed)

    return typed, on_key
