"""What *Walls* says."""

MEASURE, ADD_OPENING, REMOVE_WALL, REMOVE_OPENING = (
    *("Measure a wall", "Add an opening", "Take it off the job", "Remove"),
)
NAME, WIDTH, HEIGHT, LEFT, RIGHT = "Name", "Width", "Height", "Left height", "Right height"
OPENING, OPENING_WIDTH, OPENING_HEIGHT, COUNT = (
    *("Opening", "Opening width", "Opening height", "How many"),
)
ONE_HEIGHT, TWO_HEIGHTS = "One height", "Two heights"
MEASURE_AGAIN, MARK, REMOVE_ZONE = "Measure", "Mark a zone", "Take it off the wall"
AREA, AREA_MORE = "Area", "Measured on the wall, or counted off the print."
AREA_OVER = "That is more than there is to paint on this wall. Measured over an opening?"
COATS, ITS_MIX, NEW_MIX = "Coats of it", "Its mix", "New mix"
NO_MIX, NO_MIXES = "no mix yet", "No glaze or opaque mix yet: write one first, or keep it without."
NO_ZONES = "No zone yet: a zone is a part of the wall with a mix of its own."
IN_ZONES, POTS = "in zones", "Pots for this wall"
EMPTY = "Measure the first wall"
EMPTY_MORE = "Its width and its height give the square metres; openings come off."
TODO, TODO_RIGHT = "type its width and height", "put its measures right"
TODO_OPENING = "type the opening's width and height"
NET, GROSS, OFF = "to paint", "whole wall", "openings off"


def wall(number: int) -> str:
    """Name a wall by its number."""
    return f"Wall {number}"


def zone(number: int) -> str:
    """Name a zone by its number."""
    return f"Zone {number}"


def zone_small(use: str, coats: int) -> str:
    """Say what a zone gets."""
    return f"{use}, {coats} coat{'s' if coats > 1 else ''}"


def zone_removed(name: str) -> str:
    """Say that a zone is off its wall."""
    return f"{name} is off the wall."


def pot(number: int) -> str:
    """Name a pot."""
    return f"Pot {number}"


def to_paint(area: str) -> str:
    """Say what there is to paint."""
    return f"{area} to paint"


def title(area: str) -> str:
    """Say all walls' area."""
    together = area.replace(" ", "\xa0")
    return f"Walls, {together}"


def kept(name: str) -> str:
    """Say that a wall was kept."""
    return f"{name} is kept."


def removed(name: str) -> str:
    """Say that a wall is off the job."""
    return f"{name} is off the job."


def keep(name: str) -> str:
    """Say what the main button keeps."""
    return f"Keep {name}"


def after(names: tuple[str, ...]) -> str:
    """Say what came off."""
    return f"after the {' and the '.join(names)}" if names else ""


def rule(threshold: str) -> str:
    """Say the rule for openings."""
    how = f"Openings over {threshold} come off, smaller ones don't; change it in Job, Settings."
    return f"{how} They are drawn to size; where they sit is not measured."


def spoken(name: str, width: str, heights: str, openings: int) -> str:
    """Say what the drawing shows."""
    holes = f", {openings} opening{'s' if openings > 1 else ''}" if openings else ""
    return f"{name} to scale, {width} wide, {heights} high{holes}"
