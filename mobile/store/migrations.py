"""How a book that an older app wrote becomes today's, one schema at a time.

A migration takes a document, `{table: {id: document}}` of plain dicts and lists, and returns the
document of the next schema; it may change what it is given, which is a copy. To change what a
record holds: change the record, append a migration here, and add a book of the old schema to
`tests/store/`. A migration that was shipped is never changed.
"""

import copy
from collections.abc import Callable
from typing import Any, Final

from mobile.store.errors import Newer, Unreadable

Document = dict[str, dict[str, dict[str, Any]]]
Migration = Callable[[Document], Document]

ABOUT: Final = "about"  # the table that says which schema this is, under the id of its own name


def whole_job(document: Document) -> Document:
    """Lead from schema 1 to 2: waits join steps, coats have places, mixes and paints say more."""
    for key, job in document.get("Job", {}).items():
        job["waits"] = _pair_waits(job["steps"], f"{key}:hand-over")
        for step in job["steps"]:
            del step["wait"]
            step |= {"work_s": 0.0, "walls": []}
        if job["steps"]:
            end = {"id": f"{key}:hand-over", "name": "hand-over", "use": "hand-over"}
            job["steps"].append({**end, "work_s": 0.0, "walls": []})
    for coat in document.get("CoatFinished", {}).values():
        coat |= {"place": coat.pop("wall"), "started_at_s": None}
    new: dict[str, dict[str, Any]] = {
        "Paint": {"solids_ratio": None, "spread_m2_l": None, "g_m2": None, "sizes": []},
        "Can": {"across_m": None},
        "Mix": {"g_m2": None, "spread_m2_l": None, "dft_um": None, "loss_ratio": 0.0},
        "Settings": {"tared_each": False, "keeps": [], "margin_ratio": 0.05},
        "PotStarted": {"tared_each": False, "like": ""},
    }
    new["Paint"]["waits"] = []
    new["Mix"] |= {"tools": None, "cups_count": 1, "kit": False, "walls": []}
    _add(document, new)
    return document


def bucket(document: Document) -> Document:
    """Lead from schema 2 to 3: three ways of weighing, versions of recipes, lots, check weights."""
    for table in ("Settings", "PotStarted"):
        for record in document.get(table, {}).values():
            record["way"] = "each" if record.pop("tared_each") else "total"
    new: dict[str, dict[str, Any]] = {
        "Can": {"lot": ""},
        "Mix": {"day": "", "lamp": "", "notes": "", "typed_as": "parts", "versions": []},
        "Settings": {"who": "", "bucket_l": None, "check_g": None, "voice": False, "awake": False},
        "PotStarted": {"parts_band_ratio": [], "who": "", "lots": []},
    }
    _add(document, new)
    return document


def cups(document: Document) -> Document:
    """Lead from schema 3 to 4: cups that stood open, what went to waste; nothing older changes."""
    return document


def _add(document: Document, new: dict[str, dict[str, Any]]) -> None:
    """Give records the fields that are new; one that has them already is of no such book."""
    for table, fields in new.items():
        for record in document.get(table, {}).values():
            if record.keys() & fields:
                raise ValueError(f"{table} of a later schema")
            record.update(copy.deepcopy(fields))


def _pair_waits(steps: list[dict[str, Any]], end: str) -> list[dict[str, Any]]:
    """Give each step's wait as one before the next, that of the last before the hand-over."""
    told = {"minimum_from": "end", "maximum_from": "end", "usual": False}
    then = [*(step["id"] for step in steps[1:]), end]
    return [
        {"after": step["id"], "before": before, "wait": {**step["wait"], **told}}
        for step, before in zip(steps, then, strict=True)
    ]


MIGRATIONS: Final[tuple[Migration, ...]] = (whole_job, bucket, cups)


def schema_of(migrations: tuple[Migration, ...] = MIGRATIONS) -> int:
    """Give the schema that the last migration leads to."""
    return 1 + len(migrations)


def migrated(document: Document, migrations: tuple[Migration, ...] = MIGRATIONS) -> Document:
    """Bring a document to today's schema, whichever it is of.

    Raise `Newer` if it is of a later one, `Unreadable` if it doesn't say or a migration fails.
    """
    schema = document.get(ABOUT, {}).get(ABOUT, {}).get("schema")
    if type(schema) is not int or schema < 1:
        raise Unreadable("no schema", (ABOUT, ABOUT, "schema"))
    if schema > schema_of(migrations):
        raise Newer(f"this book has schema {schema}, the app knows {schema_of(migrations)}")
    for number, migration in enumerate(migrations[schema - 1 :], schema):
        try:
            document = migration(document)
            document[ABOUT][ABOUT]["schema"] = number + 1
        except Exception as problem:
            raise Unreadable(f"schema {number} to {number + 1}: {problem!r}") from problem
    return document
