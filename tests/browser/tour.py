"""A walk over all screens of the built app."""

from collections.abc import Iterator

from tests.browser.phone import Box, Phone
from tests.browser.windows import PLACES, at_rest

SHEET_LEAST = 150.0  # dp: the width of the button that closes a sheet


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

        self.phone.unhurried(begins)
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
        wall = self.tap("Wall 1", "Mark a zone")
        yield "wall"
        self.to(f"{wall}/measure", "Keep Wall 1")
        yield "wall measured"
        self.how(f"{wall}/measure")
        yield "wall how"
        self.to("walls/new", "type its width")
        yield "wall new"
        self.to(f"{wall}/zones/new", "Its mix")
        yield "zone new"
        for address, says in JOB:
            self.to(address, says)
            yield address.replace("/", " ")
        self.stop("base 1")
        yield "job step"
        self.wait_before("base 1", "after promoter 30 min, at most 4 h from its start")
        yield "job wait"

    def stop(self, step: str) -> None:
        """Go to a step of the schedule by its line; its day and its hour stand there too."""
        self.to("job", "hand-over")

        def there() -> Box | None:
            found = [b for b in at_rest(self.phone) if b.tap and f"{step} " in f"{b.name} "]
            return found[0] if found and self.phone.on_top(found[0]) else None

        self.phone.touch(self.phone.wait(there, None, lambda: f"no {step!r}"))  # type: ignore[arg-type]
        self.phone.see(f"Keep {step}")

    def wait_before(self, step: str, line: str) -> None:
        """Go to a wait before a step, by its line there."""
        self.stop(step)
        self.phone.scroll_to(line, "button")
        self.phone.tap(line, "button")
        self.phone.see("Keep the wait")

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
        self.to(f"{can}/pours", "what happened to it")
        yield "can pours"
        self.to(f"{can}/lid", "Lid off for")
        yield "can lid"
        self.to("cans/paints", "Starter paints")
        yield "paints"
        self.tap("fluorescent orange", "Keep fluorescent orange")
        yield "paint"
        self.to("cans/paints/new", "New paint")
        yield "paint new"

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
        self.to(start.replace("/weigh", "/amount"), "Keep it")
        yield "amount"
        self.how(start.replace("/weigh", "/amount"))
        yield "amount how"

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
        yield from self.mishaps()
        self.to("mix/weigh/reads", "Use")
        self.tap("Use ", "instead")
        yield "over"
        self.how("mix/weigh")
        yield "over how"
        self.to("mix/weigh", "instead")
        self.tap("Make ", "On the mark")
        yield "step after over"
        yield from self.filling()

    def mishaps(self) -> Iterator[str]:
        """See what else goes wrong at the scale."""
        self.to("mix/weigh/wrong", "Which paint went in?")
        yield "wrong can"
        self.tap("can 11, standard white", "What does the scale read now?")
        yield "wrong can read"
        self.to("mix/weigh/spilt", "Pour it again")
        yield "knocked over"

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
        pot = self.tap("Stirred, done", "More of the same")
        yield "pot"
        self.how(pot)
        yield "pot how"
        self.to(f"{pot}/more", "as it was really poured")
        yield "more of the same"
        for at, says in OF_A_POT:
            self.to(f"{pot}/{at}", says)
            yield f"pot {at}"
        yield from self.in_cups(pot)
        self.to("mix", "Pots")
        yield "mixes and pots"

    def in_cups(self, pot: str) -> Iterator[str]:
        """Split a pot into cups; ask what is left in them, and where it went."""
        self.to(f"{pot}/cups", "Cup b")
        self.tap("Split into cups", "What is left")
        yield "pot in cups"
        self.to(f"{pot}/left", "Left in cup a")
        yield "left in cups"
        self.how(f"{pot}/went")
        yield "where it went how"

    def coats(self) -> Iterator[str]:
        """Finish coats: ready, too late, drying; how a wait comes about."""
        self.wait_of("promoter", "after wash 1 h", ("Wait, min", "1 s"))
        limit = ("Recoat within, min", "2 s")
        line = "after promoter 30 min, at most 4 h from its start"
        self.wait_of("base 1", line, ("Wait, min", "1 s"), limit)
        self.finish("Wash", "Ready")
        yield "coats ready"
        self.finish("Promoter", "Too late")
        yield "coats too late"
        self.wait_of("promoter", "after wash 1 s", ("Wait, min", "45 min"))
        self.to("coats", "to start")
        self.tap("Wash, Wall 2", "Wash finished Wall 2")
        yield "coats chosen"
        self.finish("Wash", "dries")
        yield "coats drying"
        self.tap("How?", "Close")
        yield "coats how"
        self.to("coats", "dries")

    def wait_of(self, step: str, line: str, *typed: tuple[str, str]) -> None:
        """Type another wait before a step."""
        self.wait_before(step, line)
        for label, text in typed:
            self.phone.type(label, text)
        if len(typed) > 1:  # from its start the work would take longer than so short a limit
            self.phone.tap("from its end", "button")
        self.tap("Keep the wait", "Hand-over")

    def finish(self, step: str, says: str) -> None:
        """Read the caution, if there is one, and finish a step."""
        self.to("coats", "Weigh a can")
        while any(box.name.startswith("I have read it") for box in at_rest(self.phone)):
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
OF_A_POT = (
    ("add", "How many grams more?"),
    ("correct", "Nothing asked yet"),
    ("cups", "Cup b"),
    ("left", "Into a jar"),
    ("went", "On walls, wet as laid"),
    ("label", "Save as a picture"),
)
JOB = (
    ("job", "hand-over"),
    ("job/settings", "Openings come off"),
    ("job/scale", "The scale's step"),
    ("job/check", "Keep the check"),
    ("job/jobs", "New job"),
    ("job/new", "Begin the job"),
    ("job/name", "Keep the name"),
    ("job/steps/new", "Kind of step"),
    ("job/how-much", "Cans 510.50"),
    ("job/tools", "A sleeve keeps"),
    ("job/files", "Restore a backup"),
    ("job/ready-made", "Touch-up visit"),
)
