"""Everything, or one job, as one file that other programs can read; `incoming.py` reads it back.

The file is JSON in plain ASCII, one record a line:

    {
    "format": "duskcoat-book",
    "job": null,                  or the id of the one job that the file holds
    "records": [
    {"at_s": 1936883760.0, "device": "6f1c...", "id": "7f3a...", "kind": "Poured", ...},
    ...
    ],
    "schema": 3                   the fields of each kind: `records.py` as of that schema
    }

Records stand in the order in which they were first kept; `kind` names the class in `records.py`
or `entries.py`, the other names are its fields, sorted. Units are part of the names: `_g` grams,
`_m` metres, `_l` litres, `_s` seconds, `at_s` seconds since 1970 in UTC, `_ratio` a share of one.
The same records give the same bytes on any phone: no instant of export is in it, nor the phone that
wrote it (files of the first app say that in `"device"`, which is passed over).

The file of one job holds

- the job, and what is planned for it: walls, zones, mixes;
- what happened to these: pots, coats, cautions, and the entries that name one of them;
- the paints that any of these name, the cans that its pots were poured from, and every other can
  of these paints that is not gone: what stands on the shelf for the job;
- all that ever happened to those cans: each weighing, lid off and pour. So a can holds on the other
  phone what it held on this one. A pour into a pot of another job comes without its pot;
- what takes one of these entries back.

Settings stay behind, and so does what is half typed.
"""

import json
from collections.abc import Callable, Iterable
from types import NoneType
from typing import Any, Final

from mobile.store.codec import encode, names_of
from mobile.store.records import Can, Draft, Job, Paint, Record, Settings

FORMAT: Final = "duskcoat-book"
_OWNERS: Final = ("pot", "coat", "entry")  # fields that name what a record happened to
_SHOP: Final = (Can, Paint)  # cans first: they name paints
_NO_PART: Final = (*_SHOP, Settings, Draft)
_WORDLESS: Final = frozenset({int, float, bool, NoneType})


def exported(records: Iterable[Record], job: str | None, schema: int) -> bytes:
    """Write records as a file."""
    head = json.dumps({"format": FORMAT, "job": job}, indent=0)
    lines = ",\n".join(map(_line, records))
    return f'{head[:-2]},\n"records": [\n{lines}\n],\n"schema": {schema}\n}}\n'.encode("ascii")


def _line(record: Record) -> str:
    told = {**encode(record), "kind": type(record).__name__}
    return json.dumps(told, sort_keys=True, allow_nan=False)


def ids_of_job(records: Iterable[Record], job: str) -> frozenset[str]:
    """Find all that the file of one job holds."""
    records = tuple(records)
    ids = _spread(records, {job}, _part)
    for kind in _SHOP:
        words = {word for record in records if record.id in ids for word in words_in(record)}
        ids |= {
            r.id for r in records if isinstance(r, kind) and (r.id in words or _for_it(r, words))
        }
    return frozenset(_spread(records, ids, _of_can))


def _for_it(record: Record, words: set[str]) -> bool:
    """Tell whether it is a can on the shelf with a paint of the job."""
    return isinstance(record, Can) and not record.gone and record.paint in words


def _spread(
    records: tuple[Record, ...], ids: set[str], names: Callable[[Record], tuple[str, ...]]
) -> set[str]:
    """Add records that name one that is in, until none is left: an undoing names an entry."""
    left = [record for record in records if record.id not in ids]
    ids, before = set(ids), -1
    while len(ids) > before:
        before = len(ids)
        ids |= {record.id for record in left if not ids.isdisjoint(names(record))}
        left = [record for record in left if record.id not in ids]
    return ids


def _part(record: Record) -> tuple[str, ...]:
    """Give what a record belongs to: the job, or what it happened to."""
    if isinstance(record, (Job, *_NO_PART)):
        return ()
    return tuple(getattr(record, name) for name in ("job", *_OWNERS) if hasattr(record, name))


def _of_can(record: Record) -> tuple[str, ...]:
    """Give the can that something happened to, and the entry that is taken back."""
    if isinstance(record, (Job, *_NO_PART)):
        return ()
    return tuple(getattr(record, name) for name in ("can", "entry") if hasattr(record, name))


def words_in(record: Record) -> list[str]:
    """Give every text in a record."""
    found: list[str] = []
    _gather(record, found)
    return found


def _gather(value: Any, found: list[str]) -> None:
    names = names_of(value.__class__)
    for each in [getattr(value, name) for name in names] if names else value:
        if type(each) is str:
            found.append(each)
        elif type(each) not in _WORDLESS:
            _gather(each, found)
