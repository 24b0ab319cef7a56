"""Reading a paint's look as typed: `#ff7a1a`, `ff7a1a`, or nothing where it is not known."""

from mobile.words import looks as words

LOOK_LONG = 7  # #rrggbb


def look_of(text: str) -> str:
    """Read a look; "" where it is none.

    >>> look_of("FF7A1A"), look_of("#ff7a1a "), look_of("orange"), look_of("")
    ('#ff7a1a', '#ff7a1a', '', '')
    """
    look = f"#{text.strip().removeprefix('#').lower()}"
    if any(sign not in "0123456789abcdef" for sign in look[1:]):
        return ""
    return look if len(look) == LOOK_LONG else ""


def look_error(text: str) -> str:
    """Say what a look is written like."""
    return "" if not text.strip() or look_of(text) else words.LIKE
