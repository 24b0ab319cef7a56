"""A file that is refused says why in plain words, and changes nothing."""

import asyncio
from typing import Any

import pytest

from mobile.session.job import files
from mobile.session.job.jobs import new_job
from mobile.session.session import Declined
from mobile.words import files as words
from tests.session.test_files import at_a_library, said
from tests.store.moth_cellar import BACKUP, ONE_JOB
from tests.store.test_incoming import changed, of


def bad_wall(found: dict[str, Any]) -> None:
    of(found, "Wall")["shape"]["width_m"] = 900.0


REFUSED: tuple[tuple[bytes, str], ...] = (
    (b"", words.EMPTY),
    (b"\x89PNG\r\n", words.FOREIGN),
    (b'{"type": "FeatureCollection"}', words.FOREIGN),
    (BACKUP[:-200], words.DAMAGED),
    (changed(lambda found: found.update(schema=99)), words.NEWER),
    (changed(bad_wall), "the wall Wall 1 can't be. Width: from 0.01 m to 500.00 m."),
    (changed(lambda f: of(f, "Wall").update(shape=5)), "In it, the wall can't be read."),
    (changed(lambda f: of(f, "Mix").update(use="x")), "Use: what it says is not known."),
    (
        changed(lambda f: of(f, "Can").update(number=0)),
        "can 0 can't be. A whole number from 1 to 9999, as on the lid. N",
    ),
    (changed(lambda f: of(f, "Wall").update(job="x")), "the wall Wall 1 belongs to something"),
    (changed(lambda f: of(f, "StillTacky").update(coat="x")), "a coat that was tacky belongs to"),
    (changed(lambda f: of(f, "Wall").update(name="\ud800")), "A text in it can't be drawn."),
)


@pytest.mark.parametrize(("data", "why"), REFUSED, ids=range(len(REFUSED)))
@pytest.mark.parametrize("verb", ["import", "restore"])
def test_a_file_that_is_refused_changes_nothing_and_says_why(
    verb: str, data: bytes, why: str
) -> None:
    async def run() -> None:
        session = await at_a_library()
        await new_job(session, "Garden wall")
        before, known = session.shelf.export(), session.known
        begun = (
            files.import_file(session, "chosen.json", data)
            if verb == "import"
            else files.restore(session, data)
        )
        assert not await session.attempt(begun)
        assert session.shown.told is not None
        assert session.shown.told.bad
        assert why in said(session)
        assert said(session).endswith(words.NOTHING)
        assert said(session).startswith("chosen.json: ") == (verb == "import")
        assert session.shelf.export() == before
        assert session.known is known

    asyncio.run(run())


def test_the_wrong_kind_of_file_is_told_apart() -> None:
    async def run() -> None:
        session = await at_a_library()
        with pytest.raises(Declined, match="backup of everything"):
            await files.import_file(session, "", BACKUP)
        with pytest.raises(Declined, match="holds one job"):
            await files.restore(session, ONE_JOB)

    asyncio.run(run())


def test_an_entry_told_in_two_ways_is_refused() -> None:
    async def run() -> None:
        session = await at_a_library()
        await files.import_file(session, "job.json", ONE_JOB)
        other = changed(lambda found: of(found, "StillTacky").update(more_s=5.0), ONE_JOB)
        before = session.shelf.export()
        assert not await session.attempt(files.import_file(session, "job.json", other))
        assert words.clash("StillTacky", "") in said(session)
        assert session.shelf.export() == before

    asyncio.run(run())
