"""Names of the steps behind a figure, as the *How?* sheet says them."""

NAMES = {
    "gross_m2": "Whole wall",
    "opening_m2": "One opening",
    "opening_deducted_m2": "Taken off for it",
    "deducted_m2": "Openings taken off",
    "net_m2": "To paint",
    "label_ready_at_s": "Ready by the label",
    "ready_at_s": "Still tacky: ready",
    "late_at_s": "Recoat before",
    "paint_g": "Paint in it unopened",
    "tare_g": "Empty can",
    "net_g": "Paint in the can",
    "volume_l": "Litres",
    "full_ratio": "Full, beside its label",
    "poured_since_g": "Poured since",
    "should_be_g": "Should be",
    "gap_g": "Missing",
}
SOURCES = {
    "geometry": "",
    "this project": "this project's planning model",
}


def name_of(step: str) -> str:
    """Name a step; one without words of its own is called by its quantity."""
    return NAMES.get(step) or step.rsplit("_", 1)[0].replace("_", " ").capitalize()


def source_of(source: str) -> str:
    """Say where a formula comes from; geometry needs no witness."""
    return SOURCES.get(source, source)
