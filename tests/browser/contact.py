"""Photograph every screen in every window: `python -m tests.browser.contact [look ...]`.

Writes one picture a screen and window, and one sheet of them a window, to `.build/shots/contact`.
"""

import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.browser.chromium import FLAGS, PROGRAM, Chromium
from tests.browser.conftest import BUILT, SHOTS
from tests.browser.engine import Screen
from tests.browser.phone import phone_of
from tests.browser.site import Served
from tests.browser.tour import Walk
from tests.browser.windows import HAND, WINDOWS, at_rest, fit

LOOKS = ("dark", "dim", "light")
OUT = SHOTS / "contact"
SHEET = (1600, 900)
STYLE = "<style>body{margin:8px;background:#707;font:14px sans-serif;color:#fff}"
STYLE += "figure{display:inline-block;margin:4px;vertical-align:top}img{width:%dpx}</style>"


def photograph(look: str) -> None:
    """Walk over all screens in one look, photographing each in every window."""
    served = Served(BUILT)
    with (
        tempfile.TemporaryDirectory() as home,
        phone_of(Chromium, Path(home) / "phone", Screen(pixels=1.0)) as phone,
    ):
        walk = Walk(phone)
        phone.open(served.address)
        walk.dress(look)
        for at, screen in enumerate(walk.whole()):
            for window in WINDOWS:
                fit(phone, window)
                at_rest(phone)
                name = f"{at:02}-{screen.replace(' ', '-')}.png"
                phone.picture(OUT / look / str(window) / name)
            fit(phone, HAND)
    served.stop()


def figure(picture: Path) -> str:
    """Show a picture with its name under it."""
    said = f"<figcaption>{picture.stem}</figcaption>"
    return f"<figure><img src='{picture.name}'>{said}</figure>"


def sheets() -> None:
    """Put the pictures of each look and window onto one sheet."""
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=PROGRAM, args=FLAGS)
        page = browser.new_page(viewport={"width": SHEET[0], "height": SHEET[1]})
        for folder in sorted(OUT.glob("*/*/")):
            wide = 620 if folder.name.startswith("1280") else 250
            figures = [figure(picture) for picture in sorted(folder.glob("*.png"))]
            listed = folder / "sheet.html"
            listed.write_text(STYLE % wide + "".join(figures), encoding="utf-8")
            page.goto(listed.as_uri())
            page.screenshot(path=OUT / f"{folder.parent.name}-{folder.name}.png", full_page=True)
        browser.close()


if __name__ == "__main__":
    for asked in sys.argv[1:] or LOOKS:
        photograph(asked)
    sheets()
