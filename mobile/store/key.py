"""One tab at a time: the tab that holds the key has the book; another one asks.

Tabs share a lock and a channel under the book's name. A tab that starts says `who`: the holder
answers `mine`, and the newcomer knows at once that it is `Busy`. Who takes the key says `mine` too,
for those who asked before. A tab that wants the book says `please`: the holder closes its door when
the commit under way is done, gives the key back, and tells its own app. The lock passes on by
itself when a tab or its worker ends.
"""

import asyncio
from collections.abc import Awaitable, Callable
from typing import Final, Protocol

from mobile.store.errors import Busy

WHO: Final = "who"
MINE: Final = "mine"
PLEASE: Final = "please"
PATIENCE_S: Final = 6.0  # after a reload a busy old worker was seen to keep its files for 2.7 s
GRACE_S: Final = 0.4  # who says `mine` may be this tab's own old worker, about to end


class Tabs(Protocol):
    """What the tabs of a site share under one name."""

    async def lock(self) -> Callable[[], None]:
        """Wait for the lock, and return what gives it back; cancelled, it is not taken."""

    def say(self, word: str) -> None:
        """Let all other tabs hear a word."""

    def listen(self, hear: Callable[[str], None]) -> None:
        """Hear what other tabs say."""

    def leave(self) -> None:
        """Hear nothing more."""


async def _nothing() -> None:
    """Do nothing."""


class Key:
    """The right to open the book."""

    def __init__(self, tabs: Tabs) -> None:
        self.elsewhere: Final = asyncio.Event()  # another tab said that it has the key
        self._tabs = tabs
        self._release: Callable[[], None] | None = None
        self._give_up: Callable[[], Awaitable[None]] = _nothing
        self._letting_go: asyncio.Task[None] | None = None
        tabs.listen(self._hear)

    def held(self, release: Callable[[], None]) -> "Key":
        """Take note that the lock is ours, and say so."""
        self._release = release
        self._tabs.say(MINE)
        return self

    def when_asked(self, give_up: Callable[[], Awaitable[None]]) -> None:
        """Await this before the key is given to another tab."""
        self._give_up = give_up

    async def let_go(self) -> None:
        """Give up what the key opened, then give the key back."""
        give_up, self._give_up = self._give_up, _nothing
        try:
            await give_up()
        finally:
            self.give_back()

    def give_back(self) -> None:
        """Let another tab have the key."""
        if self._release:
            self._release()
            self._release = None
        self._tabs.leave()

    def _hear(self, word: str) -> None:
        if word == MINE:
            self.elsewhere.set()
        elif self._release and word == WHO:
            self._tabs.say(MINE)
        elif self._release and word == PLEASE and self._letting_go is None:
            self._letting_go = asyncio.ensure_future(self.let_go())


async def take_key(tabs: Tabs, word: str, patience_s: float = PATIENCE_S) -> Key:
    """Take the key, saying `WHO` or `PLEASE`; raise `Busy` if another tab keeps it."""
    key = Key(tabs)
    lock = asyncio.ensure_future(tabs.lock())
    elsewhere = asyncio.ensure_future(key.elsewhere.wait())
    try:
        tabs.say(word)
        waits = (lock, elsewhere)
        await asyncio.wait(waits, timeout=patience_s, return_when=asyncio.FIRST_COMPLETED)
        if key.elsewhere.is_set():
            await asyncio.wait((lock,), timeout=GRACE_S)
        release = lock.result() if lock.done() else None
    except BaseException:
        lock.cancel()
        tabs.leave()
        raise
    finally:
        elsewhere.cancel()
    if release is None:
        lock.cancel()
        tabs.leave()
        raise Busy("another tab has the book")
    return key.held(release)
