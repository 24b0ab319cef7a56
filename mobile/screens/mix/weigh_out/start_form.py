"""What is typed before a weigh-out, and what follows from it."""

from dataclasses import dataclass

from core.errors import Refused
from mobile.parts.sheet import How, HowStep
from mobile.session.cans.can import can_for
from mobile.session.known import Known
from mobile.session.mix.begin import split
from mobile.session.mix.cans_hold import lacking
from mobile.session.mix.from_cans import FromCan, from_can, paint_of
from mobile.session.mix.jars import jars_for, with_jar
from mobile.session.view import View
from mobile.store.entries import LeftoverKept
from mobile.store.records import Mix
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch as typed: its grams (None where they can't be weighed), the cup, its parts."""

    grams_g: float | None = None
    cup_g: float | None = None
    parts: tuple[FromCan, ...] = ()
    why: str = ""
    can_do: bool = False  # whether scale, bucket and cans have it


def batch_of(known: Known, mix: Mix, grams: str, cup: str, view: View) -> Batch:
    """Read grams and cup, and split the batch over its cans; or say why that can't be."""
    cup_g = None
    try:
        cup_g = (view.read("cup_g", cup) or None) if cup else None
        batch_g = view.read("batch_g", grams)
        portions = split(known, mix, batch_g, cup_g)
    except Refused as refusal:
        why = weigh_words.refused(refusal, view.show) if grams else words.HOW_MUCH
        return Batch(cup_g=cup_g, why=why)
    parts = tuple(from_can(known, one, can_for(known, one.paint, one.net_g)) for one in portions)
    return Batch(batch_g, cup_g, parts, can_do=not lacking(known, portions))


def jars_to_use(known: Known, mix: Mix, batch: Batch) -> tuple[tuple[LeftoverKept, Mix], ...]:
    """Give the jars that a batch can use up, each with the mix for it; scale and cans have it."""
    if batch.grams_g is None:
        return ()
    each = ((jar, with_jar(known, mix, batch.grams_g, jar)) for jar in jars_for(known, mix))
    return tuple((jar, mixed) for jar, mixed in each if mixed and _can_do(known, mixed, batch))


def _can_do(known: Known, mix: Mix, batch: Batch) -> bool:
    try:
        portions = split(known, mix, batch.grams_g or 0.0, batch.cup_g)
    except Refused:
        return False
    return not lacking(known, portions)


def how(known: Known, mix: Mix, batch: Batch, view: View) -> How | None:
    """Say how the portions come about."""
    if batch.grams_g is None:
        return None
    whole = sum(part.parts_count for part in mix.parts)
    batch_said, whole_said = (
        view.show("batch_g", batch.grams_g),
        view.show("parts_count", whole),
    )
    counts = {part.paint: part.parts_count for part in mix.parts}
    steps = tuple(
        HowStep(
            paint_of(known, one.paint.id).name,
            f"{view.show('parts_count', counts[one.paint.id])} ÷ {whole_said} × {batch_said}",
            view.show("net_g", one.net_g),
        )
        for one in batch.parts
    )
    return How(mix.name, batch_said, steps, note=words.PORTIONS_NOTE)
