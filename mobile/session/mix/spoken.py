"""The step of a weigh-out, as it is said aloud."""

from mobile.session.known import Known, found
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.pots import under_way
from mobile.words import weigh_out as weigh_words
from mobile.words.grams import scale as grams_said


def spoken_step(known: Known) -> str:
    """Say the step of a weigh-out aloud: the paint, its can, what the scale should read."""
    pot = under_way(known)
    if pot is None:
        return ""
    target = pot.target
    if target is None:
        return weigh_words.SAID_ALL_IN
    can = found(known.cans, pot.can(target.paint))
    reads = grams_said(abs(target.reads_g), pot.plan.scale_step_g)
    number = can.number if can else None
    return weigh_words.spoken(paint_of(known, target.paint).name, number, reads, pot.plan.way)
