"""What stands on a label, and what is said of it."""

from mobile.words.grams import grams

LABEL = "Labels"
SAVE, SAVED = "Save as a picture", "The label is in the downloads."
PRINT = "Print it"
OTHERS = "Other labels"
SCAN = "A phone's camera opens this pot from the code, where the app is."
CODE = "QR code that opens this pot"


def pot(number: int) -> str:
    """Say the number, large."""
    return f"Pot {number}"


def cup(number: int, letter: str) -> str:
    """Say the pot's number and the cup's letter, large."""
    return f"Pot {number} {letter}"


def jar(number: int) -> str:
    """Say the jar's number, large."""
    return f"Jar {number}"


def from_pot(number: int, mix: str) -> str:
    """Say which pot a jar was filled from."""
    return f"{mix}, pot {number}"


def made(day: str, in_all_g: float) -> str:
    """Say on which day, and how much."""
    return f"{day}, {grams(in_all_g)}"


def by(who: str) -> str:
    """Say who mixed it."""
    return f"by {who}" if who else ""


def whose(whom: str) -> str:
    """Say for whom, or for which wall."""
    return f"for {whom}" if whom else ""


def lots(several: tuple[str, ...]) -> str:
    """Say the makers' lots."""
    return f"lots {', '.join(several)}" if several else ""


def keeps(use_by: str, coldest: str) -> str:
    """Say how long a jar keeps, and how cold it stands."""
    said = (f"use by {use_by}" if use_by else "", f"coldest night {coldest}" if coldest else "")
    return ", ".join(one for one in said if one)


def file(number: str) -> str:
    """Name the picture.

    >>> file("Pot 3 a")
    'pot-3-a.svg'
    """
    return f"{number.lower().replace(' ', '-')}.svg"
