"""A walk over all screens of the built app, and the windows in which each is looked at."""

import time
from collections.abc import Iterator
from dataclasses import dataclass

from tests.browser.layout import outside, overlaps, small
from tests.browser.phone import Box, Phone

PLACES = ("coats", "mix", "cans", "walls", "job")
PATIENCE_S = 20.0
REST_S = 0.3  # a screen that has not changed for so long is drawn
UNDER, SHEET_LEAST = "Scrim", 150.0  # a sheet lies over the scrim, by its nature
DRAWN_S = 6.0  # a busy machine may still be at the last window's screen


@dataclass(frozen=True, slots=True)
class Window:
    """A window in dp, and the text size of the phone."""

    width: int
    height: int
    text: int = 100

    def __str__(self) -> str:
        """Name it, as in a file's name."""
        return f"{self.width}-{self.text}"


RAIL_FROM = 900
HAND = Window(412, 915)
WINDOWS = (HAND, Window(1280, 800), Window(320, 640), Window(412, 915, 200), Window(320, 640, 200))


def fit(phone: Phone, window: Window) -> None:
    """Give the page this window, and the phone this text size."""
    phone.engine.resize(window.width, window.height)
    size = "(size) => { document.documentElement.style.fontSize = size; }"
    phone.engine.ask(size, f"{window.text}%")


def at_rest(phone: Phone) -> tuple[Box, ...]:
    """Wait until a screen holds still; return its nodes."""
    before, since, end = phone.boxes(), time.monotonic(), time.monotonic() + PATIENCE_S
    while time.monotonic() < min(since + REST_S, end):
        time.sleep(REST_S / 2)
        if (now := phone.boxes()) != before:
            before, since = now, time.monotonic()
    return before


def troubles(phone: Phone, window: Window) -> tuple[str, ...]:
    """Name what overlaps, leaves the window or is too small, once the screen is drawn."""
    end = time.monotonic() + DRAWN_S
    while True:
        boxes = tuple(box for box in at_rest(phone) if box.name != UNDER)
        found = (
            stale(boxes, window)
            + overlaps(boxes)
            + outside(boxes, window.width, window.height)
            + small(boxes)
        )
        if not found or time.monotonic() > end:
            return found


def stale(boxes: tuple[Box, ...], window: Window) -> tuple[str, ...]:
    """Say so if the places still lie as in another window: at its foot, or on a laptop's rail."""
    spots = [box for box in boxes if box.name.lower() in PLACES and box.role == "button"]
    if len(spots) < len(PLACES):
        return ()
    first, last = spots[0], spots[-1]
    rail = last.top > first.top
    there = rail if window.width >= RAIL_FROM else abs(right(last) - window.width) <= 1
    return () if there else (f"the places lie as in a window {right(last):.0f} wide",)


def right(box: Box) -> float:
    """Find the right side of a node."""
    return box.left + box.width


class Walk:
    """One phone on its way through the app; each method leaves a screen up."""

    def __init__(self, phone: Phone) -> None:
        self.phone = phone

    def to(self, address: str, says: str) -> None:
        """Go to an address and wait for words of its screen."""
        self.phone.engine.ask("(to) => { location.hash = to; }", f"#/{address}")
        self.phone.see(says)

    def how(self, address: str) -> None:
        """Go to a screen's *How?* sheet."""
        self.to(f"{address}/how", "Close")
        self.phone.wait(lambda: any(map(closes, self.phone.boxes())), None, lambda: "no sheet")

    def keys(self, text: str) -> None:
        """Tap the app's keypad once it stands still: it moves with the window's size."""
        at_rest(self.phone)
        self.phone.keys(text)

    def tap(self, begins: str, says: str) -> str:
        """Tap the first button whose words begin so; return the address it led to."""

        def there() -> Box | None:
            found = [b for b in at_rest(self.phone) if b.tap and b.name.startswith(begins)]
            return found[0] if found and self.phone.on_top(found[0]) and not found[0].off else None

        self.phone.touch(self.phone.wait(there, None, lambda: f"no {begins!r}"))  # type: ignore[arg-type]
        self.phone.see(says)
        address: str = self.phone.engine.ask("() => location.hash")
        return address.removeprefix("#/")

    def dress(self, look: str) -> None:
        """Choose a look."""
        self.to("job/settings", "Text size")
        self.phone.tap(look.title(), "button")
        self.phone.wait(
            lambda: self.phone.find(look.title(), "button")[0].chosen, None, lambda: "not dressed"
        )

    def whole(self) -> Iterator[str]:
        """Walk over all screens, naming each that is up."""
        yield from self.empty()
        yield from self.planning()
        yield from self.cans()
        yield from self.recipes()
        yield from self.weighing()
        yield from self.coats()

    def empty(self) -> Iterator[str]:
        """Begin with nothing."""
        for place, says in zip(PLACES, EMPTY, strict=True):
            self.to(place, says)
            yield f"{place} empty"
        self.to("coats", EMPTY[0])
        self.tap("Look at the demo job", "Weigh next")
        yield "coats begins"

    def planning(self) -> Iterator[str]:
        """See walls, the job and its drawers."""
        self.to("walls", "m²")
        yield "walls"
        wall = self.tap("Wall 1", "Keep Wall 1")
        yield "wall"
        self.how(wall)
        yield "wall how"
        self.to("walls/new", "type its width")
        yield "wall new"
        for address, says in JOB:
            self.to(address, says)
            yield address.replace("/", " ")
        self.to("job", "hand-over")
        self.tap("promoter", "Recoat within")
        yield "job step"

    def cans(self) -> Iterator[str]:
        """See the shelf, a can on the scale, what a can is."""
        self.to("cans", "Weigh a can")
        yield "cans"
        self.to("cans/new", "Keep")
        yield "can new"
        self.to("cans/pick", "emptiest first")
        yield "can pick"
        can = self.tap("fluorescent orange", "Keep, next can")
        yield "can on the scale"
        self.keys("180")
        yield "can read"
        self.how(can)
        yield "can how"
        self.to(f"{can}/edit", "Keep can 7")
        yield "can edit"

    def recipes(self) -> Iterator[str]:
        """See the mixes, a recipe, the start of a weigh-out."""
        self.to("mix", "New mix")
        yield "mixes"
        self.to("mix/new", "Paint 1")
        yield "recipe new"
        self.to("mix", "New mix")
        start = self.tap("ember wing", "Weigh 232 g")
        yield "start"
        self.how(start)
        yield "start how"
        self.to(start.removesuffix("/weigh"), "Keep ember wing")
        yield "recipe"

    def weighing(self) -> Iterator[str]:
        """Weigh out, with an over-pour put right."""
        self.to("mix", "New mix")
        self.tap("ember wing", "Weigh 232 g")
        self.tap("Weigh 232 g", "On the mark")
        yield "step"
        self.how("mix/weigh")
        yield "step how"
        self.to("mix/weigh/reads", "Use")
        self.keys("21.5")
        yield "reads"
        self.to("mix/weigh/scale", "Carry on")
        yield "scale went off"
        self.to("mix/weigh/reads", "Use")
        self.tap("Use", "instead")
        yield "over"
        self.how("mix/weigh")
        yield "over how"
        self.to("mix/weigh", "instead")
        self.tap("Make", "On the mark")
        yield "step after over"
        yield from self.filling()

    def filling(self) -> Iterator[str]:
        """Pour the rest; see the pot."""
        self.to("mix", "Carry on")
        yield "mixes while weighing"
        self.to("mix/weigh", "On the mark")
        for part in ("Part 2 of 3", "Part 3 of 3"):
            self.phone.see(part)
            self.tap("On the mark", "")
            self.phone.gone(part)
        yield "all in"
        self.how("mix/weigh")
        yield "all in how"
        self.to("mix/weigh", "Stirred, done")
        pot = self.tap("Stirred, done", "Weigh ember wing again")
        yield "pot"
        self.how(pot)
        yield "pot how"
        self.to("mix", "Pots")
        yield "mixes and pots"

    def coats(self) -> Iterator[str]:
        """Finish coats: ready, too late, drying; how a wait comes about."""
        self.wait_of("wash", ("Wait before the next step, min", "1 s"))
        limit = ("Recoat within, min", "2 s")
        self.wait_of("promoter", ("Wait before the next step, min", "1 s"), limit)
        self.finish("Wash", "Ready")
        yield "coats ready"
        self.finish("Promoter", "Too late")
        yield "coats too late"
        self.wait_of("wash", ("Wait before the next step, min", "45 min"))
        self.to("coats", "to start")
        self.tap("Wash, Wall 2", "Wash finished Wall 2")
        yield "coats chosen"
        self.finish("Wash", "dries")
        yield "coats drying"
        self.tap("How?", "Close")
        yield "coats how"
        self.to("coats", "dries")

    def wait_of(self, step: str, *typed: tuple[str, str]) -> None:
        """Type another wait of a step."""
        self.to("job", "hand-over")
        self.tap(step, f"Keep {step}")
        for label, text in typed:
            self.phone.type(label, text)
        self.tap(f"Keep {step}", "hand-over")

    def finish(self, step: str, says: str) -> None:
        """Read the caution, if there is one, and finish a step."""
        self.to("coats", "Weigh a can")
        if any(box.name.startswith("I have read it") for box in at_rest(self.phone)):
            self.tap("I have read it", f"{step} finished")
        self.tap(f"{step} finished", says)


def closes(box: Box) -> bool:
    """Say whether a node is the button that closes a sheet; a line's is small."""
    return box.name == "Close" and box.width > SHEET_LEAST


EMPTY = (
    "Measure the first wall",
    "Write the first mix",
    "Number your first can",
    "Measure the first wall",
    "Name the job",
)
JOB = (
    ("job", "hand-over"),
    ("job/settings", "Openings come off"),
    ("job/jobs", "New job"),
    ("job/new", "Begin the job"),
    ("job/name", "Keep the name"),
    ("job/steps/new", "Kind of step"),
)
