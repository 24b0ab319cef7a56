"""Serve a page of parts under Flet's own server, with the app's fonts, for people and Chromium."""

import json
import tempfile
from collections.abc import Callable
from pathlib import Path
from shutil import copyfile

import flet as ft
import flet_web  # type: ignore[import-untyped]

ROOT = Path(__file__).parents[2]
FONTS, SELECT = ROOT / "assets/fonts", ROOT / "mobile/pwa/web/page/select.js"
WEIGHTS = (400, 500, 600)
# Without the second, Flutter may start while the phone still lays the page out 980 wide.
METAS = (
    '<meta name="text-scale" content="scale">'
    '<meta name="viewport" content="width=device-width, initial-scale=1.0">'
)


def manifest() -> list[dict[str, object]]:
    """Name the fonts as the built site does: the app's own, and the icons of Flutter's widgets."""
    files = [{"asset": f"fonts/figures-{w}.woff2", "weight": w} for w in WEIGHTS]
    return [
        {"family": "MaterialIcons", "fonts": [{"asset": "fonts/MaterialIcons-Regular.otf"}]},
        {"family": "Figures", "fonts": files},
        {"family": "Roboto", "fonts": files},
    ]


def assets() -> str:
    """Lay out a folder that stands in front of Flet's own files."""
    root = Path(tempfile.mkdtemp(prefix="stage-"))
    (root / "assets/fonts").mkdir(parents=True)
    (root / "assets/FontManifest.json").write_text(json.dumps(manifest()))
    for weight in WEIGHTS:
        copyfile(FONTS / f"figures-{weight}.woff2", root / f"assets/fonts/figures-{weight}.woff2")
    page = (Path(flet_web.get_package_web_dir()) / "index.html").read_text()
    script = f'<script type="module">{SELECT.read_text("utf-8")}</script>'
    (root / "index.html").write_text(page.replace("<head>", f"<head>{METAS}{script}", 1))
    return str(root)


def serve(main: Callable[[ft.Page], None], port: int) -> None:
    """Serve until killed; nothing is fetched from elsewhere."""
    ft.run(main, view=None, port=port, assets_dir=assets(), no_cdn=True)
