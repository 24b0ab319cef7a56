"""What stands on a label, and what is said of it."""

from mobile.words.grams import grams

LABEL, LABEL_MORE = "Label", "for the cup or the jar, with a code that opens this pot"
SAVE, SAVED = "Save as a picture", "The label is in the downloads: print it from there."
SCAN = "A phone's camera opens this pot from the code, where the app is."
CODE = "QR code that opens this pot"


def pot(number: int) -> str:
    """Say the number, large."""
    return f"Pot {number}"


def made(day: str, in_all_g: float) -> str:
    """Say when it was mixed, and how much."""
    return f"{day}, {grams(in_all_g)}"


def by(who: str) -> str:
    """Say who mixed it."""
    return f"by {who}" if who else ""


def lots(several: tuple[str, ...]) -> str:
    """Say the makers' lots."""
    return f"lots {', '.join(several)}" if several else ""


def jar(number: int, net_g: float, use_by: str) -> str:
    """Say which jar it is in, and how long it keeps."""
    return f"jar {number}, {grams(net_g)}" + (f", use by {use_by}" if use_by else "")


def file(number: int) -> str:
    """Name the picture."""
    return f"pot-{number}.svg"
