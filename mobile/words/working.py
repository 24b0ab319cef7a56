"""Names of the steps behind a figure, as the *How?* sheet says them."""

import re

# Signs that core writes and the font lacks.
ROOT, SQUARE_ROOT, WHOLE_UP = chr(0x221B), chr(0x221A), re.compile(r"\u2308(.+)\u2309")
LARGER = re.compile(r"max\((.+), ([^,]+)\)")
SMALLER = re.compile(r"min\((.+), ([^,]+)\)")
NAMES = {
    "batch_g": "In all loads",
    "bound_g": "Dried off, at most",
    "coated_m2": "Square metres times coats",
    "holds_l": "The cans hold",
    "humidity_kg_per_kg": "Water in the air",
    "kept_g": "Stays in tools and cups",
    "kit_g": "For touch-ups",
    "kit_m2": "The kit is for",
    "load_g": "One load",
    "need_g": "To weigh",
    "need_l": "That is",
    "price_per_g": "A gram is worth",
    "rate_g_m2": "One coat takes",
    "solids_ratio": "Volume solids of the mix",
    "dried_g": "Dried off",
    "gone_g": "Neither left, nor moved on, nor waste",
    "tools_g": "In tools and cups",
    "walls_g": "On walls",
    "u_g": "Readings and drying can be off by",
    "vapour_hpa": "Water vapour, hPa",
    "wall_g": "On the wall",
    "wanted_l": "With the margin",
    "wft_um": "Wet film",
    "add_g": "To add",
    "band_g": "Band",
    "band_ratio": "Band, as a share of the part",
    "carrier_g": "Let down with",
    "carrier_left_g": "Still to pour of that paint",
    "error_g": "The scale shows too much by",
    "hidden_g": "The batch that hides it",
    "kept_ratio": "Its share if it stays",
    "left_ratio": "Share that is left",
    "most_g": "The most that can be made",
    "tint_g": "Strong paint in the let-down",
    "use_g": "Of the let-down into the pot",
    "used_g": "Of the leftover into the pot",
    "cup_l": "The cup holds",
    "deducted_m2": "Openings taken off",
    "deficit_g": "Still to pour",
    "density_g_ml": "Density of the mix",
    "extra_g": "More than planned",
    "extra_price": "It costs more by",
    "factor_ratio": "The batch grows to",
    "full_ratio": "How full it is",
    "gap_g": "Gap",
    "gross_m2": "Whole wall",
    "label_ready_at_s": "Ready by the label",
    "late_at_s": "Recoat before",
    "layer_l": "One layer",
    "lost_g": "Lost",
    "lost_price": "It loses",
    "missed_g": "Poured and not logged",
    "net_g": "Net",
    "net_m2": "To paint",
    "offset_g": "The scale is off zero by",
    "opening_deducted_m2": "Taken off for it",
    "opening_m2": "One opening",
    "over_g": "Too much",
    "paint_g": "Paint in a full can",
    "planned_ratio": "Share in the recipe",
    "poured_since_g": "Poured since it was weighed",
    "reads_g": "The scale should read",
    "ready_at_s": "Ready",
    "speak_above_g": "Worth asking above",
    "share_ratio": "Share now",
    "should_be_g": "Should be in it",
    "tare_g": "Empty can",
    "target_g": "This part",
    "top_ratio": "Stands up to",
    "total_g": "In all",
    "volume_l": "Litres",
}
SOURCES = {
    "geometry": "",
    "this project": "this project's planning model",
}


def name_of(step: str) -> str:
    """Name a step; one without words of its own is called by its quantity."""
    return NAMES.get(step) or step.rsplit("_", 1)[0].replace("_", " ").capitalize()


def in_words(formula: str) -> str:
    """Write a formula as one says it aloud.

    >>> in_words("max({net_g} × {band_ratio}, 1)")
    'the larger of {net_g} × {band_ratio} and 1'
    """
    said = LARGER.sub(r"the larger of \1 and \2", formula)
    said = SMALLER.sub(r"the smaller of \1 and \2", said)
    said = WHOLE_UP.sub(r"\1, up to the next whole gram", said)
    return said.replace(ROOT, "cube root of ").replace(SQUARE_ROOT, "square root of ")


def source_of(source: str) -> str:
    """Say where a formula comes from; geometry needs no witness."""
    return SOURCES.get(source, source)
