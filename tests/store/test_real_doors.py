"""The doors in real browsers: reload, second tab, damage, no room left, and the power going."""

import contextlib
import random
import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path
from typing import Any

import pytest

from tests.browser.chromium import Chromium
from tests.browser.conftest import ENGINES, taken
from tests.browser.engine import Engine, until
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.store.tab.site import assemble

pytestmark = [pytest.mark.browser, pytest.mark.timeout(900)]

BEHIND = {"ask": "OpfsDoor", "indexed": "IndexedDoor"}
BOTH = pytest.mark.parametrize("how", BEHIND)
DOORS = {"Chromium": "OpfsDoor", "Firefox ESR": "OpfsDoor", "WebKitGTK": "IndexedDoor"}
VERB = "(name, ...values) => verb(name, ...values)"
KILLS = 20


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return assemble(tmp_path_factory.mktemp("tab") / "site")


@pytest.fixture
def served(folder: Path) -> Iterator[Served]:
    site = Served(folder)
    yield site
    site.stop()


@pytest.fixture
def chromium(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Phone]:
    yield from taken(Chromium, request, tmp_path / "phone")


@pytest.fixture(params=[kind for kind, _ in ENGINES], ids=[kind.name for kind, _ in ENGINES])
def each(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Phone]:
    yield from taken(request.param, request, tmp_path / "phone")


def ready(phone: Phone, served: Served) -> None:
    """Open the page in the tab that is in front."""
    phone.open(served.address)

    def there() -> bool:
        with contextlib.suppress(Exception):  # the page is being replaced
            return phone.engine.ask("() => typeof verb === 'function'") is True
        return False

    until(there, 120, lambda: "no page")


def verb(phone: Phone, name: str, *values: object) -> Any:
    return phone.engine.ask(VERB, name, *values)


def ids(phone: Phone) -> list[str]:
    found = verb(phone, "ids")["ids"]
    assert isinstance(found, list)
    return found


def test_what_is_kept_is_there_after_every_reload(each: Phone, served: Served) -> None:
    for start in range(4):
        ready(each, served)
        opened = verb(each, "start", "ask")
        assert opened["door"] == DOORS[each.engine.name]
        assert not opened["restored"]
        pours = [each_id for each_id in ids(each) if each_id != "weigh"]
        assert pours == [f"pour-{n}" for n in range(start)]
        assert "error" not in verb(each, "keep", start)


@BOTH
def test_a_second_tab_is_busy_at_once_asks_and_gets_the_book(
    how: str, chromium: Phone, served: Served
) -> None:
    ready(chromium, served)
    assert verb(chromium, "start", how)["door"] == BEHIND[how]
    verb(chromium, "keep", 1)
    chromium.engine.tab(1)
    ready(chromium, served)
    verb(chromium, "up")  # Python is up: only the asking is timed
    before = time.monotonic()
    assert verb(chromium, "start", how)["error"] == "Busy"
    assert time.monotonic() - before < 3
    assert verb(chromium, "start", "take over")["door"] == BEHIND[how]
    assert ids(chromium) == ["pour-1", "weigh"]
    verb(chromium, "keep", 2)
    chromium.engine.tab(0)
    assert verb(chromium, "ids")["taken"] == 1
    assert verb(chromium, "keep", 3)["error"] == "Busy"
    assert verb(chromium, "start", "take over")["door"] == BEHIND[how]
    assert ids(chromium) == ["pour-1", "weigh", "pour-2"]


@BOTH
def test_a_page_that_lets_go_leaves_the_book_to_the_next(
    how: str, chromium: Phone, served: Served
) -> None:
    ready(chromium, served)
    verb(chromium, "start", how)
    verb(chromium, "keep", 1)
    verb(chromium, "let_go")
    chromium.engine.tab(1)
    ready(chromium, served)
    assert verb(chromium, "start", how)["door"] == BEHIND[how]
    assert ids(chromium) == ["pour-1", "weigh"]


@BOTH
def test_damage_is_set_aside_and_the_last_good_state_opens(
    how: str, chromium: Phone, served: Served
) -> None:
    for start in range(3):
        ready(chromium, served)
        verb(chromium, "start", how)
        verb(chromium, "keep", start)
    verb(chromium, "close")
    spoilt = verb(chromium, "spoil", [0, 1])
    opened = verb(chromium, "start", how)
    assert opened["restored"]
    assert opened["aside"] == ["trial.aside-1", "trial.aside-2"]
    assert [verb(chromium, "aside", name) for name in opened["aside"]] == spoilt
    assert ids(chromium) == ["pour-0", "weigh", "pour-1"]
    verb(chromium, "keep", 9)
    verb(chromium, "close")
    again = verb(chromium, "start", how)
    assert not again["restored"]
    assert ids(chromium) == ["pour-0", "weigh", "pour-1", "pour-9"]
    verb(chromium, "close")
    verb(chromium, "spoil", [0, 1, 2])
    assert verb(chromium, "start", how)["error"] == "Damaged"


def test_a_book_that_began_without_files_stays_where_it_is(chromium: Phone, served: Served) -> None:
    ready(chromium, served)
    assert verb(chromium, "start", "indexed")["door"] == "IndexedDoor"
    verb(chromium, "keep", 1)
    ready(chromium, served)
    assert verb(chromium, "start", "ask")["door"] == "IndexedDoor"
    assert ids(chromium) == ["pour-1", "weigh"]


def test_no_room_left_is_told_and_changes_nothing(chromium: Phone, served: Served) -> None:
    ready(chromium, served)
    verb(chromium, "start", "ask")
    verb(chromium, "keep", 1)
    quota(chromium, served, 2_000_000)
    assert verb(chromium, "keep", 2, 4_000_000)["error"] == "Full"
    assert ids(chromium) == ["pour-1", "weigh"]
    assert "error" not in verb(chromium, "keep", 3)
    quota(chromium, served, None)
    assert "error" not in verb(chromium, "keep", 4, 4_000_000)
    ready(chromium, served)
    verb(chromium, "start", "ask")
    assert ids(chromium) == ["pour-1", "weigh", "pour-3", "pour-4"]


def quota(phone: Phone, served: Served, size: int | None) -> None:
    engine: Engine = phone.engine
    assert isinstance(engine, Chromium)
    session = engine.context.new_cdp_session(engine.page)
    wanted = {"origin": served.address} | ({} if size is None else {"quotaSize": size})
    session.send("Storage.overrideQuotaForOrigin", wanted)


@BOTH
@pytest.mark.timeout(3000)  # each death is a browser's start
def test_no_kept_pour_is_lost_when_the_battery_comes_out(
    how: str, chromium: Phone, served: Served
) -> None:
    chance = random.Random(f"battery {how}")
    there = -1  # the last pour that is known to be kept
    torn = 0
    for _ in range(KILLS):
        ready(chromium, served)
        opened = verb(chromium, "start", how)
        assert opened["door"] == BEHIND[how]
        assert not opened["restored"]
        pours = [int(each.removeprefix("pour-")) for each in ids(chromium) if each != "weigh"]
        assert pours == list(range(len(pours)))
        assert len(pours) > there
        torn += len(pours) > there + 1
        first = len(pours)
        size = chance.choice((200, 20_000, 1_000_000))
        chromium.engine.ask("(first, size) => { verb('keep_on', first, size); }", first, size)
        until(partial(has_kept, chromium, first), 60, lambda: "nothing kept")
        time.sleep(chance.uniform(0, 0.7))
        chromium.kill()
        there = kept(chromium)
        chromium.start()
    ready(chromium, served)
    verb(chromium, "start", how)
    assert len(ids(chromium)) - 1 > there >= KILLS - 1


def has_kept(phone: Phone, number: int) -> bool:
    return kept(phone) >= number


def kept(phone: Phone) -> int:
    """Give the last pour that the tab said was kept."""
    said = [url.rpartition("/kept/")[2] for url in phone.line.asked if "/kept/" in url]
    return max(map(int, said), default=-1)
