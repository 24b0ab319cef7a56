"""On any Python but the browser's, the page's services do nothing, and news can still be heard."""

import contextvars
import sys
from types import ModuleType, SimpleNamespace
from typing import cast

import pytest

from mobile.device import bridge, page
from mobile.device.page import Version

WHERE = contextvars.ContextVar("where", default="nowhere")


def test_every_call_does_nothing_here() -> None:
    page.set_alarms((("base 1", 1_700_000_000.0),))
    page.silence()
    page.save_file("book.json", b"{}", "application/json")
    page.print_picture(b"<svg/>", "image/svg+xml")
    page.pick_file(".json")
    page.keep_awake(on=True)
    page.persist()
    page.text_ratio(1.5)
    page.shown("#0E1014", "#ECE7DC")
    page.weighing(on=True)
    page.use_update()
    page.reload()
    assert not bridge.in_browser


def test_an_archive_is_brought_once_and_one_that_can_not_be_had_is_an_os_error(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    class Refused(Exception):
        """Stands in for what JavaScript throws."""

    def refuse(_name: str) -> None:
        raise Refused("no signal")

    asked: list[str] = []
    page_side = SimpleNamespace(bring=refuse)
    monkeypatch.setattr(bridge, "in_browser", True)
    monkeypatch.setattr(sys, "path", [*sys.path])
    monkeypatch.setitem(sys.modules, "js", cast("ModuleType", page_side))
    ffi = cast("ModuleType", SimpleNamespace(JsException=Refused))
    monkeypatch.setitem(sys.modules, "pyodide.ffi", ffi)
    with pytest.raises(OSError, match=r"later\.zip .* no signal"):
        bridge.bring("later.zip")
    page_side.bring = asked.append
    for _ in range(2):
        bridge.bring("later.zip")
    assert asked == ["later.zip"]
    assert sys.path[-1] == "/later.zip"


@pytest.fixture
def nobody(monkeypatch: pytest.MonkeyPatch) -> None:
    """Start with no listeners."""
    monkeypatch.setattr(bridge, "listeners", {})


@pytest.mark.usefixtures("nobody")
def test_news_reach_the_last_who_listened_in_the_context_that_listened() -> None:
    heard: list[object] = []
    page.on_due(lambda name: heard.append(("too early", name)))
    WHERE.set("the page")
    page.on_due(lambda name: heard.append((WHERE.get(), name)))
    WHERE.set("elsewhere")
    bridge.told(SimpleNamespace(event="due", id="base 1"))
    assert heard == [("the page", "base 1")]


@pytest.mark.usefixtures("nobody")
def test_each_kind_of_news_says_its_own() -> None:
    heard: list[object] = []
    page.on_version(heard.append)
    page.on_text(heard.append)
    page.on_picked(lambda name, data: heard.append((name, data)))
    page.on_hidden(lambda: heard.append("hidden"))
    bridge.told(SimpleNamespace(event="version", kept=True, newer=False))
    bridge.told(SimpleNamespace(event="text", ratio=1.5))
    bridge.told(SimpleNamespace(event="hidden"))
    content = SimpleNamespace(to_bytes=lambda: b"moths")  # as Pyodide's JsBuffer has it
    bridge.told(SimpleNamespace(event="picked", name="night garden.txt", bytes=content))
    bridge.told(SimpleNamespace(event="of another age"))
    assert heard == [Version(kept=True, newer=False), 1.5, "hidden", ("night garden.txt", b"moths")]
