"""Doors that fail as disks, browsers and batteries do."""

import asyncio
from collections.abc import Callable

from mobile.store.door import MemoryDoor
from mobile.store.errors import Full

Tear = Callable[[bytes, bytes, int], bytes]

# What is left of a write that was not flushed: `old` lay there, `new` was to, `at` bytes made it.
TEARS: dict[str, Tear] = {
    "old bytes behind": lambda old, new, at: new[:at] + old[at:],
    "cut off": lambda old, new, at: new[:at],
    "zeros behind": lambda old, new, at: new[:at] + bytes(max(len(new) - at, 0)),
    "only the tail came": lambda old, new, at: old[:at].ljust(at, b"\0") + new[at:],
}


class Killed(BaseException):
    """The app is gone."""


class DyingDoor(MemoryDoor):
    """Dies before, within, between or after its writes, flushes and settings aside.

    Each of these is two steps, one before it and one after. What was written and not flushed is
    then torn. A dead door does nothing any more.
    """

    def __init__(self, fatal: int, tear: Tear, at: int, before: MemoryDoor | None = None) -> None:
        super().__init__()
        if before:
            self.files, self.asides = list(before.files), dict(before.asides)
        self.left, self.tear, self.at = fatal, tear, at
        self.flushed = list(self.files)
        self.torn_aside = ("", b"")

    def write(self, number: int, data: bytes) -> None:
        self.step()
        super().write(number, data)
        self.step()

    async def commit(self) -> None:
        self.step()
        self.flushed = list(self.files)
        self.step()

    async def set_aside(self, name: str, data: bytes) -> None:
        self.step()
        self.torn_aside = (name, data)
        self.step()
        self.torn_aside = ("", b"")
        await super().set_aside(name, data)
        self.step()

    def step(self) -> None:
        self.left -= 1
        if self.left <= 0:
            raise Killed

    def pending(self) -> int:
        """Give the length of what was written and not flushed; 0 if nothing was."""
        pairs = zip(self.flushed, self.files, strict=True)
        return max(len(new) if old != new else 0 for old, new in pairs)

    def left_behind(self) -> MemoryDoor:
        """Give what the next start finds."""
        door = MemoryDoor()
        door.asides = dict(self.asides)
        for number, (old, new) in enumerate(zip(self.flushed, self.files, strict=True)):
            door.files[number] = new if old == new else self.tear(old, new, min(self.at, len(new)))
        name, data = self.torn_aside
        if name:
            door.asides[name] = self.tear(b"", data, min(self.at, len(data)))
        return door


class SmallDoor(MemoryDoor):
    """A disk with little room: it writes short, then says so, as browser files do."""

    room = 1 << 20

    def write(self, number: int, data: bytes) -> None:
        super().write(number, data[: self.room])
        if len(data) > self.room:
            raise Full(f"only {self.room} of {len(data)} bytes fitted")

    async def set_aside(self, name: str, data: bytes) -> None:
        await super().set_aside(name, data[: self.room])
        if len(data) > self.room:
            raise Full(f"only {self.room} of {len(data)} bytes fitted")


class DeafDoor(MemoryDoor):
    """Writes at once, but its flush fails, but for the first few."""

    def __init__(self, flushes: int = 0) -> None:
        super().__init__()
        self.flushes = flushes

    async def commit(self) -> None:
        self.flushes -= 1
        if self.flushes < 0:
            raise OSError("flush")


class SlowDoor(MemoryDoor):
    """Takes a while to commit, as IndexedDB does."""

    closed = False

    def __init__(self) -> None:
        super().__init__()
        self.flushing = asyncio.Event()

    async def commit(self) -> None:
        self.flushing.set()
        await asyncio.sleep(0.01)
        assert not self.closed

    def close(self) -> None:
        self.closed = True


class StagingDoor(MemoryDoor):
    """Stages writes until the commit, which takes them all or none, as IndexedDB does."""

    def __init__(self) -> None:
        super().__init__()
        self.staged: dict[int, bytes] = {}
        self.full = False

    def write(self, number: int, data: bytes) -> None:
        self.staged[number] = data

    async def commit(self) -> None:
        staged, self.staged = self.staged, {}
        await asyncio.sleep(0)
        if self.full:
            raise Full("no room left")
        for number, data in staged.items():
            self.files[number] = data


def copied(door: MemoryDoor) -> MemoryDoor:
    """Give what another start would find."""
    copy = MemoryDoor(door.name)
    copy.files, copy.asides = list(door.files), dict(door.asides)
    return copy
