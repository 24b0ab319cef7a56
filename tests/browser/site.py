"""The built site, served on a free port; its server can be stopped and started again."""

import threading
from contextlib import ExitStack
from pathlib import Path

from mobile.pwa import serve


class Served:
    """A folder that is served on loopback, always at the same address."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.stack, self.address = folder, ExitStack(), ""
        self.port = 0
        self.start()

    def start(self) -> None:
        """Serve it (again)."""
        server, self.address = self.stack.enter_context(serve.serving(self.folder, self.port))
        self.port = server.server_port
        server.daemon_threads, server.block_on_close = True, False
        thread = threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True)
        thread.start()
        self.stack.callback(thread.join)
        self.stack.callback(server.shutdown)

    def stop(self) -> None:
        """Take the server away."""
        self.stack.close()
