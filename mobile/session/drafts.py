"""What is typed and not kept yet survives too: at most every 0.3 s, and at once on leaving."""

import asyncio
from collections.abc import Awaitable, Callable

PAUSE_S = 0.3

Fields = tuple[tuple[str, str], ...]


class Drafts:
    """The forms that are being typed into, each under its address; `keep` commits them."""

    def __init__(self, keep: Callable[[], Awaitable[None]]) -> None:
        self._keep = keep
        self._typed: dict[str, Fields] = {}
        self._task: asyncio.Task[None] | None = None

    def typed(self, form: str, fields: Fields) -> None:
        """Take what a form holds now; it is kept within a third of a second."""
        self._typed[form] = fields
        if self._task is None or self._task.done():
            self._task = asyncio.ensure_future(self._soon())

    def waiting(self) -> dict[str, Fields]:
        """Give what is not kept yet; called by the session when it is its turn."""
        return dict(self._typed)

    def kept(self, typed: dict[str, Fields]) -> None:
        """Take note of what was kept; what was typed on meanwhile goes on waiting."""
        for form, fields in typed.items():
            if self._typed.get(form) == fields:
                del self._typed[form]

    def drop(self, forms: tuple[str, ...]) -> None:
        """Forget what is not kept yet: the form was kept or cleared."""
        for form in forms:
            self._typed.pop(form, None)

    async def flush(self) -> None:
        """Keep what is typed at once."""
        await self._keep()

    async def _soon(self) -> None:
        await asyncio.sleep(PAUSE_S)
        await self.flush()
