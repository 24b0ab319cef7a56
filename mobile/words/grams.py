"""Grams and lists in words."""

import re

NUMBER_AND_UNIT = re.compile(r"(?<=\d) (?=[g%])")
GRAMS = re.compile(r"\d[\d.,]* g\b")


def first_up(said: str) -> str:
    """Begin with a capital, and leave the rest as the person wrote it."""
    return said[:1].upper() + said[1:]


def scale(value_g: float, step_g: float) -> str:
    """Write a mass as this scale shows it: as many decimals as its step has.

    >>> scale(77.3, 0.1), scale(232.0, 1.0), scale(77.25, 0.05)
    ('77.3', '232', '77.25')
    """
    decimals = len(f"{step_g:.3f}".rstrip("0").partition(".")[2])
    return f"{value_g:.{decimals}f}"


def grams_at(value_g: float, step_g: float) -> str:
    """Write grams as this scale shows them."""
    return f"{scale(value_g, step_g)} g"


def tenths(value_g: float) -> str:
    """Write a mass to a tenth, without its unit."""
    return f"{value_g:.1f}"


def grams(value_g: float) -> str:
    """Write grams to a tenth."""
    return f"{value_g:.1f} g"


def money(price: float) -> str:
    """Write a price of minor units in the job's own money.

    >>> money(47.364), money(51050.0)
    ('0.47', '510.50')
    """
    return f"{price / 100:.2f}"


def money_a_gram(price: float) -> str:
    """Write the price of a gram, of minor units: a gram is worth little.

    >>> money_a_gram(5.1929824)
    '0.0519'
    """
    return f"{price / 100:.4f}"


def whole(value_g: float) -> str:
    """Write grams with no more digits than they have.

    >>> whole(232.0), whole(250.4)
    ('232 g', '250.4 g')
    """
    return f"{value_g:.1f}".removesuffix(".0") + " g"


def listed(said: tuple[str, ...]) -> str:
    """Put words in a row: a, b and c."""
    *rest, last = said
    return f"{', '.join(rest)} and {last}" if rest else last


def around_grams(said: str) -> tuple[str, str, str]:
    r"""Part words at their first grams; the second is the grams, "" where there are none.

    >>> around_grams("Make 250.4 g instead")
    ('Make ', '250.4\xa0g', ' instead')
    """
    found = GRAMS.search(said)
    if found is None:
        return said, "", ""
    return said[: found.start()], unbroken(found[0]), said[found.end() :]


def unbroken(said: str) -> str:
    r"""Keep each number and its unit on one line.

    >>> unbroken("lose 81.9 g")
    'lose 81.9\xa0g'
    """
    return NUMBER_AND_UNIT.sub("\xa0", said)
