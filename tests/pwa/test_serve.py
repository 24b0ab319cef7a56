"""The small server: the headers that the site asks for, its base, nothing outside its folder."""

import contextlib
import http.client
import socket
from collections.abc import Iterator
from http import HTTPStatus
from pathlib import Path

import pytest

from mobile.pwa import page, serve
from mobile.pwa.packages import Unfit
from tests.browser.site import Served
from tests.pwa.conftest import laid

FILES = {
    "index.html": b'<base href="/night/">',
    "page/start.js": b"1",
    "pyodide/pyodide.mjs": b"1",
    "pyodide/pyodide.asm.wasm": b"1",
    "manifest.webmanifest": b"{}",
    "python/app.zip": b"1",
}


@pytest.fixture
def host(tmp_path: Path) -> Iterator[Served]:
    """A host with a site under /night/, and a secret beside it."""
    (tmp_path / "secret.txt").write_text("not for the web")
    served = Served(laid(tmp_path / "site", FILES))
    yield served
    served.stop()


def got(host: Served, path: str) -> http.client.HTTPResponse:
    """Ask for an address exactly as it is written."""
    line = http.client.HTTPConnection("127.0.0.1", host.port, timeout=20)
    with contextlib.closing(line):
        line.request("GET", path)
        answer = line.getresponse()
        answer.read()
    return answer


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("/night/", "text/html; charset=utf-8"),
        ("/night/?from=home", "text/html; charset=utf-8"),
        ("/night/page/start.js", "text/javascript"),
        ("/night/pyodide/pyodide.mjs", "text/javascript"),
        ("/night/pyodide/pyodide.asm.wasm", "application/wasm"),
        ("/night/manifest.webmanifest", "application/manifest+json"),
        ("/night/python/app.zip", "application/zip"),
    ],
)
def test_a_file_comes_with_its_type_and_the_policy(host: Served, path: str, kind: str) -> None:
    answer = got(host, path)
    assert answer.status == HTTPStatus.OK
    assert answer.headers["Content-Type"] == kind
    assert answer.headers["Content-Security-Policy"] == page.CSP
    assert answer.headers["Cache-Control"] == "no-cache"


@pytest.mark.parametrize("path", ["/", "/elsewhere", "/nigh"])
def test_outside_the_base_it_sends_people_to_it(host: Served, path: str) -> None:
    answer = got(host, path)
    assert answer.status == HTTPStatus.FOUND
    assert answer.headers["Location"] == "/night/"


@pytest.mark.parametrize(
    "path",
    [
        "/night/page/",
        "/night/no.js",
        "/night/../secret.txt",
        "/night/%2e%2e/secret.txt",
        "/night/page/../../secret.txt",
    ],
)
def test_it_shows_no_folder_and_nothing_beside_the_site(host: Served, path: str) -> None:
    assert got(host, path).status == HTTPStatus.NOT_FOUND


def test_it_listens_on_this_machine_only(host: Served) -> None:
    assert serve.HOST == "127.0.0.1"
    assert host.address == f"http://127.0.0.1:{host.port}/night/"


def test_a_taken_port_is_told_with_the_mend(tmp_path: Path) -> None:
    folder = laid(tmp_path / "site", FILES)
    with socket.create_server(("127.0.0.1", 0)) as other:
        port = other.getsockname()[1]
        with (
            pytest.raises(Unfit, match=rf"Port {port} can't be used.*\n.*--port"),
            serve.serving(folder, port),
        ):
            pass


def test_a_folder_without_a_site_is_told_with_the_mend(tmp_path: Path) -> None:
    with pytest.raises(Unfit, match=r"holds no site\.\n.*python -m mobile build"):
        serve.base_of(tmp_path)
    (tmp_path / "index.html").write_text("<p>Someone else's page</p>")
    with pytest.raises(Unfit, match="names no base"):
        serve.base_of(tmp_path)
