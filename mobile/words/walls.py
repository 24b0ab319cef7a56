"""What *Walls* says."""


def wall(number: int) -> str:
    """Name a wall by its number."""
    return f"Wall {number}"


def kept(name: str) -> str:
    """Say that a wall was kept."""
    return f"{name} is kept."


def removed(name: str) -> str:
    """Say that a wall is off the job."""
    return f"{name} is off the job."
