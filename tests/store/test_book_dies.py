"""Die behind the door on purpose: at every step, with every kind of torn tail."""

import asyncio
import random

import pytest

from mobile.store.aside import names_aside, put_aside
from mobile.store.book import COPY_EVERY, start_over
from mobile.store.door import COPY, FILES, SLOTS, MemoryDoor
from mobile.store.errors import Damaged
from mobile.store.seal import State, sealed
from tests.store.bad_doors import TEARS, DyingDoor, Killed, copied
from tests.store.pours import fill, found, opened, pour, pours

ALL = [0, 1, 2, 3]
WRITE = 4  # steps: before and after a write, before and after its flush
STEPS = WRITE * (2 + 3 * 2)  # the empty book and the first pour; then each start's copy and pour
LONGEST = 190  # bytes; longer than any file below


def test_the_counts_of_this_test_are_those_of_the_writer() -> None:
    door = DyingDoor(10**6, TEARS["cut off"], 0)
    asyncio.run(fill(door, ALL))
    assert 10**6 - door.left == STEPS
    assert max(map(len, door.files)) < LONGEST


@pytest.mark.parametrize("kind", TEARS)
def test_a_death_at_any_step_loses_at_most_the_pour_under_way(kind: str) -> None:
    async def run(fatal: int, at: int) -> int:
        done: list[int] = []
        dying = DyingDoor(fatal, TEARS[kind], at)
        with pytest.raises(Killed):
            await fill(dying, ALL, done)
        door = dying.left_behind()
        left = await found(door)
        assert left in (done, [*done, len(done)])
        assert not door.asides
        book = (await opened(door)).book
        await pour(book, 99)
        assert await found(door) == pours(book) == [*left, 99]
        return dying.pending()

    lengths = set()
    for fatal in range(1, STEPS + 1):
        pending = asyncio.run(run(fatal, 0))
        lengths.add(pending)
        for at in range(1, pending + 1):
            asyncio.run(run(fatal, at))
    assert 0 in lengths
    assert len(lengths) > len(ALL)


def test_each_further_copy_in_one_long_start_is_as_good() -> None:
    async def run(fatal: int, at: int) -> None:
        before = MemoryDoor()
        book = await fill(before, [0])
        for n in range(1, COPY_EVERY + 1):
            await pour(book, n)
        dying = DyingDoor(fatal, TEARS["old bytes behind"], at, before)
        book.door = dying
        with pytest.raises(Killed):
            await pour(book, 999)
        left = await found(dying.left_behind())
        assert left in (list(range(COPY_EVERY + 1)), [*range(COPY_EVERY + 1), 999])

    for fatal in range(1, 2 * WRITE + 1):
        asyncio.run(run(fatal, random.Random(fatal).randrange(2000)))


def damaged(files: list[bytes], which: tuple[int, ...]) -> list[bytes]:
    return [
        data[:20] + b"?" + data[21:] if number in which else data
        for number, data in enumerate(files)
    ]


async def broken(which: tuple[int, ...]) -> MemoryDoor:
    door = MemoryDoor()
    await fill(door, ALL)
    door.files = damaged(door.files, which)
    return door


def test_when_both_slots_are_damaged_the_last_good_state_opens_and_they_are_set_aside() -> None:
    async def run() -> None:
        door = await broken((0, 1))
        before = list(door.files)
        start = await opened(door)
        assert start.restored
        assert pours(start.book) == ALL[:-1]  # as the last start found it
        assert door.asides == {"book.aside-1": before[0], "book.aside-2": before[1]}
        again = await opened(door)
        assert not again.restored
        assert pours(again.book) == ALL[:-1]
        await pour(again.book, 9)
        assert await found(door) == [*ALL[:-1], 9]
        assert len(door.asides) == 2

    asyncio.run(run())


@pytest.mark.parametrize("kind", TEARS)
def test_a_death_while_setting_aside_loses_neither_the_damaged_nor_the_good(kind: str) -> None:
    async def run(fatal: int, at: int, before: MemoryDoor) -> bool:
        dying = DyingDoor(fatal, TEARS[kind], at, before)
        try:
            await opened(dying)
        except Killed:
            pass
        else:
            return False
        door = dying.left_behind()
        assert await found(door) == ALL[:-1]
        for data in before.files[:COPY]:
            assert data in door.asides.values()
        if kind == "cut off" and fatal <= asides:
            assert len(door.asides) == 2  # a mere beginning is written on
        return True

    asides = 2 * 3
    steps = asides + 2 * WRITE
    before = asyncio.run(broken((0, 1)))
    for at in range(0, LONGEST, 3):
        deaths = [asyncio.run(run(fatal, at, before)) for fatal in range(1, steps + 2)]
        assert deaths == [True] * steps + [False]


def test_what_was_set_aside_already_is_not_set_aside_again() -> None:
    async def run() -> None:
        door = MemoryDoor()
        names = [
            await put_aside(door, data) for data in (b"dusk", b"coat", b"dusk", b"du", b"coat")
        ]
        assert names == [f"book.aside-{n}" for n in (1, 2, 1, 1, 2)]
        assert await names_aside(door) == ("book.aside-1", "book.aside-2")
        assert door.asides == {"book.aside-1": b"dusk", "book.aside-2": b"coat"}

    asyncio.run(run())


def test_a_damaged_slot_that_reads_whole_some_other_day_does_not_win() -> None:
    async def run() -> None:
        door = MemoryDoor()
        book = await fill(door, ALL)
        for n in range(10, 20):
            await pour(book, n)  # so that the slots are well ahead of the copy
        whole = list(door.files)
        bad = damaged(whole, (0, 1))
        door.files = list(bad)
        start = await opened(door)
        for number in SLOTS:
            if door.files[number] == bad[number]:
                door.files[number] = whole[number]
        assert await found(door) == pours(start.book) == ALL

    asyncio.run(run())


@pytest.mark.parametrize("which", [(0, 1, 2), (0, 1)])
def test_when_nothing_is_whole_the_book_is_refused_and_left_as_it_is(
    which: tuple[int, ...],
) -> None:
    async def run() -> None:
        door = await broken(which)
        if COPY not in which:
            door.files[COPY] = b""
        before = list(door.files)
        with pytest.raises(Damaged) as refusal:
            await opened(door)
        assert door.files == before
        assert not door.asides
        names = [f"book.{number}" for number in FILES]
        assert dict(refusal.value.files) == {
            name: data for name, data in zip(names, before, strict=True) if data
        }

    asyncio.run(run())


def test_any_damage_opens_some_state_that_was_committed_or_is_refused_untouched() -> None:
    async def run(seed: int) -> str:
        chance = random.Random(seed)
        door = MemoryDoor()
        await fill(door, ALL)
        for number in chance.sample(FILES, chance.randint(1, 3)):
            spoiled = bytearray(door.files[number])
            for _ in range(chance.choice((1, 2, 40))):
                spoiled[chance.randrange(len(spoiled))] ^= chance.randrange(1, 256)
            cut = chance.choice((len(spoiled), chance.randrange(len(spoiled)), 0))
            door.files[number] = bytes(spoiled[:cut])
        before = list(door.files)
        try:
            start = await opened(door)
        except Damaged:
            assert door.files == before
            return "refused"
        assert pours(start.book) in [ALL[:n] for n in range(len(ALL) + 1)]
        for data in before[:COPY] if start.restored else []:
            assert not data or any(kept.startswith(data) for kept in door.asides.values())
        return "restored" if start.restored else "opened"

    assert {asyncio.run(run(seed)) for seed in range(600)} == {"refused", "restored", "opened"}


def test_all_files_lost_but_the_copy_is_told_as_restored() -> None:
    async def run() -> None:
        door = await broken(())
        door.files[0] = door.files[1] = b""
        start = await opened(door)
        assert start.restored
        assert pours(start.book) == ALL[:-1]

    asyncio.run(run())


def test_an_emptied_slot_beside_a_damaged_one_is_no_new_book() -> None:
    async def run() -> None:
        door = await broken((1,))
        door.files[0] = door.files[COPY] = b""
        with pytest.raises(Damaged):
            await opened(door)

    asyncio.run(run())


def test_starting_over_sets_all_aside_first_and_survives_a_death_at_any_step() -> None:
    async def run(fatal: int, at: int, before: MemoryDoor) -> bool:
        dying = DyingDoor(fatal, TEARS["old bytes behind"], at, before)
        try:
            await start_over(dying)
        except Killed:
            door = dying.left_behind()
            try:
                assert await found(door) == []
            except Damaged:
                await start_over(door)
            finished = False
        else:
            door, finished = copied(dying), True
        assert await found(door) == []
        assert set(before.files) <= set(door.asides.values())
        return finished

    before = asyncio.run(broken((0, 1, 2)))
    for at in range(0, LONGEST, 7):
        ends = [asyncio.run(run(fatal, at, before)) for fatal in range(1, 30)]
        assert ends == sorted(ends)
        assert True in ends


def test_after_starting_over_an_old_unreadable_state_is_not_taken_for_the_newest() -> None:
    async def run() -> None:
        door = MemoryDoor()
        door.files = [sealed(State(50 + n, b'{"bad":{}}')) for n in FILES]
        with pytest.raises(Damaged):
            await opened(door)
        await start_over(door)
        start = await opened(door)
        assert not start.restored
        await pour(start.book, 1)
        assert await found(door) == [1]

    asyncio.run(run())
