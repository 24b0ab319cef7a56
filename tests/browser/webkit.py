"""WebKitGTK: Debian's MiniBrowser in a window of Xvfb, driven by WebDriver.

Under a driver it keeps nothing over its end (its profile is of the moment), so a killed phone
can't be tried here; a reload can.
"""

import base64
import json
import os
import subprocess
from pathlib import Path
from typing import Any

from tests.browser import hand
from tests.browser.engine import Screen, call, kill_group, killed_if_it_fails, until
from tests.browser.webdriver import WebDriver, free_port

DRIVER = "/usr/bin/WebKitWebDriver"
XVFB = "/usr/bin/Xvfb"
# The driver can't read the console: the page itself is asked to keep what is said on it. A driven
# browser that shall ask for a file gives up at once.
HEAR = """() => {
  if (globalThis.heard) return;
  const heard = globalThis.heard = [], say = console.error;
  console.error = (...words) => { heard.push(words.join(' ')); say(...words); };
  addEventListener('error', (event) => heard.push(event.message));
  addEventListener('unhandledrejection', (event) => heard.push(String(event.reason)));
  addEventListener('cancel', ({ target }) => { globalThis.asked = target; }, true);
}"""
LANGUAGE = {"LANG": "en_US.UTF-8", "LC_ALL": "en_US.UTF-8"}  # "c" would be no language to Flutter


def program() -> str:
    """Find MiniBrowser, which lies beside the library and not on the path."""
    found = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.1/MiniBrowser"))
    return str(found[0]) if found else ""


class WebKit:
    """WebKitGTK in a window as small as it gets (its own bar needs some 450 dp)."""

    name = "WebKitGTK"
    patience_s = 300.0
    keeps = False
    own_hosts: tuple[str, ...] = ()

    def __init__(self, home: Path, wire: str, screen: Screen) -> None:
        home.mkdir(parents=True, exist_ok=True)
        self.screen = screen
        self.log = (home / "webkit.log").open("a", encoding="utf-8")
        self.xvfb, display = virtual_screen()
        port = free_port()
        gl = {"LIBGL_ALWAYS_SOFTWARE": "1", "DISPLAY": display}
        self.process = subprocess.Popen(
            [DRIVER, f"--port={port}", "--host=127.0.0.1"],
            stdout=self.log,
            stderr=self.log,
            env={**os.environ, **LANGUAGE, **gl},
            start_new_session=True,
        )
        with killed_if_it_fails(self.process.pid), killed_if_it_fails(self.xvfb.pid):
            self.meet(port, wire)

    def meet(self, port: int, wire: str) -> None:
        """Find the first tab of the browser that the driver starts."""
        self.driver = WebDriver(port, wanted(wire))
        self.driver.post("/timeouts", pageLoad=120_000, script=120_000)
        self.tabs = [self.driver.call("GET", "/window")]
        self.resize(self.screen.width, self.screen.height)

    def open(self, url: str) -> None:
        self.driver.post("/url", url=url)
        self.ask(HEAR)

    def ask(self, function: str, *values: object) -> Any:
        script = f"return {call(function, values)}"
        return json.loads(self.driver.post("/execute/sync", script=script, args=[]))

    def act(self, actions: hand.Steps) -> None:
        """Perform what a hand does."""
        self.driver.post("/actions", actions=actions)

    def touch(self, x: float, y: float) -> None:
        self.act(hand.tap((x, y), "touch"))

    def drag(self, start: hand.Point, end: hand.Point) -> None:
        self.act(hand.drag(start, end, "touch"))

    def write(self, text: str) -> None:
        self.act(hand.typing(text))

    def press(self, key: str) -> None:
        self.act(hand.chord(key))

    def picture(self, path: Path) -> None:
        path.write_bytes(base64.b64decode(self.driver.call("GET", "/screenshot")))

    def resize(self, width: int, height: int) -> None:
        self.driver.post("/window/rect", width=width, height=height)

    def reload(self) -> None:
        self.driver.post("/refresh")
        self.ask(HEAR)

    def tab(self, number: int) -> None:
        if number == len(self.tabs):
            self.tabs.append(self.driver.post("/window/new", type="tab")["handle"])
        self.driver.post("/window", handle=self.tabs[number])

    def choose(self, path: Path) -> None:
        asked = "() => globalThis.asked?.isConnected"
        until(lambda: self.ask(asked), 30, lambda: "no file was asked for")
        field = self.driver.post("/execute/sync", script="return globalThis.asked", args=[])
        (name,) = field.values()
        self.driver.post(f"/element/{name}/value", text=str(path))

    def troubles(self) -> tuple[str, ...]:
        return tuple(self.ask("() => globalThis.heard ?? []"))

    def kill(self) -> None:
        self.close()

    def close(self) -> None:
        kill_group(self.process.pid)
        self.process.wait(20)
        self.xvfb.kill()
        self.xvfb.wait(20)
        self.log.close()


def wanted(wire: str) -> dict[str, object]:
    """Ask for MiniBrowser, behind the wire."""
    browser = {"binary": program(), "args": ["--automation"]}
    proxy = {"proxyType": "manual", "httpProxy": wire, "sslProxy": wire}
    return {"webkitgtk:browserOptions": browser, "proxy": proxy, "pageLoadStrategy": "eager"}


def virtual_screen() -> "tuple[subprocess.Popen[bytes], str]":
    """Start a screen that nobody sees, on a free number; return it and its name."""
    near, far = os.pipe()
    command = [XVFB, "-displayfd", str(far), "-screen", "0", "1400x1000x24", "-nolisten", "tcp"]
    process = subprocess.Popen(
        command, pass_fds=(far,), stderr=subprocess.DEVNULL, start_new_session=True
    )
    os.close(far)
    with os.fdopen(near) as said:
        return process, f":{said.readline().strip()}"
