"""Records in, records out: the book as the session sees it.

    library = await Library.open(await open_door("duskcoat"), device, taken=say_so)
    for record in library.records(): ...
    await library.keep(pour, forget=("weigh",))  # one commit; now it has happened

Things are replaced whole by a thing of the same id; entries are written once and stay. What is
read was checked when the book was opened; what is kept is checked before it is.
"""

import asyncio
from collections.abc import Callable, Iterable, Mapping
from functools import partial
from typing import Any, Final, get_args
from uuid import uuid4

from mobile.store.aside import BEFORE, names_aside, put_aside
from mobile.store.book import Opened, keyed, open_book, table
from mobile.store.codec import KINDS, decode, encode
from mobile.store.contents import Contents, Kept, document_of, read_contents
from mobile.store.door import Door
from mobile.store.entries import Entry
from mobile.store.errors import WrongFile
from mobile.store.export import exported, ids_of_job
from mobile.store.incoming import Incoming
from mobile.store.merge import TakenIn, merged
from mobile.store.migrations import ABOUT, MIGRATIONS, Migration
from mobile.store.records import Job, Record
from mobile.store.together import require_drawable

_ENTRIES: Final = get_args(Entry)


def _nothing() -> None:
    """Do nothing."""


class Library:
    """All records of the book, in memory and behind the door."""

    def __init__(self, opened: Opened[Contents], device: str, schema: int) -> None:
        self._book, contents = opened.book, opened.contents
        self._kept = {kept.record.id: kept for kept in contents.kept}
        self._turn = asyncio.Lock()
        self._new = not contents.device
        self.device: Final = contents.device or device
        self.schema: Final = schema
        self.restored: Final = opened.restored  # this start opened the last good state
        self.set_aside: tuple[str, ...] = ()  # names of damaged files, at this start or before
        self.before: tuple[str, ...] = ()  # names of what a restored backup took the place of

    @classmethod
    async def open(
        cls,
        door: Door,
        device: str = "",
        taken: Callable[[], None] = _nothing,
        migrations: tuple[Migration, ...] = MIGRATIONS,
    ) -> "Library":
        """Open the book behind a door; if this raises, the door is still open.

        Parameters
        ----------
        door : where the book is kept
        device : whose book it is, if it is new: a random uuid, never changed after
        taken : called once another tab has asked for the book and got it; nothing is kept then
        migrations : how an older book becomes today's; others only in tests

        Raises
        ------
        Newer : a newer app wrote it; nothing was touched
        Damaged : nothing in it reads whole; nothing was overwritten (see `start_over`)
        Full, OSError : the door failed while what is damaged was being set aside
        """
        opened = await open_book(door, partial(read_contents, migrations=migrations))
        library = cls(opened, device or str(uuid4()), 1 + len(migrations))
        library.set_aside = await names_aside(door)
        library.before = await names_aside(door, BEFORE)

        async def give_up() -> None:
            await library.close()
            taken()

        door.when_asked(give_up)
        return library

    def records(self) -> tuple[Record, ...]:
        """Give all records in the order in which they were first kept."""
        return tuple(kept.record for kept in self._kept.values())

    async def keep(self, *records: Record, forget: tuple[str, ...] = ()) -> None:
        """Keep records and forget things, in one commit; if this raises, nothing has changed.

        Records that are kept already, and ids that aren't there, cost nothing. Raise `Full`,
        `Busy` or another `OSError` if the commit fails; ValueError for what no book may do:
        change or forget an entry, use an id twice, hold a value that can't be read back.
        """
        async with self._turn:
            kept, changed = self._after(self._kept, records, forget)
            if not changed:
                return
            try:
                self._stage(kept, changed)
                await self._book.commit()
            except BaseException:
                self._book.drop()
                raise
            self._kept, self._new = kept, False

    async def close(self) -> None:
        """Close the door once the commit under way is done; another tab may have the book then."""
        async with self._turn:
            self._book.close()

    def warm(self) -> None:
        """Write out ahead of need what the first commit of a start would; in a quiet moment."""
        self._book.warm()

    def export(self, job: str | None = None) -> bytes:
        """Write everything as one file, or one job and what it needs (`export.py` has the form)."""
        if job is not None and not any(isinstance(r, Job) and r.id == job for r in self.records()):
            raise LookupError(f"there is no job {job}")
        ids = self._kept.keys() if job is None else ids_of_job(self.records(), job)
        records = (record for record in self.records() if record.id in ids)
        return exported(records, job, self.schema)

    async def take_in(self, incoming: Incoming, *also: Record) -> TakenIn:
        """Take one job's file in, in one commit (`merge.py` says what stays); keep `also` with it.

        If this raises, nothing has changed: `WrongFile` for a file of everything, `Clash` and
        `Senseless` where file and book don't go together, and what `keep` raises.
        """
        if incoming.job is None:
            raise WrongFile("it holds everything")
        async with self._turn:
            both = merged(self.records(), incoming.records)
            require_drawable(both.records)
            something = both.taken.added or both.taken.before
            kept = _in_places(both.records) if something else self._kept
            await self._become(self._after(kept, also, ())[0])
            return both.taken

    async def take_back(self, *things: Record, forget: tuple[str, ...]) -> None:
        """Undo a `take_in`, in one commit: what it added goes, entries too; things are as before.

        Entries that this phone wrote are never forgotten; these it has from a file, which has them
        still. Were they kept and marked as undone, the same file could never be taken in again.
        """
        async with self._turn:
            left = {key: each for key, each in self._kept.items() if key not in forget}
            await self._become(self._after(left, things, ())[0])

    async def restore(self, incoming: Incoming) -> str:
        """Let a backup take the place of everything, in one commit.

        What is here is put aside before, as a file that can be restored in its turn; give its
        name, "" where the book is empty or holds the same already. The device stays this phone's.
        If this raises, nothing has changed: `WrongFile` for a file of one job, and what `keep`
        raises.
        """
        if incoming.job is not None:
            raise WrongFile("it holds one job")
        async with self._turn:
            if incoming.records == self.records():
                return ""
            await self._book.commit()  # of nothing: raises where another tab has the book
            name = ""
            if self._kept:
                name = await put_aside(self._book.door, self.export(), BEFORE)
                self.before = tuple(dict.fromkeys((*self.before, name)))
            await self._become(_in_places(incoming.records))
            return name

    async def aside(self, name: str) -> bytes:
        """Give the bytes of what was set aside under a name."""
        data = await self._book.door.aside(name)
        if data is None:
            raise LookupError(f"nothing was set aside as {name}")
        return data

    def _after(
        self, kept: Mapping[str, Kept], records: Iterable[Record], forget: Iterable[str]
    ) -> tuple[dict[str, Kept], dict[str, type[Record]]]:
        """Give what will be kept, and the kind of each id that changes."""
        kept, changed = dict(kept), dict[str, type[Record]]()
        order = next((each.order for each in reversed(kept.values())), 0)
        for given in records:
            record = decode(type(given), encode(given))  # as it will be read back
            old = kept.get(record.id)
            if old and old.record == record:
                continue
            if old and (type(old.record) is not type(record) or type(record) in _ENTRIES):
                raise ValueError(f"{record.id} is kept already, as {old.record}")
            order += 1
            kept[record.id] = Kept(old.order if old else order, record)
            changed[record.id] = type(record)
        for old in filter(None, map(kept.get, forget)):
            kind = type(old.record)
            if kind in _ENTRIES:
                raise ValueError(f"an entry stays: {old.record}")
            del kept[old.record.id]
            changed[old.record.id] = kind
        return kept, changed

    def _stage(self, kept: dict[str, Kept], changed: dict[str, type[Record]]) -> None:
        """Change TinyDB's tables, each once out and once in."""
        if self._new:
            table(self._book, ABOUT).insert(keyed(ABOUT, self._about()))
        for name, kind in KINDS.items():
            ids = [key for key, changed_kind in changed.items() if changed_kind is kind]
            rows = table(self._book, name)
            if any(key in self._kept for key in ids):
                rows.remove(doc_ids=ids)  # type: ignore[arg-type]  # see Keyed
            new = [keyed(key, document_of(kept[key])) for key in ids if key in kept]
            if new:
                rows.insert_multiple(new)

    async def _become(self, kept: dict[str, Kept]) -> None:
        """Commit a whole book; documents that stay as they are are not written out anew."""
        if list(kept.values()) == list(self._kept.values()):
            return
        before = self._book.read()
        tables: dict[str, dict[str, Mapping[str, Any]]] = {ABOUT: {ABOUT: self._about()}}
        for key, each in kept.items():
            name = type(each.record).__name__
            stays = self._kept.get(key) == each
            document = before[name][key] if stays else document_of(each)
            tables.setdefault(name, {})[key] = document
        try:
            self._book.write(tables)
            await self._book.commit()
        except BaseException:
            self._book.drop()
            raise
        self._kept, self._new = kept, False

    def _about(self) -> dict[str, Any]:
        return {"device": self.device, "schema": self.schema}


def _in_places(records: Iterable[Record]) -> dict[str, Kept]:
    """Give records places in the order, from 1 on."""
    return {record.id: Kept(order, record) for order, record in enumerate(records, 1)}
