"""A shelf in memory, as the session asks for one; it can be told to be full."""

from mobile.store.errors import Full
from mobile.store.records import Record


class Shelf:
    """Keeps records in the order in which they were first kept."""

    def __init__(self, *records: Record) -> None:
        self.kept = {record.id: record for record in records}
        self.commits = 0
        self.full = False
        self.set_aside: tuple[str, ...] = ()

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

    async def aside(self, name: str) -> bytes:
        return name.encode()

    def warm(self) -> None:
        """Do nothing: memory needs no warming."""
