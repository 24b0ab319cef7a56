"""The wire between the app's Python and the page; on any Python but the browser's it leads nowhere.

`js` and `pyodide` bring no types: what `mobile.device` uses of them is written down here.
"""

import sys
from collections.abc import Callable
from contextvars import Context, copy_context
from typing import Any, Protocol

in_browser = sys.platform == "emscripten"


class News(Protocol):
    """What the page tells, by itself: `event` names it, the rest depends on it."""

    event: str
    id: str
    kept: bool
    newer: bool
    ratio: float
    name: str
    bytes: "Bytes"


class Bytes(Protocol):
    """Bytes that are still the page's."""

    def to_bytes(self) -> bytes:
        """Copy them."""


listeners: dict[str, tuple[Context, Callable[[News], None]]] = {}
"""Who hears what, with the context it listened in: Flet looks there for the page."""


def call(what: str, **values: object) -> None:
    """Ask the page to do something (`pwa/web/page/device.js` holds the list)."""
    if not in_browser:
        return
    import js  # noqa: PLC0415  only the browser has these
    from pyodide.ffi import to_js  # noqa: PLC0415

    js.postMessage(to_js({"call": what, **values}, dict_converter=js.Object.fromEntries))


def listen(event: str, heard: Callable[[News], None]) -> None:
    """Have the page's news of one kind; a later listener takes the place of an earlier one."""
    listeners[event] = copy_context(), heard
    if not in_browser:
        return
    import js  # noqa: PLC0415
    from pyodide.ffi import create_proxy  # noqa: PLC0415

    if not hasattr(js, "told"):
        js.told = create_proxy(told)


def told(news: Any) -> None:
    """Hand news on to whoever listens."""
    if news.event in listeners:
        context, heard = listeners[news.event]
        context.run(heard, news)


def home() -> str:
    """Give the address of the app's first page, with the slash at its end."""
    if not in_browser:
        return "http://127.0.0.1/"
    import js  # noqa: PLC0415

    return f"{str(js.location.href).rpartition('/page/')[0]}/"


def bring(archive: str) -> None:
    """Have the site's archive that a late import needs; raise `OSError` where it can't be had."""
    path = f"/{archive}"
    if not in_browser or path in sys.path:
        return
    import js  # noqa: PLC0415
    from pyodide.ffi import JsException  # noqa: PLC0415

    try:
        js.bring(archive)
    except JsException as problem:
        raise OSError(f"{archive} could not be read: {problem}") from problem
    sys.path.append(path)
