"""What people type and read: every quantity by the unit at the end of its name.

`width_m` is read and shown as a length, `net_g` as a mass, `wait_s` as a time; any other name is
a plain number. This is the only place that knows Pint; it is loaded when the first unit comes
that is not SI's own.
"""

from enum import StrEnum
from fractions import Fraction
from functools import cache
from math import inf
from typing import TYPE_CHECKING

from core import numerals
from core.amounts import amounts, feet, hours
from core.errors import Refused, require
from core.quantities import LEAST, MOST, PLAIN, Kind, kind_of

if TYPE_CHECKING:
    from pint import UnitRegistry

OZ_PER_QT = 32  # NIST Handbook 44, Appendix C
SHORT = 7  # characters; a prefilled figure longer than that is tried in other units

# SI units, and those that the SI brochure accepts beside them, need no Pint.
_OWN = {"": Fraction(1), "%": Fraction(1, 100)} | {
    "min": Fraction(60), "h": Fraction(3600), "d": Fraction(86400),
}  # fmt: skip
# Exact by definition: NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B.
_DEFINITIONS = """
metre = [length] = m
gram = [mass] = g
kelvin = [temperature]; offset: 0 = K
centi- = 1e-2 = c-
milli- = 1e-3 = m-
micro- = 1e-6 = µ-
kilo- = 1e3 = k-
litre = 1e-3 * metre ** 3 = L
degC = kelvin; offset: 273.15
degF = 5 / 9 * kelvin; offset: 233.15 + 200 / 9
inch = 0.0254 * metre = in
foot = 12 * inch = ft
mil = 0.001 * inch
gallon = 231 * inch ** 3 = gal
quart = gallon / 4 = qt
pint = gallon / 8 = pt
fluid_ounce = gallon / 128 = fl_oz
pound = 453.59237 * gram = lb
ounce = pound / 16 = oz
"""
_FOR_PINT = str.maketrans({"°": "deg", "²": "**2", "³": "**3", " ": "_"})


class System(StrEnum):
    """The units that a person reads, and that a number without a unit is taken in."""

    METRIC = "metric"
    US = "us"


def read(name: str, text: str, system: System = System.METRIC) -> float:
    """Read a quantity as a person writes it.

    Parameters
    ----------
    name
        What it is, with its SI unit: `width_m`.
    text
        At most 40 characters: a number with a unit or without, feet and inches, `1 h 30`, `1:30`.
    system
        A number without a unit is in `unit_of(name, system)`.

    Returns
    -------
        The value in the SI unit of the name; `Refused` with the text if it is none, with the
        value if it is below 0 (temperatures and scale readings may be), nearly 0, or above 1e12.

    Source: definitions, NIST Handbook 44 Appendix C; a day is 24 h.

    >>> read("width_m", "350 cm"), read("share_ratio", "25 %"), read("wait_s", "1 h 30")
    (3.5, 0.25, 5400.0)
    >>> read("width_m", "12 ft 6 1/2 in"), read("air_c", "60 F"), read("width_m", "12", System.US)
    (3.8227, 15.555555555555555, 3.6576)
    """
    kind = kind_of(name)
    exact = _measure(kind, text, unit_of(name, system)) if len(text) <= numerals.LONGEST else None
    if exact is None:
        raise Refused(name, text, -inf, inf)
    value = float(exact)
    _require(name, value)
    return value


def unit_of(name: str, system: System) -> str:
    """Find the unit that a quantity is shown in, and that a number without one is taken in.

    Parameters
    ----------
    name
        What it is, with its SI unit: `width_m`.
    system
        Metric or US; masses are in g in both, as on the scale.

    Returns
    -------
        Its symbol, empty for a plain number.

    Source: NIST SP 811 for the symbols.

    >>> unit_of("width_m", System.US), unit_of("net_g", System.US)
    ('ft', 'g')
    """
    kind = kind_of(name)
    return kind.metric if system is System.METRIC else kind.us


def number(
    name: str, value: float, system: System = System.METRIC, digits: int | None = None
) -> str:
    """Write a quantity in `unit_of(name, system)`, without the unit.

    Parameters
    ----------
    name
        What it is, with its SI unit: `area_m2`.
    value
        In that unit, -1e12 to 1e12.
    system
        Metric or US.
    digits
        Decimals; None for those that the quantity is known to.

    Returns
    -------
        The text; halves go away from zero.

    Source: decimals, common practice, no published source.

    >>> number("area_m2", 14.28), number("area_m2", 14.28, System.US), number("parts_count", 62.0)
    ('14.28', '153.7', '62')
    """
    require(name, value, -MOST, MOST)
    kind = kind_of(name)
    exact = _in_unit(kind, value, unit_of(name, system))
    if digits is not None:
        return numerals.decimal(exact, digits)
    text = numerals.decimal(
        exact, kind.metric_digits if system is System.METRIC else kind.us_digits
    )
    return numerals.trimmed(text) if kind is PLAIN else text


def show(name: str, value: float, system: System = System.METRIC, digits: int | None = None) -> str:
    """Write a quantity with its unit, for reading.

    Parameters
    ----------
    name
        What it is, with its SI unit: `area_m2`.
    value
        In that unit, -1e12 to 1e12.
    system
        Metric or US.
    digits
        Decimals of `unit_of(name, system)`; None for the usual form: hours and minutes, feet and
        sixteenths of an inch, fluid ounces below a quart.

    Returns
    -------
        The text; read and shown again it is the same.

    Source: forms, common practice, no published source.

    >>> show("area_m2", 14.28), show("width_m", 3.8227, System.US), show("wait_s", 5400.0)
    ('14.28 m²', '12 ft 6 1/2 in', '1 h 30 min')
    """
    text = number(name, value, system, digits)
    unit = unit_of(name, system)
    if digits is None and unit == "min":
        return hours(Fraction(repr(value)))
    if digits is None and unit == "ft":
        return feet(_in_unit(kind_of(name), value, "ft"), "{} ft", "{} in")
    if digits is None and unit == "gal":
        ounces = _in_unit(kind_of(name), value, "fl_oz")
        small = numerals.decimal(ounces, 1)
        if Fraction(small.replace("−", "-")) < OZ_PER_QT:
            return f"{small} fl oz"
    return f"{text} {unit}".rstrip()


def typed(name: str, value: float, system: System = System.METRIC) -> str:
    """Write a quantity as one would type it, to the last bit: `read` gives the same value.

    Parameters
    ----------
    name
        What it is, with its SI unit: `width_m`.
    value
        In that unit, as far as `read` can give it.
    system
        Metric or US.

    Returns
    -------
        The shortest number in `unit_of(name, system)`; where that is long, feet and inches or
        the SI unit if they say the same in fewer characters.

    Source: this project.

    >>> typed("width_m", 3.5), typed("width_m", 3.81, System.US), typed("width_m", 2.8, System.US)
    ('3.5', '12.5', '2.8 m')
    """
    kind, unit = kind_of(name), unit_of(name, system)
    _require(name, value)
    plain = _shortest(kind, value, unit)
    if len(plain) <= SHORT:
        return plain
    if unit == "ft":
        form = feet(_in_unit(kind, value, "ft"), "{}'", '{}"')
        if read(name, form, system) == value:
            return form
    other = f"{_shortest(kind, value, kind.si)} {kind.si}" if kind.si else plain
    return min(plain, other, key=len)


def warm() -> None:
    """Load Pint now, so that the first US unit comes without a wait.

    Source: this project.

    >>> warm()
    """
    _scale("ft", "m")


def _measure(kind: Kind, text: str, unit: str) -> Fraction | None:
    """Find the exact value in the SI unit of a kind; None if the text gives none."""
    total, limit = Fraction(0), None
    parts = amounts(kind, text)
    for part in parts:
        factor, offset = _scale(part.unit or unit, kind.si)
        if limit and abs(part.figure) * factor >= limit:
            return None  # 5 ft 14 in
        total, limit = total + part.figure * factor + offset, factor
    return total if parts else None


@cache
def _scale(unit: str, si: str) -> tuple[Fraction, Fraction]:
    """Find factor and offset from a unit to the SI unit of its quantity."""
    if unit == si or unit in _OWN:
        return _OWN.get(unit, Fraction(1)), Fraction(0)
    source, target = unit.translate(_FOR_PINT), si.translate(_FOR_PINT)
    zero = _registry().convert(Fraction(0), source, target)
    one = _registry().convert(Fraction(1), source, target)
    return one - zero, zero


@cache
def _registry() -> "UnitRegistry[Fraction]":
    from pint import UnitRegistry  # noqa: PLC0415 - takes half a second, on a phone two

    registry: UnitRegistry[Fraction] = UnitRegistry(None, non_int_type=Fraction)
    registry.load_definitions(_DEFINITIONS.strip().splitlines())
    return registry


def _in_unit(kind: Kind, value: float, unit: str) -> Fraction:
    factor, offset = _scale(unit, kind.si)
    return (Fraction(repr(value)) - offset) / factor


def _shortest(kind: Kind, value: float, unit: str) -> str:
    """Write a value with as few digits as bring it back to the last bit."""
    factor, offset = _scale(unit, kind.si)
    exact = (Fraction(value) - offset) / factor
    for digits in range(numerals.SURE_DIGITS, numerals.MOST_DIGITS):
        text = numerals.significant(exact, digits)
        back = float(Fraction(text) * factor + offset)
        if back == value:
            return text
    return numerals.significant(exact, numerals.MOST_DIGITS)


def _require(name: str, value: float) -> None:
    """Refuse what no quantity of this kind measures; nearly 0 is a slip of the finger too."""
    require(name, value, kind_of(name).low, MOST)
    if value:
        require(name, abs(value), LEAST, MOST)
