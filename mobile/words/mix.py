"""What *Mix* says."""

KEPT_OVER = "Left as it is; the pot keeps what was really poured."


def kept(name: str) -> str:
    """Say that a recipe was kept."""
    return f"{name} is kept."


def removed(name: str) -> str:
    """Say that a recipe is off the job."""
    return f"{name} is off the list; its pots stay."


def grams(value_g: float) -> str:
    """Say grams as a scale shows them."""
    return f"{value_g:.1f} g"


def poured(net_g: float) -> str:
    """Say what was logged."""
    return f"{grams(net_g)} poured."


def made_more(batch_g: float) -> str:
    """Say the new batch."""
    return f"The batch is {grams(batch_g)} now."


def tipped(number: int, lost_g: float) -> str:
    """Say that a pot is lost."""
    return f"Pot {number} tipped out, {grams(lost_g)} lost."


def restarted(missed_g: float) -> str:
    """Say that the weigh-out goes on."""
    found = f" {grams(missed_g)} had been poured and is logged." if missed_g else ""
    return f"The scale is back.{found}"


def stirred(number: int, in_cup_g: float) -> str:
    """Say that a pot is done."""
    return f"Pot {number}, {grams(in_cup_g)}, is done."
