"""The verbs of a tab that has a book and no app, for Python in a browser's worker.

Each answers in JSON; an error of the store is answered by its name.
"""

import asyncio
import json
import time
from collections.abc import Awaitable
from dataclasses import replace
from typing import Any

import js
from pyodide.ffi import to_js

from mobile.store import browser, doors
from mobile.store.library import Library
from tests.store import pour_and_draft as made

NAME = "trial"


class Tab:
    """What this tab has open."""

    library: Library
    door = ""
    taken = 0


def _told() -> None:
    Tab.taken += 1


async def _answer(verb: Awaitable[Any]) -> str:
    try:
        return json.dumps(await verb)
    except OSError as problem:
        return json.dumps({"error": type(problem).__name__, "said": str(problem)})


async def start(how: str) -> str:
    """Open the book: "ask", "take over", or "indexed" as a browser without files."""
    return await _answer(_start(how))


async def _start(how: str) -> dict[str, Any]:
    if how == "indexed":
        browser.has_files = False  # type: ignore[misc]  # pretend to be such a browser
    before = time.perf_counter()
    door = await (doors.take_over(NAME) if how == "take over" else doors.open_door(NAME))
    opened = time.perf_counter()
    Tab.library = await Library.open(door, made.PHONE, taken=_told)
    Tab.door = type(door).__name__
    read = time.perf_counter()
    return {
        "door": Tab.door,
        "door_ms": round(1000 * (opened - before), 1),
        "library_ms": round(1000 * (read - opened), 1),
        "restored": Tab.library.restored,
        "aside": list(Tab.library.set_aside),
    }


async def ids() -> str:
    """List the ids of all records, and how often this tab was told that it was taken over."""
    found = [record.id for record in Tab.library.records()]
    return json.dumps({"ids": found, "taken": Tab.taken})


async def up() -> str:
    """Answer once Python is up."""
    return json.dumps(None)


async def keep(number: int, text_bytes: int = 0) -> str:
    """Keep the nth pour, and a draft of some size."""
    return await _answer(_keep(number, text_bytes))


async def _keep(number: int, text_bytes: int) -> dict[str, float]:
    draft = replace(made.draft(number), fields=(("note", "x" * text_bytes),))
    before = time.perf_counter()
    await Tab.library.keep(made.poured(number), draft)
    return {"ms": round(1000 * (time.perf_counter() - before), 2)}


async def keep_on(first: int, text_bytes: int) -> str:
    """Keep one pour after the other, and say each that is kept to the server."""
    number = first
    while True:
        await _keep(number, text_bytes)
        js.fetch(f"kept/{number}")
        number += 1
        await asyncio.sleep(0)


async def grow(count: int) -> str:
    """Keep many pours in one commit."""
    return await _answer(Tab.library.keep(*(made.poured(1_000_000 + n) for n in range(count))))


async def aside(name: str) -> str:
    """Give what was set aside, as text."""
    return json.dumps((await Tab.library.aside(name)).decode("latin-1"))


async def close() -> str:
    """Close the book."""
    return await _answer(Tab.library.close())


async def let_go() -> str:
    """Let go, as for a page that is put aside."""
    return await _answer(doors.let_go())


async def spoil(numbers: list[int]) -> str:
    """Change a byte in some files of the closed book."""
    spoilt = {}
    for number in numbers:
        data = await _file(number)
        data[20] ^= 0xFF
        await _put_file(number, bytes(data))
        spoilt[number] = bytes(data).decode("latin-1")
    return json.dumps(list(spoilt.values()))


async def _file(number: int) -> bytearray:
    if Tab.door == "OpfsDoor":
        folder = await browser.storage.getDirectory()
        file = await (await folder.getFileHandle(f"{NAME}.{number}")).getFile()
        return bytearray((await file.arrayBuffer()).to_bytes())
    database = await _settled(browser.indexed.open(NAME, 1))
    store = database.transaction("files").objectStore("files")
    data = bytearray((await _settled(store.get(number))).to_bytes())
    database.close()
    return data


async def _put_file(number: int, data: bytes) -> None:
    if Tab.door == "OpfsDoor":
        folder = await browser.storage.getDirectory()
        stream = await (await folder.getFileHandle(f"{NAME}.{number}")).createWritable()
        await stream.write(to_js(data))
        await stream.close()
        return
    database = await _settled(browser.indexed.open(NAME, 1))
    store = database.transaction("files", "readwrite").objectStore("files")
    await _settled(store.put(to_js(data), number))
    database.close()


async def _settled(request: Any) -> Any:
    done = asyncio.get_running_loop().create_future()
    proxy = browser.create_once_callable(lambda _: done.set_result(request.result))
    request.addEventListener("success", proxy)
    return await done
