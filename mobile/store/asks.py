"""How a record is asked whether it says what can be: a text's form, one of several, a range."""

import re
from collections.abc import Iterable
from typing import Final

from core.errors import Refused, require

ID: Final = re.compile(r"[0-9A-Za-z_.:-]{1,100}")  # it is part of an address
LOOK: Final = re.compile(r"#[0-9a-fA-F]{6}|")
DAY: Final = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
ROWS_COUNT: Final = 0, 5000


def like(name: str, text: str, form: re.Pattern[str]) -> None:
    """Ask a text for its form."""
    if not form.fullmatch(text):
        raise Refused(name, text[:40], 0, 0)


def one_of(name: str, text: str, known: Iterable[str]) -> None:
    """Ask a text to be one of those that are known."""
    if text not in known:
        raise Refused(name, text[:40], 0, 0)


def maybe(name: str, value: float | None, limits: tuple[float, float]) -> None:
    """Ask a number for its range, where there is one."""
    if value is not None:
        require(name, value, *limits)
