"""What the app says when something did not work: what happened, what is kept, what to do."""

from collections.abc import Callable

from core.errors import Refused
from mobile.words import looks

UNDONE = "Taken back."
BUG = "That did not work. What you kept is kept; try once more."
FULL = "The phone is full, so this was not kept. Free some space, then try again: it is still here."
TAKEN = "Duskcoat was opened in another tab. This one keeps nothing more."
GONE = "The phone's storage did not answer, so this was not kept. Close the app and start it again."

MOST = 1e6  # a bound above this is no help to anybody
SENTENCES = {
    "openings_m2": "The openings are larger than the wall. Check their sizes, or the wall's.",
    "limit_before_wait": "The recoat limit must be later than the wait.",
    "impossible_pair": "No time keeps all waits: {} leaves no room. Check its limit.",
    "paint_taken": "{} is on the list already.",
    "wall_taken": "{} is on this job already. Give this one another name.",
    "paint_in_use": "{} is in a can or a recipe, so it stays.",
    "limit": "Has the label a recoat limit? Choose none or at most.",
    "limit_from": "Is the limit counted from its end or its start? The label says.",
    "number_taken": "Another can has that number. Paint a different one on the lid.",
    "name": "Give it a name.",
    "share_of_one": "{}: a share is more than nothing.",
    "can_number": "A whole number from 1 to 9999, as on the lid.",
    "day": looks.LIKE,
    "lamp": looks.LIKE,
    "paint_name": "Say which paint is in it.",
}
_NAMES = {
    "width_m": "Width",
    "height_m": "Height",
    "left_height_m": "Left height",
    "right_height_m": "Right height",
    "reads_g": "Scale reads",
    "gross_g": "What the scale shows",
    "batch_g": "Grams",
    "planned_g": "Planned grams",
    "mass_g": "Grams",
    "net_g": "Grams",
    "portion_g": "One part",
    "capacity_g": "The scale's capacity",
    "more_s": "Longer by",
    "cup_g": "Cup",
    "tare_g": "Empty can",
    "label_l": "Paint on the label",
    "density_g_ml": "Density",
    "minimum_s": "Wait",
    "maximum_s": "Recoat within",
    "parts_count": "Parts",
    "opening_width_m": "Opening width",
    "opening_height_m": "Opening height",
    "opening_count": "How many",
    "zone_area_m2": "Area",
    "coats_count": "Coats",
    "work_s": "Takes",
    "rate_g_m2": "Grams a m²",
    "spread_m2_l": "Spreading rate",
    "dft_um": "Dry film",
    "loss_ratio": "Lost on the way",
    "wettings_count": "How many",
    "solids_ratio": "Volume solids",
    "size_l": "Can size",
    "hold_up_g": "It keeps",
    "margin_ratio": "Above the need",
    "price": "Price",
    "density_mass_g": "Mass",
    "density_l": "Litres",
    "open_s": "Lid off for",
    "share_count": "A share",
    "across_m": "Can across",
    "air_c": "Air",
    "rh_ratio": "Humidity",
    "deducted_above_m2": "Openings come off above",
}


def named(name: str) -> str:
    """Give the words for a quantity."""
    plain = name.rsplit("_", 1)[0].replace("_", " ").capitalize()
    return _NAMES.get(name, plain)


def refused(refusal: Refused, show: Callable[[str, float], str]) -> str:
    """Say what is wrong with a value and what would do, in the person's units."""
    name = named(refusal.name)
    if refusal.name in SENTENCES:
        return SENTENCES[refusal.name].format(refusal.value)
    if isinstance(refusal.value, str):
        return f"{name}: type a number{_example(refusal.name)}"
    if refusal.high < MOST and refusal.high > refusal.low:
        return (
            f"{name}: from {show(refusal.name, refusal.low)} to {show(refusal.name, refusal.high)}"
        )
    return f"{name}: {show(refusal.name, refusal.low)} or more"


def _example(name: str) -> str:
    """Show how a quantity may be typed."""
    endings = {"_m": ", like 3.5 or 12 ft 6 in", "_s": ", like 30 min or 1 h 30"}
    return next((words for end, words in endings.items() if name.endswith(end)), "")


def not_kept(error: OSError) -> str:
    """Say why a commit failed; the store's errors are told apart by their names."""
    return {"Full": FULL, "Busy": TAKEN}.get(type(error).__name__, GONE)
