"""Keep the whole database in two sealed slots, so that one good state always survives.

A commit seals the document and writes it over the older slot. One that is cut short spoils only
that slot: at the next start the newest state that reads whole is opened. The first commit after a
start, and then each `COPY_EVERY`th, first puts the state it starts from into a third file, the
copy: should both slots be damaged at once, the last good state is there.

    opened = await open_book(door, read)
    pours = table(opened.book, "Poured")
    pours.insert(keyed("7f3a", {"net_g": 77.3}))  # in memory only
    await opened.book.commit()  # now it has happened

When no state is left, `open_book` refuses and writes nothing; `start_over`, which a person has to
ask for, sets all files aside first.
"""

from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from typing import Any, Generic, Protocol, TypeVar

from tinydb.storages import Storage
from tinydb.table import Document, Table

from mobile.store import rows
from mobile.store.aside import put_aside
from mobile.store.door import COPY, FILES, SLOTS, Door
from mobile.store.errors import Busy, Damaged, Unreadable
from mobile.store.seal import State, sealed, unsealed

NOTHING = State(0, b"{}")
COPY_EVERY = 64  # commits


class Contents(Protocol):
    """What a reader made of a document."""

    @property
    def tables(self) -> rows.Tables:
        """The document's tables, as the app of today writes them."""


T = TypeVar("T", bound=Contents)


class Keyed(Table):
    """A TinyDB table whose documents have words for ids."""

    document_id_class = str  # type: ignore[assignment]


def table(book: "Book", name: str) -> Keyed:
    """Open a table; without TinyDB's query cache, which would outlive a commit that failed."""
    return Keyed(book, name, cache_size=0)


def keyed(key: str, document: Mapping[str, Any]) -> Document:
    """Give TinyDB a document to insert under a key."""
    return Document(document, doc_id=key)  # type: ignore[arg-type]  # see Keyed


class Book(Storage):
    """TinyDB storage over a door. One verb at a time: change, then await `commit` or `drop`."""

    def __init__(self, door: Door, state: State, tables: rows.Tables) -> None:
        self.door, self.state = door, state
        self._tables = tables
        self._staged: rows.Tables | None = None
        self._copy_due = state.sequence
        self._committing = self._closed = False

    def read(self) -> dict[str, Any]:
        """Return the tables as last committed, with the changes of a verb that is changing them."""
        return dict(self._tables if self._staged is None or self._committing else self._staged)

    def write(self, data: dict[str, Any]) -> None:
        """Stage tables for the next commit; those handed out by `read` are kept as they are."""
        if self._committing:
            raise Busy("a commit is under way: await it before the next change")
        known = self._tables if self._staged is None else self._staged
        self._staged = {
            name: known[name] if documents is known.get(name) else rows.table(documents)
            for name, documents in data.items()
        }

    def warm(self) -> None:
        """Give each document its text now: the first commit would have to."""
        rows.written(self._tables)

    def drop(self) -> None:
        """Forget what is staged."""
        self._staged = None

    async def commit(self) -> None:
        """Make what is staged last; if this raises, it is dropped and nothing has changed.

        Raise `Full`, `Busy` or another `OSError`, or TypeError and ValueError for what JSON can't
        hold.
        """
        if self._closed:
            raise Busy("the book was closed: another tab has it")
        if self._committing:
            raise Busy("a commit is under way: await it before the next one")
        if self._staged is None:
            return
        self._committing = True
        try:
            staged = self._staged
            document = rows.written(staged)
            await self._copy()
            await self._put(document)
            self._tables = staged
        finally:
            self._staged, self._committing = None, False

    async def _copy(self) -> None:
        """Keep the state that this commit starts from; a failure of that fails no commit."""
        if self.state.sequence == 0:
            # So that a torn first slot beside an empty one is known never to have held anything.
            await self._put(NOTHING.document)
        elif self.state.sequence >= self._copy_due:
            self._copy_due = self.state.sequence + COPY_EVERY
            with suppress(OSError):
                self.door.write(COPY, sealed(self.state))
                await self.door.commit()

    async def _put(self, document: bytes) -> None:
        self.state = await put(self.door, State(self.state.sequence + 1, document))

    def close(self) -> None:
        """Close the door; what was not committed is lost."""
        if not self._closed:
            self._closed = True
            self.door.close()


async def put(door: Door, state: State) -> State:
    """Write a state over the older slot and return it once it lasts."""
    slot = SLOTS[state.sequence % 2]
    try:
        door.write(slot, sealed(state))
        await door.commit()
    except BaseException:
        # Break the seal: a commit that failed, or was cancelled, must not be found later.
        with suppress(Exception):
            door.write(slot, b"\0")
        raise
    return state


@dataclass(frozen=True, slots=True)
class Opened(Generic[T]):
    """A book, what `read` made of its document, and whether newer damaged states were set aside."""

    book: Book
    contents: T
    restored: bool


async def open_book(door: Door, read: Callable[[bytes], T]) -> Opened[T]:
    """Open the newest state that `read` understands.

    `read` makes contents of a document or raises `Unreadable` (then an older state is tried) or
    `Newer` (then nothing is). States that are damaged and newer than the one opened are first set
    aside under names of their own. Raise `Damaged`, with nothing written, if no state is left.
    """
    files = [door.read(number) for number in FILES]
    if _never_kept(files):
        contents = read(NOTHING.document)
        return Opened(Book(door, NOTHING, contents.tables), contents, restored=False)
    whole = sorted(filter(None, map(unsealed, files)), key=lambda state: state.sequence)
    why = "no seal is whole"
    for state in reversed(whole):
        try:
            contents = read(state.document)
        except Unreadable as problem:
            why = str(problem)
            continue
        newest = state == whole[-1] and state in map(unsealed, files[:COPY])
        kept = state if newest else await _restored(door, state, _damaged(files, state))
        return Opened(Book(door, kept, contents.tables), contents, restored=not newest)
    names = (f"{door.name}.{number}" for number in FILES)
    found = tuple((name, data) for name, data in zip(names, files, strict=True) if data)
    raise Damaged(why, found)


def _never_kept(files: list[bytes]) -> bool:
    """Say whether nothing was ever committed: at most the very first write was cut short."""
    first = sealed(State(1, NOTHING.document))
    torn = len(files[1]) <= len(first) and unsealed(files[1]) is None
    return not files[0] and not files[COPY] and torn


def _damaged(files: list[bytes], state: State) -> list[bytes]:
    """Choose the files that hold what is broken, or newer than the state that is opened."""

    def good(file: bytes) -> bool:
        found = unsealed(file)
        return found is not None and found.sequence <= state.sequence

    return [file for file in files if file and not good(file)]


async def _restored(door: Door, state: State, damaged: list[bytes]) -> State:
    """Set what is damaged aside for good; only then write the state into both slots.

    Both, so that a damaged slot which reads whole some other day can't win over what came after.
    """
    for data in damaged:
        await put_aside(door, data)
    state = await put(door, State(state.sequence + 1, state.document))
    return await put(door, State(state.sequence + 1, state.document))


async def start_over(door: Door) -> None:
    """Set everything aside for good, then begin an empty book."""
    for data in filter(None, map(door.read, FILES)):
        await put_aside(door, data)
    state = await put(door, State(1, NOTHING.document))
    await put(door, State(2, state.document))
    door.write(COPY, b"\0")
    await door.commit()
