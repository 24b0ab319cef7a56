"""Files that come and go, in each engine, with no signal."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from mobile.device.calendar import calendar_file
from tests.browser.conftest import ENGINES, taken
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.pwa.sample.main import REMINDER

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]

KEEP_WHAT_IS_SAVED = """() => {
  const make = URL.createObjectURL;
  URL.createObjectURL = (blob) => {
    blob.text().then((text) => { globalThis.saved = text; });
    return make.call(URL, blob);
  };
}"""


@pytest.fixture(params=[kind for kind, _ in ENGINES], ids=[kind.name for kind, _ in ENGINES])
def offline(request: pytest.FixtureRequest, tmp_path: Path, host: Served) -> Iterator[Phone]:
    """One phone after the other, with the sample kept on it and the signal gone."""
    for phone in taken(request.param, request, tmp_path / "phone"):
        phone.open(host.address)
        phone.see("kept True")
        host.stop()
        phone.cut()
        yield phone


def test_it_makes_a_calendar_file_and_reads_the_file_that_is_chosen(
    offline: Phone, tmp_path: Path
) -> None:
    engine = offline.engine
    engine.ask(KEEP_WHAT_IS_SAVED)
    offline.tap("Remind", "button")  # the archive for it is read only now
    saved = offline.wait(lambda: engine.ask("() => globalThis.saved"), 30, lambda: "nothing saved")
    assert str(saved).encode() == calendar_file(*REMINDER)

    large, small = tmp_path / "moths (1).bin", tmp_path / "nothing.txt"
    large.write_bytes(bytes(range(256)) * 20_000)
    small.touch()
    for path, said in (
        (large, f"{large.name}: 5120000, 652800000"),
        (small, f"{small.name}: 0, 0"),
    ):
        offline.tap("Pick", "button")
        engine.choose(path)
        offline.see(said, 30)
    assert engine.ask("() => document.querySelectorAll('input[type=file]').length") == 0
    assert engine.troubles() == ()
