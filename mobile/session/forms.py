"""A form as typed: a frozen value of strings, kept as a draft and offered again after a restart.

Fields are strings; a field of rows (openings, parts) is a tuple of tuples of strings. So a
half-typed `12.` never bounces.
"""

from collections.abc import Callable
from dataclasses import fields, replace
from typing import Any, Generic, TypeVar
from uuid import uuid4

import flet as ft

from mobile.session.drafts import Drafts, Fields
from mobile.session.session import use_session

F = TypeVar("F")


class Edit(Generic[F]):
    """Changes a form. `now` is what stands in it, however late the screen is.

    A tap that follows a key at once finds the screen not drawn anew yet: whoever keeps a form reads
    `now`, not the form that the screen was drawn with. `id` is for the thing that a new form makes:
    a second tap on *Keep* then keeps the same thing again.
    """

    def __init__(self, address: str, first: F, drafts: Drafts) -> None:
        self.now = first
        self.id = uuid4().hex
        self.draw: Callable[[F], None] = lambda _: None
        self._address, self._drafts = address, drafts

    def __call__(self, change: Callable[[F], F]) -> None:
        """Change what stands in the form, and let it be kept as a draft."""
        self.now = change(self.now)
        self._drafts.typed(self._address, as_fields(self.now))
        self.draw(self.now)


def use_form(address: str, blank: F) -> tuple[F, Edit[F], bool]:
    """Give what is typed at an address, a way to change it, and whether it was typed earlier."""
    session = use_session()
    first = restored(blank, session.draft(address))  # used at the first drawing only
    form, set_form = ft.use_state(first)
    earlier, _ = ft.use_state(first != blank)
    (edit,), _ = ft.use_state((Edit(address, first, session.drafts),))
    edit.draw = set_form
    return form, edit, earlier


def as_fields(form: object) -> Fields:
    """Flatten a form to names and texts; row i, column j of `parts` is `parts.i.j`."""
    flat: list[tuple[str, str]] = []
    for field in fields(form):  # type: ignore[arg-type]
        value = getattr(form, field.name)
        if isinstance(value, str):
            flat.append((field.name, value))
            continue
        for i, row in enumerate(value):
            flat += [(f"{field.name}.{i}.{j}", text) for j, text in enumerate(row)]
    return tuple(flat)


def restored(blank: F, typed: dict[str, str]) -> F:
    """Put a form together again; names that the form does not know are passed over."""
    changes: dict[str, Any] = {}
    for field in fields(blank):  # type: ignore[arg-type]
        if isinstance(getattr(blank, field.name), str):
            changes[field.name] = typed.get(field.name, getattr(blank, field.name))
        elif rows := _rows(field.name, typed):
            changes[field.name] = rows
    return replace(blank, **changes)  # type: ignore[type-var]


def _rows(name: str, typed: dict[str, str]) -> tuple[tuple[str, ...], ...]:
    rows: dict[int, list[tuple[int, str]]] = {}
    for key, text in typed.items():
        head, _, tail = key.partition(".")
        i, _, j = tail.partition(".")
        if head == name and i.isdigit() and j.isdigit():
            rows.setdefault(int(i), []).append((int(j), text))
    return tuple(tuple(text for _, text in sorted(rows[i])) for i in sorted(rows))
