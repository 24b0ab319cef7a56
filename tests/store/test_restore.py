"""A backup takes the place of everything, and what was there is put aside before."""

import asyncio

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from mobile.store.aside import BEFORE, names_aside
from mobile.store.door import MemoryDoor
from mobile.store.errors import Busy, Full
from mobile.store.incoming import Incoming, read_file
from mobile.store.library import Library
from mobile.store.records import Record
from tests.store import made
from tests.store.bad_doors import TEARS, DeafDoor, DyingDoor, Killed, SlowDoor, SmallDoor, copied
from tests.store.moth_cellar import BACKUP, library_with
from tests.store.test_export import CELLAR, GARDEN, PHONE, SHOP

BOOK = (*PHONE, *SHOP, *CELLAR, *GARDEN)
FILE = "duskcoat.before-1.json"


async def again(library: Library) -> Library:
    """Give what the next start finds."""
    door = library._book.door
    assert isinstance(door, MemoryDoor)
    return await Library.open(copied(door))


def test_a_backup_comes_back_on_an_empty_phone_byte_for_byte_and_nothing_is_put_aside() -> None:
    async def run() -> None:
        library = await library_with(device="another phone")
        assert await library.restore(read_file(BACKUP)) == ""
        assert library.before == ()
        for start in (library, await again(library)):
            assert start.export() == BACKUP
            assert start.device == "another phone"

    asyncio.run(run())


def test_what_was_there_is_put_aside_as_a_file_that_can_be_restored_in_its_turn() -> None:
    async def run() -> None:
        library = await library_with(*BOOK)
        before = library.export()
        assert await library.restore(read_file(BACKUP)) == FILE
        for start in (library, await again(library)):
            assert start.before == (FILE,)
            assert start.set_aside == ()
            assert await start.aside(FILE) == before
            assert start.export() == BACKUP
        assert await library.restore(read_file(before)) == "duskcoat.before-2.json"
        assert library.export() == before
        assert await library.aside("duskcoat.before-2.json") == BACKUP
        assert await library.restore(read_file(BACKUP)) == FILE  # it is put aside already
        assert library.before == (FILE, "duskcoat.before-2.json")

    asyncio.run(run())


def test_restoring_what_is_there_already_costs_nothing() -> None:
    async def run() -> None:
        library = await library_with()
        await library.restore(read_file(BACKUP))
        commits = library._book.state.sequence
        assert await library.restore(read_file(BACKUP)) == ""
        assert library._book.state.sequence == commits
        assert library.before == ()

    asyncio.run(run())


@settings(max_examples=40)
@given(
    st.lists(made.records(), max_size=9, unique_by=lambda record: record.id),
    st.lists(made.records(), max_size=9, unique_by=lambda record: record.id),
)
def test_records_stand_in_the_order_of_the_backup_and_verbs_go_on_from_there(
    here: list[Record], backed_up: list[Record]
) -> None:
    async def run() -> None:
        library = await library_with(*here)
        await library.restore(Incoming(None, tuple(backed_up)))
        assert library.records() == (await again(library)).records() == tuple(backed_up)
        await library.keep(made.poured(999))
        assert library.records() == (await again(library)).records()
        assert library.records()[:-1] == tuple(backed_up)

    asyncio.run(run())


@pytest.mark.parametrize("kind", TEARS)
def test_a_death_at_any_step_leaves_the_old_book_or_the_new_and_never_loses_the_old(
    kind: str,
) -> None:
    incoming = read_file(BACKUP)

    async def run(fatal: int, at: int, before: MemoryDoor, old: bytes) -> int:
        dying = DyingDoor(fatal, TEARS[kind], at, before)
        library = await Library.open(dying)
        with pytest.raises(Killed):
            await library.restore(incoming)
        left = dying.left_behind()
        found = await Library.open(left)
        assert found.export() in {old, BACKUP}
        assert not found.restored
        if found.export() == BACKUP:
            assert old in [await found.aside(name) for name in await names_aside(left, BEFORE)]
        await found.restore(incoming)
        assert found.export() == BACKUP
        assert old in [await found.aside(name) for name in found.before]
        return max(dying.pending(), len(dying.torn_aside[1]))

    async def all_deaths() -> None:
        library = await library_with(*BOOK)
        before = library._book.door
        assert isinstance(before, MemoryDoor)
        for fatal in range(1, 3 + 8 + 1):  # putting aside, then the copy and the new state
            pending = await run(fatal, 0, before, library.export())
            for at in range(1, pending + 1, max(1, pending // 9)):
                await run(fatal, at, before, library.export())

    asyncio.run(all_deaths())


def test_a_full_phone_keeps_the_old_book() -> None:
    async def run(room: int) -> None:
        door = SmallDoor("duskcoat")
        library = await Library.open(door)
        await library.keep(*BOOK)
        before, door.room = library.export(), room
        with pytest.raises(Full):
            await library.restore(read_file(BACKUP))
        assert library.export() == before == (await again(library)).export()
        door.room = SmallDoor.room
        await library.restore(read_file(BACKUP))
        assert library.export() == BACKUP
        assert before in [await library.aside(name) for name in library.before]

    for room in (10, 2000, 9000):  # none for what is put aside, or none for the new book
        asyncio.run(run(room))


def test_a_flush_that_fails_keeps_the_old_book() -> None:
    async def run() -> None:
        door = DeafDoor(99)
        library = await Library.open(door)
        await library.keep(*BOOK)
        before, door.flushes = library.export(), 0
        with pytest.raises(OSError, match="flush"):
            await library.restore(read_file(BACKUP))
        assert library.export() == before == (await again(library)).export()

    asyncio.run(run())


def test_once_another_tab_has_the_book_nothing_is_restored_nor_put_aside() -> None:
    async def run() -> None:
        door = SlowDoor()
        library = await Library.open(door)
        await library.keep(*BOOK)
        await library.close()
        with pytest.raises(Busy):
            await library.restore(read_file(BACKUP))
        assert door.asides == {}

    asyncio.run(run())
