"""The phone itself, in every engine, on a page of its own: it sees, touches, types, and tells."""

import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest

from tests.browser.layout import overlaps
from tests.browser.phone import Phone

pytestmark = pytest.mark.timeout(300)
SAMPLE = Path(__file__).parent / "sample"
STRANGER = "http://elsewhere.example/x"
FETCH = "() => fetch('/?' + Math.random()).then((answer) => answer.status).catch(() => 0)"


class Quiet(SimpleHTTPRequestHandler):
    """Serves without a policy and without a word."""

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  its name there
        """Say nothing."""


@pytest.fixture
def sample() -> Iterator[str]:
    """Serve the sample page."""
    handler = partial(Quiet, directory=str(SAMPLE))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()


def test_it_sees_touches_types_and_tells(each_phone: Phone, sample: str) -> None:
    phone = each_phone
    phone.open(sample)
    assert phone.see("Board of two").role == "text"
    touches_what_it_sees(phone)
    touches_nothing_else(phone)
    assert overlaps(phone.boxes()) == ("'Under' and 'Over' overlap by 200 × 46",)
    assert phone.asked_elsewhere(sample) == ()
    assert phone.engine.troubles() == ()
    loses_the_signal(phone)
    tells_of_strangers_and_troubles(phone, sample)


def touches_what_it_sees(phone: Phone) -> None:
    assert phone.one("Count 0", "button").width == 200
    phone.tap("Count 0")
    phone.tap("Count 1", "button")
    phone.see("kept 2")
    assert phone.taps == 2
    phone.type("Width, m", "3,5")
    assert phone.typed("Width, m")[0] == "3,5"
    assert phone.taps == 3


def touches_nothing_else(phone: Phone) -> None:
    for name in ("Under", "Off", "Deep", "Nowhere"):
        with pytest.raises(AssertionError):
            phone.one(name, seconds=0.5)
    assert phone.one("Over").tap
    assert phone.find("Deep")[0].cut


def loses_the_signal(phone: Phone) -> None:
    assert phone.engine.ask(FETCH) == 200
    phone.cut()
    assert phone.engine.ask(FETCH) == 0
    phone.join()
    assert phone.engine.ask(FETCH) == 200


def tells_of_strangers_and_troubles(phone: Phone, sample: str) -> None:
    phone.engine.ask(f"() => fetch('{STRANGER}').catch(() => 0)")
    assert STRANGER in phone.asked_elsewhere(sample)
    phone.engine.ask("() => { console.error('a sad page'); }")
    phone.wait(
        lambda: any("a sad page" in said for said in phone.engine.troubles()),
        20,
        lambda: f"no trouble in {phone.engine.troubles()}",
    )


def test_a_killed_phone_has_what_it_kept(each_phone: Phone, sample: str) -> None:
    phone = each_phone
    if not phone.kind.keeps:
        pytest.skip(f"{phone.kind.name} keeps no profile under a driver")
    phone.open(sample)
    phone.tap("Count 0")
    phone.see("kept 1")
    phone.reload()
    phone.see("kept 1")
    phone.kill()
    phone.start()
    phone.open(sample)
    phone.see("kept 1")
