"""The commands: `python -m mobile` runs the app, `build` makes its site, `serve` serves one."""

import argparse
import os
import re
import sys
import webbrowser
from pathlib import Path

from mobile.pwa import serve, site
from mobile.pwa.packages import Unfit
from mobile.pwa.site import Made

LAST_PORT = 65535
PORT = 47365  # always the same: a browser's data belong to an address with its port
HERE = Path(__file__).parents[1] / ".build" / "site"


def tell(line: str) -> None:
    """Write a line."""
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


def main() -> int:
    """Run a command; return 0, or 1 with a message that says the mend."""
    asked = arguments()
    try:
        if asked.command == "build":
            made(asked.out, asked.base)
        elif asked.command == "serve":
            served(asked.dir, asked.port, browser=False)
        else:
            if not site.fresh(HERE, "/"):
                made(HERE, "/")
            served(HERE, asked.port, browser=asked.browser)
    except Unfit as problem:
        sys.stderr.write(f"{problem}\n")
        return 1
    except BrokenPipeError:  # `| head` has read enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except OSError as problem:
        sys.stderr.write(f"{problem.filename or asked.command}: {problem.strerror}.\n")
        return 1
    except KeyboardInterrupt:
        tell("")
    return 0


def arguments() -> argparse.Namespace:
    """Read the command line; on nonsense argparse says so and ends with 2."""
    port = argparse.ArgumentParser(add_help=False)
    port.add_argument(
        "--port",
        type=port_number,
        default=PORT,
        help=f"the port to serve on (default: {PORT}; a browser keeps a book for each)",
    )
    parser = argparse.ArgumentParser(
        prog="python -m mobile",
        description="Run the app: build its site if anything changed, serve it on this machine"
        " only, open the browser.",
        epilog="Ends with 0; with 1 when something is not as it should be (the message says the"
        " mend); with 2 on a wrong command line.",
        parents=[port],
    )
    parser.add_argument("--no-browser", dest="browser", action="store_false", help="only serve")
    commands = parser.add_subparsers(dest="command", metavar="build | serve")
    build = commands.add_parser("build", help="make the site for any static host")
    build.add_argument(
        "--out", type=Path, default=HERE, help="the folder to make (default: .build/site)"
    )
    build.add_argument(
        "--base",
        type=base,
        default="/",
        help="where the host serves it, as in /phone/ (default: /)",
    )
    again = commands.add_parser("serve", help="serve a site made before", parents=[port])
    again.add_argument("--dir", type=Path, default=HERE, help="its folder (default: .build/site)")
    return parser.parse_args()


def port_number(text: str) -> int:
    """Read a port."""
    if not text.isascii() or not text.isdigit() or int(text) > LAST_PORT:
        raise argparse.ArgumentTypeError(f"{text!r} is no port: 1 to {LAST_PORT}, or 0 for any")
    return int(text)


def base(text: str) -> str:
    """Read a base such as `phone`, `/phone` or `/phone/`."""
    path = f"/{text.strip('/')}/".replace("//", "/")
    if not re.fullmatch(r"[A-Za-z0-9._~/-]+", path) or ".." in path:
        raise argparse.ArgumentTypeError(f"{text!r} is no path on a host, such as /phone/")
    return path


def made(into: Path, at: str) -> None:
    """Build, and say what was made."""
    files = site.build(into.resolve(), at, tell)
    width = max(len(file.path) for file in files)
    tell(f"{'':{width}}  {'bytes':>10}  {'gzip':>10}")
    rows = [
        *files,
        Made(
            f"{len(files)} files", sum(f.raw_bytes for f in files), sum(f.sent_bytes for f in files)
        ),
    ]
    for row in rows:
        tell(f"{row.path:{width}}  {row.raw_bytes:>10,}  {row.sent_bytes:>10,}")
    tell(f"Made {into} for {at}")


def served(folder: Path, port: int, *, browser: bool) -> None:
    """Serve until Ctrl-C."""
    with serve.serving(folder.resolve(), port) as (server, address):
        tell(f"Serving {address} (Ctrl-C ends it)")
        if browser and not webbrowser.open(address):
            tell("No browser was found: open this address in one.")
        server.serve_forever()


if __name__ == "__main__":
    sys.exit(main())
