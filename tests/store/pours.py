"""A tiny book for tests: pours with a number, in one table."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from mobile.store import rows
from mobile.store.book import Book, Opened, keyed, open_book, table
from mobile.store.door import Door
from mobile.store.errors import Newer, Unreadable


@dataclass(frozen=True, slots=True)
class Pours:
    tables: rows.Tables


def understood(document: bytes) -> Pours:
    """Read a document; one that says "bad" isn't understood, one that says "newer" is newer."""
    plain: dict[str, dict[str, Mapping[str, Any]]] = json.loads(document)
    if "newer" in plain:
        raise Newer("tomorrow's")
    if "bad" in plain:
        raise Unreadable("bad")
    return Pours({name: rows.table(documents) for name, documents in plain.items()})


async def opened(door: Door) -> Opened[Pours]:
    return await open_book(door, understood)


def pours(book: Book) -> list[int]:
    return [pour["n"] for pour in table(book, "pours")]


async def pour(book: Book, n: int, note: str = "") -> None:
    table(book, "pours").insert(keyed(str(n), {"n": n, "note": note}))
    await book.commit()


async def found(door: Door) -> list[int]:
    return pours((await opened(door)).book)


async def fill(door: Door, numbers: list[int], done: list[int] | None = None) -> Book:
    """Pour each number in its own start, so that the copy is written too; note what is done."""
    for n in numbers:
        book = (await opened(door)).book
        await pour(book, n, "long" * (9 if n == 1 else 0))
        if done is not None:
            done.append(n)
    return (await opened(door)).book
