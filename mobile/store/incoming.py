"""A file that came in, read whole or refused with the reason; nothing is changed here.

    incoming = read_file(data)
    taken = await library.take_in(incoming)

The format is that of `export.py`. Files of older schemas are brought up by the book's migrations.
"""

import json
from dataclasses import dataclass
from itertools import accumulate
from typing import Any, Final

from mobile.store.contents import ORDER, kept_of
from mobile.store.errors import Foreign, Newer, TooLarge, Unreadable
from mobile.store.export import FORMAT, ids_of_job
from mobile.store.migrations import ABOUT, MIGRATIONS, Document, Migration, migrated, schema_of
from mobile.store.records import Job, Record
from mobile.store.rows import no_constant
from mobile.store.sense import require_sense
from mobile.store.together import require_drawable, require_leads

MOST_BYTES: Final = 64 << 20
HEAD: Final = frozenset({"format", "job", "records", "schema"})
OLD_HEAD: Final = HEAD | {"device"}
LOOKED_AT: Final = 4096  # bytes in which a file says whose it is


@dataclass(frozen=True, slots=True)
class Incoming:
    """What a file holds: one job, by its id, or with None everything; its records in order."""

    job: str | None
    records: tuple[Record, ...]


DEEPEST = 100  # brackets in brackets; the browser's Python dies of a few thousand, uncatchably
_DEEPER: Final = {**dict.fromkeys(b"[{", 1), **dict.fromkeys(b"]}", -1)}
_FLAT: Final = bytes(set(range(256)) - set(_DEEPER))


def _require_flat(data: bytes) -> None:
    """Refuse what is nested deeper than any file of ours, before the parser goes down there."""
    brackets = data.translate(None, _FLAT)
    if any(depth > DEEPEST for depth in accumulate(map(_DEEPER.__getitem__, brackets))):
        raise ValueError("nested too deep")


def read_file(data: bytes, migrations: tuple[Migration, ...] = MIGRATIONS) -> Incoming:
    """Read a file and check all of it.

    Parameters
    ----------
    data : its bytes
    migrations : how an older schema becomes today's; others only in tests

    Raises
    ------
    TooLarge : it has more than 64 MB
    Foreign : another program wrote it
    Newer : a newer app wrote it
    Senseless, Astray : a record says what can't be, or leads nowhere
    Unreadable : it is damaged; the parent of all of these but `Newer`
    """
    if len(data) > MOST_BYTES:
        raise TooLarge(f"{len(data)} bytes")
    try:
        found = _head(data, migrations)
        document = _document(found)
        records = tuple(kept.record for kept in kept_of(migrated(document, migrations)))
    except (RecursionError, MemoryError) as error:
        raise Unreadable(f"nested too deep, or too much of it: {type(error).__name__}") from None
    incoming = Incoming(found["job"], records)
    for record in records:
        require_sense(record)
    require_leads(records)
    require_drawable(records)
    _require_one_job(incoming)
    return incoming


def _head(data: bytes, migrations: tuple[Migration, ...]) -> dict[str, Any]:
    """Read a file as JSON, and what it says about itself."""
    ours = FORMAT.encode() in data[:LOOKED_AT]
    try:
        _require_flat(data)
        found = json.loads(
            data.decode("ascii"), object_pairs_hook=_once, parse_constant=no_constant
        )
    except (ValueError, RecursionError) as error:
        raise (Unreadable if ours else Foreign)(f"no JSON: {error}") from None
    if type(found) is not dict or found.get("format") != FORMAT:
        raise Foreign(f"does not say {FORMAT}")
    schema, known = found.get("schema"), schema_of(migrations)
    if type(schema) is not int or schema < 1:
        raise Unreadable("no schema", ("schema",))
    if schema > known:
        raise Newer(f"this file has schema {schema}, the app knows {known}")
    if not HEAD <= found.keys() <= OLD_HEAD:
        raise Unreadable("not what a file says about itself", (min(HEAD ^ found.keys()),))
    if not isinstance(found["job"], str | None):
        raise Unreadable("neither a job nor none", ("job",))
    if type(found["records"]) is not list:
        raise Unreadable("no list", ("records",))
    return found


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """Make an object; refuse a name that stands twice: programs differ in which one they take."""
    made = dict(pairs)
    if len(made) != len(pairs):
        raise ValueError("a name stands twice in one object")
    return made


def _document(found: dict[str, Any]) -> Document:
    """Put the records in tables, as the book has them, for the migrations and the codec."""
    about: dict[str, Any] = {"device": "file", "schema": found["schema"]}
    document: Document = {ABOUT: {ABOUT: about}}
    for number, told in enumerate(found["records"], 1):
        where = ("records", str(number))
        if type(told) is not dict:
            raise Unreadable("no object", where)
        kind, key = told.get("kind"), told.get("id")
        if not isinstance(kind, str) or kind == ABOUT or ORDER in told:
            raise Unreadable("not what a record is made of", where)
        if not isinstance(key, str) or not key:
            raise Unreadable("no id", where)
        table = document.setdefault(kind, {})
        if key in table:
            raise Unreadable("this id stands twice", (*where, kind, key))
        fields = {name: value for name, value in told.items() if name not in {"kind", "id"}}
        table[key] = {ORDER: number, **fields}
    return document


def _require_one_job(incoming: Incoming) -> None:
    """Refuse what a file of one job would not hold."""
    if incoming.job is None:
        return
    jobs = [record.id for record in incoming.records if isinstance(record, Job)]
    if incoming.job not in jobs:
        raise Unreadable("its job is not in it", ("job",))
    own = ids_of_job(incoming.records, incoming.job)
    strays = [record for record in incoming.records if record.id not in own]
    if strays:
        raise Unreadable("is not of that job", (type(strays[0]).__name__, strays[0].id))
