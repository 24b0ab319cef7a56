"""What the doors use of the browser, with types: `js` and `pyodide` bring none."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any, Final, Protocol

import js
from pyodide.ffi import JsException, create_once_callable, create_proxy, to_js

from mobile.store.errors import Full

__all__ = ["JsException", "create_once_callable", "create_proxy"]

# Chromium says DataError when IndexedDB finds the disk full.
FULL: Final = frozenset({"QuotaExceededError", "DataError"})


class Bytes(Protocol):
    """A Uint8Array."""

    def to_bytes(self) -> bytes:
        """Copy into Python."""


class Handle(Protocol):
    """A FileSystemSyncAccessHandle: one file, open for this worker alone."""

    getSize: Callable[[], int]
    flush: Callable[[], None]
    close: Callable[[], None]

    def read(self, into: Bytes, *, at: int) -> int:
        """Fill the array; return how many bytes came."""

    def write(self, data: Bytes, *, at: int) -> int:
        """Return how many bytes fitted."""


class Target(Protocol):
    """An IDBRequest, or an IDBTransaction (which has no result)."""

    result: Any
    error: Any

    def addEventListener(self, event: str, listener: object) -> None:
        """Call the listener when the event happens."""


def array(data: bytes) -> Bytes:
    """Copy bytes into the browser."""
    copied: Bytes = to_js(data)
    return copied


def empty_array(length: int) -> Bytes:
    """Make room for bytes from the browser."""
    room: Bytes = js.Uint8Array.new(length)
    return room


def options(**values: object) -> object:
    """Make a JavaScript object."""
    return to_js(values, dict_converter=js.Object.fromEntries)


def failure(error: Any) -> OSError:
    """Give the error of the book for one of the browser's."""
    name = getattr(error, "name", "") or "no reason given"
    said = f"{name}: {getattr(error, 'message', '')}"
    return Full(said) if name in FULL else OSError(said)


@contextmanager
def failures() -> Iterator[None]:
    """Turn what the browser throws into the book's errors."""
    try:
        yield
    except JsException as error:
        raise failure(error) from error


storage: Any = getattr(js.navigator, "storage", None)
locks: Any = js.navigator.locks
indexed: Any = js.indexedDB
has_files: Final = hasattr(storage, "getDirectory")


def channel(name: str) -> Any:
    """Open a BroadcastChannel: what is posted there reaches all other tabs of the site."""
    return js.BroadcastChannel.new(name)


def aborter() -> Any:
    """Make an AbortController."""
    return js.AbortController.new()
