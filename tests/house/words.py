"""Rules for what people read, and for what must stand nowhere."""

import re

from tests.house.source import Found, Source

NOT_ON_A_SCREEN = re.compile(
    r"\b(sync\w*|cache[ds]?|records?|null|shading|safe|safely|safety|all day|database|coverage|"
    r"stays? open|still open|open (time|until|till|for)|is open|(closes|closed) at)\b",
    re.IGNORECASE,
)
PROMISE = re.compile(r"\b(safe to|is safe|all[ ]day|tape[-]safe)\b", re.IGNORECASE)
ADDRESS = re.compile(r"\b(?:https?|wss?|ftp):(?://|\\/\\/)(?P<host>[^/\s\"'`)<>\\]+)")
HARMLESS = {
    "127.0.0.1",
    "localhost",
    "www.w3.org",  # the names of SVG and its kin, never asked for
}
CUT_OUT = {
    ("mobile/pwa/flutter.py", "cdn.jsdelivr.net")
}  # the generator takes it out of the client
OF_THE_WORKPLACE = re.compile(
    "|".join(
        re.escape(a + b)
        for a, b in (
            ("/wo", "rk/"),
            ("sha", "red/"),
            ("pypi.", "org"),
            ("pythonhosted", ".org"),
            ("registry.npm", "js"),
            ("deb.debian", ".org"),
            ("issues ", "show"),
        )
    )
)


def not_on_a_screen(source: Source) -> Found:
    """Find words that no screen says."""
    for line, text in source.strings:
        for found in NOT_ON_A_SCREEN.finditer(text):
            yield line, f"'{found[0]}' in {text!r}"


def promises(source: Source) -> Found:
    """Find promises, in docstrings and remarks too."""
    for line, text in source.lines:
        for found in PROMISE.finditer(text):
            yield line, f"'{found[0]}': say the figure and who decides"


def sentences(source: Source) -> Found:
    """Find what a person reads where it stands in a screen instead of in `words`."""
    for line, text in source.strings:
        if re.search(r"^[A-Z][a-z]* |^[A-Z][a-z]{2,}\.?$|[a-z]{2}[.!?]( |$)|(\w+ ){3}", text):
            yield line, f"{text!r} belongs into mobile/words"


def addresses(source: Source) -> Found:
    """Find addresses of other hosts."""
    for line, text in source.lines:
        for found in ADDRESS.finditer(text):
            host = found["host"].partition(":")[0]
            known = host in HARMLESS or host.startswith("{") or (source.path, host) in CUT_OUT
            if not known:
                yield line, f"{found[0]} is somewhere else"


def workplace(source: Source) -> Found:
    """Find names of the place where the project is worked on."""
    for line, text in source.lines:
        for found in OF_THE_WORKPLACE.finditer(text):
            yield line, f"{found[0]!r} is of the workplace, not of the project"
