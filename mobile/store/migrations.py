"""How a book that an older app wrote becomes today's, one schema at a time.

A migration takes a document, `{table: {id: document}}` of plain dicts and lists, and returns the
document of the next schema; it may change what it is given, which is a copy. To change what a
record holds: change the record, append a migration here, and add a book of the old schema to
`tests/store/`. A migration that was shipped is never changed.
"""

from collections.abc import Callable
from typing import Any, Final

from mobile.store.errors import Newer, Unreadable

Document = dict[str, dict[str, dict[str, Any]]]
Migration = Callable[[Document], Document]

MIGRATIONS: Final[tuple[Migration, ...]] = ()  # the first leads from schema 1 to 2
ABOUT: Final = "about"  # the table that says which schema this is, under the id of its own name


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
