"""How days are called from today."""

NEAR = {-1: "yesterday", 1: "tomorrow"}
WEEK = 7


def near(days: int, hour: str) -> str:
    """Say an hour of yesterday or tomorrow."""
    return f"{NEAR[days]} {hour}"


def on(day: str, hour: str) -> str:
    """Say an hour of another day."""
    return f"{day} {hour}"
