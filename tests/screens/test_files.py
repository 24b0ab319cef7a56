"""Files on the screen, without a browser: what a tap saves, and what a chosen file does."""

import asyncio
import json
from collections.abc import Callable

import pytest

from mobile.screens.job.place import JobPlace
from mobile.session.job.demo import open_demo
from mobile.session.session import Session
from mobile.store.door import MemoryDoor
from mobile.store.library import Library
from mobile.words import files as words
from tests.screens.seen import OnPlace, tap
from tests.screens.seen import words as said

Heard = Callable[[str, bytes], None]


class Downloads:
    """A phone's downloads, and its choice of a file."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.saved: dict[str, bytes] = {}
        self.heard: Heard = lambda _name, _data: None
        self.asked = 0
        monkeypatch.setattr("mobile.device.page.save_file", self.save)
        monkeypatch.setattr("mobile.device.page.on_picked", self.listen)
        monkeypatch.setattr("mobile.device.page.pick_file", self.ask)

    def save(self, name: str, data: bytes, _mime: str) -> None:
        self.saved[name] = data

    def listen(self, heard: Heard) -> None:
        self.heard = heard

    def ask(self, _accept: str) -> None:
        self.asked += 1


@pytest.fixture
def downloads(monkeypatch: pytest.MonkeyPatch) -> Downloads:
    """Give the phone's downloads."""
    return Downloads(monkeypatch)


async def phone(name: str, *, demo: bool = True) -> Session:
    """Give a session over a real book in memory, at the demo job or empty."""
    session = Session(await Library.open(MemoryDoor(), name), name)
    if demo:
        await open_demo(session)
    return session


def told(session: Session) -> str:
    """Give what was said last."""
    return session.shown.told.said if session.shown.told else ""


def test_a_job_is_saved_and_everything_is_backed_up(downloads: Downloads) -> None:
    async def story() -> None:
        session = await phone("phone")
        screen = OnPlace(session, JobPlace, "/job/files")
        await tap(screen, words.EXPORT_JOB)
        await tap(screen, words.BACK_UP)
        one, every = (json.loads(data) for data in downloads.saved.values())
        assert one["job"] == (session.known.job.id if session.known.job else None)
        assert every["job"] is None
        assert told(session) == words.SAVED

    asyncio.run(story())


def test_a_chosen_file_brings_its_job_and_a_wrong_one_says_why(downloads: Downloads) -> None:
    async def story() -> None:
        there = await phone("phone")
        screen = OnPlace(there, JobPlace, "/job/files")
        await tap(screen, words.EXPORT_JOB)
        [data] = downloads.saved.values()
        session = await phone("phone 2", demo=False)
        screen = OnPlace(session, JobPlace, "/job/files")
        await tap(screen, words.IMPORT)
        assert downloads.asked == 1
        downloads.heard("holiday.jpg", b"\xff\xd8")
        await asyncio.sleep(0.1)
        assert told(session).startswith("holiday.jpg: ")
        assert told(session).endswith(words.NOTHING)
        assert session.known.jobs == ()
        downloads.heard("moth-cellar.json", data)
        await asyncio.sleep(0.1)
        assert session.known.job is not None
        assert session.known.job.name == "Moth Cellar, north stair"
        assert "hand-over" in said(screen)

    asyncio.run(story())


def test_a_restored_backup_leaves_what_was_here_as_a_file(downloads: Downloads) -> None:
    async def story() -> None:
        there = await phone("phone")
        await tap(OnPlace(there, JobPlace, "/job/files"), words.BACK_UP)
        [backup] = downloads.saved.values()
        session = await phone("phone")
        screen = OnPlace(session, JobPlace, "/job/files")
        await tap(screen, words.RESTORE)
        downloads.heard("backup.json", backup)
        await asyncio.sleep(0.1)
        assert told(session).startswith("The backup is in place.")
        screen = OnPlace(session, JobPlace, "/job/files")
        [name] = session.shelf.before
        await tap(screen, name)
        assert name in downloads.saved

    asyncio.run(story())
