"""What the cup, the cans and the figure of a weigh-out show, and what is said of them."""

from typing import Literal

from core.mixing.portions import Portion
from core.mixing.pot import Cup as CupSize
from core.mixing.pot import contents, holds_l, levels
from core.paints.blend import ML_PER_L
from mobile.parts.bucket import Layer
from mobile.parts.can import CanFace
from mobile.session.from_cans import FromCan, from_can, paint_of
from mobile.session.known import Known
from mobile.session.pots import Pot
from mobile.store.records import Mix, Paint
from mobile.words import looks
from mobile.words import mix as words

# A 300 mL mixing cup, inside; others are drawn in its shape. Common practice, no published source.
CUP = CupSize(bottom_m=0.068, top_m=0.084, height_m=0.066)
CUPS_L = (0.1, 0.3, 0.6, 1.0, 2.5, 5.0, 10.0, 20.0, 30.0, 60.0, 125.0, 250.0)
FULL_RATIO = 0.8  # room to stir
DENSITY_G_ML = 1.1  # for a drawing, where a paint's own is not known
State = Literal["in", "pour now", "to come"]


def cup_for(volume_l: float) -> CupSize:
    """Choose the smallest of the usual cups that leaves room to stir."""
    fitting = (size_l for size_l in CUPS_L if volume_l <= FULL_RATIO * size_l)
    scale = (next(fitting, 2 * volume_l) / holds_l(CUP)) ** (1 / 3)
    return CupSize(CUP.bottom_m * scale, CUP.top_m * scale, CUP.height_m * scale)


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
        label = "" if higher else can_label(pot, one)
        drawn.append(Layer(lows[at], tops[at], one.paint.day, state, label))
    return tuple(drawn)


def piles(pot: Pot) -> tuple[tuple[Portion, State], ...]:
    """Give the layers of a cup, lowest first, with their states."""
    target = pot.target
    poured: list[tuple[Portion, State]] = [(part, "in") for part in contents(pot.poured)]
    if target is None:
        return tuple(poured)
    waiting: list[tuple[Portion, State]] = [
        (part, "to come")
        for part in pot.missing
        if part.paint != target.paint and part.net_g > pot.plan.scale_step_g
    ]
    return (*poured, (Portion(target.paint, target.net_g), "pour now"), *waiting)


def in_cup(known: Known, parts: tuple[Portion, ...]) -> tuple[Layer, ...]:
    """Stack parts that are all in, without labels."""
    tops = tops_ratio(known, parts)
    lows = (0.0, *tops[:-1])
    return tuple(
        Layer(low, top, paint_of(known, part.paint).day, "in")
        for part, low, top in zip(parts, lows, tops, strict=True)
    )


def tops_ratio(known: Known, parts: tuple[Portion, ...]) -> tuple[float, ...]:
    """Find how high each part stands in a cup that holds them all."""
    densities = tuple(paint_of(known, part.paint).density_g_ml or DENSITY_G_ML for part in parts)
    volume_l = sum(p.net_g / d for p, d in zip(parts, densities, strict=True)) / ML_PER_L
    return levels(parts, densities, cup_for(volume_l)).tops_ratio if parts else ()


def can_label(pot: Pot, one: FromCan) -> str:
    """Name a layer by its can; a paint without a can by its place in the order."""
    if one.number is not None:
        return words.can(one.number)
    order = [portion.paint for portion in pot.started.portions]
    return words.part(order.index(one.paint.id) + 1)


def face(one: FromCan) -> tuple[CanFace, str] | None:
    """Give a can's face and what is said of it; None where the paint has no can."""
    if one.now is None:
        return None
    number = one.now.can.number
    said = looks.two_lights(words.can_of(number, one.paint.name), one.paint.day, one.paint.lamp)
    return CanFace(number, one.paint.day, one.now.level_ratio), said


def main_paint(known: Known, parts: tuple[tuple[str, float], ...]) -> Paint | None:
    """Find the paint that a mix looks most like: of those whose look is known, the largest part."""
    seen = [(paint_of(known, paint), count) for paint, count in parts]
    coloured = [(paint, count) for paint, count in seen if paint.day or paint.lamp]
    return max(coloured, key=lambda one: one[1])[0] if coloured else None


def chip_of(known: Known, mix: Mix) -> tuple[str, str, str]:
    """Give a mix's chip: it shows the paint that it is mostly of, and says so."""
    paint = main_paint(known, tuple((part.paint, part.parts_count) for part in mix.parts))
    if paint is None:
        return "", "", looks.two_lights(mix.name, "", "")
    said = looks.two_lights(words.mostly(mix.name, paint.name), paint.day, paint.lamp)
    return paint.day, paint.lamp, said
