"""A shelf in memory, as the session asks for one; it can be told to be full."""

from mobile.store.errors import Full
from mobile.store.incoming import Incoming
from mobile.store.merge import TakenIn, merged
from mobile.store.records import Record


class Shelf:
    """Keeps records in the order in which they were first kept."""

    def __init__(self, *records: Record) -> None:
        self.kept = {record.id: record for record in records}
        self.commits = 0
        self.full = False
        self.set_aside: tuple[str, ...] = ()
        self.before: tuple[str, ...] = ()

    def records(self) -> tuple[Record, ...]:
        return tuple(self.kept.values())

    async def keep(self, *records: Record, forget: tuple[str, ...] = ()) -> None:
        if self.full:
            raise Full("no room")
        self.commits += 1
        self.kept |= {record.id: record for record in records}
        for gone in forget:
            self.kept.pop(gone, None)

    def export(self, job: str | None = None) -> bytes:
        return f"{len(self.kept)} records of {job}".encode()

    async def take_in(self, incoming: Incoming, *also: Record) -> TakenIn:
        both = merged(self.records(), incoming.records)
        await self._become((*both.records, *also))
        return both.taken

    async def take_back(self, *things: Record, forget: tuple[str, ...]) -> None:
        left = (record for record in self.records() if record.id not in forget)
        await self._become((*left, *things))

    async def restore(self, incoming: Incoming) -> str:
        name = f"book.before-{len(self.before) + 1}.json" if self.kept else ""
        await self._become(incoming.records)
        self.before += (name,) if name else ()
        return name

    async def _become(self, records: tuple[Record, ...]) -> None:
        if self.full:
            raise Full("no room")
        self.commits += 1
        self.kept = {record.id: record for record in records}

    async def aside(self, name: str) -> bytes:
        return name.encode()

    def warm(self) -> None:
        """Do nothing: memory needs no warming."""
