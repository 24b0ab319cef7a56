"""Values in IndexedDB, for browsers without OPFS.

A write is staged; the commit is one strict transaction, awaited to its end. All tabs could write:
it is the key that keeps the others out.
"""

import asyncio
from collections.abc import Awaitable, Callable, Mapping
from typing import Any, Final

from mobile.store import browser as b
from mobile.store.browser import JsException, Target, failure, failures
from mobile.store.door import FILES
from mobile.store.errors import Busy
from mobile.store.key import Key

TABLE: Final = "files"


def settled(target: Target, good: str, *bad: str) -> asyncio.Future[Any]:
    """Return a future with the result once `good` happens; one of `bad` fails it."""
    future: asyncio.Future[Any] = asyncio.get_running_loop().create_future()

    def succeed(_: object) -> None:
        if not future.done():
            future.set_result(getattr(target, "result", None))

    def fail(event: Any) -> None:
        event.preventDefault()
        if not future.done():
            future.set_exception(failure(target.error))

    proxies = [b.create_proxy(succeed), *(b.create_proxy(fail) for _ in bad)]
    for event, proxy in zip((good, *bad), proxies, strict=True):
        target.addEventListener(event, proxy)
    future.add_done_callback(lambda _: [proxy.destroy() for proxy in proxies])
    return future


async def _database(name: str) -> Any:
    with failures():
        request = b.indexed.open(name, 1)
    create = b.create_once_callable(lambda _: request.result.createObjectStore(TABLE) and None)
    request.onupgradeneeded = create
    return await settled(request, "success", "error", "blocked")


async def open_indexed(name: str, key: Key) -> "IndexedDoor":
    """Open the values of a book."""
    door = IndexedDoor(name, key, await _database(name))
    await door.fetch()
    return door


class IndexedDoor:
    """A door over values, the numbered ones mirrored in memory."""

    def __init__(self, name: str, key: Key, database: Any) -> None:
        self.name = name
        self._key, self._database = key, database
        self._files: dict[int, bytes] = {}
        self._staged: dict[int, bytes] = {}
        self._closed = False

    async def fetch(self) -> None:
        """Fill the mirror."""
        store = (await self._transaction("readonly")).objectStore(TABLE)
        # Ask for all before awaiting any: a transaction ends when nothing is asked of it.
        asked = [settled(store.get(number), "success", "error") for number in FILES]
        values = await asyncio.gather(*asked)
        self._files = {
            number: value.to_bytes() if value else b""
            for number, value in zip(FILES, values, strict=True)
        }

    def read(self, number: int) -> bytes:
        """Return all bytes of a file."""
        return self._files[number]

    def write(self, number: int, data: bytes) -> None:
        """Stage a file for the next commit."""
        self._staged[number] = data

    async def commit(self) -> None:
        """Store what is staged; if this raises, nothing was stored."""
        staged, self._staged = self._staged, {}
        await self._store(staged)
        self._files |= staged

    async def aside(self, name: str) -> bytes | None:
        """Return what was set aside under a name."""
        store = (await self._transaction("readonly")).objectStore(TABLE)
        value = await settled(store.get(name), "success", "error")
        return value.to_bytes() if value else None

    async def set_aside(self, name: str, data: bytes) -> None:
        """Keep data as a further value."""
        await self._store({name: data})

    async def _store(self, values: Mapping[int, bytes] | Mapping[str, bytes]) -> None:
        transaction = await self._transaction("readwrite")
        with failures():
            for key, data in values.items():
                transaction.objectStore(TABLE).put(b.array(data), key)
        await settled(transaction, "complete", "abort")

    async def _transaction(self, mode: str) -> Any:
        """Begin a transaction; ask something of it before awaiting anything else."""
        if self._closed:
            raise Busy("the door was closed: another tab may have the book")
        strict = b.options(durability="strict")
        try:
            return self._database.transaction(TABLE, mode, strict)
        except JsException:
            # The browser closed the connection, as Chromium does when the disk is full.
            self._database = await _database(self.name)
        with failures():
            return self._database.transaction(TABLE, mode, strict)

    def when_asked(self, give_up: Callable[[], Awaitable[None]]) -> None:
        """Await this when another tab asks for the book."""
        self._key.when_asked(give_up)

    def close(self) -> None:
        """Let another tab have the values."""
        self.close_database()
        self._key.give_back()

    def close_database(self) -> None:
        """Close the connection and keep the key."""
        self._closed = True
        self._database.close()
