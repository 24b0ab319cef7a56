"""What is said when something goes wrong at the scale besides too much."""

from mobile.words.grams import grams, listed

WHAT = (("scale", "Scale went off"), ("wrong", "Wrong can"), ("spilt", "Knocked over"))
WRONG, SPILT = "Wrong can", "Knocked over"
WHICH = "Which paint went in?"
READS_NOW = "What does the scale read now?"
TYPE_READING = "Type what the scale reads."
LOG = "It went in"
CUP_BACK = "Put the cup back on the scale. What does it read?"
CUP_ANEW = "Zero the empty scale, then put the cup on. What does it read?"
CUP_NET = "What is left in the cup, its own weight taken off?"
AGAIN = "Pour it again"
UNSTIRRED = "Reckoned as stirred. What lay on top may have gone over first."
STRAY = "The wrong paint in the pot"
IN_RECIPE = "It is in this recipe: it counts as poured."
ANOTHER, NOTHING_GONE = "Another", "Nothing is gone."
UNSEEN = "Then it is 1 % of the batch: seldom seen. Look at a brush-out."
LOOK = "Look at a brush-out before it goes on the wall."
NOTHING_MORE = "The same as before: nothing went in."
TOO_MANY = "That is more than was in it. Read again."
TOO_LITTLE = "Too little is left for a smaller batch: pour it again."


def logged(net_g: float) -> str:
    """Say what was logged."""
    return f"{grams(net_g)} of the wrong can are logged."


def so_much(net_g: float, paint: str) -> str:
    """Say how much of which paint went in."""
    return f"{grams(net_g)} of {paint}"


def gone(lost_g: float) -> str:
    """Say what went over."""
    return f"{grams(lost_g)} went over."


def gone_of(parts: tuple[tuple[str, float], ...], lost_g: float) -> str:
    """Say what went over, paint by paint."""
    each = listed(tuple(f"{grams(net_g)} {name}" for name, net_g in parts))
    return f"{grams(lost_g)} gone: {each}."


def smaller(batch_g: float) -> str:
    """Offer a smaller pot."""
    return f"Make {grams(batch_g)} instead"


def hidden(batch_g: float) -> str:
    """Say the batch that hides it."""
    return f"The batch is {grams(batch_g)} now; the wrong paint is 1 % of it."


def hide(batch: str) -> str:
    """Offer the batch that hides it."""
    return f"Make {batch} g instead"


def stays(share: str, paint: str) -> str:
    """Say what keeping it means."""
    return f"Keep it, {share} of it is {paint}"


def over(much: str, paint: str) -> str:
    """Head the answers."""
    return f"{much} g of {paint}"
