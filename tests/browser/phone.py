"""A person's phone: see words, tap what bears them, type, lose the signal, lose the power.

One phone speaks through any of three engines. What it sees are the nodes that a screen reader
finds; it touches the middle of one, as a thumb does, and waits for words, never for time.
"""

import re
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any, TypeVar, cast
from urllib.parse import urlsplit

from mobile.session.mix.weigh_out import BOUNCE_S
from tests.browser.engine import Engine, Screen, until
from tests.browser.wire import Wire, wire

Found = TypeVar("Found")
SEMANTICS = Path(__file__).with_name("semantics.js").read_text(encoding="utf-8")
SEMANTICS = re.sub(r"^//.*\n", "", SEMANTICS, flags=re.MULTILINE)
LIES_ON_TOP = """(x, y) => {
  const top = document.elementFromPoint(x, y);
  const ids = [];
  for (let node = top; node; node = node.parentElement) if (node.id) ids.push(node.id);
  return ids;
}"""

SPLASH = """() => {
  const splash = document.getElementById('splash');
  return splash && !splash.hidden ? splash.innerText : '';
}"""

WEIGHED = ("On the mark", "Stirred, done", "Use ", "Make ", "Keep it", "Tip it out")
POINT = "point"  # what the app's decimal key is called aloud
# With the words switched on, the page's field has the focus some frames before Flutter hears it.
SETTLED_S = 0.4  # with accessibility on, the engine drops keys that come at once after the focus
FRAMES = """() => new Promise((done) => {
  let left = 8;
  const next = () => { if (left--) requestAnimationFrame(next); else done(1); };
  next();
})"""


@dataclass(frozen=True, slots=True)
class Box:
    """One node of the page: what it is, what it says, where it lies (dp)."""

    id: str
    parent: str
    role: str
    name: str
    left: float
    top: float
    width: float
    height: float
    tap: bool
    value: str
    chosen: bool
    off: bool
    cut: bool
    """It touches the edge of a list that scrolls, so that a part of it may be out of sight."""

    @property
    def middle(self) -> tuple[float, float]:
        """Find where a thumb would touch it."""
        return self.left + self.width / 2, self.top + self.height / 2


HAS_FOCUS = """(x, y) => {
  const at = document.activeElement, box = at?.getBoundingClientRect();
  if (!/INPUT|TEXTAREA/.test(at?.tagName)) return false;
  return box.left <= x && x <= box.right && box.top <= y && y <= box.bottom;
}"""


class Phone:
    """A phone that keeps its profile when its power goes."""

    def __init__(self, kind: type[Engine], home: Path, line: Wire, screen: Screen) -> None:
        self.kind, self.home, self.line, self.screen = kind, home, line, screen
        self.taps = 0
        self.start()

    def start(self) -> None:
        """Start the browser (again), with the profile as it was left."""
        self.engine = self.kind(self.home, self.line.address, self.screen)

    def kill(self) -> None:
        """Take the battery out: SIGKILL to every process of the browser."""
        self.engine.kill()

    def open(self, url: str) -> None:
        """Go to an address."""
        self.engine.open(url)

    def reload(self) -> None:
        """Reload the page."""
        self.engine.reload()

    def back(self) -> None:
        """Go one address back."""
        self.engine.ask("() => history.back()")

    def cut(self) -> None:
        """Lose the signal: nothing goes over the wire any more."""
        self.line.cut = True

    def join(self) -> None:
        """Find the signal again."""
        self.line.cut = False

    def asked_elsewhere(self, site: str) -> tuple[str, ...]:
        """Tell what was asked for outside a site's host; the browser's own calls left out."""
        known = {urlsplit(site).netloc, *(f"{host}:443" for host in self.kind.own_hosts)}
        known |= set(self.kind.own_hosts)
        return tuple(url for url in self.line.asked if urlsplit(url).netloc not in known)

    def wait(
        self, found: Callable[[], Found], seconds: float | None, missed: Callable[[], str]
    ) -> Found:
        """Wait for something, as long as the engine may take."""
        return until(found, self.kind.patience_s if seconds is None else seconds, missed)

    def boxes(self) -> tuple[Box, ...]:
        """Read all nodes of the page that say something or can be touched, in reading order."""
        found = cast("list[dict[str, Any]]", self.engine.ask(SEMANTICS))
        return tuple(Box(**node) for node in found)

    def words(self) -> str:
        """Read all words of the page."""
        return "\n".join(f"{box.name} {box.value}".strip() for box in self.boxes())

    def told(self) -> str:
        """Read the words, what the page says before there is an app, and its own errors."""
        splash = str(self.engine.ask(SPLASH))
        return "\n".join((self.words(), splash, *self.engine.troubles()))

    def find(self, name: str, role: str = "") -> tuple[Box, ...]:
        """Find the nodes with exactly this name (and role)."""
        return tuple(
            box for box in self.boxes() if box.name == name and (not role or box.role == role)
        )

    def see(self, words: str, seconds: float | None = None) -> Box:
        """Wait until some node says these words, among others; return the first that does."""

        def said() -> tuple[Box, ...]:
            return tuple(box for box in self.boxes() if words in f"{box.name} {box.value}")

        return self.wait(said, seconds, lambda: f"no {words!r} in:\n{self.told()}")[0]

    def gone(self, words: str, seconds: float | None = None) -> None:
        """Wait until no node says these words any more."""
        self.wait(lambda: words not in self.words(), seconds, lambda: f"still {words!r}")

    def one(self, name: str, role: str = "", seconds: float | None = None) -> Box:
        """Wait for the one node with this name and role, at rest, on top, and in the window."""

        def at_rest() -> Box | None:
            before = self.find(name, role)
            self.engine.ask(FRAMES)  # what is new on the page is under the finger a frame later
            after = self.find(name, role)
            if len(after) != 1 or before != after or after[0].off:
                return None
            return after[0] if self.on_top(after[0]) else None

        box = self.wait(at_rest, seconds, lambda: self.why_not(name, role))
        return cast("Box", box)

    def on_top(self, box: Box) -> bool:
        """Say whether a thumb in the middle of a node would touch it or what is inside it."""
        return box.id in cast("list[str]", self.engine.ask(LIES_ON_TOP, *box.middle))

    def why_not(self, name: str, role: str) -> str:
        """Say why a node can't be touched."""
        found = self.find(name, role)
        if len(found) == 1:
            return f"{found[0]} is off, moving, covered, or out of the window"
        return f"{len(found)} × {role} {name!r} in:\n{self.words()}"

    def unhurried(self, name: str) -> None:
        """Wait before a touch of a weigh-out: one so soon after another is taken for the same."""
        if name.startswith(WEIGHED):
            self.pause(BOUNCE_S)

    def tap(self, name: str, role: str = "") -> None:
        """Tap what bears this name, as a thumb does: once, in its middle."""
        self.unhurried(name)
        self.touch(self.one(name, role))

    def touch(self, box: Box) -> None:
        """Tap the middle of a node; taps are counted."""
        self.engine.touch(*box.middle)
        self.taps += 1

    def pause(self, seconds: float) -> None:
        """Do nothing, by the page's own clock, as long as a hand would."""
        self.engine.ask("(ms) => new Promise((done) => setTimeout(done, ms))", seconds * 1000)

    def keys(self, text: str) -> None:
        """Tap the app's own keypad, one key a sign."""
        for sign in text:
            self.tap(POINT if sign == "." else sign, "button")

    def type(self, label: str, text: str) -> None:
        """Tap a field, and type over what stands in it."""
        field = self.focus(label)
        self.pause(SETTLED_S)
        if field.value:
            self.engine.press("Control+a")
        self.engine.write(text)
        self.wait(
            lambda: text in self.typed(label),
            None,
            lambda: f"{label!r} holds {self.typed(label)}, not {text!r}",
        )
        self.engine.ask(FRAMES)

    def focus(self, label: str) -> Box:
        """Tap a field until the cursor is in it: a page that still moves may miss a tap."""

        def has_it() -> Box | None:
            field = self.one(label, "textbox")
            if not self.engine.ask(HAS_FOCUS, *field.middle):
                self.engine.touch(*field.middle)
                self.pause(SETTLED_S)
            return field if self.engine.ask(HAS_FOCUS, *field.middle) else None

        field = self.wait(has_it, None, lambda: f"{label!r} took no focus")
        self.taps += 1
        return cast("Box", field)

    def typed(self, label: str) -> tuple[str, ...]:
        """Read what a field holds, and what the field with the focus holds."""
        focus = self.engine.ask("() => document.activeElement?.value ?? null")
        return (*(box.value for box in self.find(label, "textbox")), str(focus))

    def scroll_to(self, name: str, role: str = "", drags: int = 12) -> Box:
        """Drag the page upwards until the middle of a node is in the window, and on top."""
        for _ in range(drags):
            found = self.find(name, role)
            if found and self.on_top(found[0]):
                return self.one(name, role)
            self.drag(0.72, 0.34)
        raise AssertionError(self.why_not(name, role))

    def drag(self, start_ratio: float, end_ratio: float) -> None:
        """Drag a finger along the middle of the window, from one part of its height to another."""
        width, height = cast("list[float]", self.engine.ask("() => [innerWidth, innerHeight]"))
        self.engine.drag((width / 2, height * start_ratio), (width / 2, height * end_ratio))

    def picture(self, path: Path) -> None:
        """Keep a screenshot."""
        path.parent.mkdir(parents=True, exist_ok=True)
        self.engine.picture(path)

    def saved(self, seconds: float | None = None) -> Path:
        """Wait for a downloaded file; return the newest."""
        folder = self.home / "downloads"

        def files() -> list[Path]:
            self.engine.ask("() => 0")  # lets the engine hear of downloads
            whole = [path for path in folder.iterdir() if path.suffix != ".part"]
            return sorted(whole, key=lambda path: path.stat().st_mtime)

        return self.wait(files, seconds, lambda: f"nothing in {folder}")[-1]


@contextmanager
def phone_of(kind: type[Engine], home: Path, screen: Screen | None = None) -> Iterator[Phone]:
    """Take a new phone into the hand; at the end it is closed and its profile thrown away."""
    with wire() as line:
        phone = Phone(kind, home, line, screen or Screen())
        try:
            yield phone
        finally:
            phone.engine.close()
            shutil.rmtree(home, ignore_errors=True)
