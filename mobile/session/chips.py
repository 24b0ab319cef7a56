"""A mix in two lights: it shows the paint that it is mostly of."""

from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import holds, in_paints, jar_of
from mobile.store.pot import Pot
from mobile.store.records import Mix, Paint
from mobile.words import looks
from mobile.words import mix as words


def main_paint(known: Known, parts: tuple[tuple[str, float], ...]) -> Paint | None:
    """Find the paint that a mix looks most like: of those whose look is known, the largest part."""
    seen = [(paint_of(known, paint), count) for paint, count in parts]
    coloured = [(paint, count) for paint, count in seen if paint.day or paint.lamp]
    return max(coloured, key=lambda one: one[1])[0] if coloured else None


def chip_of(known: Known, mix: Mix) -> tuple[str, str, str]:
    """Give a mix's chip: its own looks, else the paint that it is mostly of, and says so."""
    if mix.day or mix.lamp:
        return mix.day, mix.lamp, looks.two_lights(mix.name, mix.day, mix.lamp)
    paint = main_paint(known, tuple((part.paint, part.parts_count) for part in mix.parts))
    if paint is None:
        return "", "", looks.two_lights(mix.name, "", "")
    said = looks.two_lights(words.mostly(mix.name, paint.name), paint.day, paint.lamp)
    return paint.day, paint.lamp, said


def look_by_day(known: Known, paint_id: str) -> str:
    """Give what a paint looks like by day; a jar without looks is like what it is mostly of."""
    if day := paint_of(known, paint_id).day:
        return day
    jar = jar_of(known, paint_id)
    inside = in_paints(known, holds(known, jar)[1]) if jar else ()
    paint = main_paint(known, tuple((one.paint, one.net_g) for one in inside))
    return paint.day if paint else ""


def looks_of_pot(known: Known, pot: Pot) -> tuple[str, str, str]:
    """Give a pot's chip, by what was really poured."""
    inside = in_paints(known, pot.went_in)
    paint = main_paint(known, tuple((one.paint, one.net_g) for one in inside))
    name = pot.started.name
    if paint is None:
        return "", "", looks.two_lights(name, "", "")
    said = looks.two_lights(words.mostly(name, paint.name), paint.day, paint.lamp)
    return paint.day, paint.lamp, said
