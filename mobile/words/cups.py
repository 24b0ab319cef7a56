"""What is said of cups, of what is left, and of jars."""

from mobile.words.grams import grams

CUPS = "Split into cups"
LEFT = "What is left"
WHOLE_CUPS = "Whole cups only."
COUNT, WHO = "How many cups", "Whose cups"
WHO_NOTE = "Names, with a comma between. A number after a name is that one's share."
HOW = (("even", "All alike"), ("people", "People"), ("area", "Walls, zones"))
JARS = "Jars"
IN_POT, INTO_JAR = "Left in the pot", "Into a jar"
KEEP_LEFT = "Keep what is left"
OPEN_FOR, AWAY = "Lid off for", "Throw it away"
DRAIN = "Never into a drain: local rules say where paint and wash-water go."
CUP_OPEN, AN_HOUR = "An open cup", "80 mm across, for an hour"
WENT = "Where it went"
ALL_THERE = "Weigh back what is left, and it is known what went on walls."
ON_WALLS, IN_TOOLS, DRIED = "On walls, wet as laid", "In tools and cups", "Dried off"
POURED, OVER = "Poured", "Knocked over"
IN_CUPS, IN_JARS, WASTE = "In its cups", "In its jars", "To waste"
FROM_JARS, INTO_POTS = "Out of its jars", "into other pots"
USUAL, HALF = "as they usually keep", "half of what can have"
USE_BY, COLDEST = "Use within, months", "Coldest night where it stands"
COVER = "It thickens the glaze: cover it between coats."
FROST = "Water-borne paint that froze is spoilt: its label says how cold it may stand."
BY_AREA = "By the square metres of the walls and zones that it goes on."
ALONE = "It goes on one wall or zone only, or on none yet: there is nothing to split it over."
PAST, FROZEN = "past its use-by", "it may have frozen"
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


def more_than_all(in_all_g: float, most_g: float) -> str:
    """Say that pot and cups together can't hold that much, and what to do."""
    return (
        f"That is {grams(in_all_g)} in pot and cups. Without its jars and its waste at most"
        f" {grams(most_g)} can be left. If a cup was poured back, weigh that cup too."
    )


def wasted(net_g: float) -> str:
    """Say what was thrown away."""
    return f"{grams(net_g)} went to waste."


def give_or_take(net_g: float) -> str:
    """Say how far it can be off."""
    return f"give or take {grams(net_g)}"


def in_jar(number: int, net_g: float) -> str:
    """Say what went into a jar."""
    return f"{grams(net_g)} are in jar {number}. Write the number on its lid."


def left_of(left: str, in_cups: bool) -> str:
    """Say what is left of a pot, and that its cups have it."""
    return f"{left} left in cups" if in_cups else f"{left} left"


def left_now(left_g: float, cups: bool) -> str:
    """Say what should be left."""
    return f"{grams(left_g)} in it{' and its cups' if cups else ''} now"


def of_all(in_all: str) -> str:
    """Say how much it was."""
    return f"of {in_all}"


def filled_with(net_g: float) -> str:
    """Say what a cup was filled with."""
    return f"of {grams(net_g)}"


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
