"""The one wire out of a browser: a proxy on loopback that writes down whatever is asked for.

It sees what a page, its workers and its service worker ask for, in every engine alike, and it is
where a test cuts the network. It forwards to loopback only; a call to anywhere else is written
down and refused.
"""

import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from urllib.parse import urlsplit

LOOPBACK = ("127.0.0.1", "localhost")


class Wire(ThreadingHTTPServer):
    """Forward to loopback while not cut; keep every address that was asked for."""

    daemon_threads = True
    block_on_close = False
    request_queue_size = 128  # a browser calls many times at once; the usual 5 lost some

    def __init__(self) -> None:
        super().__init__(("127.0.0.1", 0), Call)
        self.address = f"127.0.0.1:{self.server_address[1]}"
        self.asked: list[str] = []
        self.cut = False

    def handle_error(self, request: object, client_address: object) -> None:
        """Let a browser hang up in the middle of an answer: killed ones do."""


class Call(BaseHTTPRequestHandler):
    """One call of a browser."""

    server: Wire

    def do_GET(self) -> None:
        """Hand a plain call on, and its answer back."""
        self.server.asked.append(self.path)
        goal = urlsplit(self.path)
        self.close_connection = True
        with self.through(goal.hostname, goal.port or 80) as far:
            if far is None:
                return
            path = goal.path + ("?" + goal.query if goal.query else "")
            kept = [(k, v) for k, v in self.headers.items() if "connection" not in k.lower()]
            lines = [f"{self.command} {path} HTTP/1.1", *(f"{k}: {v}" for k, v in kept)]
            far.sendall("\r\n".join([*lines, "Connection: close", "", ""]).encode("latin-1"))
            far.sendall(self.rfile.read(int(self.headers.get("content-length", 0))))
            self.pour(far, self.connection)

    do_HEAD = do_POST = do_GET  # noqa: N815  the names are http.server's

    def do_CONNECT(self) -> None:
        """Join two ends of a tunnel (a web socket, or a call to https)."""
        self.server.asked.append(f"tunnel://{self.path}")
        host, _, port = self.path.rpartition(":")
        self.close_connection = True
        with self.through(host, int(port)) as far:
            if far is None:
                return
            self.wfile.write(b"HTTP/1.1 200 OK\r\n\r\n")
            back = threading.Thread(target=self.pour, args=(far, self.connection), daemon=True)
            back.start()
            self.pour(self.connection, far)
            back.join()

    @contextmanager
    def through(self, host: str | None, port: int) -> Iterator[socket.socket | None]:
        """Connect to loopback, or to nothing at all where the wire is cut or leads elsewhere."""
        if self.server.cut or host not in LOOPBACK:
            yield None
            return
        try:
            far = socket.create_connection((host, port), timeout=60)
        except OSError:
            yield None
            return
        with far:
            yield far

    def pour(self, near: socket.socket, far: socket.socket) -> None:
        """Copy bytes until one end hangs up or the wire is cut."""
        try:
            while not self.server.cut and (some := near.recv(65536)):
                far.sendall(some)
            far.shutdown(socket.SHUT_WR)
        except OSError:
            return

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  the name is http.server's
        """Say nothing on the terminal; `asked` holds it."""


@contextmanager
def wire() -> Iterator[Wire]:
    """Lay a wire for one browser."""
    laid = Wire()
    threading.Thread(target=laid.serve_forever, args=(0.05,), daemon=True).start()
    try:
        yield laid
    finally:
        laid.shutdown()
        laid.server_close()
