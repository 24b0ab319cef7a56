"""Numbers as people write them: `3,5`, `12.`, `.5`, `6 1/2`, `12½`, `1 250`, `1,250.5`.

What could mean two things is no number here: `1,250` is a thousand to one reader and one and a
quarter to another. `1,25`, `0,125` and `1250,5` can only be decimals, `1,250.5` only thousands.
"""

import re
from fractions import Fraction

SURE_DIGITS = 15  # any decimal of so many digits survives as a float, IEEE 754
LONGEST = 40  # characters; nobody types a longer number
MOST_DIGITS = 30  # enough to tell any two floats that `units` lets through apart

_READY_MADE = {
    "¼": "1/4", "½": "1/2", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅕": "1/5", "⅖": "2/5",
    "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8",
    "⅞": "7/8",
}  # fmt: skip
_ALIKE = str.maketrans(
    {sign: f" {text} " for sign, text in _READY_MADE.items()}
    | dict.fromkeys("\u2044\u2215", "/")  # fraction slash, division slash
    | dict.fromkeys("\u2212\u2010\u2011", "-")  # minus, hyphen, hyphen that does not break
    | dict.fromkeys("\u00a0\u202f\u2009", " ")  # spaces that do not break or are thin
    | dict.fromkeys("\u2032\u2018\u2019", "'")  # prime, quotation marks
    | dict.fromkeys("\u2033\u201c\u201d", '"')  # double prime, quotation marks
    | {"\u03bc": "\u00b5"}  # Greek mu for micro
)

_MIXED = r"(?:[0-9]+[ -])?[0-9]+/[0-9]+"
_GROUPED = (
    r"[0-9]{1,3}(?: [0-9]{3})+(?![0-9])(?:[.,][0-9]*)?"
    r"|[0-9]{1,3}(?:,[0-9]{3}){2,}(?![0-9])(?:\.[0-9]*)?"
    r"|[0-9]{1,3}(?:,[0-9]{3})+\.[0-9]*"
    r"|[0-9]{1,3}(?:\.[0-9]{3})+,[0-9]*"
)
_PLAIN = r"[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+"
PATTERN = rf"{_MIXED}|{_GROUPED}|{_PLAIN}"  # one number without a sign, in a tidied text
_TWO_WAYS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")


def tidied(text: str) -> str:
    """Write look-alike signs one way: minus, primes, spaces, ready-made fractions, small letters.

    Parameters
    ----------
    text
        As typed.

    Returns
    -------
        The same, single-spaced.

    Source: this project; the signs are what phone keyboards put in by themselves.

    >>> tidied("7½″")
    '7 1/2 "'
    """
    return " ".join(text.translate(_ALIKE).lower().replace("''", '"').split())


def value(text: str) -> Fraction | None:
    """Find the value of one number, exactly.

    Parameters
    ----------
    text
        What `PATTERN` matched in a tidied text.

    Returns
    -------
        The value; None where it can be read in two ways (`1,250`) or in none (`1/0`, `1 3/2`).

    Source: this project; both decimal marks are on painters' keypads, spaces group thousands as
    in ISO 80000-1.

    >>> [str(value(text)) for text in ("6 1/2", "3,5", "1 250", "1.250,5", "1,250")]
    ['13/2', '7/2', '1250', '2501/2', 'None']
    """
    if "/" in text:
        return _fraction(text)
    if _TWO_WAYS.fullmatch(text):
        return None
    digits = text.replace(" ", "")
    if "," in digits and "." in digits:
        groups = min(",.", key=digits.rfind)
        digits = digits.replace(groups, "")
    elif digits.count(",") > 1:
        digits = digits.replace(",", "")
    return Fraction(digits.replace(",", "."))


def _fraction(text: str) -> Fraction | None:
    whole, _, rest = text.replace("-", " ").rpartition(" ")
    above, below = (int(digits) for digits in rest.split("/"))
    if not below or (whole and above >= below):
        return None
    return int(whole or 0) + Fraction(above, below)


def decimal(number: Fraction, digits: int) -> str:
    """Write a number with so many decimals, halves away from zero, as on paper.

    Parameters
    ----------
    number
        Any.
    digits
        Decimals, 0 or more.

    Returns
    -------
        The text, with a typographic minus.

    Source: rounding half away from zero, common practice.

    >>> decimal(Fraction(-45, 100), 1), decimal(Fraction(14), 2)
    ('−0.5', '14.00')
    """
    scaled = (2 * abs(number) * 10**digits + 1) // 2
    text = str(scaled).rjust(digits + 1, "0")
    sign = "−" if number < 0 and scaled else ""
    return sign + (f"{text[:-digits]}.{text[-digits:]}" if digits else text)


def trimmed(text: str) -> str:
    """Leave out decimals that say nothing.

    Parameters
    ----------
    text
        A number with a point or without.

    Returns
    -------
        The same number, shorter.

    Source: this project.

    >>> trimmed("12.50"), trimmed("100")
    ('12.5', '100')
    """
    return text.rstrip("0").rstrip(".") if "." in text else text


def significant(number: Fraction, digits: int) -> str:
    """Write a number with so many significant digits, trimmed, with a keyboard's minus.

    Parameters
    ----------
    number
        Any.
    digits
        Significant digits, 1 to `MOST_DIGITS`.

    Returns
    -------
        The text.

    Source: this project.

    >>> significant(Fraction(1, 3), 3), significant(Fraction(-1234), 2)
    ('0.333', '-1200')
    """
    if not number:
        return "0"
    places = digits - 1 - _magnitude(abs(number))
    if places < 0:
        step = 10**-places
        number, places = Fraction((2 * number + step) // (2 * step) * step), 0
    return trimmed(decimal(number, places)).replace("−", "-")


def _magnitude(number: Fraction) -> int:
    """Find the power of ten of the first digit."""
    guess = len(str(number.numerator)) - len(str(number.denominator))
    return guess if number >= Fraction(10) ** guess else guess - 1
