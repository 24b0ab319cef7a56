"""WebDriver (W3C): one session over plain HTTP."""

import json
import socket
import urllib.request
from http.client import HTTPException
from typing import Any
from urllib.error import HTTPError

from tests.browser.engine import until

PATIENCE_S = 120.0
AROUND_NO_PROXY = urllib.request.build_opener(urllib.request.ProxyHandler({}))


class WebDriver:
    """One session with one browser, through its driver's port."""

    def __init__(self, port: int, wanted: dict[str, object]) -> None:
        self.base = f"http://127.0.0.1:{port}"
        until(self.ready, 30, lambda: f"no driver on port {port}")
        session = self.call("POST", "/session", {"capabilities": {"alwaysMatch": wanted}})
        self.base += f"/session/{session['sessionId']}"

    def ready(self) -> bool:
        """Say whether the driver answers."""
        try:
            return bool(self.call("GET", "/status")["ready"])
        except (OSError, HTTPException):
            return False

    def call(self, method: str, path: str, body: dict[str, object] | None = None) -> Any:
        """Give a command and return its value."""
        data = None if body is None else json.dumps(body).encode()
        asked = urllib.request.Request(self.base + path, data, method=method)
        try:
            with AROUND_NO_PROXY.open(asked, timeout=PATIENCE_S) as answer:
                return json.load(answer)["value"]
        except HTTPError as problem:
            with problem:
                said = json.load(problem)["value"]
            raise RuntimeError(f"{path}: {said['error']}: {said['message']}") from problem

    def post(self, path: str, **body: object) -> Any:
        """Give a command that has a body."""
        return self.call("POST", path, body)


def free_port() -> int:
    """Find a port that nobody has just now."""
    with socket.socket() as held:
        held.bind(("127.0.0.1", 0))
        port: int = held.getsockname()[1]
        return port
