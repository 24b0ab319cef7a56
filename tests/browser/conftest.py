"""Phones and the built site for the tests; a test that uses one is marked `browser`."""

import contextlib
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Generator, Iterator
from pathlib import Path

import pytest

from mobile.pwa import site as generator
from tests.browser import chromium, firefox, webkit
from tests.browser.engine import Engine
from tests.browser.phone import Phone, phone_of
from tests.browser.site import Served

ROOT = Path(__file__).parents[2]
BUILT = ROOT / ".build" / "site"
ENGINES: tuple[tuple[type[Engine], tuple[str, ...]], ...] = (
    (chromium.Chromium, (chromium.PROGRAM,)),
    (firefox.Firefox, (firefox.PROGRAM,)),
    (webkit.WebKit, (webkit.DRIVER, webkit.XVFB, webkit.program())),
)
SHOTS = ROOT / ".build" / "shots"
FAILED = pytest.StashKey[bool]()
NEEDS_THE_SITE = {"built", "site", "phone", "each_phone"}


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark what needs the built site, so that the quick check leaves it out."""
    for item in items:
        if NEEDS_THE_SITE & set(getattr(item, "fixturenames", ())):
            item.add_marker(pytest.mark.browser)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item,
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Remember that a test, or what it asked for, failed: for `witness`."""
    report = yield
    item.stash[FAILED] = report.failed or item.stash.get(FAILED, False)
    return report


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Name the browsers in which at least one test passed."""
    passed = terminalreporter.stats.get("passed", [])
    ran = {name for report in passed for key, name in report.user_properties if key == "browser"}
    if ran:
        terminalreporter.write_line(f"browsers run: {', '.join(sorted(ran))}")


@pytest.fixture(scope="session")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the site if anything changed, and take a copy that nobody else touches."""
    if not generator.fresh(BUILT, "/"):
        subprocess.run(
            [sys.executable, "-m", "mobile", "build"],
            cwd=ROOT,
            check=True,
            timeout=600,
            stdout=subprocess.DEVNULL,
        )
    copy = tmp_path_factory.mktemp("built") / "site"
    shutil.copytree(BUILT, copy)
    return copy


@pytest.fixture
def site(built: Path) -> Iterator[Served]:
    """Serve the built site at `/`."""
    served = Served(built)
    yield served
    served.stop()


def taken(kind: type[Engine], request: pytest.FixtureRequest, home: Path) -> Iterator[Phone]:
    """Take a phone with this engine, or say that it is not there."""
    programs = next(programs for each, programs in ENGINES if each is kind)
    if not all(program and os.access(program, os.X_OK) for program in programs):
        pytest.skip(f"{kind.name} is not installed: not run")
    request.node.user_properties.append(("browser", kind.name))
    with phone_of(kind, home) as phone:
        yield phone
        if request.node.stash.get(FAILED, False):
            witness(phone, SHOTS / re.sub(r"\W+", "-", request.node.name))


def witness(phone: Phone, path: Path) -> None:
    """Keep what a failed test saw: a picture, the words, the page's own errors."""
    with contextlib.suppress(Exception):  # a killed phone has nothing to show
        phone.picture(path.with_suffix(".png"))
        path.with_suffix(".txt").write_text(phone.told(), encoding="utf-8")


@pytest.fixture
def phone(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Phone]:
    """A phone with Chromium."""
    yield from taken(chromium.Chromium, request, tmp_path / "phone")


@pytest.fixture(params=[kind for kind, _ in ENGINES], ids=[kind.name for kind, _ in ENGINES])
def each_phone(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Phone]:
    """One phone after the other: Chromium, Firefox, WebKitGTK."""
    yield from taken(request.param, request, tmp_path / "phone")
