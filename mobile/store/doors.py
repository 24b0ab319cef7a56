"""Open the door that this browser has, once the key to it is ours.

    try:
        door = await open_door("duskcoat")
    except Busy:  # another tab has the book; if the person says so:
        door = await take_over("duskcoat")

Where the browser has files they are the door, else IndexedDB. A browser that learns files later
finds the book still in IndexedDB: the door that holds something stays the door.
"""

from mobile.store import browser
from mobile.store.door import FILES, Door
from mobile.store.indexed_door import open_indexed
from mobile.store.key import PLEASE, WHO, Key, take_key
from mobile.store.opfs_door import open_files
from mobile.store.tabs import BrowserTabs

_keys: list[Key] = []  # taken by this worker; `let_go` is called by the page, which knows no door


async def open_door(name: str) -> Door:
    """Open the door to a book; raise `Busy`, at once if another tab answers that it has it."""
    return await _open(name, WHO)


async def take_over(name: str) -> Door:
    """Ask the tab that has the book to let go, then open; raise `Busy` if it doesn't."""
    return await _open(name, PLEASE)


async def let_go() -> None:
    """Let go of the book as if another tab had asked for it: the page is being put aside."""
    while _keys:
        await _keys.pop().let_go()


async def _open(name: str, word: str) -> Door:
    key = await take_key(BrowserTabs(name), word)
    try:
        door = await _behind(name, key)
    except BaseException:
        key.give_back()
        raise

    async def shut() -> None:
        door.close()

    key.when_asked(shut)  # until the library says how
    _keys.append(key)
    return door


async def _behind(name: str, key: Key) -> Door:
    if not browser.has_files:
        return await open_indexed(name, key)
    files = await open_files(name, key)
    if any(map(files.read, FILES)):
        return files
    values = await open_indexed(name, key)
    if any(map(values.read, FILES)):
        files.close_files()
        return values
    values.close_database()
    return files
