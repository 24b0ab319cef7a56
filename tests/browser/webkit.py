"""WebKitGTK: Debian's MiniBrowser in a window of Xvfb, driven by WebDriver.

Under a driver it keeps nothing over its end (its profile is of the moment), so a killed phone
can't be tried here; a reload can.
"""

import json
import os
import subprocess
from pathlib import Path
from typing import Any

from selenium import webdriver
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

from tests.browser import hand
from tests.browser.engine import Screen, call, kill_group

DRIVER = "/usr/bin/WebKitWebDriver"
XVFB = "/usr/bin/Xvfb"
LANGUAGE = {"LANG": "en_US.UTF-8", "LC_ALL": "en_US.UTF-8"}  # "c" would be no language to Flutter


def program() -> str:
    """Find MiniBrowser, which lies beside the library and not on the path."""
    found = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.1/MiniBrowser"))
    return str(found[0]) if found else ""


class WebKit:
    """WebKitGTK in a window as small as it gets (its own bar needs some 450 dp)."""

    name = "WebKitGTK"
    own_hosts: tuple[str, ...] = ()

    def __init__(self, home: Path, wire: str, screen: Screen) -> None:
        home.mkdir(parents=True, exist_ok=True)
        self.screen = screen
        self.log = (home / "webkit.log").open("a", encoding="utf-8")
        self.xvfb, display = virtual_screen()
        host, _, port = wire.partition(":")
        options = Options()
        options.binary_location = program()
        options.add_argument("--automation")
        options.set_capability(
            "proxy",
            {
                "proxyType": "manual",
                "httpProxy": f"{host}:{port}",
                "sslProxy": f"{host}:{port}",
            },
        )
        gl = {"LIBGL_ALWAYS_SOFTWARE": "1", "DISPLAY": display}
        self.service = Service(
            DRIVER,
            env={**os.environ, **LANGUAGE, **gl},
            log_output=self.log,
            popen_kw={"start_new_session": True},
        )
        self.driver = webdriver.WebKitGTK(options=options, service=self.service)
        self.driver.set_page_load_timeout(120)
        self.tabs = [self.driver.current_window_handle]
        self.resize(screen.width, screen.height)

    def open(self, url: str) -> None:
        self.driver.get(url)

    def ask(self, function: str, *values: object) -> Any:
        return json.loads(self.driver.execute_script(f"return {call(function, values)}"))

    def act(self, actions: hand.Steps) -> None:
        """Perform what a hand does."""
        self.driver.execute("actions", {"actions": actions})

    def touch(self, x: float, y: float) -> None:
        self.act(hand.tap((x, y), "touch"))

    def drag(self, start: hand.Point, end: hand.Point) -> None:
        self.act(hand.drag(start, end, "touch"))

    def write(self, text: str) -> None:
        self.act(hand.typing(text))

    def press(self, key: str) -> None:
        self.act(hand.chord(key))

    def picture(self, path: Path) -> None:
        self.driver.save_screenshot(str(path))

    def resize(self, width: int, height: int) -> None:
        self.driver.set_window_size(width, height)

    def reload(self) -> None:
        self.driver.refresh()

    def tab(self, number: int) -> None:
        if number == len(self.tabs):
            self.driver.switch_to.new_window("tab")
            self.tabs.append(self.driver.current_window_handle)
        self.driver.switch_to.window(self.tabs[number])

    def troubles(self) -> tuple[str, ...]:
        return ()  # the driver has no way to read the console

    def kill(self) -> None:
        self.close()

    def close(self) -> None:
        process = self.service.process
        if process is not None:
            kill_group(process.pid)
            process.wait(20)
        self.xvfb.kill()
        self.xvfb.wait(20)
        self.log.close()


def virtual_screen() -> "tuple[subprocess.Popen[bytes], str]":
    """Start a screen that nobody sees, on a free number; return it and its name."""
    near, far = os.pipe()
    command = [XVFB, "-displayfd", str(far), "-screen", "0", "1400x1000x24", "-nolisten", "tcp"]
    process = subprocess.Popen(command, pass_fds=(far,), stderr=subprocess.DEVNULL)
    os.close(far)
    with os.fdopen(near) as said:
        return process, f":{said.readline().strip()}"
