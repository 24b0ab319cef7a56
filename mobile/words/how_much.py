"""What is said of how much a job needs."""

from mobile.words.grams import listed

TITLE, SMALL = "How much", "paints, cans, mixes, steps"
BY = (("paint", "Paints"), ("mix", "Mixes"), ("step", "Steps"))
NOTHING = "Nothing is needed yet: it takes a wall, a mix and a step that puts it there."
NO_SIZES = "its can sizes are not typed yet"
PRICE_UNKNOWN = "Not every price is typed yet."
ASSUMED = "some of it assumed"
ON_WALL_ONLY = "On the wall alone; what tools, cups and the kit keep is counted by mix."


def cans(sizes: tuple[tuple[int, str], ...], price: str) -> str:
    """Say which cans to buy, and their price."""
    said = listed(tuple(f"{count} × {size}" for count, size in sizes)) if sizes else "none"
    return f"{said}, {price}" if price else said


def cans_cost(price: str) -> str:
    """Say what all cans cost."""
    return f"Cans {price}"


def margin(share: str) -> str:
    """Say what is bought above the need, and that the shelf is not taken off."""
    return f"The cheapest sets that hold the need and {share} more; your own cans not taken off."


def shelf(grams: str) -> str:
    """Say what one has of a paint."""
    return f"you have {grams}"


def no_mix_yet(steps: tuple[str, ...]) -> str:
    """Say which steps are not counted."""
    return f"Not counted, no mix yet: {listed(steps)}."


def parts_of(litres: str, loads: int) -> str:
    """Say the litres of a mix, and its loads where there are several."""
    return litres if loads == 1 else f"{litres}, {loads} loads"


def of_mix(mix: str, area: str) -> str:
    """Say which mix, on how much wall."""
    return f"{mix}, {area}"
