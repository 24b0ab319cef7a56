"""What a typed reading says: on the mark, short, over, or why it can't be."""

from dataclasses import dataclass, replace

from core.errors import Refused
from core.mixing.plan import Pour
from core.mixing.restart import Restart
from core.mixing.scale import band_g
from core.mixing.weigh_out import Target
from mobile.parts.boards import State
from mobile.session.known import Known
from mobile.session.mix.cans_hold import holds_g
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.weigh_out import net_of, restart_of
from mobile.session.view import View
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
    if has := beyond_cans(known, target.paint, net_g):
        return Verdict(weigh_words.more_than_cans(has), "caution", "up", reads_g)
    return after_it(pot, Pour(target.paint, net_g), reads_g)


def after_it(pot: Pot, pour: Pour, reads_g: float) -> Verdict:
    """Say what a pour leads to: too much, more of it, or the mark."""
    step_g = pot.plan.scale_step_g
    after = replace(pot, poured=(*pot.poured, pour))
    if after.over:
        over = weigh_words.over(in_grams.scale(after.over.over_g, step_g))
        return Verdict(over, "caution", "up", reads_g)
    coming = after.target
    if coming and coming.paint == pour.paint:
        return Verdict(weigh_words.short(in_grams.scale(coming.net_g, step_g)), "", "down", reads_g)
    return Verdict(weigh_words.WITHIN, "good", "check", reads_g)


def beyond_cans(known: Known, paint: str, net_g: float) -> str:
    """Give what the cans of a paint hold, where a pour is more than that; else nothing."""
    has_g = holds_g(known, paint)
    if has_g is None or net_g <= has_g + band_g(net_g, known.settings.scale_step_g):
        return ""
    return in_grams.grams(has_g)


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
    if restart.kept:
        said = weigh_words.kept_count(logged)
    elif abs(reads_g) <= step_g:
        said = weigh_words.zeroed(logged)
    elif pot.started.cup_g is None:
        return Verdict(weigh_words.log_believed(logged), "", "warning", reads_g)
    else:
        said = weigh_words.cup_and_log(logged)
    return Verdict(said, "good", "check", reads_g)
