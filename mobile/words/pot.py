"""What is said of a pot that is done: more of it, its colour, its cups, what is left."""

from mobile.words.grams import grams

SCALE_TAKEN = "Another pot stands on the scale. Finish it first."
ADD = "Add to this pot"
CORRECT = "Correct the colour"
TARE_FIRST = "Put the pot back on the scale and tare it to zero first."
HOW_MUCH_MORE = "How many grams more?"
LACKS = "Say of each paint what the dried brush-out lacks, in each light."
SIGNS = "+ it lacks this paint, − it has too much of it."
LIGHTS = (("day", "By day"), ("lamp", "Under the lamp"))
STEPS = (
    ("-3", "−−−"),
    ("-2", "−−"),
    ("-1", "−"),
    ("0", "as is"),
    ("1", "+"),
    ("2", "++"),
    ("3", "+++"),
)
STEPS_NOTE = "A step each way is 5, 12 or 25 % of the part; where both lights ask, their mean."
NOTHING_ASKED = "Nothing asked yet."
TOO_LITTLE_TO_ADD = "Too little for this scale to weigh."
SAME_FOR_ALL = "All alike changes nothing: say which lacks most."


def back_on(number: int) -> str:
    """Say that a pot stands on the scale again."""
    return f"Pot {number} is back on the scale, tared to zero."


def corrected(number: int) -> str:
    """Say that a pot gets what it lacks."""
    return f"Pot {number} is back on the scale; its recipe has a new version."


def left(left_g: float) -> str:
    """Say what should be in it still."""
    return f"{grams(left_g)} in it now"


def add_grams(typed: str) -> str:
    """Say what the main button adds."""
    return f"Add {typed} g" if typed else "Add"


def add_these(pours: tuple[tuple[str, float], ...]) -> str:
    """Say what is poured."""
    return ", then ".join(f"{grams(net_g)} {name}" for name, net_g in pours)


def then_weighs(total_g: float) -> str:
    """Say what the pot weighs then."""
    return f"The pot weighs {grams(total_g)} then."
