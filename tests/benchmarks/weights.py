"""What a first start fetches: bytes by part, as they are and compressed by brotli."""

import hashlib
import json
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import brotli  # type: ignore[import-untyped]

KNOWN = Path(__file__).parents[2] / ".build" / "brotli.json"
QUALITY = 11  # what a host sends that compresses ahead
PARTS = (
    ("CanvasKit", ("canvaskit/",)),
    ("Flutter and Flet's client", ("main.dart.js", "flutter")),
    ("Python itself", ("pyodide/pyodide",)),
    ("its standard library", ("pyodide/python_stdlib", "python/library")),
    ("packages", ("python/packages",)),
    ("the app", ("python/app", "app.tar.gz")),
    ("fonts", ("assets/fonts/", "assets/packages/")),
    ("page, pictures, licences, rest", ("",)),
)
Sizes = dict[str, tuple[int, int]]


def part_of(path: str) -> str:
    """Say to which part a file belongs."""
    return next(part for part, begins in PARTS if path.startswith(begins))


def app_files(built: Path) -> Iterator[str]:
    """Name what the service worker keeps in Chromium."""
    for path in sorted(built.rglob("*")):
        name = path.relative_to(built).as_posix()
        other_engine = name.startswith("canvaskit/") and "/chromium/" not in name
        if path.is_file() and not other_engine:
            yield name


def sizes(folder: Path, names: list[str]) -> Sizes:
    """Add up the files of each part: (as they are, compressed)."""
    known: dict[str, int] = json.loads(KNOWN.read_text("utf-8")) if KNOWN.exists() else {}
    whole = [(folder / name).read_bytes() for name in names]
    hashed = [hashlib.sha256(data).hexdigest() for data in whole]

    def sent(data: bytes, key: str) -> int:
        return known.get(key) or len(brotli.compress(data, quality=QUALITY))

    with ThreadPoolExecutor() as pool:
        all_sent = list(pool.map(sent, whole, hashed))
    KNOWN.parent.mkdir(exist_ok=True)
    KNOWN.write_text(json.dumps(known | dict(zip(hashed, all_sent, strict=True))), "utf-8")
    made: Sizes = {}
    for name, data, small in zip(names, whole, all_sent, strict=True):
        raw, all_small = made.get(part_of(name), (0, 0))
        made[part_of(name)] = (raw + len(data), all_small + small)
    return made


def measured(built: Path, bare: Path, fetched: frozenset[str], tell: Callable[[str], None]) -> None:
    """Weigh both and print."""
    app = sizes(built, list(app_files(built)))
    names = sorted(path.strip("/") or "index.html" for path in fetched)
    plain = sizes(bare, [name for name in names if (bare / name).is_file()])
    tell(f"{'First start fetches, bytes':32}{'app':>11}{'brotli':>11}{'counter':>12}{'brotli':>11}")
    rows = [(part, app.get(part, (0, 0)), plain.get(part, (0, 0))) for part, _ in PARTS]
    for part, ours, theirs in rows:
        tell(f"  {part:30}{ours[0]:11,}{ours[1]:11,}{theirs[0]:12,}{theirs[1]:11,}")
    raw, sent = (sum(size[kind] for size in app.values()) for kind in (0, 1))
    bare_raw, bare_sent = (sum(size[kind] for size in plain.values()) for kind in (0, 1))
    tell(f"  {'all':30}{raw:11,}{sent:11,}{bare_raw:12,}{bare_sent:11,}")
