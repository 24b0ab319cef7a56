"""What the app says when something did not work: what happened, what is kept, what to do."""

from math import isfinite

from core.errors import Refused

UNDONE = "Taken back."
BUG = "That did not work. What you kept is kept; try once more."
FULL = "The phone is full, so this was not kept. Free some space, then try again: it is still here."
TAKEN = "Duskcoat was opened in another tab. This one keeps nothing more."
GONE = "The phone's storage did not answer, so this was not kept. Close the app and start it again."

_NAMES = {
    "width_m": "Width",
    "height_m": "Height",
    "left_height_m": "Left height",
    "right_height_m": "Right height",
    "reads_g": "Scale reads",
    "gross_g": "Scale reads",
    "batch_g": "Grams",
    "cup_g": "Cup",
    "tare_g": "Empty can",
    "label_l": "Paint on the label",
    "density_g_ml": "Density",
    "minimum_s": "Wait",
    "maximum_s": "Recoat before",
    "parts_count": "Parts",
    "count": "How many",
}


def named(name: str) -> str:
    """Give the words for a quantity."""
    plain = name.rsplit("_", 1)[0].replace("_", " ").capitalize()
    return _NAMES.get(name, plain)


def refused(refusal: Refused) -> str:
    """Say what is wrong with a value and what would do."""
    if isinstance(refusal.value, str):
        return f"{named(refusal.name)}: type a number"
    if isfinite(refusal.high):
        return f"{named(refusal.name)}: from {refusal.low:g} to {refusal.high:g}"
    return f"{named(refusal.name)}: {refusal.low:g} or more"


def not_kept(error: OSError) -> str:
    """Say why a commit failed; the store's errors are told apart by their names."""
    return {"Full": FULL, "Busy": TAKEN}.get(type(error).__name__, GONE)
