"""The exported file says everything, in the same bytes each time, and any program can read it."""

import asyncio
import json
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.mixing.portions import Portion
from core.paints.recipe import Part
from core.walls.shape import Wall as Shape
from mobile.store.codec import KINDS, decode
from mobile.store.door import MemoryDoor
from mobile.store.entries import (
    CanWeighed,
    CautionRead,
    CoatFinished,
    LidOff,
    PotStarted,
    StillTacky,
    Undone,
)
from mobile.store.library import Library
from mobile.store.records import Can, Draft, Job, Mix, Paint, Record, Settings, Wall, Zone
from tests.store import made

P = made.PHONE


def job(name: str, paints: tuple[str, str], can: str) -> tuple[Record, ...]:
    """Give a job with one of everything."""
    return (
        Job(f"{name}", 1.0, P, f"Moth Cellar, {name}"),
        Wall(f"{name}-wall", 1.0, P, name, "Wall 1", Shape(6.2, 2.6, 2.4)),
        Mix(f"{name}-mix", 1.0, P, name, "ember wing", tuple(Part(paint, 1.0) for paint in paints)),
        PotStarted(
            *(f"{name}-pot", 2.0, P, name, f"{name}-mix", "ember wing", 1),
            tuple(Portion(paint, 116.0) for paint in paints),
            *((can, ""), 0.1, None),
        ),
        replace(made.poured(1, f"{name}-pot", paints[0], can), id=f"{name}-pour"),
        CoatFinished(f"{name}-coat", 3.0, P, name, f"{name}-wall", "base 2", 3.0),
        StillTacky(f"{name}-tacky", 4.0, P, f"{name}-coat", 600.0),
        Undone(f"{name}-undone", 5.0, P, f"{name}-tacky"),
        CautionRead(f"{name}-caution", 6.0, P, name, "wipe-down", "2031-05-17"),
    )


CELLAR = job("cellar", ("ember", "dusk"), "can-1")
GARDEN = job("garden", ("moss", "dusk"), "can-3")
SHOP: tuple[Record, ...] = (
    *(Paint(name, 0.0, P, name) for name in ("ember", "dusk", "moss", "spare")),
    Can("can-1", 0.0, P, 1, "ember"),
    Can("can-2", 0.0, P, 2, "spare"),
    Can("can-3", 0.0, P, 3, "moss"),
    CanWeighed("weighed", 0.5, P, "can-1", 912.0, 118.0, 794.0),
)
PHONE: tuple[Record, ...] = (
    Settings("settings", 0.0, P, "cellar"),
    Draft("walls/new", 9.0, P, (("width", "6."),)),
)


async def library(*records: Record) -> Library:
    opened = await Library.open(MemoryDoor(), P)
    await opened.keep(*records)
    return opened


def read(data: bytes) -> tuple[Record, ...]:
    """Read an exported file as another program would, with the format's description alone."""
    found = json.loads(data)
    records = []
    for fields in found["records"]:
        kind = KINDS[fields.pop("kind")]
        records.append(decode(kind, fields))
    return tuple(records)


@settings(max_examples=40)
@given(st.lists(made.records(), max_size=10, unique_by=lambda record: record.id))
def test_everything_is_in_the_file_and_comes_back(records: list[Record]) -> None:
    data = asyncio.run(library(*records)).export()
    assert read(data) == tuple(records)


def test_the_form_of_the_file_is_as_described() -> None:
    data = asyncio.run(library(made.poured(1), made.draft(1))).export()
    assert data.decode("ascii") == (
        "{\n"
        '"format": "duskcoat-book",\n'
        '"job": null,\n'
        '"records": [\n'
        '{"at_s": 1900000001.0, "can": "can", "device": "6f1c2a34-0000-4000-8000-000000000001", '
        '"id": "pour-1", "kind": "Poured", "net_g": 77.3, "paint": "paint", "pot": "pot", '
        '"reads_g": 231.9},\n'
        '{"at_s": 1900000001.0, "device": "6f1c2a34-0000-4000-8000-000000000001", '
        '"fields": [["grams", "1."]], "id": "weigh", "kind": "Draft"}\n'
        "],\n"
        '"schema": 4\n'
        "}\n"
    )


def test_the_same_book_gives_the_same_bytes_after_any_number_of_starts() -> None:
    async def run() -> None:
        door = MemoryDoor()
        first = await Library.open(door, P)
        await first.keep(*SHOP, *CELLAR, *GARDEN, *PHONE)
        data = first.export(), first.export("cellar")
        for _ in range(3):
            again = await Library.open(door)
            assert (again.export(), again.export("cellar")) == data

    asyncio.run(run())


def test_an_empty_book_is_a_file_too() -> None:
    found: dict[str, Any] = json.loads(asyncio.run(library()).export())
    assert found == {
        "format": "duskcoat-book",
        "job": None,
        "records": [],
        "schema": 4,
    }


@pytest.mark.parametrize(
    ("name", "own", "shop"),
    [
        ("cellar", CELLAR, ("ember", "dusk", "can-1", "weighed")),
        ("garden", GARDEN, ("dusk", "moss", "can-3")),
    ],
)
def test_one_job_takes_what_happened_in_it_and_the_paints_and_cans_it_names(
    name: str, own: tuple[Record, ...], shop: tuple[str, ...]
) -> None:
    data = asyncio.run(library(*PHONE, *SHOP, *CELLAR, *GARDEN)).export(name)
    ids = [record.id for record in read(data)]
    assert json.loads(data)["job"] == name
    assert sorted(ids) == sorted([*shop, *(record.id for record in own)])


def test_all_that_happened_to_its_cans_comes_along_so_that_they_hold_what_they_held() -> None:
    lid = LidOff("lid", 7.0, P, "can-1", 600.0, 0.085, 18.0, 0.6, 0.0)
    pour = replace(made.poured(2, "garden-pot", "moss", "can-1"), id="from-the-same-can")
    other = replace(made.poured(3, "garden-pot", "moss", "can-3"), id="from-another")
    undone = Undone("taken-back", 9.0, P, "from-the-same-can")
    everything = (*PHONE, *SHOP, *CELLAR, *GARDEN, lid, pour, other, undone)
    data = asyncio.run(library(*everything)).export("cellar")
    ids = {record.id for record in read(data)}
    assert {"weighed", "lid", "from-the-same-can", "taken-back"} <= ids
    assert not {"from-another", "garden-pot", "moss", "can-2"} & ids


def test_a_zone_and_a_coat_in_it_are_in_the_file_of_their_job() -> None:
    zone = Zone("cellar-zone", 1.0, P, "cellar", "cellar-wall", "wing", 1.42, "cellar-mix", 2)
    coat = CoatFinished("in-the-zone", 3.0, P, "cellar", "cellar-zone", "glaze 1", 3.0)
    data = asyncio.run(library(*SHOP, *CELLAR, *GARDEN, zone, coat)).export("cellar")
    assert {zone, coat} <= set(read(data))


def test_the_file_does_not_say_which_phone_wrote_it() -> None:
    async def run() -> None:
        one, other = await library(*CELLAR), await Library.open(MemoryDoor(), "another")
        await other.keep(*CELLAR)
        assert one.export() == other.export()

    asyncio.run(run())


@pytest.mark.parametrize("name", ["", "no such job", "ember", "settings", "cellar-wall"])
def test_only_a_job_can_be_exported_alone(name: str) -> None:
    with pytest.raises(LookupError):
        asyncio.run(library(*PHONE, *SHOP, *CELLAR)).export(name)
