"""What a typed reading says: on the mark, short, over, or why it can't be."""

from dataclasses import dataclass, replace

from core.errors import Refused
from core.mixing.plan import Pour
from core.mixing.restart import Restart
from core.mixing.weigh_out import Target
from mobile.parts.boards import State
from mobile.session.from_cans import paint_of
from mobile.session.known import Known
from mobile.session.view import View
from mobile.session.weigh_out import net_of, restart_of
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import weigh_out as weigh_words


@dataclass(frozen=True, slots=True)
class Verdict:
    """What is said of a reading; `reads_g` is None where it can't be used."""

    said: str
    state: State = ""
    sign: str = ""
    reads_g: float | None = None


def verdict(known: Known, pot: Pot, target: Target, text: str, view: View) -> Verdict:
    """Say what will follow from a reading of the part under way."""
    try:
        reads_g = view.read("reads_g", text)
        net_g = net_of(known, pot, reads_g)
    except Refused as refusal:
        return refused(refusal, text, view)
    step_g = pot.plan.scale_step_g
    after = replace(pot, poured=(*pot.poured, Pour(target.paint, net_g)))
    if after.over:
        return Verdict(
            weigh_words.over(in_grams.scale(after.over.over_g, step_g)), "caution", "up", reads_g
        )
    coming = after.target
    if coming and coming.paint == target.paint:
        return Verdict(weigh_words.short(in_grams.scale(coming.net_g, step_g)), "", "down", reads_g)
    return Verdict(weigh_words.WITHIN, "good", "check", reads_g)


def refused(refusal: Refused, text: str, view: View) -> Verdict:
    """Say why a reading can't be; an empty figure asks for one."""
    if not text:
        return Verdict(weigh_words.TYPE_READING)
    return Verdict(weigh_words.refused(refusal, view.show), "caution", "warning")


def concluded(known: Known, pot: Pot, text: str, view: View) -> Verdict:
    """Say what a reading means after the scale went off."""
    try:
        reads_g = view.read("reads_g", text)
        restart = restart_of(known, pot, reads_g)
    except Refused as refusal:
        return refused(refusal, text, view)
    return meaning(known, pot, restart, reads_g)


def meaning(known: Known, pot: Pot, restart: Restart, reads_g: float) -> Verdict:
    """Say which of the four cases it is."""
    step_g, target = pot.plan.scale_step_g, pot.target
    logged = in_grams.scale(pot.in_cup_g, step_g)
    if restart.missed_g and target:
        missed = in_grams.scale(restart.missed_g, step_g)
        name = paint_of(known, target.paint).name
        return Verdict(weigh_words.missed(missed, name), "", "drop", reads_g)
    if restart.offset_g == pot.plan.offset_g:
        said = weigh_words.kept_count(logged)
    elif abs(reads_g) <= step_g:
        said = weigh_words.zeroed(logged)
    elif pot.started.cup_g is None:
        return Verdict(weigh_words.log_believed(logged), "", "warning", reads_g)
    else:
        said = weigh_words.cup_and_log(logged)
    return Verdict(said, "good", "check", reads_g)
