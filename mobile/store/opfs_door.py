"""Browser files (OPFS), for Python in a browser worker.

A write lands at once and in place, so that a small commit still works on a full disk; the commit
is the flush. On a full disk a write comes back short and says nothing: it is counted.
"""

import asyncio
from collections.abc import Awaitable, Callable
from typing import Any, Final

from mobile.store.browser import Handle, JsException, array, empty_array, failure, failures, storage
from mobile.store.door import FILES
from mobile.store.errors import Busy, Full
from mobile.store.key import PATIENCE_S, Key

PAUSE_S: Final = 0.05


async def open_files(name: str, key: Key) -> "OpfsDoor":
    """Open the files for this worker alone; raise `Busy` if an old worker doesn't let go."""
    with failures():
        folder = await storage.getDirectory()
    for _ in range(round(PATIENCE_S / PAUSE_S)):
        handles: list[Handle] = []
        try:
            for number in FILES:
                file = await folder.getFileHandle(f"{name}.{number}", create=True)
                handles.append(await file.createSyncAccessHandle())
        except JsException as error:
            for handle in handles:
                handle.close()
            if error.name != "NoModificationAllowedError":
                raise failure(error) from error
        else:
            return OpfsDoor(name, key, folder, handles)
        await asyncio.sleep(PAUSE_S)
    raise Busy(f"another worker has the files of {name}")


def _write(handle: Handle, data: bytes) -> None:
    with failures():
        written = handle.write(array(data), at=0)
    if written != len(data):
        raise Full(f"only {written} of {len(data)} bytes fitted")


class OpfsDoor:
    """A door over open browser files."""

    def __init__(self, name: str, key: Key, folder: Any, handles: list[Handle]) -> None:
        self.name = name
        self._key, self._folder, self._handles = key, folder, handles
        self._unflushed: set[int] = set()

    def read(self, number: int) -> bytes:
        """Return all bytes of a file."""
        handle = self._handles[number]
        with failures():
            room = empty_array(handle.getSize())
            handle.read(room, at=0)
        return room.to_bytes()

    def write(self, number: int, data: bytes) -> None:
        """Write over the start of a file."""
        self._unflushed.add(number)
        _write(self._handles[number], data)

    async def commit(self) -> None:
        """Flush what was written to the disk."""
        with failures():
            for number in sorted(self._unflushed):
                self._handles[number].flush()
        self._unflushed.clear()

    async def aside(self, name: str) -> bytes | None:
        """Return what was set aside under a name."""
        try:
            file = await self._folder.getFileHandle(name)
            buffer = await (await file.getFile()).arrayBuffer()
        except JsException as error:
            if error.name == "NotFoundError":
                return None
            raise failure(error) from error
        data: bytes = buffer.to_bytes()
        return data

    async def set_aside(self, name: str, data: bytes) -> None:
        """Keep data in a further file."""
        with failures():
            file = await self._folder.getFileHandle(name, create=True)
            handle: Handle = await file.createSyncAccessHandle()
        try:
            _write(handle, data)
            with failures():
                handle.flush()
        finally:
            handle.close()

    def when_asked(self, give_up: Callable[[], Awaitable[None]]) -> None:
        """Await this when another tab asks for the book."""
        self._key.when_asked(give_up)

    def close(self) -> None:
        """Let another tab have the files."""
        self.close_files()
        self._key.give_back()

    def close_files(self) -> None:
        """Close the files and keep the key."""
        for handle in self._handles:
            handle.close()
