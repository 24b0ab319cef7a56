"""The three answers to an over-pour in words, each with what it costs and the cup after it."""

from dataclasses import dataclass

from core.mixing.over_pour import Answers, Make, Tip
from core.mixing.portions import Portion
from core.mixing.pot import contents
from core.mixing.scale import shown_g
from mobile.parts.bucket import Layer
from mobile.screens.mix.weigh_out.drawn import in_cup
from mobile.session.known import Known
from mobile.session.mix.begin import can_keep, too_heavy
from mobile.session.mix.cup import volume_l
from mobile.session.mix.from_cans import FromCan, from_can, paint_of
from mobile.session.mix.pace import more_pours, pace_s, pours_again, tens_s
from mobile.session.view import View
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer: what to do, what it costs, what follows, and the cup after it."""

    key: str
    name: str
    cost: str
    more: str
    cup: tuple[Layer, ...]


def make_answer(known: Known, pot: Pot, make: Make, view: View) -> Answer:
    """Say what a bigger batch takes, and whether cans and scale hold it."""
    step_g = pot.plan.scale_step_g
    adds = tuple(
        from_can(known, one, pot.can(one.paint)) for one in make.adds if shown_g(one.net_g, step_g)
    )
    total = in_grams.scale(make.total_g, step_g)
    more = weigh_words.adds(tuple((place(one), in_grams.scale(one.net_g, step_g)) for one in adds))
    held = holds(adds, step_g, why_not(known, pot, make.fits, make.total_g))
    cup = in_cup(known, filled(pot, make.adds), room_l(known, pot, make))
    cost = weigh_words.extra(in_grams.scale(make.extra_g, step_g), make.extra_price)
    pours = pours_said(known, more_pours(pot, make), weigh_words.MORE, view)
    said = " ".join(one for one in (more, pours, held) if one)
    return Answer("make", weigh_words.make(total), cost, said, cup)


def room_l(known: Known, pot: Pot, make: Make) -> float:
    """Find what the fullest of the cups holds: all are drawn alike, so that levels compare."""
    cups = (filled(pot, make.adds), filled(pot, pot.missing))
    return max(volume_l(known, cup) for cup in cups)


def filled(pot: Pot, adds: tuple[Portion, ...]) -> tuple[Portion, ...]:
    """Give what is in the cup once all of this is added."""
    return tuple(Portion(one.paint, one.net_g + pot.paint_g(one.paint)) for one in adds)


def place(one: FromCan) -> str:
    """Say where an addition comes from."""
    return words.can(one.number) if one.number is not None else one.paint.name


def why_not(known: Known, pot: Pot, fits: bool, total_g: float) -> str:
    """Say why a batch can't be made, if it can't."""
    if fits:
        return ""
    heavy = too_heavy(known, pot, total_g)
    return weigh_words.TOO_HEAVY if heavy else weigh_words.TOO_MUCH_TO_MAKE


def holds(adds: tuple[FromCan, ...], step_g: float, why: str) -> str:
    """Say whether cans and scale have what is to be added, as far as the cans' ledgers know."""
    short = tuple(
        words.can_short(one.number or 0, in_grams.scale(one.short_g, step_g))
        for one in adds
        if one.short_g > step_g
    )
    if short:
        return in_grams.first_up("; ".join(short)) + "."
    if why:
        return why
    return (
        weigh_words.CANS_HOLD
        if all(one.has_g is not None for one in adds)
        else weigh_words.CANS_UNKNOWN
    )


def keep_answer(known: Known, pot: Pot, three: Answers, view: View) -> Answer:
    """Say what keeping it does to the colour."""
    keep, room = three.keep, room_l(known, pot, three.make)
    name = paint_of(known, keep.paint).name
    stronger = weigh_words.stronger(keep.share_ratio / keep.planned_ratio, name)
    total = in_grams.scale(keep.total_g, pot.plan.scale_step_g)
    now = view.show("share_ratio", keep.share_ratio)
    more = weigh_words.shares(now, view.show("share_ratio", keep.planned_ratio), name)
    if not can_keep(known, pot):
        more = weigh_words.TOO_HEAVY
    cup = filled(pot, pot.missing)
    return Answer("keep", stronger, weigh_words.no_loss(total), more, in_cup(known, cup, room))


def pours_said(known: Known, count: int, more: str, view: View) -> str:
    """Say how many pours more, or again, that is, and how long they take here."""
    one_s = pace_s(known)
    took = view.show("pours_s", tens_s(count, one_s)) if one_s else ""
    return weigh_words.pours(count, more, took)


def tip_answer(known: Known, pot: Pot, tip: Tip, view: View) -> Answer:
    """Say what tipping it out loses."""
    names = tuple(paint_of(known, part.paint).name for part in contents(pot.poured))
    lost = weigh_words.lose(in_grams.scale(tip.lost_g, pot.plan.scale_step_g), tip.lost_price)
    said = (pours_said(known, pours_again(pot), weigh_words.AGAIN, view), weigh_words.waste(names))
    return Answer("tip", weigh_words.TIP, lost, " ".join(one for one in said if one), ())
