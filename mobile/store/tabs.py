"""The tabs of this site: a Web Lock and a BroadcastChannel of one name.

The lock is held for as long as a promise is not settled; it passes on when the worker ends, however
it ends. A page put aside for *back* may keep its worker, and so the lock: the page's script ends
the worker when it is put aside, and loads anew when it comes back (`doors.let_go` is for a page
that would rather ask).
"""

import asyncio
from collections.abc import Callable
from typing import Any

from mobile.store import browser as b


class BrowserTabs:
    """What the tabs of this site share under one name."""

    def __init__(self, name: str) -> None:
        self._name = f"{name}.key"
        self._channel = b.channel(self._name)
        self._heard: Any = None

    async def lock(self) -> Callable[[], None]:
        """Wait for the lock, and return what gives it back; cancelled, it is not taken."""
        loop = asyncio.get_running_loop()
        taken: asyncio.Future[None] = loop.create_future()
        release: asyncio.Future[None] = loop.create_future()

        def granted(_: object) -> asyncio.Future[None]:
            if not taken.done():
                taken.set_result(None)
            return release

        def give_back() -> None:
            if not release.done():
                release.set_result(None)

        def over(request: asyncio.Future[object]) -> None:
            proxy.destroy()
            problem = None if request.cancelled() else request.exception()
            if problem and not taken.done():
                taken.set_exception(b.failure(problem))

        proxy, abort = b.create_proxy(granted), b.aborter()
        request = b.locks.request(self._name, b.options(signal=abort.signal), proxy)
        asyncio.ensure_future(request).add_done_callback(over)
        try:
            await taken
        except BaseException:
            give_back()
            abort.abort()
            raise
        return give_back

    def say(self, word: str) -> None:
        """Let all other tabs hear a word."""
        self._channel.postMessage(word)

    def listen(self, hear: Callable[[str], None]) -> None:
        """Hear what other tabs say."""
        self._heard = b.create_proxy(lambda event: hear(str(event.data)))
        self._channel.onmessage = self._heard

    def leave(self) -> None:
        """Hear nothing more."""
        if self._heard is not None:
            self._channel.close()
            self._heard.destroy()
            self._heard = None
