"""What the cup, the cans and the figure of a weigh-out show, and what is said of them."""

from typing import Literal

from core.mixing.portions import Portion
from mobile.parts.bucket import Layer
from mobile.parts.can import CanFace
from mobile.session.chips import look_by_day
from mobile.session.known import Known
from mobile.session.mix.cup import tops_ratio
from mobile.session.mix.from_cans import FromCan, from_can
from mobile.store.pot import Pot
from mobile.words import grams as in_grams
from mobile.words import looks
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words

LABEL_MOST = 12  # letters beside the cup
State = Literal["in", "pour now", "to come"]


def layers(known: Known, pot: Pot) -> tuple[Layer, ...]:
    """Stack a pot in its cup: what is in, what to pour now, what is still to come."""
    piled = piles(pot)
    parts = tuple(part for part, _ in piled)
    tops = tops_ratio(known, parts)
    lows = (0.0, *tops[:-1])
    drawn: list[Layer] = []
    for at, (part, state) in enumerate(piled):
        one = from_can(known, part, pot.can(part.paint))
        higher = any(other.paint == part.paint for other in parts[at + 1 :])
        label = "" if higher else can_label(one)
        day = look_by_day(known, part.paint)
        drawn.append(Layer(lows[at], tops[at], day, state, label))
    return tuple(drawn)


def piles(pot: Pot) -> tuple[tuple[Portion, State], ...]:
    """Give the layers of a cup, lowest first, with their states."""
    target = pot.target
    poured: list[tuple[Portion, State]] = [(part, "in") for part in pot.went_in]
    if target is None:
        return tuple(poured)
    waiting: list[tuple[Portion, State]] = [
        (part, "to come")
        for part in pot.missing
        if part.paint != target.paint and part.net_g > pot.plan.scale_step_g
    ]
    return (*poured, (Portion(target.paint, target.net_g), "pour now"), *waiting)


def in_cup(known: Known, parts: tuple[Portion, ...], room_l: float = 0.0) -> tuple[Layer, ...]:
    """Stack parts that are all in, without labels; `room_l` is what else the cup must hold."""
    tops = tops_ratio(known, parts, room_l)
    lows = (0.0, *tops[:-1])
    return tuple(
        Layer(low, top, look_by_day(known, part.paint), "in")
        for part, low, top in zip(parts, lows, tops, strict=True)
    )


def can_label(one: FromCan) -> str:
    """Name a layer by its can; a paint without a can by the last word of its name."""
    if one.number is not None:
        return words.can(one.number)
    *before, word = one.paint.name.split() or [""]
    if word.isdigit() and before:  # a jar
        return f"{before[-1]} {word}"
    return word if len(word) <= LABEL_MOST else f"{word[: LABEL_MOST - 1]}…"


def face(one: FromCan) -> tuple[CanFace, str] | None:
    """Give a can's face and what is said of it; None where the paint has no can."""
    if one.now is None:
        return None
    number = one.now.can.number
    said = looks.two_lights(words.can_of(number, one.paint.name), one.paint.day, one.paint.lamp)
    return CanFace(number, one.paint.day, one.now.level_ratio), said


def reads_said(reads_g: float, pot: Pot) -> str:
    """Write a reading as the scale shows it; that of a can is less than nothing."""
    said = in_grams.scale(abs(reads_g), pot.plan.scale_step_g)
    return f"{weigh_words.MINUS}{said}" if reads_g < 0 else said
