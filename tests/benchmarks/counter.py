"""A bare Flet counter, put together the plain way: flet-web's page and worker, sources packed."""

import http.server
import io
import shutil
import tarfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from flet.controls.types import RouteUrlStrategy, WebRenderer
from flet_web import get_package_web_dir  # type: ignore[import-untyped]
from flet_web.patch_index import (  # type: ignore[import-untyped]
    patch_font_manifest_json,
    patch_index_html,
)

from mobile.pwa import packages

NEEDED = ("flet", "msgpack", "repath", "six")
WORDS = "pressed 0 times"
APP = """
import flet as ft


def main(page: ft.Page):
    words = ft.Text("pressed 0 times", data=0)

    def more(event):
        words.data += 1
        words.value = f"pressed {words.data} times"

    page.add(words, ft.Button("More", on_click=more))


ft.run(main)
"""


def assembled(into: Path) -> Path:
    """Lay the counter out in a folder, for a host that serves it at `/`."""
    shutil.copytree(get_package_web_dir(), into)
    patch_index_html(
        str(into / "index.html"),
        "/",
        pyodide=True,
        pyodide_script_path="main.py",
        pyodide_version="local",
        app_package_url="app.tar.gz",
        web_renderer=WebRenderer.CANVAS_KIT,
        route_url_strategy=RouteUrlStrategy.HASH,
        no_cdn=True,
    )
    page = into / "index.html"
    relative = page.read_text("utf-8").replace('"pyodide/pyodide.mjs"', '"./pyodide/pyodide.mjs"')
    page.write_text(relative, "utf-8")  # a module worker can't resolve the bare name
    patch_font_manifest_json(str(into / "assets" / "FontManifest.json"))
    (into / "app.tar.gz").write_bytes(packed())
    return into


def packed() -> bytes:
    """Pack the app and the packages that it needs."""
    files = {"main.py": APP.encode()}
    for package in NEEDED:
        found = packages.sources(package)
        files |= {f"__pypackages__/{path}": data for path, data in found.items()}
    whole = io.BytesIO()
    with tarfile.open(fileobj=whole, mode="w:gz") as packing:
        for path, data in sorted(files.items()):
            entry = tarfile.TarInfo(path)
            entry.size = len(data)
            packing.addfile(entry, io.BytesIO(data))
    return whole.getvalue()


class Plain(http.server.SimpleHTTPRequestHandler):
    """A plain static host; browsers may keep its files as long as they like."""

    protocol_version = "HTTP/1.1"

    def guess_type(self, path: object) -> str:
        """Say the types that a browser insists on."""
        if str(path).endswith(".wasm"):
            return "application/wasm"
        return "text/javascript" if str(path).endswith(".mjs") else super().guess_type(str(path))

    def end_headers(self) -> None:
        """Let browsers keep the files: the counter has no other way to be at hand."""
        self.send_header("Cache-Control", "max-age=86400")
        super().end_headers()

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  its name there
        """Stay quiet."""


@contextmanager
def hosted(folder: Path) -> Iterator[str]:
    """Serve a folder on loopback; give its address."""

    def handler(*given: object) -> Plain:
        return Plain(*given, directory=str(folder))  # type: ignore[arg-type]

    with http.server.ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
