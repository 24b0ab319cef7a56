"""What *Cans* says."""


def kept(number: int) -> str:
    """Say that a can was kept."""
    return f"Can {number} is kept."


def weighed(number: int, net_g: float) -> str:
    """Say what a weighing settled."""
    return f"Can {number}: {net_g:.1f} g, kept."


def gone(number: int) -> str:
    """Say that a can is off the list."""
    return f"Can {number} is off the list."
