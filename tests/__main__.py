"""The one check command: `python -m tests`, and `--all` for the browsers too.

    python -m tests              format, lint, types, borders, house rules, unit and property tests
    python -m tests --all        the same, then the site is built and driven in real browsers
    python -m tests FILE...      pytest alone, with whatever is handed to it

It goes on past a failure, ends with the sum, and answers 0 only if nothing failed. A browser that
is not there is named at the end as not run; under CI=true that is a failure.
"""

import os
import re
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor, as_completed
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[1]
PYTHON = sys.executable
BORDERS = "from importlinter.cli import lint_imports_command as check; check()"
BROWSERS = ("Chromium", "Firefox ESR", "WebKitGTK")
USUAL = (PYTHON, "-m", "pytest", "-rs", "-m", "not browser", "--timeout=300")
COUNT = re.compile(r"(\d+) (passed|failed|errors?|skipped)\b")


@dataclass(frozen=True, slots=True)
class Step:
    """One check: its name, its command, and whether its words are shown while it runs."""

    name: str
    command: tuple[str, ...]
    aloud: bool = False

    @property
    def pytest(self) -> bool:
        """Say whether it counts its own tests."""
        return "pytest" in self.command


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a step said, how it ended, how long it took."""

    step: Step
    words: str
    ended: int
    took_s: float

    def counts(self) -> tuple[int, int, int]:
        """Count what passed, failed and was skipped."""
        if not self.step.pytest:
            return (0, 1, 0) if self.ended else (1, 0, 0)
        last = self.words.rstrip().rpartition("\n")[2]
        found = {word.removesuffix("s"): int(count) for count, word in COUNT.findall(last)}
        failed = found.get("failed", 0) + found.get("error", 0)
        if self.ended and not failed:  # it could not even begin, or it found no test
            failed = 1
        return found.get("passed", 0), failed, found.get("skipped", 0)

    def line(self) -> str:
        """Say it in a line."""
        passed, failed, skipped = self.counts()
        told = f"{passed} passed, {failed} failed, {skipped} skipped" if self.step.pytest else ""
        word = "FAILED" if self.ended else "ok"
        return f"{word:7}{self.step.name:22}{self.took_s:7.1f} s  {told}".rstrip()


TOLD = ("mobile/words", "mobile/session")  # their docstrings show examples
APART = tuple(f"--ignore=tests/{room}" for room in ("core", "house", "screens", "store"))
QUICK = (  # the longest first, so that two at a time end together
    Step("other tests", (*USUAL, *TOLD, "tests", *APART)),
    Step("store", (*USUAL, "tests/store")),
    Step("screens", (*USUAL, "tests/screens")),
    Step("core", (*USUAL, "core", "tests/core")),
    Step("types", (PYTHON, "-m", "mypy")),
    Step("house rules", (*USUAL, "tests/house")),
    Step("borders", (PYTHON, "-c", BORDERS)),
    Step("lint", (PYTHON, "-m", "ruff", "check", "--quiet", ".")),
    Step("format", (PYTHON, "-m", "ruff", "format", "--check", "--quiet", ".")),
)
SLOW = (
    Step("site", (PYTHON, "-m", "mobile", "build"), aloud=True),
    Step("browsers", (PYTHON, "-m", "pytest", "-rs", "-v", "-m", "browser", "tests"), aloud=True),
)


def main() -> int:
    """Run what is asked for; return 0 if nothing failed."""
    asked = sys.argv[1:]
    if set(asked) & {"-h", "--help"}:
        say(__doc__)
        return 0
    if asked and asked != ["--all"]:
        handed = [str(Path(word).resolve()) if Path(word).exists() else word for word in asked]
        return subprocess.call([PYTHON, "-m", "pytest", *handed], cwd=ROOT)
    outcomes = list(run(QUICK, 2))
    if asked:
        outcomes += run(SLOW, 1)
    return close(outcomes, browsers=bool(asked))


def run(steps: tuple[Step, ...], at_once: int) -> Iterator[Outcome]:
    """Run steps, so many at a time; say each one's end, and everything it said if it failed."""
    with ThreadPoolExecutor(at_once) as pool:
        for done in as_completed([pool.submit(one, step) for step in steps]):
            outcome = done.result()
            if outcome.ended and not outcome.step.aloud:
                say(f"\n--- {outcome.step.name}\n{outcome.words.rstrip()}")
            say(outcome.line())
            yield outcome


def one(step: Step) -> Outcome:
    """Run one step to its end."""
    began = time.monotonic()
    process = subprocess.Popen(
        step.command,
        cwd=ROOT,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
        env={**os.environ, "PYTHONUNBUFFERED": "1"},
    )
    with process:
        words = list(heard(process, step))
    return Outcome(step, "".join(words), process.returncode, time.monotonic() - began)


def heard(process: "subprocess.Popen[str]", step: Step) -> Iterator[str]:
    """Listen to a step, and repeat it where it runs aloud."""
    for line in process.stdout or ():
        if step.aloud:
            say(line.rstrip())
        yield line


def close(outcomes: list[Outcome], *, browsers: bool) -> int:
    """Sum up; the last line names the browsers that were not run."""
    sums = [sum(counts) for counts in zip(*(each.counts() for each in outcomes), strict=True)]
    said = "\n".join(each.words for each in outcomes if each.step.name == "browsers")
    ran = re.search(r"^browsers run: (.*)$", said, re.MULTILINE)
    missing = [name for name in BROWSERS if not ran or name not in ran[1].split(", ")]
    if browsers and os.environ.get("CI") == "true":
        sums[1] += len(missing)
    say(f"\n{sums[0]} passed, {sums[1]} failed, {sums[2]} skipped")
    if missing:
        hint = "" if browsers else " (python -m tests --all runs them)"
        say(f"browsers not run: {', '.join(missing)}{hint}")
    return 1 if sums[1] else 0


def say(line: str) -> None:
    """Write a line at once."""
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
