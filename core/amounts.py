"""Amounts as people write them: a number with its unit, or several that belong together."""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from core import numerals
from core.quantities import CHAINS, MAY_END_BARE, SPELLED, Kind

IN_PER_FT, PER_IN = 12, 16  # a tape measure shows sixteenths of an inch
S_PER_MIN, MIN_PER_H = 60, 60
_CLOCK = re.compile(r"([0-9]{1,4}):([0-5][0-9])(?::([0-5][0-9]))?")


@dataclass(frozen=True, slots=True)
class Amount:
    """So many of a unit; the unit is empty where none was written."""

    figure: Fraction
    unit: str


def amounts(kind: Kind, text: str) -> tuple[Amount, ...]:
    """Split a text into amounts of one kind: `12 ft 6 1/2 in`, `1 h 30`, `1:30`, `-5 °C`.

    Parameters
    ----------
    kind
        The quantity; only its units are known.
    text
        As typed.

    Returns
    -------
        The amounts, largest unit first, all with the sign of the text; none if anything in the
        text is neither number nor unit, or the units don't belong together.

    Source: this project.

    >>> from core.quantities import kind_of
    >>> [(str(a.figure), a.unit) for a in amounts(kind_of("width_m"), "12' 6 1/2")]
    [('12', 'ft'), ('13/2', 'in')]
    """
    text = numerals.tidied(text)
    sign = -1 if text.startswith("-") else 1
    text = text[1:].lstrip() if text[:1] in {"-", "+"} else text
    found = _clock(text) if kind.si == "s" else ()
    found = found or _in_chain(_terms(kind, text))
    return tuple(Amount(sign * amount.figure, amount.unit) for amount in found)


def feet(length: Fraction, ft: str, inch: str) -> str:
    """Write a length as feet and inches, to the nearest sixteenth of an inch.

    Parameters
    ----------
    length
        In ft.
    ft, inch
        How to write so many feet, so many inches: `{} ft`.

    Returns
    -------
        The text; no feet or no inches are left out.

    Source: the division of tape measures, common practice, no published source.

    >>> feet(Fraction(301, 24), "{} ft", "{} in"), feet(Fraction(-1, 24), "{}'", "{}''")
    ('12 ft 6 1/2 in', "−1/2''")
    """
    sixteenths = int(numerals.decimal(abs(length) * IN_PER_FT * PER_IN, 0))
    whole, rest = divmod(sixteenths, IN_PER_FT * PER_IN)
    inches, part = divmod(rest, PER_IN)
    figures = [str(inches)] if inches or not sixteenths else []
    figures += [str(Fraction(part, PER_IN))] if part else []
    pieces = [ft.format(whole)] if whole else []
    pieces += [inch.format(" ".join(figures))] if figures else []
    return ("−" if length < 0 and sixteenths else "") + " ".join(pieces)


def hours(time: Fraction) -> str:
    """Write a time as hours and minutes, below a minute as seconds.

    Parameters
    ----------
    time
        In s.

    Returns
    -------
        The text, to the nearest minute or second; no hours or no minutes are left out.

    Source: common practice, no published source.

    >>> hours(Fraction(5400)), hours(Fraction(86400)), hours(Fraction(45))
    ('1 h 30 min', '24 h', '45 s')
    """
    seconds = int(numerals.decimal(abs(time), 0))
    sign = "−" if time < 0 and seconds else ""
    if seconds < S_PER_MIN:
        return f"{sign}{seconds} s"
    minutes = int(numerals.decimal(abs(time) / S_PER_MIN, 0))
    figures = zip(divmod(minutes, MIN_PER_H), ("h", "min"), strict=True)
    return sign + " ".join(f"{figure} {unit}" for figure, unit in figures if figure)


def _clock(text: str) -> tuple[Amount, ...]:
    """Read hours and minutes with a colon, or hours, minutes and seconds."""
    match = _CLOCK.fullmatch(text)
    parts = match.groups() if match else ()
    return tuple(
        Amount(Fraction(part), unit)
        for part, unit in zip(parts, ("h", "min", "s"), strict=False)
        if part
    )


@cache
def _pattern(kind: Kind) -> re.Pattern[str]:
    spelled = sorted((s for unit in kind.units for s in SPELLED[unit]), key=len, reverse=True)
    units = "|".join(map(re.escape, spelled)) or "(?!)"
    return re.compile(rf"({numerals.PATTERN}) ?({units})?(?:,? (?=[0-9])|-(?=[0-9]))?")


def _terms(kind: Kind, text: str) -> tuple[Amount, ...]:
    """Split a text into numbers and units, as they come."""
    terms, at = [], 0
    while at < len(text):
        match = _pattern(kind).match(text, at)
        figure = numerals.value(match[1]) if match else None
        if match is None or figure is None:
            return ()
        unit = next((unit for unit in kind.units if match[2] in SPELLED[unit]), "")
        terms.append(Amount(figure, unit))
        at = match.end()
    return tuple(terms)


def _in_chain(terms: tuple[Amount, ...]) -> tuple[Amount, ...]:
    """Let several amounts pass only as whole numbers of smaller and smaller units, but the last."""
    if len(terms) == 1:
        return terms
    chain: tuple[str, ...] = next((c for c in CHAINS if terms and terms[0].unit in c), ())
    last = terms[-1] if terms else None
    if last and not last.unit and terms[-2].unit in MAY_END_BARE.intersection(chain):
        last = Amount(last.figure, chain[chain.index(terms[-2].unit) + 1])
    named = (*terms[:-1], last) if last else ()
    places = [chain.index(amount.unit) if amount.unit in chain else -1 for amount in named]
    whole = all(amount.figure.denominator == 1 for amount in terms[:-1])
    falling = places == sorted(set(places))  # one that is in no chain would come twice, or low
    return named if whole and falling else ()
