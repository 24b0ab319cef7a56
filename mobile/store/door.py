"""What the book asks of a place to keep bytes, and the door that keeps them in memory."""

from collections.abc import Awaitable, Callable
from typing import Protocol

SLOTS = (0, 1)  # the newest state and the one before it, in turns
COPY = 2  # the last good state: written with what the last start found intact
FILES = (*SLOTS, COPY)


class Door(Protocol):
    """Three numbered files, and damaged ones set aside under names.

    A write may be staged until the commit or land at once, in pieces; only a commit that returned
    makes it last. Bytes of an older, longer write may follow the newest one. Whatever fails raises
    an `OSError`.
    """

    name: str

    def read(self, number: int) -> bytes:
        """Return all bytes of a file; none if it was never written."""

    def write(self, number: int, data: bytes) -> None:
        """Put data at the start of a file; raise `Full` if there is no room."""

    async def commit(self) -> None:
        """Return when all that was written will outlive the app; raise `Full` if it can't."""

    async def aside(self, name: str) -> bytes | None:
        """Return what was set aside under a name; None if nothing was."""

    async def set_aside(self, name: str, data: bytes) -> None:
        """Keep data under a name for good; when this returns, it will outlive the app."""

    def when_asked(self, give_up: Callable[[], Awaitable[None]]) -> None:
        """Await this when another tab asks for the book; it closes the door when it can."""

    def close(self) -> None:
        """Let another tab have the files."""


class MemoryDoor:
    """Files that last as long as the object: for tests, and for a browser that keeps nothing."""

    def __init__(self, name: str = "book") -> None:
        self.name = name
        self.files = [b"" for _ in FILES]
        self.asides: dict[str, bytes] = {}

    def read(self, number: int) -> bytes:
        """Return all bytes of a file."""
        return self.files[number]

    def write(self, number: int, data: bytes) -> None:
        """Write over the start of a file, as browser files do."""
        self.files[number] = data + self.files[number][len(data) :]

    async def commit(self) -> None:
        """Do nothing: memory keeps what it has."""

    async def aside(self, name: str) -> bytes | None:
        """Return what was set aside."""
        return self.asides.get(name)

    async def set_aside(self, name: str, data: bytes) -> None:
        """Keep data under a name."""
        self.asides[name] = data

    def when_asked(self, give_up: Callable[[], Awaitable[None]]) -> None:
        """Do nothing: no other tab can see it."""

    def close(self) -> None:
        """Do nothing: no other tab can see it."""
