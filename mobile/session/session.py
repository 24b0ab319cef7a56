"""The session: what is known, what was told last, and the one way to change the book.

A verb (one file a place) checks what it was given, builds records and awaits `Session.keep`, which
is one commit. Only after that do memory and screen change; if the commit fails nothing has changed
and the person is told. Screens start verbs with `Session.attempt`, so that no failure is silent.
"""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from functools import partial
from typing import Final, Protocol, TypeVar, cast
from uuid import uuid4

import flet as ft

from core.errors import Refused
from core.units import System, show
from mobile import clock
from mobile.device import page as device
from mobile.session.drafts import Drafts
from mobile.session.known import Known, known_of
from mobile.store.entries import Undone
from mobile.store.incoming import Incoming
from mobile.store.merge import TakenIn
from mobile.store.records import Draft, Record
from mobile.words import trouble as words

T = TypeVar("T")
READ_S = 2.0  # a verb that leads to another screen tells there


class Shelf(Protocol):
    """What the session asks of the store."""

    set_aside: tuple[str, ...]  # names of damaged files, oldest first
    before: tuple[str, ...]  # names of what restored backups took the place of, oldest first

    def records(self) -> tuple[Record, ...]:
        """Give all records in the order in which they were first kept."""

    async def keep(self, *records: Record, forget: tuple[str, ...] = ()) -> None:
        """Commit records and forget others, all or nothing."""

    def export(self, job: str | None = None) -> bytes:
        """Give everything, or one job, as one file."""

    async def take_in(self, incoming: Incoming, *also: Record) -> TakenIn:
        """Commit one job's file beside what is there, and records with it."""

    async def take_back(self, *things: Record, forget: tuple[str, ...]) -> None:
        """Undo that: forget what came, entries too, and have things as they were."""

    async def restore(self, incoming: Incoming) -> str:
        """Let a backup take the place of everything; give the name of what was put aside."""

    async def aside(self, name: str) -> bytes:
        """Give a file that was set aside."""

    def warm(self) -> None:
        """Do ahead what the first commit would have to wait for."""


@dataclass(frozen=True, slots=True)
class Undo:
    """What takes a verb back: entries that count no more, things as they were, things to forget.

    `came` is all that a file brought: it goes as it came, entries too, and can be taken in again.
    """

    entries: tuple[str, ...] = ()
    things: tuple[Record, ...] = ()
    forget: tuple[str, ...] = ()
    came: tuple[str, ...] = ()


class Declined(Exception):
    """A verb says in words why it can't be; nothing has changed."""

    def __init__(self, said: str) -> None:
        super().__init__(said)
        self.said = said


@dataclass(frozen=True, slots=True)
class Told:
    """What was said last, and how it can be taken back."""

    said: str
    undo: Undo | None = None
    bad: bool = False
    at_s: float = 0.0


@ft.observable
class Shown:
    """What the root of the screen follows."""

    def __init__(self, known: Known) -> None:
        self.known = known  # kept; the rest is not
        self.told: Told | None = None
        self.taken = False  # another tab has the book now
        self.newer = False  # a newer app waits for a yes
        self.whole = False  # all of the app is on this phone
        self.aside: tuple[str, ...] = ()  # damaged files put aside at this start


class Session:
    """The book's state in memory, and the verbs' way to change it."""

    def __init__(self, shelf: Shelf, device: str) -> None:
        self.shelf, self.device = shelf, device
        self.shown = Shown(known_of(shelf.records()))
        self.drafts = Drafts(self.keep_drafts)
        self._turn = asyncio.Lock()

    @property
    def known(self) -> Known:
        """What is known now."""
        return self.shown.known

    def draft(self, form: str) -> dict[str, str]:
        """Give what was typed into a form and not kept, to the last key; empty if nothing."""
        waiting = self.drafts.waiting().get(form)
        return self.known.draft(form) if waiting is None else dict(waiting)

    def stamp(self, record_id: str = "") -> tuple[str, float, str]:
        """Give the first three fields of a record: its id, this instant, this device."""
        return record_id or str(uuid4()), clock.now_s(), self.device

    async def keep(self, *records: Record, forget: tuple[str, ...] = ()) -> None:
        """Commit, then let memory and screens know; forgotten forms lose what waits to be kept."""
        async with self._turn:
            await self.shelf.keep(*records, forget=forget)
            self.drafts.drop(forget)
            self.shown.known = self.known.after(records, forget)

    async def renew(self, change: Awaitable[T]) -> T:
        """Await a change of the shelf that is no `keep`, then know the whole book anew."""
        async with self._turn:
            result = await change
            self.shown.known = known_of(self.shelf.records())
        return result

    async def keep_drafts(self) -> None:
        """Commit what is typed, drawing nothing anew; if there is no room, say so at once."""
        async with self._turn:
            waiting = self.drafts.waiting()
            drafts = [Draft(*self.stamp(form), fields) for form, fields in waiting.items()]
            try:
                await self.shelf.keep(*drafts)
            except OSError as error:
                self.tell(words.not_kept(error), bad=True)
                return
            self.drafts.kept(waiting)
            object.__setattr__(self.shown, "known", self.known.after(drafts))

    def tell(self, said: str, undo: Undo | None = None, *, bad: bool = False) -> None:
        """Say what happened; it stands until the next thing is said."""
        self.shown.told = Told(said, undo, bad, clock.now_s())

    def refuse(self, refusal: Refused) -> None:
        """Say why something typed can't be taken, in the person's units; what is typed stays."""
        units = partial(show, system=System(self.known.settings.units))
        self.tell(words.refused(refusal, units), bad=True)

    def hush(self) -> None:
        """Take the line away."""
        self.shown.told = None

    def hush_if_read(self, *, undo_too: bool) -> None:
        """Take the line away once there was time to read it."""
        told = self.shown.told
        if told and (undo_too or not told.undo) and clock.now_s() - told.at_s > READ_S:
            self.hush()

    def aside_seen(self) -> None:
        """Take away the line about what was put aside; Job still has it."""
        self.shown.aside = ()

    async def save_aside(self, *names: str) -> None:
        """Put damaged files into the phone's downloads: those named, or those of this start."""
        for name in names or self.shown.aside:
            device.save_file(name, await self.shelf.aside(name), "application/octet-stream")

    def not_now(self) -> None:
        """Leave a newer version for later: it is offered again at the next start."""
        self.shown.newer = False

    async def undo(self) -> None:
        """Take back what was told last."""
        told = self.shown.told
        if told is None or told.undo is None:
            return
        undo = told.undo
        if undo.came:
            gone = (*undo.forget, *undo.came)
            await self.renew(self.shelf.take_back(*undo.things, forget=gone))
        else:
            taken = tuple(Undone(*self.stamp(), entry) for entry in undo.entries)
            await self.keep(*taken, *undo.things, forget=undo.forget)
        self.tell(words.UNDONE)

    async def attempt(self, verb: Awaitable[T], then: Callable[[T], None] | None = None) -> bool:
        """Await a verb; say it if it fails. `then` follows only if it has happened."""
        try:
            result = await verb
        except Refused as refusal:
            self.refuse(refusal)
            return False
        except Declined as declined:
            self.tell(declined.said, bad=True)
            return False
        except OSError as error:
            self.tell(words.not_kept(error), bad=True)
            return False
        if then:
            then(result)
        return True


SESSION: Final = ft.create_context(cast(Session | None, None))


def use_session() -> Session:
    """Give the session to a component; it is no observable, so nothing is drawn anew by it."""
    session = ft.use_context(SESSION)
    if session is None:
        raise LookupError("no session above this component")
    return session
