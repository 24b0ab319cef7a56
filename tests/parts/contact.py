"""Photograph the gallery: `python -m tests.parts.contact OUT [scene ...]` writes one PNG a page."""

import socket
import subprocess
import sys
import time
from pathlib import Path

from playwright.sync_api import Browser, sync_playwright

from tests.parts.scenes import SCENES

FLAGS = [
    *("--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking"),
    *("--disable-component-update", "--disable-sync", "--use-gl=angle"),
    *("--use-angle=swiftshader", "--enable-unsafe-swiftshader"),
]
VIEWS = {  # name: width, height, look, text ratio
    "dark": (412, 915, "dark", 1.0),
    "dim": (412, 915, "dim", 1.0),
    "light": (412, 915, "light", 1.0),
    "narrow": (320, 640, "dark", 1.0),
    "large": (412, 915, "dark", 2.0),
    "narrow-large": (320, 640, "light", 2.0),
    "wide": (1280, 800, "light", 1.0),
}


def free_port() -> int:
    """Find a port that nobody listens at."""
    with socket.socket() as door:
        door.bind(("127.0.0.1", 0))
        return int(door.getsockname()[1])


def shoot(browser: Browser, port: int, out: Path, view: str, scenes: list[str]) -> None:
    """Photograph scenes in one view."""
    width, height, look, ratio = VIEWS[view]
    context = browser.new_context(
        viewport={"width": width, "height": height},
        device_scale_factor=1.5,
        has_touch=True,
        is_mobile=width < 900,
    )
    page = context.new_page()
    page.on("console", lambda message: print(message.text) if message.type == "error" else None)  # noqa: T201
    for scene in scenes:
        page.goto(f"http://127.0.0.1:{port}/{scene}?look={look}&text={ratio}")
        page.evaluate(f"document.documentElement.style.fontSize = '{16 * ratio}px'")
        page.wait_for_selector("flt-glass-pane", state="attached", timeout=60_000)
        page.wait_for_timeout(4000)
        page.screenshot(path=str(out / f"{scene}-{view}.png"))
    context.close()


def main(out: Path, views: list[str], scenes: list[str]) -> None:
    """Serve the gallery and photograph it."""
    out.mkdir(parents=True, exist_ok=True)
    port = free_port()
    server = subprocess.Popen([sys.executable, "-m", "tests.parts.gallery", str(port)])
    try:
        time.sleep(4)
        with sync_playwright() as play:
            browser = play.chromium.launch(executable_path="/usr/bin/chromium", args=FLAGS)
            for view in views:
                shoot(browser, port, out, view, scenes)
            browser.close()
    finally:
        server.terminate()


if __name__ == "__main__":
    asked = sys.argv[2:]
    main(
        Path(sys.argv[1]),
        [one for one in asked if one in VIEWS] or list(VIEWS),
        [one for one in asked if one in SCENES] or list(SCENES),
    )
