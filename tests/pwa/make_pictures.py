"""Render the app's icon to PNG: `python -m tests.pwa.make_pictures` (needs Chromium)."""

import base64
import sys
from pathlib import Path

from playwright.sync_api import Page, sync_playwright

from mobile.pwa.page import GROUND
from tests.browser.chromium import FLAGS, PROGRAM

ICONS = Path(__file__).parents[2] / "assets" / "icons"
SIZES = (("icon-192", 192, 0.0), ("icon-512", 512, 0.0), ("icon-maskable-512", 512, 0.1))


def main() -> None:
    """Render and write."""
    drawn = base64.b64encode((ICONS / "icon.svg").read_bytes()).decode()
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=PROGRAM, args=list(FLAGS))
        for name, size_px, free_ratio in SIZES:
            page = browser.new_page(viewport={"width": size_px, "height": size_px})
            picture(page, drawn, size_px, free_ratio)
            page.screenshot(path=ICONS / f"{name}.png")
            sys.stdout.write(f"{name}.png\n")
        browser.close()


def picture(page: Page, drawn: str, size_px: int, free_ratio: float) -> None:
    """Lay the icon on the page, with some of each side left free."""
    page.set_content(
        f'<body style="margin:0;background:{GROUND}"><img src="data:image/svg+xml;base64,{drawn}"'
        f' style="position:absolute;inset:{size_px * free_ratio:.0f}px;'
        f'width:{size_px * (1 - 2 * free_ratio):.0f}px"></body>'
    )
    page.wait_for_function("document.images[0].complete")


if __name__ == "__main__":
    main()
