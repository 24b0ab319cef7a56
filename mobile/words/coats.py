"""What *Coats* says."""

# Which caution (words/cautions.py) stands before which kind of step.
CAUTION_BEFORE = {
    "prepare": "wipe-down",
    "promoter": "promoter",
    "outline": "solvent markers",
    "film": "blades",
    "clear": "clear coat",
    "glaze": "lamps",
    "opaque": "lamps",
}


def ring(wall: str, step: str) -> str:
    """Say that a wall is ready."""
    return f"{wall} is ready for {step}"


def ring_late(wall: str, hour: str) -> str:
    """Say that a limit comes near."""
    return f"{wall}: recoat before {hour}"


def finished(step: str, wall: str, hour: str) -> str:
    """Say that a coat was logged."""
    return f"{step} finished on {wall} at {hour}."


def tacky(wall: str) -> str:
    """Say that a wait was made longer."""
    return f"{wall}: ten minutes more."
