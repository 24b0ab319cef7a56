"""What was kept is there at the next start; what failed never was."""

import asyncio
from dataclasses import replace
from typing import Any
from uuid import UUID

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.mixing.portions import Portion
from mobile.store.book import keyed
from mobile.store.door import MemoryDoor
from mobile.store.errors import Busy, Damaged, Full, Unreadable
from mobile.store.library import Library
from mobile.store.migrations import schema_of
from mobile.store.records import Paint, Record
from tests.store import made
from tests.store.bad_doors import DeafDoor, SlowDoor, SmallDoor, StagingDoor, copied

EMBER = Paint("ember", 1.9e9, made.PHONE, "ember wing", "#ff5a1f", "", 1.31)


async def again(door: MemoryDoor) -> tuple[Record, ...]:
    return (await Library.open(copied(door))).records()


@settings(max_examples=40)
@given(st.lists(made.records(), max_size=20, unique_by=lambda record: record.id), st.data())
def test_records_come_back_in_the_order_in_which_they_were_first_kept(
    records: list[Record], data: st.DataObject
) -> None:
    async def run() -> None:
        door = MemoryDoor()
        library = await Library.open(door)
        left = list(records)
        while left:
            some = data.draw(st.integers(1, len(left)))
            await library.keep(*left[:some])
            left = left[some:]
        assert library.records() == await again(door) == tuple(records)

    asyncio.run(run())


def test_a_thing_is_replaced_in_its_place_and_can_be_forgotten() -> None:
    async def run() -> None:
        door = MemoryDoor()
        library = await Library.open(door)
        await library.keep(EMBER, made.draft(1), made.poured(1))
        changed = replace(EMBER, name="ember wing 2")
        await library.keep(changed, made.draft(2))
        assert library.records() == (changed, made.draft(2), made.poured(1)) == await again(door)
        await library.keep(made.poured(2), forget=("weigh", "cans/new"))
        assert library.records() == (changed, made.poured(1), made.poured(2)) == await again(door)
        await library.keep(made.draft(3))
        last = (changed, made.poured(1), made.poured(2), made.draft(3))
        assert library.records() == last == await again(door)

    asyncio.run(run())


def test_one_verb_is_one_commit_and_nothing_new_is_none() -> None:
    async def run() -> None:
        library = await Library.open(MemoryDoor())
        await library.keep(EMBER, made.draft(1))
        before = library._book.state.sequence
        await library.keep(
            *map(made.poured, range(9)), replace(EMBER, day="#000000"), forget=("weigh",)
        )
        assert library._book.state.sequence == before + 1
        await library.keep(made.poured(3), replace(EMBER, day="#000000"), forget=("weigh", "no"))
        await library.keep()
        assert library._book.state.sequence == before + 1

    asyncio.run(run())


@pytest.mark.parametrize(
    ("records", "forget", "error"),
    [
        ((replace(made.poured(1), net_g=5.0),), (), ValueError),
        ((replace(made.draft(1), id="pour-1"),), (), ValueError),
        ((replace(EMBER, id="weigh"),), (), ValueError),
        ((made.poured(2), replace(made.draft(1), id="pour-2")), (), ValueError),
        ((), ("pour-1",), ValueError),
        ((EMBER, made.poured(7)), ("pour-7",), ValueError),
        ((replace(EMBER, density_g_ml=float("nan")),), (), Unreadable),
        ((replace(EMBER, name=None),), (), Unreadable),  # type: ignore[arg-type]
        ((Portion("a", 5.0),), (), (Unreadable, AttributeError)),
    ],
)
def test_what_no_book_may_do_is_refused_whole(
    records: tuple[Any, ...], forget: tuple[str, ...], error: Any
) -> None:
    async def run() -> None:
        door = MemoryDoor()
        library = await Library.open(door)
        before = (made.poured(1), made.draft(1))
        await library.keep(*before)
        with pytest.raises(error):
            await library.keep(made.poured(5), *records, forget=forget)
        assert library.records() == await again(door) == before
        await library.keep(EMBER)
        assert library.records() == await again(door) == (*before, EMBER)

    asyncio.run(run())


@pytest.mark.parametrize("failing", [SmallDoor, DeafDoor, StagingDoor])
def test_a_commit_that_fails_leaves_memory_and_book_as_they_were(failing: type[MemoryDoor]) -> None:
    async def run() -> None:
        door: Any = DeafDoor(99) if failing is DeafDoor else failing()
        library = await Library.open(door)
        await library.keep(EMBER, made.draft(1))
        before = library.records()
        exported = library.export()
        door.room, door.full, door.flushes = 30, True, 0
        for _ in range(2):
            with pytest.raises(OSError):  # noqa: PT011  DeafDoor's is a plain one
                await library.keep(made.poured(1), replace(EMBER, name="no"), forget=("weigh",))
            assert library.records() == before == await again(door)
            assert library.export() == exported
        door.room, door.full, door.flushes = SmallDoor.room, False, 99
        await library.keep(made.poured(2), forget=("weigh",))
        assert library.records() == (EMBER, made.poured(2)) == await again(door)

    asyncio.run(run())


def test_a_first_commit_that_fails_keeps_the_device_for_the_next() -> None:
    async def run() -> None:
        door = SmallDoor()
        library = await Library.open(door, made.PHONE)
        door.room = 50
        with pytest.raises(Full):
            await library.keep(EMBER)
        door.room = SmallDoor.room
        await library.keep(EMBER)
        assert (await Library.open(door, "another")).device == made.PHONE

    asyncio.run(run())


def test_a_bug_in_mid_verb_leaves_nothing_for_the_next(monkeypatch: pytest.MonkeyPatch) -> None:
    def faulty(key: str, document: Any) -> Any:
        if key == "pour-1":  # things are staged before entries
            raise RuntimeError("a bug")
        return keyed(key, document)

    async def run() -> None:
        door = MemoryDoor()
        library = await Library.open(door)
        await library.keep(made.draft(1))
        with monkeypatch.context() as patch:
            patch.setattr("mobile.store.library.keyed", faulty)
            with pytest.raises(RuntimeError):
                await library.keep(EMBER, made.poured(1), forget=("weigh",))
        await library.keep(made.poured(2))
        assert library.records() == await again(door) == (made.draft(1), made.poured(2))

    asyncio.run(run())


def test_verbs_at_once_take_turns() -> None:
    async def run() -> None:
        door = SlowDoor()
        library = await Library.open(door)
        await asyncio.gather(*(library.keep(made.poured(n), made.draft(n)) for n in range(9)))
        assert library.records() == await again(door)
        assert [r.id for r in library.records()][:3] == ["pour-0", "weigh", "pour-1"]

    asyncio.run(run())


def test_closing_waits_for_the_commit_under_way_and_nothing_is_kept_after() -> None:
    async def run() -> None:
        door = SlowDoor()
        library = await Library.open(door)
        verb = asyncio.ensure_future(library.keep(EMBER))
        await asyncio.sleep(0)
        await library.close()
        await verb
        assert door.closed
        with pytest.raises(Busy):
            await library.keep(made.poured(1))
        assert library.records() == await again(door) == (EMBER,)
        await library.close()

    asyncio.run(run())


def test_a_new_book_gets_a_random_device_and_keeps_it() -> None:
    async def run() -> None:
        door = MemoryDoor()
        library = await Library.open(door)
        assert UUID(library.device).version == 4
        assert (await Library.open(MemoryDoor())).device != library.device
        await library.keep(EMBER)
        assert (await Library.open(door, made.PHONE)).device == library.device
        assert library.schema == schema_of()

    asyncio.run(run())


def test_warming_does_what_the_first_commit_would_and_changes_nothing() -> None:
    async def run() -> None:
        door = MemoryDoor()
        await (await Library.open(door)).keep(EMBER, made.poured(1))
        before = list(door.files)
        library = await Library.open(door)
        rows = [row for table in library._book.read().values() for row in table.values()]
        assert not any("text" in vars(row) for row in rows)
        library.warm()
        assert all("text" in vars(row) for row in rows)
        assert door.files == before
        await library.keep(made.poured(2))
        assert await again(door) == (EMBER, made.poured(1), made.poured(2))

    asyncio.run(run())


def test_opening_writes_nothing() -> None:
    async def run() -> None:
        door = MemoryDoor()
        for record in (EMBER, made.poured(1)):
            library = await Library.open(door)
            await library.keep(record)
        before = list(door.files)
        for _ in range(3):
            await (await Library.open(door)).close()
        assert door.files == before
        empty = MemoryDoor()
        await Library.open(empty)
        assert not any(empty.files)

    asyncio.run(run())


def test_a_damaged_book_is_set_aside_listed_and_given_out_at_every_later_start() -> None:
    async def run() -> None:
        door = MemoryDoor("duskcoat")
        for n in range(3):
            await (await Library.open(door)).keep(made.poured(n))
        door.files[:2] = before = [data[:-1] + b"?" for data in door.files[:2]]
        library = await Library.open(door)
        assert library.restored
        assert library.records() == (made.poured(0), made.poured(1))
        for start in (library, await Library.open(door)):
            assert start.set_aside == ("duskcoat.aside-1", "duskcoat.aside-2")
            assert [await start.aside(name) for name in start.set_aside] == before
        assert not start.restored
        with pytest.raises(LookupError):
            await start.aside("duskcoat.aside-3")

    asyncio.run(run())


def test_a_book_that_holds_what_no_app_wrote_is_refused_and_given_out() -> None:
    async def run() -> None:
        door = MemoryDoor("duskcoat")
        await (await Library.open(door)).keep(made.poured(1))
        library = await Library.open(door)
        library._book.write({**library._book.read(), "Brush": {}})
        await library._book.commit()
        newest = library._book.state.sequence % 2
        door.files = [data if n == newest else b"" for n, data in enumerate(door.files)]
        before = list(door.files)
        with pytest.raises(Damaged, match="Brush") as refusal:
            await Library.open(door)
        assert refusal.value.files == ((f"duskcoat.{newest}", before[newest]),)
        assert door.files == before

    asyncio.run(run())
