"""A small web server for the site, on this machine only."""

import contextlib
import functools
import http.server
import re
from collections.abc import Iterator
from http import HTTPStatus
from pathlib import Path
from urllib.parse import urlsplit

from mobile.pwa import offline, page
from mobile.pwa.packages import Unfit

HOST = "127.0.0.1"


class Host(http.server.ThreadingHTTPServer):
    """Answer many calls at a time."""

    request_queue_size = (
        128  # a browser asks for dozens of files at once; of the 6th call on some got lost
    )


class Site(http.server.SimpleHTTPRequestHandler):
    """Serve a folder under the base of its page, with the headers that the site asks for."""

    protocol_version = "HTTP/1.1"
    base = "/"

    def translate_path(self, path: str) -> str:
        """Map an address below the base to a file."""
        return super().translate_path("/" + urlsplit(path).path.removeprefix(self.base))

    def send_head(self) -> object:  # type: ignore[override]  # a file, or nothing after an answer
        """Send anyone who comes outside the base to it."""
        if urlsplit(self.path).path.startswith(self.base):
            return super().send_head()
        self.send_response(HTTPStatus.FOUND)
        self.send_header("Location", self.base)
        self.send_header("Content-Length", "0")
        self.end_headers()
        return None

    def list_directory(self, _path: object) -> None:
        """Show no folders."""
        self.send_error(HTTPStatus.NOT_FOUND)

    def guess_type(self, path: object) -> str:
        """Say the type of a file as the service worker says it."""
        with contextlib.suppress(Unfit):
            return offline.media_type(str(path))
        return "application/octet-stream"

    def end_headers(self) -> None:
        """Add the content security policy; have browsers ask again each time."""
        self.send_header("Content-Security-Policy", page.CSP)
        self.send_header("Cache-Control", "no-cache")
        self.send_header("X-Content-Type-Options", "nosniff")
        super().end_headers()

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  its name there
        """Stay quiet."""


def base_of(folder: Path) -> str:
    """Read from a site's page where it wants to live."""
    try:
        index = (folder / "index.html").read_text("utf-8")
    except OSError as problem:
        raise Unfit(
            f"{folder} holds no site.", f"Make one: python -m mobile build --out {folder}"
        ) from problem
    found = re.search(r'<base href="(/[^"]*)">', index)
    if found is None:
        raise Unfit(f"{folder / 'index.html'} is no page of ours: it names no base.")
    return found[1]


@contextlib.contextmanager
def serving(folder: Path, port: int = 0) -> Iterator[tuple[Host, str]]:
    """Open a server for a site; give it, not yet running, with the site's address.

    Raises `Unfit` when the port is taken.
    """
    base = base_of(folder)
    handler = type("Site", (Site,), {"base": base})
    serve = functools.partial(handler, directory=str(folder))
    try:
        server = Host((HOST, port), serve)
    except OSError as problem:
        raise Unfit(
            f"Port {port} can't be used ({problem.strerror}).",
            f"If the app runs there already, open http://{HOST}:{port}{base};"
            " or choose another with --port: each has a book of its own.",
        ) from problem
    with server:
        yield server, f"http://{HOST}:{server.server_port}{base}"
