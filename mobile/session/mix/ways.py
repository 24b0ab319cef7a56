"""What can be done with a pot that is done."""

from mobile.session.known import Known
from mobile.session.mix.cups import HAIR_G, cups_of
from mobile.store.pot import Pot

OF_POT = "add", "correct", "cups"
OF_WHAT_IS_LEFT = ("left",)
ALWAYS = "went", "label"


def ways_of(known: Known, pot: Pot) -> tuple[str, ...]:
    """Give what can be done with a pot: more while it holds some, or one of its cups does.

    One that was tipped out may have cups that were filled before.
    """
    if not pot.ended:
        return ()
    cups = any(cup.now_g > HAIR_G for cup in cups_of(known, pot))
    if pot.ended != "stirred" and not cups:
        return ("label",)
    of_pot = OF_POT if pot.left_g > HAIR_G else ()
    return (*of_pot, *(OF_WHAT_IS_LEFT if of_pot or cups else ()), *ALWAYS)
