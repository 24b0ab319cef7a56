"""Firefox ESR: Debian's own build, without a window, driven by WebDriver BiDi.

Without a window it has no WebGL; the page is then drawn on the processor, which works.
"""

import base64
import json
import os
import re
import subprocess
from pathlib import Path
from typing import Any

from tests.browser import hand
from tests.browser.bidi import Bidi
from tests.browser.engine import Screen, call, kill_group, killed_if_it_fails, until

PROGRAM = "/usr/bin/firefox-esr"
ASKED = "input.fileDialogOpened"
SILENT = {
    "app.normandy.enabled": False,
    "app.update.enabled": False,
    "browser.aboutwelcome.enabled": False,
    "browser.region.network.url": "",
    "browser.safebrowsing.downloads.enabled": False,
    "browser.safebrowsing.malware.enabled": False,
    "browser.safebrowsing.phishing.enabled": False,
    "browser.search.update": False,
    "browser.startup.homepage": "about:blank",
    "browser.topsites.contile.enabled": False,
    "datareporting.healthreport.uploadEnabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "dom.push.connection.enabled": False,
    "extensions.getAddons.cache.enabled": False,
    "extensions.systemAddon.update.enabled": False,
    "extensions.update.enabled": False,
    "media.gmp-manager.updateEnabled": False,
    "messaging-system.rsexperimentloader.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "network.dns.disablePrefetch": True,
    "network.prefetch-next": False,
    "nimbus.rollouts.enabled": False,
    "services.settings.server": "data:,none",
    "toolkit.telemetry.enabled": False,
}


class Firefox:
    """Firefox ESR in a window of a phone's size, touched by a thumb."""

    name = "Firefox ESR"
    patience_s = 120.0
    keeps = True
    own_hosts: tuple[str, ...] = ()

    def __init__(self, home: Path, wire: str, screen: Screen) -> None:
        self.screen, profile = screen, home / "profile"
        self.kind = "touch" if screen.touch else "mouse"
        (home / "downloads").mkdir(parents=True, exist_ok=True)
        profile.mkdir(parents=True, exist_ok=True)
        settings(profile, wire, home / "downloads")
        self.errors = (home / "firefox.log").open("a+", encoding="utf-8")
        self.told: list[str] = []
        command = [PROGRAM, "--headless", "--profile", str(profile), "--no-remote"]
        command += ["--new-instance", "--remote-debugging-port=0"]
        mark = self.errors.tell()
        self.process = subprocess.Popen(
            command,
            stdout=self.errors,
            stderr=self.errors,
            start_new_session=True,
            env={**os.environ, "MOZ_REMOTE_SETTINGS_DEVTOOLS": "1"},  # lets the server above count
        )
        with killed_if_it_fails(self.process.pid):
            self.meet(mark)

    def meet(self, mark: int) -> None:
        """Find the first tab of the browser that was started."""
        self.bidi = Bidi(address(Path(self.errors.name), mark, self.process))
        self.bidi.call("session.new", capabilities={})
        self.bidi.call("session.subscribe", events=["log.entryAdded", ASKED])
        self.tabs = [self.bidi.call("browsingContext.getTree")["contexts"][0]["context"]]
        self.tab(0)

    def open(self, url: str) -> None:
        self.bidi.call("browsingContext.navigate", context=self.page, url=url, wait="interactive")

    def ask(self, function: str, *values: object) -> Any:
        said = self.bidi.call(
            "script.evaluate",
            expression=call(function, values),
            target={"context": self.page},
            awaitPromise=True,
        )
        if said["type"] == "exception":
            raise RuntimeError(said["exceptionDetails"]["text"])
        return json.loads(said["result"]["value"])

    def act(self, actions: hand.Steps) -> None:
        """Perform what a hand does."""
        self.bidi.call("input.performActions", context=self.page, actions=actions)

    def touch(self, x: float, y: float) -> None:
        self.act(hand.tap((x, y), self.kind))

    def drag(self, start: hand.Point, end: hand.Point) -> None:
        self.act(hand.drag(start, end, self.kind))

    def write(self, text: str) -> None:
        self.act(hand.typing(text))

    def press(self, key: str) -> None:
        self.act(hand.chord(key))

    def picture(self, path: Path) -> None:
        shot = self.bidi.call("browsingContext.captureScreenshot", context=self.page)
        path.write_bytes(base64.b64decode(shot["data"]))

    def resize(self, width: int, height: int) -> None:
        self.bidi.call(
            "browsingContext.setViewport",
            context=self.page,
            viewport={"width": width, "height": height},
            devicePixelRatio=self.screen.pixels,
        )

    def reload(self) -> None:
        self.bidi.call("browsingContext.reload", context=self.page, wait="interactive")

    def tab(self, number: int) -> None:
        if number == len(self.tabs):
            self.tabs.append(self.bidi.call("browsingContext.create", type="tab")["context"])
        self.page = self.tabs[number]
        self.bidi.call("browsingContext.activate", context=self.page)
        self.resize(self.screen.width, self.screen.height)

    def choose(self, path: Path) -> None:
        field = until(self.asking, 30, lambda: "no file was asked for")
        self.bidi.call("input.setFiles", context=self.page, element=field, files=[str(path)])

    def asking(self) -> dict[str, str] | None:
        """Find the field that the browser asked a file for."""
        self.ask("() => 0")  # lets the engine hear of it
        asked = [event for event in self.bidi.events if event.get("method") == ASKED]
        self.bidi.events = [event for event in self.bidi.events if event not in asked]
        return {"sharedId": asked[-1]["params"]["element"]["sharedId"]} if asked else None

    def troubles(self) -> tuple[str, ...]:
        for event in self.bidi.events:
            entry = event.get("params", {})
            if event.get("method") == "log.entryAdded" and entry["level"] == "error":
                self.told.append(str(entry["text"]))
        self.bidi.events.clear()
        return tuple(self.told)

    def kill(self) -> None:
        kill_group(self.process.pid)
        self.close()

    def close(self) -> None:
        self.bidi.close()
        kill_group(self.process.pid)  # nothing of the app waits for a good end
        self.process.wait(20)
        self.errors.close()


def settings(profile: Path, wire: str, downloads: Path) -> None:
    """Write the settings of a profile: silent, behind the wire, downloads into a folder."""
    host, _, port = wire.partition(":")
    chosen = {
        **SILENT,
        "browser.download.dir": str(downloads),
        "browser.download.folderList": 2,
        "network.proxy.type": 1,
        "network.proxy.http": host,
        "network.proxy.http_port": int(port),
        "network.proxy.ssl": host,
        "network.proxy.ssl_port": int(port),
        "network.proxy.allow_hijacking_localhost": True,
        "network.proxy.no_proxies_on": "",
    }
    lines = [f"user_pref({json.dumps(k)}, {json.dumps(v)});" for k, v in chosen.items()]
    (profile / "user.js").write_text("\n".join(lines), encoding="utf-8")


def address(log: Path, mark: int, process: "subprocess.Popen[bytes]") -> str:
    """Wait until the browser says where it listens."""

    def said() -> str:
        heard = log.read_text(encoding="utf-8", errors="replace")[mark:]
        found = re.search(r"WebDriver BiDi listening on (ws://\S+)", heard)
        return found[1] if found else ""

    return until(said, 60, lambda: f"Firefox said nothing (exit {process.poll()})")
