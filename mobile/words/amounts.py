"""What is said of how much a mix needs."""

from mobile.words.grams import listed

KEEP_AMOUNT, ONE_COAT = "Keep it", "One coat takes"
RATES = (
    ("usual", "Label or usual"),
    ("g_m2", "Grams a m²"),
    ("spread_m2_l", "Spreading rate"),
    ("dft_um", "Dry film"),
)
RATE_USUAL = "Off the label of its only paint, else what is usual for its use."
LOSS = "Lost on the way"
WETTINGS, WETTINGS_MORE = (
    "Tools, each time one is wetted with it",
    "Over all coats together. Bagged between coats, a sleeve counts once.",
)
TOOL_NAMES = {
    "sleeve": "Sleeves",
    "mini sleeve": "Mini sleeves",
    "brush": "Brushes",
    "tray": "Trays",
    "bucket": "Buckets",
    "cup": "Cups",
}
TOOLS_KEEP, TOOLS_KEPT = "What tools keep", "It is kept for every mix."
TOOLS_KEEP_MORE = "Weighed scraped, less weighed dry. The usual stands in until you weigh yours."
MARGIN = "Bought above the need"
KEEPS_OF = {
    "sleeve": "A sleeve keeps",
    "mini sleeve": "A mini sleeve keeps",
    "brush": "A brush keeps",
    "tray": "A tray keeps",
    "bucket": "A bucket keeps",
    "cup": "A cup keeps",
}
CUPS, KIT = "Cups", "Kept for touch-ups"
KITS = (("no", "None"), ("yes", "A kit"))
ON_WALLS = "On these walls"
ON_WALL, IN_TOOLS, FOR_KIT = "on the wall", "tools and cups", "kit"
NO_ANSWER = "…"
AMOUNT_UNKNOWN = "Something below can't be read yet."
NO_ZONE = "No zone has this mix yet. Mark one on a wall, under Walls."
NO_STEP = "No step of the schedule puts it on a wall yet."
HOW_AMOUNT = "what its walls and zones need"
STANDS_IN = {
    "density": "the density of a paint",
    "rate": "what a coat takes",
    "solids": "volume solids",
    "tools": "the tools",
}


def amount_title(name: str) -> str:
    """Head how much of a mix there is to make."""
    return f"{name}: how much"


def on_so_much(area: str, count: int) -> str:
    """Say an area and its coats."""
    return f"{area}, {coats(count)}"


def ask_label(paint: str) -> str:
    """Offer to write down what a label says."""
    return f"Read the label of {paint}"


def litres_and_rate(litres: str, rate: str) -> str:
    """Say the litres, and what one coat takes."""
    return f"{litres}, {rate} a coat"


def stands_in(names: tuple[str, ...]) -> str:
    """Say what is assumed: the usual stands in for what nobody said."""
    return f"Assumed, as is usual: {listed(tuple(STANDS_IN[name] for name in names))}."


def coats(count: int) -> str:
    """Count coats."""
    return f"{count} coat" if count == 1 else f"{count} coats"
