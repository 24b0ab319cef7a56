"""A site made of the generator and a small sample app; and a phone to open it with."""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from mobile.pwa import offline, site
from tests.browser.chromium import Chromium
from tests.browser.conftest import taken
from tests.browser.phone import Phone
from tests.browser.site import Served

ROOT = Path(__file__).parents[2]
SAMPLE = ROOT / "tests" / "pwa" / "sample"
Files = dict[str, bytes]


def checkout(folder: Path) -> Path:
    """Lay out a checkout with the sample app, our device and our assets."""
    for name in ("core", "assets"):
        shutil.copytree(ROOT / name, folder / name)
    shutil.copytree(SAMPLE, folder / "mobile")
    shutil.copytree(ROOT / "mobile" / "device", folder / "mobile" / "device")
    return folder


@pytest.fixture(scope="session")
def sample(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sample's checkout."""
    return checkout(tmp_path_factory.mktemp("sample") / "checkout")


@pytest.fixture(scope="session")
def files(sample: Path) -> Files:
    """Every file of the sample's site, for `/`."""
    return site.whole("/", lambda _line: None, sample)


def laid(folder: Path, made: Files) -> Path:
    """Write files into a folder."""
    for path, data in made.items():
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_bytes(data)
    return folder


def changed(made: Files, path: str, data: bytes) -> Files:
    """Make the next version of a site: one file is another."""
    rest = {name: each for name, each in made.items() if name != "sw.js"} | {path: data}
    return rest | {"sw.js": offline.worker(rest)}


@pytest.fixture
def host(tmp_path: Path, files: Files) -> Iterator[Served]:
    """A host that serves the sample's site."""
    served = Served(laid(tmp_path / "host", files))
    yield served
    served.stop()


@pytest.fixture
def hand(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Phone]:
    """A phone with Chromium."""
    yield from taken(Chromium, request, tmp_path / "phone")


Opened = Callable[[], Phone]


@pytest.fixture
def opened(hand: Phone, host: Served) -> Phone:
    """The phone with the sample open and kept for offline."""
    hand.open(host.address)
    hand.see("kept True")
    return hand
