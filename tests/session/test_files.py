"""Files of jobs and backups, in the person's words: taken in, taken back, or refused whole."""

import asyncio
from typing import Any, get_args

import pytest

from mobile.session.job import files
from mobile.session.job.jobs import new_job, set_settings, settings_now
from mobile.session.known import SETTINGS, known_of
from mobile.session.session import Session
from mobile.store.door import MemoryDoor
from mobile.store.entries import CanWeighed
from mobile.store.incoming import read_file
from mobile.store.library import Library
from mobile.store.records import Can, Paint, Record
from mobile.words import files as words
from mobile.words import trouble
from tests.session.shelf import Shelf
from tests.store.bad_doors import SmallDoor
from tests.store.moth_cellar import BACKUP, ONE_JOB
from tests.store.test_incoming import changed, of

Saved = list[tuple[str, bytes, str]]


async def at_a_library(*records: Record, door: MemoryDoor | None = None) -> Session:
    """Give a session over a real library."""
    library = await Library.open(door or MemoryDoor("duskcoat"), "phone")
    await library.keep(*records)
    return Session(library, library.device)


@pytest.fixture
def saved(monkeypatch: pytest.MonkeyPatch) -> Saved:
    """Catch what goes into the phone's downloads."""
    caught: Saved = []
    monkeypatch.setattr(
        "mobile.device.page.save_file", lambda name, data, mime: caught.append((name, data, mime))
    )
    return caught


def said(session: Session) -> str:
    """Give what was told last."""
    assert session.shown.told is not None
    return session.shown.told.said


def same_as_the_book(session: Session) -> None:
    """Check that what is known is what a new start would know."""
    again = known_of(session.shelf.records())
    for name in ("settings", "jobs", "walls", "zones", "paints", "cans", "mixes", "entries"):
        assert getattr(again, name) == getattr(session.known, name), name


def test_a_job_goes_from_one_phone_to_another(saved: Saved) -> None:
    async def run() -> None:
        one = await at_a_library()
        await files.restore(one, BACKUP)
        name = await files.export_job(one)
        assert said(one) == words.SAVED
        ((as_saved, data, mime),) = saved
        assert name == as_saved
        assert name.startswith("duskcoat-moth-cellar")
        assert name.endswith(".json")
        assert (data, mime) == (ONE_JOB, "application/json")

        other = await at_a_library()
        job = await files.import_file(other, name, data)
        assert other.known.job == job
        count = len(read_file(data).records)
        assert said(other).startswith(f"{job.name} is on this phone: {count} added")
        assert other.shelf.export(job.id) == data
        same_as_the_book(other)

    asyncio.run(run())


def test_everything_goes_from_one_phone_to_another(saved: Saved) -> None:
    async def run() -> None:
        one = await at_a_library()
        await files.restore(one, BACKUP)
        one.drafts.typed("walls/new", (("width", "6.2"),))
        name = await files.back_up(one)
        assert name.startswith("duskcoat-backup-")
        data = saved[0][1]
        assert b'"6.2"' in data  # what is half typed is in it

        other = await at_a_library()
        assert await files.restore(other, data) == ""
        assert said(other) == words.restored("")
        assert other.shelf.export() == data
        assert other.shelf.before == ()
        same_as_the_book(other)

    asyncio.run(run())


def test_a_restored_backup_tells_where_that_is_which_was_here_before() -> None:
    async def run() -> None:
        session = await at_a_library()
        await new_job(session, "Garden wall")
        session.drafts.typed("walls/new", (("width", "3."),))
        aside = await files.restore(session, BACKUP)
        assert session.shelf.before == (aside,)
        assert aside in said(session)
        assert session.shelf.export() == BACKUP
        await session.drafts.flush()  # what waited to be kept went with the old book
        assert session.shelf.export() == BACKUP
        same_as_the_book(session)
        before = await session.shelf.aside(aside)
        assert b'"3."' in before
        await files.restore(session, before)
        assert [job.name for job in session.known.jobs] == ["Garden wall"]

    asyncio.run(run())


def test_restoring_what_is_here_already_says_so() -> None:
    async def run() -> None:
        session = await at_a_library()
        for _ in range(2):
            assert await files.restore(session, BACKUP) == ""
        assert said(session) == words.declined(words.SAME)
        assert session.shelf.before == ()

    asyncio.run(run())


@pytest.mark.parametrize("began", [False, True])
def test_an_import_is_taken_back_whole_and_can_come_again(began: bool) -> None:
    async def run() -> None:
        session = await at_a_library()
        if began:
            await new_job(session, "Garden wall")
        before = session.shelf.export()
        for _ in range(2):
            await files.import_file(session, "job.json", ONE_JOB)
            assert session.known.job is not None
            assert session.known.of(CanWeighed)
            await session.undo()
            assert said(session) == trouble.UNDONE
            assert session.shelf.export() == before
            assert (session.known.settings == SETTINGS) == (not began)
            same_as_the_book(session)

    asyncio.run(run())


def test_what_is_here_already_is_said_and_needs_no_undo() -> None:
    async def run() -> None:
        session = await at_a_library()
        await files.import_file(session, "job.json", ONE_JOB)
        await files.import_file(session, "job.json", ONE_JOB)
        assert "all of that file is here already" in said(session)
        assert session.shown.told is not None
        assert session.shown.told.undo is None

    asyncio.run(run())


def test_a_can_whose_number_is_taken_tells_its_new_one() -> None:
    async def run() -> None:
        paint = Paint("spare", 1.0, "phone", "spare")
        session = await at_a_library(paint, Can("mine", 1.0, "phone", 7, "spare"))
        await files.import_file(session, "job.json", ONE_JOB)
        numbers = [can.number for can in session.known.cans]
        assert len(numbers) == len(set(numbers))
        assert words.moved(7, max(numbers)) in said(session)

    asyncio.run(run())


def test_a_job_that_was_put_away_says_where_it_is() -> None:
    async def run() -> None:
        away = changed(lambda found: of(found, "Job").update(away=True), ONE_JOB)
        session = await at_a_library()
        job = await files.import_file(session, "job.json", away)
        assert words.put_away(job.name) in said(session)

    asyncio.run(run())


def test_without_a_job_there_is_no_file(saved: Saved) -> None:
    async def run() -> None:
        session = await at_a_library()
        assert not await session.attempt(files.export_job(session))
        assert said(session) == words.NO_JOB
        assert saved == []

    asyncio.run(run())


@pytest.mark.parametrize("verb", ["import", "restore"])
def test_a_full_phone_says_so_and_keeps_what_it_has(verb: str) -> None:
    async def run() -> None:
        door = SmallDoor("duskcoat")
        session = await at_a_library(door=door)
        await new_job(session, "Garden wall")
        before, door.room = session.shelf.export(), 1500
        begun: Any = files.import_file(session, "", ONE_JOB)
        if verb == "restore":
            begun.close()
            begun = files.restore(session, BACKUP)
        assert not await session.attempt(begun)
        assert said(session) == trouble.FULL
        assert session.shelf.export() == before
        same_as_the_book(session)

    asyncio.run(run())


def test_the_shelf_of_other_tests_does_as_the_library_does() -> None:
    async def run() -> None:
        shelf = Shelf()
        session = Session(shelf, "phone")
        await new_job(session, "Garden wall")
        await files.import_file(session, "job.json", ONE_JOB)
        assert len(session.known.jobs) == 2
        await session.undo()
        assert len(session.known.jobs) == 1
        aside = await files.restore(session, BACKUP)
        assert session.shelf.before == (aside,)
        shelf.full = True
        assert not await session.attempt(files.import_file(session, "", ONE_JOB))
        same_as_the_book(session)

    asyncio.run(run())


def test_verbs_wait_for_an_import_under_way() -> None:
    async def run() -> None:
        session = await at_a_library()
        await asyncio.gather(
            files.import_file(session, "", ONE_JOB), set_settings(session, settings_now(session))
        )
        same_as_the_book(session)

    asyncio.run(run())


def test_every_kind_has_words() -> None:
    assert words.KINDS.keys() == {kind.__name__ for kind in get_args(Record)}


def test_names_out_of_a_file_are_cut_and_drawable() -> None:
    shown = words.called("Wall", "x" * 900 + "\ud800")
    assert len(shown) < 60
    assert words.of_file("half \ud800", "No.") == "half ?: No."
