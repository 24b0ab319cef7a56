"""A book of an older app becomes today's, or stays exactly what it was."""

import asyncio
import json
from typing import Any

import pytest

from mobile.store.door import COPY, MemoryDoor
from mobile.store.entries import Poured
from mobile.store.errors import Damaged, Newer
from mobile.store.library import Library
from mobile.store.migrations import (
    MIGRATIONS,
    Document,
    Migration,
)
from mobile.store.records import Draft, Record
from mobile.store.seal import State, sealed, unsealed
from tests.store import made
from tests.store.bad_doors import TEARS, DyingDoor, Killed, SmallDoor

# Three schemas of a book that never was: pours in kilograms, then in a table of another name.


def to_grams(document: Document) -> Document:
    for pour in document["Pour"].values():
        pour["net_g"] = round(pour.pop("net_kg") * 1000, 6)
    return document


def to_poured(document: Document) -> Document:
    poured = {key: {**pour, "reads_g": None} for key, pour in document.pop("Pour").items()}
    return {**document, "Poured": poured}


def broken(document: Document) -> Document:
    for pour in document["Pour"].values():
        del pour["net_kg"]
    raise KeyError("half done")


TODAY: tuple[Migration, ...] = (to_grams, to_poured)


def old_book(schema: int) -> bytes:
    """Write the book as the app of that schema did."""
    table, net = (("Pour", "net_kg"), ("Pour", "net_g"), ("Poured", "net_g"))[schema - 1]
    pours = {}
    for n in range(3):
        pour: dict[str, Any] = {
            "order": n + 1,
            "at_s": 1.9e9 + n,
            "device": made.PHONE,
            "pot": "pot",
        }
        pour |= {"paint": "paint", "can": "can", net: 77.3 if net == "net_g" else 0.0773}
        pours[f"pour-{n}"] = {**pour, "reads_g": None} if schema == 3 else pour
    about = {"about": {"device": made.PHONE, "schema": schema}}
    return json.dumps({"about": about, table: pours}).encode()


def door_with(document: bytes) -> MemoryDoor:
    door = MemoryDoor()
    door.files[1] = sealed(State(41, document))
    return door


def expected() -> tuple[Record, ...]:
    return tuple(
        Poured(f"pour-{n}", 1.9e9 + n, made.PHONE, "pot", "paint", "can", 77.3, None)
        for n in range(3)
    )


@pytest.mark.parametrize("schema", [1, 2, 3])
def test_every_older_schema_becomes_todays_and_the_old_book_lies_untouched(schema: int) -> None:
    async def run() -> None:
        door = door_with(old_book(schema))
        before = list(door.files)
        library = await Library.open(door, migrations=TODAY)
        assert library.records() == expected()
        assert (library.schema, library.device) == (3, made.PHONE)
        assert door.files == before

    asyncio.run(run())


def test_the_first_commit_writes_todays_schema_and_leaves_a_copy_of_the_old() -> None:
    async def run() -> None:
        door = door_with(old_book(1))
        library = await Library.open(door, migrations=TODAY)
        await library.keep(made.draft(1))
        copy = unsealed(door.files[COPY])
        assert copy is not None
        assert copy.document == old_book(1)
        again = await Library.open(door, migrations=TODAY)
        assert again.records() == (*expected(), made.draft(1))
        with pytest.raises(Newer):
            await Library.open(door, migrations=TODAY[:1])

    asyncio.run(run())


@pytest.mark.parametrize("kind", TEARS)
def test_a_death_at_any_step_of_the_first_commit_leaves_the_old_book_or_the_new(kind: str) -> None:
    async def run(fatal: int, at: int) -> int:
        dying = DyingDoor(fatal, TEARS[kind], at, door_with(old_book(1)))
        library = await Library.open(dying, migrations=TODAY)
        with pytest.raises(Killed):
            await library.keep(made.draft(1))
        door = dying.left_behind()
        again = await Library.open(door, migrations=TODAY)
        assert again.records() in (expected(), (*expected(), made.draft(1)))
        assert not again.restored
        await again.keep(made.draft(2))
        last: tuple[Draft, ...] = (made.draft(2),)
        assert (await Library.open(door, migrations=TODAY)).records() == (*expected(), *last)
        return dying.pending()

    for fatal in range(1, 9):
        for at in range(0, asyncio.run(run(fatal, 0)) + 1, 5):
            asyncio.run(run(fatal, at))


def test_a_full_disk_does_not_keep_anyone_out_of_an_old_book() -> None:
    async def run() -> None:
        door = SmallDoor()
        door.files = door_with(old_book(1)).files
        door.room = 0
        library = await Library.open(door, migrations=TODAY)
        assert library.records() == expected()
        with pytest.raises(OSError, match="fitted"):
            await library.keep(made.draft(1))
        assert (await Library.open(door, migrations=TODAY)).records() == expected()

    asyncio.run(run())


@pytest.mark.parametrize("migrations", [(broken,), (to_grams, broken), (to_grams,)])
def test_a_migration_that_fails_or_makes_no_records_changes_nothing(
    migrations: tuple[Migration, ...],
) -> None:
    async def run() -> None:
        door = door_with(old_book(1))
        before = list(door.files)
        with pytest.raises(Damaged):
            await Library.open(door, migrations=migrations)
        assert door.files == before
        assert not door.asides
        assert (await Library.open(door, migrations=TODAY)).records() == expected()

    asyncio.run(run())


def test_todays_own_schema_and_every_one_above_it() -> None:
    async def run(ahead: int) -> None:
        schema = 1 + len(MIGRATIONS)
        document = {"about": {"about": {"device": made.PHONE, "schema": schema + ahead}}}
        door = door_with(json.dumps(document).encode())
        before = list(door.files)
        if ahead:
            with pytest.raises(Newer, match=f"schema {schema + ahead}"):
                await Library.open(door)
        else:
            assert (await Library.open(door)).schema == schema
        assert door.files == before

    for ahead in (0, 1, 2, 1000):
        asyncio.run(run(ahead))
