"""How wide a text runs, near enough to leave room for it on a drawing."""

# Advances of Figures SemiBold, em, from its own table; other signs are taken as a digit.
ADVANCES = (
    (0.25, " \u00a0"),
    (0.30, "ijl,.':;!"),
    (0.36, "()[]{}ft|′″"),
    (0.41, "rI-/"),
    (0.50, "szcLvy?Jx"),
    (0.57, "aekoFT*_"),
    (0.65, "SYCPVBRXADK#"),
    (0.72, "HNGOQU&"),
    (0.90, "mMwW@%"),
)
OTHER = 0.60
EM = {sign: width for width, signs in ADVANCES for sign in signs}


def text_width(words: str, size: float) -> float:
    """Find how wide a text runs at a size, dp."""
    return sum(EM.get(sign, OTHER) for sign in words) * size


def longest_word(words: str, size: float) -> float:
    """Find how wide the longest word of a text runs at a size, dp."""
    return max(text_width(word, size) for word in words.split(" "))


def lines_in(words: str, size: float, width: float) -> int:
    """Find how many lines a text takes in a width, broken between words.

    >>> lines_in("the scale should read", 20, 300), lines_in("the scale should read", 20, 120)
    (1, 2)
    """
    lines, room = 1, width
    for word in words.split(" "):
        wide = text_width(f"{word} ", size)
        if wide - text_width(" ", size) > room and room < width:
            lines, room = lines + 1, width
        room -= wide
    return lines


def unparted(words: str) -> str:
    """Keep a unit with its figure, where a text is broken into lines ("Use 81.9 g")."""
    head, gap, last = words.rpartition(" ")
    short = len(last) <= 2 and head[-1:] in {*"0123456789."}  # noqa: PLR2004  units: g, m, m²
    return f"{head}\u00a0{last}" if gap and short else words
