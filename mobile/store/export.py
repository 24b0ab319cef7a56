"""Everything as one file that other programs can read.

The file is JSON in plain ASCII, one record a line:

    {
    "device": "6f1c...",          the phone that wrote this file
    "format": "duskcoat-book",
    "job": null,                  or the id of the one job that the file holds
    "records": [
    {"at_s": 1936883760.0, "device": "6f1c...", "id": "7f3a...", "kind": "Poured", ...},
    ...
    ],
    "schema": 1                   the fields of each kind: `records.py` as of that schema
    }

Records stand in the order in which they were first kept; `kind` names the class in `records.py`,
the other names are its fields, sorted. Units are part of the names: `_g` grams, `_m` metres, `_l`
litres, `_s` seconds, `at_s` seconds since 1970 in UTC, `_ratio` a share of one. The same book gives
the same bytes: no instant of export is in it.

The file of one job holds the job, what names it (walls, mixes, pots, coats), what happened to
those, and the paints and cans that any of these name; not the settings, and nothing half typed.
"""

import json
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, Final

from tinydb import where
from tinydb.queries import QueryInstance
from tinydb.table import Document

from mobile.store.book import Book, table
from mobile.store.codec import KINDS, encode
from mobile.store.records import Can, Draft, Paint, Record, Settings

FORMAT: Final = "duskcoat-book"
_OWNERS: Final = ("pot", "coat", "entry")  # fields that name what a record happened to
_SHOP: Final = (Can, Paint)  # cans first: they name paints
_PHONE: Final = (Settings, Draft)


def exported(records: Iterable[Record], about: Mapping[str, object]) -> bytes:
    """Write records as a file; `about` gives device, job and schema."""
    lines = ",\n".join(_line(record) for record in records)
    head = json.dumps({**about, "format": FORMAT, "records": []}, sort_keys=True, indent=0)
    before, after = head.split("[]")
    return f"{before}[\n{lines}\n]{after}\n".encode("ascii")


def _line(record: Record) -> str:
    fields = {**encode(record), "kind": type(record).__name__}
    return json.dumps(fields, sort_keys=True, allow_nan=False)


def ids_of_job(book: Book, job: str) -> frozenset[str]:
    """Find all that belongs to a job, and the paints and cans named there."""
    kinds = [name for name, kind in KINDS.items() if kind not in (*_SHOP, *_PHONE)]
    found: dict[str, Document] = {}
    before = -1
    while len(found) > before:  # an undoing names an entry that names a pot that names the job
        before = len(found)
        found |= _search(book, kinds, _part_of(job, {job, *found}))
    named = dict(found)
    for kind in _SHOP:
        words = set(_words(list(named.values())))
        shop = table(book, kind.__name__)
        named |= {str(each.doc_id): each for each in shop if str(each.doc_id) in words}
    return frozenset((job, *named))


def _part_of(job: str, ids: set[str]) -> QueryInstance:
    part: QueryInstance = where("job") == job
    for owner in _OWNERS:
        part |= where(owner).one_of(sorted(ids))
    return part


def _search(book: Book, kinds: list[str], part: QueryInstance) -> dict[str, Document]:
    found = (document for name in kinds for document in table(book, name).search(part))
    return {str(document.doc_id): document for document in found}


def _words(value: Any) -> Iterator[str]:
    """Give every text in a document."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, Mapping):
        yield from _words(tuple(value.values()))
    elif isinstance(value, (list, tuple)):
        for each in value:
            yield from _words(each)
