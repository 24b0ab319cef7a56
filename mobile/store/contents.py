"""What a document of the book says: its schema, its device, its records in their order.

    {"about": {"about": {"device": "6f1c...", "schema": 1}},
     "Poured": {"7f3a...": {"order": 17, "at_s": 1936883760.0, "device": "6f1c...", ...}, ...},
     ...}

A table a kind of record, a document a record under its id. `order` counts the records as they were
first kept, over all tables.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from mobile.store import rows
from mobile.store.codec import KINDS, decode, encode
from mobile.store.errors import Unreadable
from mobile.store.migrations import ABOUT, MIGRATIONS, Document, Migration, migrated
from mobile.store.records import Record

ORDER: Final = "order"


@dataclass(frozen=True, slots=True)
class Kept:
    """A record and its place in the order of the book."""

    order: int
    record: Record


@dataclass(frozen=True, slots=True)
class Contents:
    """A document that was read whole; `device` is empty in a book that is new."""

    tables: rows.Tables
    device: str
    kept: tuple[Kept, ...]


def read_contents(document: bytes, migrations: tuple[Migration, ...] = MIGRATIONS) -> Contents:
    """Read a document, bringing it to today's schema; raise `Unreadable` or `Newer`.

    A book of an older schema stays as it is behind the door until the first commit.
    """
    plain = rows.parsed(document)
    if not plain:
        return Contents({}, "", ())
    plain = migrated(plain, migrations)
    tables = {name: rows.table(documents) for name, documents in plain.items()}
    return Contents(tables, _device(plain), kept_of(plain))


def document_of(kept: Kept) -> dict[str, Any]:
    """Give a record's document; its id is the key."""
    fields = encode(kept.record)
    del fields["id"]
    return {ORDER: kept.order, **fields}


def _device(plain: Document) -> str:
    found = plain[ABOUT]
    said = found[ABOUT].get("device")
    if found.keys() != {ABOUT} or found[ABOUT].keys() != {"device", "schema"}:
        raise Unreadable("not what a book says about itself", (ABOUT,))
    if not isinstance(said, str) or not said:
        raise Unreadable(f"{said!r:.40} is no device", (ABOUT, ABOUT, "device"))
    return said


def kept_of(plain: Document) -> tuple[Kept, ...]:
    """Read the records of a document of today's schema, in their order."""
    found: list[Kept] = []
    for name, documents in plain.items():
        if name == ABOUT:
            continue
        if name not in KINDS:
            raise Unreadable("unknown kind of record", (name,))
        found.extend(_read(name, key, document) for key, document in documents.items())
    if len({each.record.id for each in found}) != len(found):
        raise Unreadable("two records have one id")
    if len({each.order for each in found}) != len(found):
        raise Unreadable("two records have one place in the order")
    return tuple(sorted(found, key=lambda each: each.order))


def _read(name: str, key: str, document: Mapping[str, Any]) -> Kept:
    order = document.get(ORDER)
    if type(order) is not int or order < 1:
        raise Unreadable(f"{order!r:.40} is no place in the order", (name, key, ORDER))
    if "id" in document:
        raise Unreadable("unknown", (name, key, "id"))
    fields = {**document, "id": key}
    del fields[ORDER]
    try:
        return Kept(order, decode(KINDS[name], fields))
    except Unreadable as problem:
        raise problem.under(key).under(name) from None
