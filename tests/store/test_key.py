"""Two tabs, one book: the second is told, asks, and gets it; the first keeps nothing more."""

import asyncio
from collections.abc import Callable

import pytest

from mobile.store.door import MemoryDoor
from mobile.store.errors import Busy
from mobile.store.key import PLEASE, WHO, Key, take_key
from mobile.store.library import Library
from tests.store import made
from tests.store.bad_doors import SlowDoor


class Street:
    """What all tabs share: one lock, one channel, one book behind it."""

    def __init__(self) -> None:
        self.lock = asyncio.Lock()
        self.tabs: list[Tab] = []
        self.said: list[str] = []


class Tab:
    """One tab; a frozen one hears nothing, as one that is put aside."""

    def __init__(self, street: Street) -> None:
        self.street, self.frozen = street, False
        self.hear: Callable[[str], None] | None = None
        street.tabs.append(self)

    async def lock(self) -> Callable[[], None]:
        await self.street.lock.acquire()
        return self.street.lock.release

    def say(self, word: str) -> None:
        self.street.said.append(word)
        loop = asyncio.get_running_loop()
        for tab in self.street.tabs:
            if tab is not self and tab.hear and not tab.frozen:
                loop.call_soon(tab.hear, word)

    def listen(self, hear: Callable[[str], None]) -> None:
        self.hear = hear

    def leave(self) -> None:
        self.hear = None


class KeyedDoor(SlowDoor):
    """A door behind a key, as the browser's are."""

    def __init__(self, key: Key, book: MemoryDoor) -> None:
        super().__init__()
        self.files, self.key = book.files, key
        self.when_asked = key.when_asked  # type: ignore[method-assign]

    def close(self) -> None:
        super().close()
        self.key.give_back()


async def opened(
    tab: Tab, word: str, book: MemoryDoor, taken: list[str], patience_s: float = 0.2
) -> Library:
    key = await take_key(tab, word, patience_s)
    return await Library.open(KeyedDoor(key, book), taken=lambda: taken.append("taken"))


def test_the_second_tab_is_told_at_once_and_the_first_goes_on() -> None:
    async def run() -> None:
        street, book, taken = Street(), MemoryDoor(), list[str]()
        first = await opened(Tab(street), WHO, book, taken)
        await first.keep(made.poured(1))
        with pytest.raises(Busy):
            async with asyncio.timeout(10):
                await opened(Tab(street), WHO, book, [], patience_s=60.0)
        await first.keep(made.poured(2))
        assert not taken
        await first.close()
        third = await opened(Tab(street), WHO, book, [])
        assert third.records() == (made.poured(1), made.poured(2))

    asyncio.run(run())


def test_a_tab_that_asks_gets_the_book_with_the_commit_under_way_in_it() -> None:
    async def run() -> None:
        street, book, taken = Street(), MemoryDoor(), list[str]()
        first = await opened(Tab(street), WHO, book, taken)
        verb = asyncio.ensure_future(first.keep(made.poured(1)))
        await asyncio.sleep(0.002)
        second = await opened(Tab(street), PLEASE, book, [])
        assert verb.done()
        assert taken == ["taken"]
        assert second.records() == (made.poured(1),)
        with pytest.raises(Busy):
            await first.keep(made.poured(2))
        await second.keep(made.poured(3))
        back = await opened(Tab(street), PLEASE, book, [])
        assert back.records() == (made.poured(1), made.poured(3))
        assert taken == ["taken"]

    asyncio.run(run())


def test_a_tab_that_answers_nothing_keeps_the_book_until_it_ends() -> None:
    async def run() -> None:
        street, book, taken = Street(), MemoryDoor(), list[str]()
        tab = Tab(street)
        first = await opened(tab, WHO, book, taken)
        tab.frozen = True
        for word in (WHO, PLEASE):
            with pytest.raises(Busy):
                await opened(Tab(street), word, book, [])
        tab.frozen = False
        await first.keep(made.poured(1))
        tab.frozen = True
        asking = asyncio.ensure_future(opened(Tab(street), WHO, book, []))
        await asyncio.sleep(0.05)
        street.lock.release()  # as the browser does when the tab is closed
        assert (await asking).records() == (made.poured(1),)

    asyncio.run(run())


def test_a_tab_that_was_busy_leaves_no_trace_in_the_queue() -> None:
    async def run() -> None:
        street, book = Street(), MemoryDoor()
        first = await opened(Tab(street), WHO, book, [])
        for _ in range(3):
            with pytest.raises(Busy):
                await opened(Tab(street), WHO, book, [])
        assert sum(tab.hear is not None for tab in street.tabs) == 1
        await first.close()
        await asyncio.sleep(0)
        assert not street.lock.locked()

    asyncio.run(run())


def test_of_two_tabs_that_start_at_once_one_is_told_at_once() -> None:
    async def run() -> None:
        street, book = Street(), MemoryDoor()
        starts = [opened(Tab(street), WHO, book, [], patience_s=60.0) for _ in range(2)]
        async with asyncio.timeout(10):
            results = await asyncio.gather(*starts, return_exceptions=True)
        assert sorted(type(result).__name__ for result in results) == ["Busy", "Library"]

    asyncio.run(run())


def test_an_old_worker_that_answers_and_then_ends_makes_nobody_busy() -> None:
    async def run() -> None:
        street, book = Street(), MemoryDoor()
        old = await take_key(Tab(street), WHO)
        start = asyncio.ensure_future(opened(Tab(street), WHO, book, []))
        await asyncio.sleep(0.1)
        old.give_back()
        assert (await start).records() == ()

    asyncio.run(run())


def test_asking_twice_takes_over_once() -> None:
    async def run() -> None:
        street, book, taken = Street(), MemoryDoor(), list[str]()
        first = Tab(street)
        await opened(first, WHO, book, taken)
        asking = [opened(Tab(street), PLEASE, book, taken) for _ in range(2)]
        results = await asyncio.gather(*asking, return_exceptions=True)
        assert sorted(type(result).__name__ for result in results) == ["Busy", "Library"]
        assert taken == ["taken"]
        assert street.lock.locked()

    asyncio.run(run())


def test_a_door_that_fails_to_close_still_gives_the_key_back() -> None:
    async def run() -> None:
        street = Street()
        key = await take_key(Tab(street), WHO)

        async def fails() -> None:
            raise OSError("stuck")

        key.when_asked(fails)
        with pytest.raises(OSError, match="stuck"):
            await key.let_go()
        assert not street.lock.locked()
        await key.let_go()
        key.give_back()

    asyncio.run(run())


def test_letting_go_for_a_page_put_aside_closes_the_book_first() -> None:
    async def run() -> None:
        street, book, taken = Street(), MemoryDoor(), list[str]()
        key = await take_key(Tab(street), WHO)
        library = await Library.open(KeyedDoor(key, book), taken=lambda: taken.append("taken"))
        verb = asyncio.ensure_future(library.keep(made.poured(1)))
        await asyncio.sleep(0.002)
        await key.let_go()
        assert verb.done()
        assert taken == ["taken"]
        assert not street.lock.locked()

    asyncio.run(run())
