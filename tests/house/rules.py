"""The rules of the house: what each says, where it holds, and a sample that breaks it."""

from collections.abc import Callable
from dataclasses import dataclass
from fnmatch import fnmatch

from tests.house import names, shape, words
from tests.house.source import Found, Source

SPEAK_OF_ANY_QUANTITY = (
    "core/errors.py",
    "core/units.py",
    "core/working.py",
    "core/amounts.py",
    "core/numerals.py",
    "core/quantities.py",
    "mobile/words/trouble.py",
)
ON_A_SCREEN = ("mobile/words/*", "mobile/screens/*", "mobile/parts/*", "mobile/app.py")


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule: where it holds, where not, and samples (path, text) that break it."""

    says: str
    find: Callable[[Source], Found]
    where: tuple[str, ...]
    bad: tuple[str, ...]
    but_not: tuple[str, ...] = ()
    at: str = "core/walls/sample.py"

    def holds_in(self, path: str) -> bool:
        """Say whether a file falls under it."""
        return any(fnmatch(path, each) for each in self.where) and not any(
            fnmatch(path, each) for each in self.but_not
        )


RULES = (
    Rule(
        "a float carries its unit in its name",
        names.no_unit,
        ("core/*.py", "mobile/store/records.py", "mobile/words/*.py"),
        (
            "width: float = 1.0",
            "LIMIT = 0.5",
            "def area(width_m: float) -> float: ...",
            "def area_m2(width: float | None) -> float: ...",
            "widths: tuple[float, ...]",
        ),
        SPEAK_OF_ANY_QUANTITY,
    ),
    Rule(
        "names say something",
        names.empty_name,
        ("core/*.py", "mobile/*.py", "tests/*.py"),
        ("class PaintManager: ...", "def paint_helper(): ...", "utils = 1"),
        ("tests/house/*",),
    ),
    Rule(
        "values are frozen, with slots",
        shape.not_frozen,
        ("core/*.py", "mobile/store/*.py", "mobile/words/*.py", "mobile/screens/*.py"),
        (
            "@dataclass\nclass Wall: ...",
            "@dataclass(frozen=True)\nclass Wall: ...",
            "@dataclasses.dataclass(slots=True, frozen=False)\nclass Wall: ...",
        ),
    ),
    Rule(
        "nothing relies on what the phone's bytecode drops",
        shape.asserts,
        ("core/*.py", "mobile/*.py"),
        ("assert width_m > 0", "print(area_m2.__doc__)", "print(__doc__)", "if __debug__: ..."),
        ("mobile/pwa/*", "mobile/__main__.py"),
    ),
    Rule(
        "no magic",
        shape.magic,
        ("core/*.py", "mobile/*.py"),
        (
            "class Wall(metaclass=Kind): ...",
            "class Wall:\n    def __getattr__(self, name): ...",
            "def wall(**words): return paint(**words)",
            "setattr(wall, 'width_m', 1)",
        ),
    ),
    Rule(
        "files are small",
        shape.too_long,
        ("core/*.py", "mobile/*.py", "mobile/*.js", "mobile/*.mjs", "tests/*.py", "tests/*.js"),
        ("\n" * 301, "\n" * 151),
        at="mobile/screens/walls/sample.py",
    ),
    Rule(
        "only the clock reads the time",
        shape.clock,
        ("core/*.py", "mobile/*.py"),
        (
            "datetime.datetime.now()",
            "time.time()",
            "js.Date.now()",
            "from time import time",
        ),
        ("mobile/clock.py", "mobile/pwa/*"),
    ),
    Rule(
        "screens don't think",
        shape.thinks,
        ("mobile/screens/*.py",),
        (
            "area = form.width_m * form.height_m",
            "share = part_g / whole",
            "set_form(replace(form, width='1'))",
            "field.update()",
        ),
        at="mobile/screens/walls/sample.py",
    ),
    Rule(
        "components only lay out",
        shape.component_reckons,
        ("mobile/screens/*.py", "mobile/app.py"),
        ("@ft.component\ndef Wall(): return ft.Text(width / 2)",),
        at="mobile/screens/walls/sample.py",
    ),
    Rule(
        "screens speak the trade's words",
        words.not_on_a_screen,
        tuple(f"{where}.py" if where.endswith("*") else where for where in ON_A_SCREEN),
        (
            "SAID = 'Sync now'",
            "SAID = f'{n} records'",
            "SAID = 'Base 1 stays open until 15:00'",
            "SAID = 'Safe to recoat'",
            "SAID = 'null'",
            "SAID = 'Correct the shading'",
        ),
        at="mobile/words/sample.py",
    ),
    Rule(
        "nothing promises",
        words.promises,
        (*ON_A_SCREEN, "core/*", "mobile/*", "README.md", "assets/*.txt", "assets/*.md"),
        ("# it is " + "safe", "'''Lasts all " + "day.'''"),
    ),
    Rule(
        "sentences stand in words",
        words.sentences,
        ("mobile/screens/*.py",),
        ("text = 'No walls yet'", "text = f'Can {n} is kept'"),
        at="mobile/screens/walls/sample.py",
    ),
    Rule(
        "the app knows no other host",
        words.addresses,
        ("mobile/*.py", "mobile/*.js", "mobile/*.mjs", "mobile/*.html", "core/*.py"),
        ("FONT = 'https://fonts.example/x'", "// see http://example.org/"),
        at="mobile/words/sample.py",
    ),
    Rule(
        "nothing names the place of work",
        words.workplace,
        ("*",),
        ("PATH = '/wo" + "rk/main'", "see sha" + "red/house.md"),
    ),
)
