"""What is said of cups, of what is left, and of jars."""

from mobile.words.grams import grams

CUPS, CUPS_MORE = "Split into cups", "by people, or by walls and zones"
LEFT, LEFT_MORE = "What is left", "weigh it back, keep it in a jar"
COUNT, EVENLY, BY_AREA = "How many cups", "So many cups", "By square metres"
HOW = (("even", "People"), ("area", "Walls and zones"))
IN_POT, INTO_JAR = "Left in the pot", "Into a jar"
KEEP_LEFT = "Keep what is left"
USE_BY, COLDEST = "Use within, months", "Coldest night where it stands"
COVER = "It thickens the glaze: cover it between coats."
FROST = "Water-borne paint that froze is spoilt: its label says how cold it may stand."
ALONE = "It goes on one wall or zone only, or on none yet."
EMPTY = "Nothing is left in it."


def cup(label: str, whom: str) -> str:
    """Name a cup."""
    return f"Cup {label}, {whom}" if whom else f"Cup {label}"


def split(count: int, number: int) -> str:
    """Say that a pot was split."""
    return f"Pot {number} is in {count} cups."


def weighed_back(net_g: float) -> str:
    """Say what is left."""
    return f"{grams(net_g)} are left."


def in_jar(number: int, net_g: float) -> str:
    """Say what went into a jar."""
    return f"{grams(net_g)} are in jar {number}. Write the number on its lid."


def jar(number: int) -> str:
    """Name a jar."""
    return f"Jar {number}"


def jar_small(use_by: str, coldest: str) -> str:
    """Say how long it keeps, and how cold it stands."""
    said = [f"use by {use_by}" if use_by else "", f"coldest night {coldest}" if coldest else ""]
    return ", ".join(one for one in said if one) or "no use-by given"


def leftover(number: int, mix: str) -> str:
    """Name a leftover as a paint."""
    return f"{mix}, jar {number}"


def left_label(name: str) -> str:
    """Label the field of what is left in a cup."""
    return f"Left in {name[:1].lower()}{name[1:]}"


def dries(grams_an_hour: str, air: str, humidity: str) -> str:
    """Say what an open cup loses."""
    return f"An open cup loses up to {grams_an_hour} an hour at {air} and {humidity}. {COVER}"
