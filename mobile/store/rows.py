"""The book's documents in memory: replaced, never changed, each with its own JSON text.

TinyDB hands the storage's own documents to whoever queries them, and changes them in place when
told to `update`. Here they refuse, so that memory can't run ahead of what is committed; and a
commit has to write out anew only the documents that are new.
"""

import json
from collections.abc import Iterable, Mapping
from functools import cached_property
from operator import attrgetter
from types import MappingProxyType
from typing import Any, NoReturn

from mobile.store.errors import Unreadable

_encode = json.JSONEncoder(allow_nan=False, separators=(",", ":")).encode
_text = attrgetter("text")
_SHARED = frozenset({list, tuple, dict})  # what a document may hold that could change


class Row(dict[str, Any]):
    """A document under its key."""

    key: str

    @cached_property
    def text(self) -> str:
        """Give `"key":{...}`; raise TypeError or ValueError if JSON can't hold it."""
        return f"{_encode(self.key)}:{_encode(self)}"

    def refuse(self, *_: object, **__: object) -> NoReturn:
        """Refuse a change."""
        raise TypeError("a document of the book is replaced, never changed")

    __setitem__ = __delitem__ = __ior__ = refuse
    update = pop = popitem = setdefault = clear = refuse


Table = Mapping[str, Row]
Tables = Mapping[str, Table]


def row(key: str, document: Mapping[str, Any]) -> Row:
    """Make a row: a copy that shares nothing that could change."""
    if not _SHARED.isdisjoint(map(type, document.values())):
        document = {name: _frozen(value) for name, value in document.items()}
    made = Row(document)
    made.key = key
    return made


def _frozen(value: Any) -> Any:
    if type(value) is dict:
        return row("", value)
    return tuple(map(_frozen, value)) if type(value) in _SHARED else value


def table(documents: Mapping[str, Mapping[str, Any]]) -> Table:
    """Make a table of rows; those that are rows already are kept as they are."""
    return MappingProxyType(
        {
            key: document if type(document) is Row else row(key, document)
            for key, document in documents.items()
        }
    )


def written(tables: Tables) -> bytes:
    """Write tables out as one JSON document, plain ASCII."""
    return _object(
        f"{_encode(name)}:{_object(map(_text, rows.values()))}" for name, rows in tables.items()
    ).encode("ascii")


def _object(members: Iterable[str]) -> str:
    return f"{{{','.join(members)}}}"


def no_constant(name: str) -> NoReturn:
    """Refuse NaN and infinity, which are no JSON."""
    raise ValueError(f"{name} is no number")


def parsed(document: bytes) -> dict[str, dict[str, dict[str, Any]]]:
    """Read a JSON document as plain tables of plain documents; raise `Unreadable` if it isn't."""
    try:
        found = json.loads(document.decode("ascii"), parse_constant=no_constant)
    except (ValueError, RecursionError) as error:
        raise Unreadable(f"no JSON: {error}") from error
    if type(found) is not dict or not all(type(rows) is dict for rows in found.values()):
        raise Unreadable("no tables")
    for name, rows in found.items():
        if not all(type(value) is dict for value in rows.values()):
            raise Unreadable("no documents", (name,))
    return found
