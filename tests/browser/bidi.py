"""WebDriver BiDi (W3C): commands and events over one web socket."""

import json
from contextlib import ExitStack
from typing import Any

from websockets.exceptions import WebSocketException
from websockets.sync.client import connect

PATIENCE_S = 120.0


class Bidi:
    """One session with one browser."""

    def __init__(self, address: str) -> None:
        self.stack = ExitStack()
        self.socket = self.stack.enter_context(
            connect(f"{address}/session", max_size=None, ping_interval=None, proxy=None)
        )
        self.number, self.events = 0, list[dict[str, Any]]()

    def call(self, method: str, **params: object) -> Any:
        """Give a command and wait for its result; keep the events that come in between."""
        self.number += 1
        command = {"id": self.number, "method": method, "params": params}
        self.socket.send(json.dumps(command))
        while (answer := self.hear()).get("id") != self.number:
            self.events.append(answer)
        if answer["type"] == "error":
            raise RuntimeError(f"{method}: {answer['error']}: {answer['message']}")
        return answer["result"]

    def hear(self) -> dict[str, Any]:
        """Wait for the next message."""
        heard: dict[str, Any] = json.loads(self.socket.recv(PATIENCE_S))
        return heard

    def close(self) -> None:
        """Hang up."""
        try:
            self.stack.close()
        except (OSError, WebSocketException):
            return
