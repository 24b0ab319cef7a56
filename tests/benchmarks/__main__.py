"""Measure the built app beside a bare Flet counter: `python -m tests.benchmarks [rounds]`.

The counter is assembled the plain way from the same packages (`counter.py`). The two take turns, in
fresh browser processes, so that a busy machine is busy for both: compare within one run only.
Needs Chromium and brotli.
"""

import os
import sys
import tempfile
from pathlib import Path

from mobile.pwa import site
from tests.benchmarks import counter, starts, taps, weights

ROOT = Path(__file__).parents[2]
BUILT = ROOT / ".build" / "site"


def tell(line: str = "") -> None:
    """Write a line."""
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


def main() -> None:
    """Build both, measure, and print."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 5
    if not site.fresh(BUILT, "/"):
        site.build(BUILT, "/", tell)
    with tempfile.TemporaryDirectory(prefix="duskcoat-") as name:
        bare = counter.assembled(Path(name) / "counter")
        tell(f"load average {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores; {rounds} rounds")
        tell()
        fetched = starts.measured(BUILT, bare, Path(name), rounds, tell)
        tell()
        taps.measured(BUILT, bare, Path(name), tell)
        tell()
        weights.measured(BUILT, bare, fetched, tell)


if __name__ == "__main__":
    main()
