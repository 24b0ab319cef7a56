"""On any Python but the browser's, the page's services do nothing, and news can still be heard."""

import contextvars
from types import SimpleNamespace

import pytest

from mobile.device import bridge, page
from mobile.device.page import Version

WHERE = contextvars.ContextVar("where", default="nowhere")


def test_every_call_does_nothing_here() -> None:
    page.set_alarms((("base 1", 1_700_000_000.0),))
    page.silence()
    page.save_file("book.json", b"{}", "application/json")
    page.keep_awake(on=True)
    page.persist()
    page.text_ratio(1.5)
    page.shown("#0E1014", "#ECE7DC")
    page.weighing(on=True)
    page.use_update()
    page.reload()
    assert not bridge.in_browser


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
    page.on_hidden(lambda: heard.append("hidden"))
    bridge.told(SimpleNamespace(event="version", kept=True, newer=False))
    bridge.told(SimpleNamespace(event="text", ratio=1.5))
    bridge.told(SimpleNamespace(event="hidden"))
    bridge.told(SimpleNamespace(event="of another age"))
    assert heard == [Version(kept=True, newer=False), 1.5, "hidden"]
