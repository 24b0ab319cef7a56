"""A commit that fails changes nothing; one that returns has happened."""

import asyncio

import pytest

from mobile.store.book import COPY_EVERY, keyed, table
from mobile.store.door import COPY, MemoryDoor
from mobile.store.errors import Busy, Full, Newer
from mobile.store.seal import State, sealed, unsealed
from tests.store.bad_doors import DeafDoor, SlowDoor, SmallDoor, StagingDoor, copied
from tests.store.pours import fill, found, opened, pour, pours

ALL = [0, 1, 2, 3]


@pytest.mark.parametrize("room", range(0, 130, 2))
def test_a_full_disk_changes_nothing_and_room_made_later_is_used(room: int) -> None:
    async def run() -> None:
        door = SmallDoor()
        book = await fill(door, ALL)
        door.room = room
        with pytest.raises(Full):
            await pour(book, 7)
        assert pours(book) == await found(copied(door)) == ALL
        with pytest.raises(Full):
            await pour(book, 7)
        door.room = SmallDoor.room
        await pour(book, 8)
        assert pours(book) == await found(door) == [*ALL, 8]

    asyncio.run(run())


def test_a_copy_that_finds_no_room_does_not_stop_the_commit() -> None:
    class NoCopy(SmallDoor):
        def write(self, number: int, data: bytes) -> None:
            if number == COPY:
                raise Full
            super().write(number, data)

    async def run() -> None:
        door = NoCopy()
        await fill(door, ALL)
        assert await found(door) == ALL
        assert door.files[COPY] == b""

    asyncio.run(run())


@pytest.mark.parametrize("room", [0, 10, 60])
def test_damage_that_cannot_be_set_aside_for_want_of_room_is_left_as_it_is(room: int) -> None:
    async def run() -> None:
        door = SmallDoor()
        await fill(door, ALL)
        door.files[:COPY] = before = [data.replace(b"pours", b"purse") for data in door.files[:2]]
        door.room = room
        with pytest.raises(Full):
            await opened(door)
        assert door.files[:COPY] == before
        door.room = SmallDoor.room
        assert (await opened(door)).restored
        assert set(before) <= set(door.asides.values())

    asyncio.run(run())


def test_a_flush_that_fails_is_not_found_later() -> None:
    async def run() -> None:
        door = DeafDoor()
        door.files = (await filled(MemoryDoor())).files
        book = (await opened(door)).book
        with pytest.raises(OSError, match="flush"):
            await pour(book, 7)
        assert pours(book) == await found(door) == ALL

    asyncio.run(run())


async def filled(door: MemoryDoor) -> MemoryDoor:
    await fill(door, ALL)
    return door


def test_a_transaction_that_fails_leaves_nothing_for_the_next() -> None:
    async def run() -> None:
        door = StagingDoor()
        book = await fill(door, ALL)
        door.full = True
        with pytest.raises(Full):
            await pour(book, 7)
        assert pours(book) == await found(copied(door)) == ALL
        door.full = False
        await pour(book, 8)
        assert pours(book) == await found(copied(door)) == [*ALL, 8]

    asyncio.run(run())


@pytest.mark.parametrize("flush", [1, 2])  # of the empty book or the copy; of the pour
@pytest.mark.parametrize("start", range(len(ALL)))
def test_what_is_cancelled_in_mid_commit_has_not_happened(start: int, flush: int) -> None:
    async def run() -> None:
        door = SlowDoor()
        book = await fill(door, ALL[:start])
        door.flushing.clear()
        task = asyncio.ensure_future(pour(book, 7))
        for _ in range(flush):
            await door.flushing.wait()
            door.flushing.clear()
        task.cancel()
        with pytest.raises(asyncio.CancelledError):
            await task
        assert pours(book) == await found(door) == ALL[:start]
        await pour(book, 8)
        assert await found(door) == [*ALL[:start], 8]

    asyncio.run(run())


def test_any_flipped_bit_of_the_newest_slot_gives_the_state_before() -> None:
    async def run() -> None:
        door = await filled(MemoryDoor())
        sequence = (await opened(door)).book.state.sequence
        whole = list(door.files)
        newest = unsealed(whole[sequence % 2])
        assert newest is not None
        for bit in range(8 * len(sealed(newest))):
            flipped = bytearray(whole[sequence % 2])
            flipped[bit // 8] ^= 1 << bit % 8
            door.files = list(whole)
            door.files[sequence % 2] = bytes(flipped)
            assert await found(door) == ALL[:-1]

    asyncio.run(run())


def test_a_newer_book_is_refused_though_an_older_state_could_be_read() -> None:
    async def run() -> None:
        door = await filled(MemoryDoor())
        sequence = (await opened(door)).book.state.sequence + 1
        door.write(sequence % 2, sealed(State(sequence, b'{"newer":{}}')))
        before = list(door.files)
        with pytest.raises(Newer):
            await opened(door)
        assert door.files == before
        assert not door.asides

    asyncio.run(run())


def test_a_newest_state_that_is_whole_but_not_understood_is_set_aside() -> None:
    async def run() -> None:
        door = await filled(MemoryDoor())
        sequence = (await opened(door)).book.state.sequence + 1
        door.write(sequence % 2, sealed(State(sequence, b'{"bad":{}}')))
        before = list(door.files)
        start = await opened(door)
        assert start.restored
        assert pours(start.book) == ALL
        assert door.asides == {"book.aside-1": before[sequence % 2]}
        await pour(start.book, 4)
        assert await found(door) == [*ALL, 4]

    asyncio.run(run())


def test_one_that_was_torn_before_anything_was_kept_is_a_new_book() -> None:
    async def run() -> None:
        first = sealed(State(1, b"{}"))
        for length in range(len(first)):
            door = MemoryDoor()
            door.files[1] = first[:length]
            start = await opened(door)
            assert not start.restored
            assert pours(start.book) == []
            assert not door.asides

    asyncio.run(run())


def test_the_copy_is_written_at_the_first_commit_of_a_start_and_then_now_and_again() -> None:
    async def run() -> None:
        door = MemoryDoor()
        copies: list[int] = []
        for n in range(3):
            book = await fill(door, [1000 + n])
            for more in range(COPY_EVERY + 2):
                await pour(book, 100 * n + more)
                copy = unsealed(door.files[COPY])
                copies.append(copy.sequence if copy else 0)
        assert len(set(copies)) == 3 * 2
        assert copies == sorted(copies)

    asyncio.run(run())


def test_what_json_cannot_hold_changes_nothing() -> None:
    async def run(value: object) -> None:
        door = await filled(MemoryDoor())
        book = (await opened(door)).book
        before = list(door.files)
        table(book, "pours").insert(keyed("7", {"n": value}))
        with pytest.raises((TypeError, ValueError)):
            await book.commit()
        assert pours(book) == ALL
        assert door.files == before

    for value in (object(), float("nan"), float("inf"), b"bytes", {1, 2}):
        asyncio.run(run(value))


def test_a_change_during_a_commit_is_refused_and_the_commit_stands() -> None:
    async def run() -> None:
        door = SlowDoor()
        book = await fill(door, [])
        first = asyncio.ensure_future(pour(book, 1))
        await asyncio.sleep(0)
        assert pours(book) == []  # it has not happened yet
        with pytest.raises(Busy):
            await pour(book, 2)
        with pytest.raises(Busy):
            await book.commit()
        await first
        assert pours(book) == await found(door) == [1]

    asyncio.run(run())


def test_a_closed_book_commits_nothing_more() -> None:
    async def run() -> None:
        door = await filled(MemoryDoor())
        book = (await opened(door)).book
        before = list(door.files)
        book.close()
        with pytest.raises(Busy):
            await pour(book, 7)
        assert door.files == before

    asyncio.run(run())
