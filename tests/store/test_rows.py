"""Nobody can change a document of the book under it."""

import asyncio
from collections.abc import Callable
from typing import Any

import pytest

from mobile.store.book import keyed, table
from mobile.store.door import Door, MemoryDoor
from tests.store.pours import opened


def _set(row: Any) -> None:
    row["n"] = 99


def _delete(row: Any) -> None:
    del row["n"]


def _append(row: Any) -> None:
    row["list"].append(99)


def _nested(row: Any) -> None:
    row["object"]["n"] = 99


def _deep(row: Any) -> None:
    row["list"][1]["n"] = 99


CHANGES: list[Callable[[Any], None]] = [
    _set,
    _delete,
    _append,
    _nested,
    _deep,
    lambda row: row.update(n=99),
    lambda row: row.clear(),
    lambda row: row.pop("n"),
    lambda row: row.popitem(),
    lambda row: row.setdefault("m", 99),
    lambda row: row.__ior__({"n": 99}),
]


@pytest.mark.parametrize("change", CHANGES)
def test_no_document_of_the_book_can_be_changed_in_place(change: Callable[[Any], None]) -> None:
    async def run(door: Door) -> None:
        book = (await opened(door)).book
        rows = table(book, "things")
        before = [dict(row) for row in rows]
        with pytest.raises((TypeError, AttributeError)):
            rows.update(change)
        with pytest.raises((TypeError, AttributeError)):
            change(book.read()["things"]["1"])
        book.drop()
        assert [dict(row) for row in rows] == before

    async def make() -> MemoryDoor:
        door = MemoryDoor()
        book = (await opened(door)).book
        given = {"n": 1, "list": [1, {"n": 1}], "object": {"n": 1}}
        table(book, "things").insert(keyed("1", given))
        given["list"] = []
        await book.commit()
        return door

    asyncio.run(run(asyncio.run(make())))


def test_a_document_given_to_tinydb_is_not_shared_with_who_gave_it() -> None:
    async def run() -> None:
        door = MemoryDoor()
        book = (await opened(door)).book
        inner = [1]
        table(book, "pours").insert(keyed("1", {"n": 1, "list": inner}))
        inner.append(2)
        await book.commit()
        inner.append(3)
        for start in (book, (await opened(door)).book):
            assert [list(row["list"]) for row in table(start, "pours")] == [[1]]

    asyncio.run(run())
