"""Books that shipped schemas wrote are opened, and keep all that they said."""

import asyncio
import json

import pytest

from mobile.store.entries import CoatFinished, LeftoverKept, PotStarted
from mobile.store.errors import Damaged
from mobile.store.library import Library
from mobile.store.migrations import Document, bucket, schema_of, whole_job
from mobile.store.pot_of import OfAPot, pot_of
from mobile.store.records import Can, Job, Mix, Settings
from tests.store import made
from tests.store.test_migrations import door_with

# A book as schema 1 wrote it: two steps with waits of their own, a coat on a wall, a pot.
SCHEMA_1 = {
    "about": {"about": {"device": made.PHONE, "schema": 1}},
    "Job": {
        "job": {
            "order": 1, "at_s": 1.9e9, "device": made.PHONE, "name": "Moth Cellar",
            "steps": [
                {
                    "id": "p", "name": "promoter", "use": "promoter",
                    "wait": {"minimum_s": 1800.0, "maximum_s": 14400.0},
                },
                {
                    "id": "b", "name": "base 1", "use": "base",
                    "wait": {"minimum_s": 900.0, "maximum_s": None},
                },
            ],
            "deducted_above_m2": 0.5, "away": False,
        },
    },
    "Paint": {
        "FO": {
            "order": 2, "at_s": 1.9e9, "device": made.PHONE, "name": "fluorescent orange",
            "day": "#ff7a1a", "lamp": "#ff7a1a", "density_g_ml": 1.14,
        },
    },
    "Mix": {
        "m": {
            "order": 3, "at_s": 1.9e9, "device": made.PHONE, "job": "job", "name": "ember",
            "parts": [{"paint": "FO", "parts_count": 1.0}], "use": "glaze", "planned_g": 232.0,
        },
    },
    "CoatFinished": {
        "c": {
            "order": 4, "at_s": 1.9e9, "device": made.PHONE, "job": "job", "wall": "w",
            "step": "p", "finished_at_s": 1.9e9,
        },
    },
    "Can": {
        "can": {
            "order": 5, "at_s": 1.9e9, "device": made.PHONE, "number": 7, "paint": "FO",
            "label_l": 0.25, "tare_g": 56.6, "tare_from": "unopened", "gone": False,
        },
    },
    "PotStarted": {
        "pot": {
            "order": 6, "at_s": 1.9e9, "device": made.PHONE, "job": "job", "mix": "m",
            "name": "ember", "number": 1, "portions": [{"paint": "FO", "net_g": 232.0}],
            "cans": ["can"], "scale_step_g": 0.1, "cup_g": 21.4,
        },
    },
    "Settings": {
        "settings": {
            "order": 7, "at_s": 1.9e9, "device": made.PHONE, "job": "job", "look": "dim",
            "units": "us", "text_ratio": 1.5, "scale_step_g": 0.1, "scale_capacity_g": 3000.0,
            "cup_g": 21.4, "bell": False,
        },
    },
}  # fmt: skip


def with_schema_2() -> Document:
    """Give the book as the app of schema 2 wrote it: what its migration of that day made of it."""
    document = whole_job(json.loads(json.dumps(SCHEMA_1)))
    document["about"]["about"]["schema"] = 2
    for table in ("PotStarted", "Settings"):
        for record in document[table].values():
            record["tared_each"] = True
    document["Mix"]["m"]["kit"] = True
    document["Can"]["can"]["across_m"] = 0.085
    return document


SCHEMA_2 = with_schema_2()


def test_a_book_of_schema_1_keeps_all_that_it_said() -> None:
    async def run() -> None:
        library = await Library.open(door_with(json.dumps(SCHEMA_1).encode()))
        by_id = {record.id: record for record in library.records()}
        job, coat = by_id["job"], by_id["c"]
        assert isinstance(job, Job)
        assert [step.use for step in job.steps] == ["promoter", "base", "hand-over"]
        waits = [(pair.after, pair.before, pair.wait.maximum_s) for pair in job.waits]
        assert waits == [("p", "b", 14400.0), ("b", job.steps[-1].id, None)]
        assert isinstance(coat, CoatFinished)
        assert (coat.place, coat.started_at_s) == ("w", None)
        mix, pot, settings = by_id["m"], by_id["pot"], by_id["settings"]
        assert isinstance(mix, Mix)
        assert (mix.planned_g, mix.tools, mix.g_m2) == (232.0, None, None)
        assert isinstance(pot, PotStarted)
        assert pot.way == "total"
        assert isinstance(settings, Settings)
        assert (settings.look, settings.scale_capacity_g, settings.keeps) == ("dim", 3000.0, ())

    asyncio.run(run())


def test_a_later_book_that_calls_itself_schema_1_is_not_taken_for_one() -> None:
    paint = {**SCHEMA_1["Paint"]["FO"], "sizes": [{"label_l": 1.0, "price": None}]}
    book = {**SCHEMA_1, "Paint": {"FO": paint}}
    with pytest.raises(Damaged, match="later schema"):
        asyncio.run(Library.open(door_with(json.dumps(book).encode())))


def test_a_book_of_schema_2_keeps_how_its_pots_were_weighed() -> None:
    async def run() -> None:
        library = await Library.open(door_with(json.dumps(SCHEMA_2).encode()))
        by_id = {record.id: record for record in library.records()}
        pot, settings, mix, can = (by_id[key] for key in ("pot", "settings", "m", "can"))
        assert isinstance(pot, PotStarted)
        assert (pot.way, pot.parts_band_ratio, pot.lots) == ("each", (), ())
        assert isinstance(settings, Settings)
        assert (settings.way, settings.bucket_l, settings.voice) == ("each", None, False)
        assert isinstance(mix, Mix)
        assert (mix.typed_as, mix.versions, mix.kit) == ("parts", (), True)
        assert isinstance(can, Can)
        assert (can.lot, can.across_m) == ("", 0.085)

    asyncio.run(run())


def with_schema_3() -> Document:
    """Give the book as the app of schema 3 wrote it, a jar filled from its pot."""
    document = bucket(json.loads(json.dumps(SCHEMA_2)))
    document["about"]["about"]["schema"] = 3
    stamp = {"at_s": 1.9e9, "device": made.PHONE, "pot": "pot"}
    document["Poured"] = {
        "p": {**stamp, "order": 20, "paint": "FO", "can": "can", "net_g": 232.0, "reads_g": None},
    }
    document["WeighedBack"] = {
        "b": {**stamp, "order": 21, "cup": "", "net_g": 40.0},
        "e": {**stamp, "order": 23, "cup": "", "net_g": 0.0},
    }
    jar = {"number": 1, "net_g": 40.0, "use_by_day": "", "coldest_c": None}
    document["LeftoverKept"] = {"j": {**stamp, "order": 22, **jar}}
    return document


def test_a_book_of_schema_3_keeps_its_jars_and_what_is_left() -> None:
    async def run() -> None:
        library = await Library.open(door_with(json.dumps(with_schema_3()).encode()))
        assert library.schema == schema_of()
        records = library.records()
        started = next(one for one in records if isinstance(one, PotStarted))
        pot = pot_of(started, tuple(one for one in records if isinstance(one, OfAPot)))
        assert (pot.in_cup_g, pot.left_g) == (232.0, 0.0)
        [jar] = [one for one in records if isinstance(one, LeftoverKept)]
        assert jar.net_g == pytest.approx(40.0)

    asyncio.run(run())
