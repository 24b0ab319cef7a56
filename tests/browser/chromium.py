"""Chromium as a phone: Debian's own build, driven by Playwright."""

import contextlib
import json
from pathlib import Path
from typing import Any

from playwright.sync_api import (
    BrowserContext,
    ConsoleMessage,
    Download,
    Error,
    FileChooser,
    sync_playwright,
)

from tests.browser.engine import Screen, call, kill_group, until

PROGRAM = "/usr/bin/chromium"
FLAGS = (
    "--no-sandbox",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-domain-reliability",
    "--use-gl=angle",
    "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
)
PHONE = (
    "Mozilla/5.0 (Linux; Android 14; Mobile) AppleWebKit/537.36 (KHTML, like Gecko)"
    " Chrome/156.0.0.0 Mobile Safari/537.36"
)


class Chromium:
    """Chromium with a phone's profile: touch, mobile, device pixels."""

    name = "Chromium"
    patience_s = 120.0
    keeps = True
    own_hosts: tuple[str, ...] = (
        "accounts.google.com",
        "content-autofill.googleapis.com",
        "update.googleapis.com",
    )

    def __init__(self, home: Path, wire: str, screen: Screen) -> None:
        self.home, self.screen = home, screen
        self.play = sync_playwright().start()
        self.told: list[str] = []
        self.asked: list[FileChooser] = []
        self.downloads = home / "downloads"
        self.downloads.mkdir(parents=True, exist_ok=True)
        self.context: BrowserContext = self.play.chromium.launch_persistent_context(
            home / "profile",
            executable_path=PROGRAM,
            args=FLAGS,
            proxy={"server": f"http://{wire}", "bypass": "<-loopback>"},
            viewport={"width": screen.width, "height": screen.height},
            device_scale_factor=screen.pixels,
            is_mobile=screen.touch,
            has_touch=screen.touch,
            user_agent=PHONE if screen.touch else None,
            accept_downloads=True,
        )
        self.context.on("console", self.hear)
        self.context.on("weberror", lambda problem: self.told.append(str(problem.error)))
        self.leader = leader(home / "profile")
        self.tabs = [self.context.pages[0]]
        self.tab(0)

    def hear(self, message: ConsoleMessage) -> None:
        """Keep an error of the console."""
        if message.type == "error":
            self.told.append(f"{message.text} ({message.location.get('url', '')})")

    def keep(self, download: Download) -> None:
        """Put a downloaded file into the folder of downloads."""
        download.save_as(self.downloads / download.suggested_filename)

    def note(self, chooser: FileChooser) -> None:
        """Note that the browser asks for a file."""
        self.asked.append(chooser)

    def open(self, url: str) -> None:
        self.page.goto(url, wait_until="commit")

    def ask(self, function: str, *values: object) -> Any:
        return json.loads(self.page.evaluate(call(function, values)))

    def touch(self, x: float, y: float) -> None:
        if self.screen.touch:
            self.page.touchscreen.tap(x, y)
        else:
            self.page.mouse.click(x, y)

    def drag(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        hand = self.context.new_cdp_session(self.page)
        for part in range(6):
            x, y = (near + (far - near) * part / 5 for near, far in zip(start, end, strict=True))
            kind = "touchMove" if part else "touchStart"
            hand.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": [{"x": x, "y": y}]})
        self.page.wait_for_timeout(200)  # a finger that rests: no fling
        hand.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})
        hand.detach()

    def write(self, text: str) -> None:
        self.page.keyboard.type(text, delay=20)

    def press(self, key: str) -> None:
        self.page.keyboard.press(key)

    def picture(self, path: Path) -> None:
        self.page.screenshot(path=path)

    def resize(self, width: int, height: int) -> None:
        self.page.set_viewport_size({"width": width, "height": height})

    def reload(self) -> None:
        self.page.reload(wait_until="commit")

    def tab(self, number: int) -> None:
        if number == len(self.tabs):
            self.tabs.append(self.context.new_page())
        self.page = self.tabs[number]
        self.page.on("download", self.keep)
        self.page.on("filechooser", self.note)
        self.page.bring_to_front()

    def choose(self, path: Path) -> None:
        asked = until(self.choosers, 30, lambda: "no file was asked for")
        asked[-1].set_files(path)
        self.asked.clear()

    def choosers(self) -> list[FileChooser]:
        """Tell where the browser has asked for a file."""
        self.ask("() => 0")  # lets the engine hear of it
        return self.asked

    def troubles(self) -> tuple[str, ...]:
        return tuple(self.told)

    def kill(self) -> None:
        kill_group(self.leader)
        self.close()

    def close(self) -> None:
        with contextlib.suppress(Error):
            self.context.close()
        self.play.stop()


def leader(profile: Path) -> int:
    """Find the first process of the browser that has this profile."""
    for folder in Path("/proc").iterdir():
        with contextlib.suppress(OSError):
            words = (folder / "cmdline").read_text(encoding="utf-8", errors="replace").split("\0")
            if f"--user-data-dir={profile}" in words and not any(
                word.startswith("--type=") for word in words
            ):
                return int(folder.name)
    raise LookupError(f"no Chromium with the profile {profile}")
