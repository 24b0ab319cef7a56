"""What a browser has to be able to do to be somebody's phone; three engines can."""

import json
import os
import signal
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Protocol, TypeVar

Found = TypeVar("Found")


@dataclass(frozen=True, slots=True)
class Screen:
    """A window: its size in dp, its device pixels a dp, and whether a thumb touches it."""

    width: int = 412
    height: int = 915
    pixels: float = 2.0
    touch: bool = True


class Engine(Protocol):
    """One running browser with one profile, behind one wire."""

    name: str
    patience_s: float
    """How long the app may take to come up in it."""
    keeps: bool
    """Whether it has its profile after its end."""
    own_hosts: tuple[str, ...]
    """Hosts that the browser calls for its own sake, whatever page it shows."""

    def __init__(self, home: Path, wire: str, screen: Screen) -> None:
        """Start the browser with the profile in `home`, its calls going through `wire`."""

    def open(self, url: str) -> None:
        """Go to an address; return without waiting for the app."""

    def ask(self, function: str, *values: object) -> Any:
        """Run a function of JavaScript in the page and return what it answers, by JSON."""

    def touch(self, x: float, y: float) -> None:
        """Touch a point of the window for a moment."""

    def drag(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """Drag a finger over the window."""

    def write(self, text: str) -> None:
        """Type text on the keyboard, where the focus is."""

    def press(self, key: str) -> None:
        """Press one key, or one with Control: `Enter`, `Control+a`."""

    def picture(self, path: Path) -> None:
        """Keep a screenshot (PNG)."""

    def resize(self, width: int, height: int) -> None:
        """Give the window another size in dp."""

    def reload(self) -> None:
        """Reload the page."""

    def tab(self, number: int) -> None:
        """Turn to a tab by its number; the next free number opens one."""

    def choose(self, path: Path) -> None:
        """Choose a file where the page has the browser ask for one."""

    def troubles(self) -> tuple[str, ...]:
        """Tell the errors that the page has written on its console."""

    def kill(self) -> None:
        """Kill the browser at once (SIGKILL), with all its processes."""

    def close(self) -> None:
        """Close the browser in good order."""


def until(found: Callable[[], Found], seconds: float, missed: Callable[[], str]) -> Found:
    """Ask again and again until the answer is true enough; fail with what is there instead."""
    end = time.monotonic() + seconds
    while not (answer := found()):
        if time.monotonic() > end:
            raise AssertionError(missed())
        time.sleep(0.1)
    return answer


def kill_group(leader: int) -> None:
    """Kill a process and all that it started, and wait until the leader is gone."""
    try:
        if os.getpgid(leader) == os.getpgid(0):
            raise RuntimeError(f"process {leader} is of this test's own group")
        os.killpg(leader, signal.SIGKILL)
    except ProcessLookupError:
        return
    until(lambda: not alive(leader), 20, lambda: f"process {leader} outlived SIGKILL")


@contextmanager
def killed_if_it_fails(leader: int) -> Iterator[None]:
    """Leave no process behind if what comes next goes wrong, or is broken off."""
    try:
        yield
    except BaseException:
        kill_group(leader)
        raise


def alive(number: int) -> bool:
    """Say whether a process still runs (a dead one that nobody has waited for does not)."""
    try:
        state = Path(f"/proc/{number}/stat").read_text(encoding="utf-8").rpartition(")")[2].split()
    except OSError:
        return False
    return state[0] not in "ZX"


def call(function: str, values: tuple[object, ...]) -> str:
    """Write the call of a function as one expression that promises its answer as JSON."""
    words = ", ".join(json.dumps(value) for value in values)
    return (
        f"Promise.resolve(({function})({words})).then((answer) => JSON.stringify(answer ?? null))"
    )
