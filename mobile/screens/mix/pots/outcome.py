"""How a pot came out, in a few words."""

from core.mixing.pot import contents
from mobile.parts.boards import State
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.pots import more_than_planned
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mix as words


def came_out(known: Known, pot: Pot) -> tuple[str, State]:
    """Say what became of a pot, and whether that is good."""
    step_g = pot.plan.scale_step_g
    if pot.ended == "tipped":
        lost = in_grams.scale(pot.in_cup_g, step_g)
        return (words.tipped_out(lost), "caution") if pot.in_cup_g else (words.NOT_WEIGHED, "")
    if pot.ended != "stirred":
        return words.ON_THE_SCALE, ""
    said = []
    if pot.plan.factor_ratio > 1:
        planned_g = sum(portion.net_g for portion in pot.plan.portions)
        said.append(words.made_bigger(in_grams.whole(planned_g)))
    strays = contents(pot.strays)
    named = {one.paint for one in strays}
    more = tuple(one for one in more_than_planned(pot) if one not in named)
    said += [words.kept_more(paint_of(known, one).name) for one in more]
    said += [
        words.with_stray(in_grams.scale(one.net_g, step_g), paint_of(known, one.paint).name)
        for one in strays
    ]
    said += [words.FATES[fate] for fate in dict.fromkeys(pot.fates)]
    return (in_grams.listed(tuple(said)), "") if said else (words.AS_PLANNED, "good")
