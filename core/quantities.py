"""The quantities of the trade: their units, and how people spell them."""

from dataclasses import dataclass

LEAST, MOST = 1e-9, 1e12  # what any quantity may measure in its SI unit, 0 apart
ABSOLUTE_ZERO_C = -273.15  # SI brochure, definition of the degree Celsius


@dataclass(frozen=True, slots=True)
class Kind:
    """A quantity: its SI unit, what each system shows, with how many decimals, its lowest value."""

    si: str
    metric: str
    metric_digits: int
    us: str
    us_digits: int
    low: float = 0.0
    units: tuple[str, ...] = ()


PLAIN = Kind("", "", 2, "", 2)
_KINDS = {
    "m": Kind("m", "m", 2, "ft", 2, units=("m", "cm", "mm", "ft", "in")),
    "m2": Kind("m²", "m²", 2, "ft²", 1, units=("m²", "cm²", "ft²", "in²")),
    "l": Kind("L", "L", 3, "gal", 2, units=("L", "mL", "gal", "qt", "pt", "fl oz")),
    "g": Kind("g", "g", 1, "g", 1, -MOST, ("g", "kg", "oz", "lb")),  # scales show g everywhere
    "c": Kind("°C", "°C", 1, "°F", 1, ABSOLUTE_ZERO_C, ("°C", "°F")),
    "um": Kind("µm", "µm", 0, "mil", 1, units=("µm", "mm", "mil")),
    "s": Kind("s", "min", 0, "min", 0, units=("s", "min", "h", "d")),
    "g_ml": Kind(
        "g/mL", "g/mL", 2, "lb/gal", 2, units=("g/mL", "kg/L", "g/cm³", "kg/m³", "lb/gal")
    ),
    "g_m2": Kind("g/m²", "g/m²", 1, "g/m²", 1, units=("g/m²", "oz/ft²")),
    "m2_l": Kind("m²/L", "m²/L", 1, "ft²/gal", 0, units=("m²/L", "ft²/gal")),
    "ratio": Kind("", "%", 1, "%", 1, units=("%",)),
}
# The tail of a name that consists of these is its unit; after "per" it is no unit of ours.
_SYMBOLS = {"m", "m2", "m3", "l", "ml", "g", "kg", "c", "um", "s", "ratio", "w", "h", "min", "per"}

SPELLED = {
    "m": ("m", "metre", "metres", "meter", "meters"),
    "cm": ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    "mm": ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    "ft": ("ft", "ft.", "foot", "feet", "'"),
    "in": ("in", "in.", "inch", "inches", '"'),
    "m²": ("m²", "m2", "sq m", "sqm"),
    "cm²": ("cm²", "cm2", "sq cm"),
    "ft²": ("ft²", "ft2", "sq ft", "sqft", "sf", "sq. ft", "sq. ft.", "square feet"),
    "in²": ("in²", "in2", "sq in", "sq. in."),
    "L": ("l", "ltr", "litre", "litres", "liter", "liters"),
    "mL": ("ml", "millilitre", "millilitres", "milliliter", "milliliters"),
    "gal": ("gal", "gal.", "gallon", "gallons"),
    "qt": ("qt", "qt.", "quart", "quarts"),
    "pt": ("pt", "pt.", "pint", "pints"),
    "fl oz": ("fl oz", "fl. oz.", "fl. oz", "floz", "fluid ounce", "fluid ounces", "oz", "oz."),
    "g": ("g", "gr", "gram", "grams", "gramme", "grammes"),
    "kg": ("kg", "kilo", "kilos", "kilogram", "kilograms"),
    "oz": ("oz", "oz.", "ounce", "ounces"),
    "lb": ("lb", "lb.", "lbs", "lbs.", "pound", "pounds"),
    "°C": ("°c", "c", "℃", "deg c"),
    "°F": ("°f", "f", "℉", "deg f"),
    "µm": ("µm", "um", "micron", "microns"),
    "mil": ("mil", "mils", "thou"),
    "s": ("s", "sec", "secs", "second", "seconds"),
    "min": ("min", "min.", "mins", "minute", "minutes", "m"),
    "h": ("h", "hr", "hrs", "hour", "hours"),
    "d": ("d", "day", "days"),
    "g/mL": ("g/ml",),
    "kg/L": ("kg/l",),
    "g/cm³": ("g/cm³", "g/cm3", "g/cc"),
    "kg/m³": ("kg/m³", "kg/m3"),
    "lb/gal": ("lb/gal", "lbs/gal"),
    "g/m²": ("g/m²", "g/m2", "gsm"),
    "oz/ft²": ("oz/ft²", "oz/ft2", "oz/sq ft"),
    "m²/L": ("m²/l", "m2/l", "sq m/l"),
    "ft²/gal": ("ft²/gal", "ft2/gal", "sq ft/gal"),
    "%": ("%", "percent", "per cent"),
}
# Units that may follow each other, and those after which the last may go without saying.
CHAINS = (("m", "cm", "mm"), ("ft", "in"), ("d", "h", "min", "s"), ("lb", "oz"))
MAY_END_BARE = {"ft", "h", "min", "lb"}  # 12 ft 6, 1 h 30, 2 lb 3


def kind_of(name: str) -> Kind:
    """Find the quantity that a name ends in.

    Parameters
    ----------
    name
        What it is, with its SI unit: `width_m`.

    Returns
    -------
        Its kind; `PLAIN` for a name without a unit (`parts_count`), or with one that nobody
        types or reads here (`price_per_g`).

    Source: this project's naming.

    >>> kind_of("width_m").us, kind_of("density_g_ml").us, kind_of("price_per_g") is PLAIN
    ('ft', 'lb/gal', True)
    """
    words = name.split("_")
    first = len(words)
    while first and words[first - 1] in _SYMBOLS:
        first -= 1
    return _KINDS.get("_".join(words[first:]), PLAIN)
