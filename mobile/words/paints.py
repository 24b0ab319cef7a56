"""What is said of paints."""

from mobile.words.grams import listed

TITLE, NEW, STARTER = "Paints", "New paint", "Starter paints"
STARTER_MORE = "invented, none of any maker: read your own labels"
EMPTY = "No paint yet. It comes with its can or its recipe, or write it down here."
NAME, LOOKS = "Paint", "How it looks"
DENSITY = "Density"
DENSITIES = (("typed", "Off the label"), ("label", "Mass and litres"), ("weighed", "Weigh some"))
MASS, VOLUME = "Mass on the label", "Litres on the label"
WEIGHED, MEASURED = "Weighed, net", "That many litres"
DENSITY_MORE = {
    "typed": "As the label or the data sheet has it.",
    "label": "Net mass and contents, both off the label.",
    "weighed": "Fill a measure to its mark, weigh what is in it.",
}
SOLIDS, SPREAD, GRAMS = "Volume solids", "Spreading rate", "One coat takes"
RATE_MORE = "Whichever the label says; the others may stay empty."
SIZES, SIZE, PRICE, ADD_SIZE = "Cans as sold", "Can", "Price", "Add a size"
WAITS, ADD_WAIT = "Waits off its label", "Add a wait"
BEFORE, ANY = "Before", "any step"
REMOVE, REMOVE_PAINT = "Remove", "Take it off the list"
LACKS = {"density": "density", "rate": "what a coat takes", "price": "a price"}


def kept(name: str) -> str:
    """Say that a paint was kept."""
    return f"{name} is kept."


def removed(name: str) -> str:
    """Say that a paint is off the list."""
    return f"{name} is off the list."


def starter(count: int) -> str:
    """Say how many paints came."""
    return f"{count} paints more. None is of any maker: read your own labels."


def keep(name: str) -> str:
    """Say what the main button keeps."""
    return f"Keep {name or 'the paint'}"


def lacking(names: tuple[str, ...]) -> str:
    """Say what is not typed yet."""
    return f"lacks {listed(tuple(LACKS[name] for name in names))}" if names else ""


def found_density(density: str) -> str:
    """Say the density that comes out."""
    return f"That is {density}."


def size_label(number: int) -> str:
    """Label a can size."""
    return f"{SIZE} {number}"


def price_label(number: int) -> str:
    """Label its price."""
    return f"{PRICE} {number}"
