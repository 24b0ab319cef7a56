"""What a pot takes out of which can, and whether the can has it."""

from dataclasses import dataclass

from core.mixing.portions import Portion
from mobile.session.cans.can import CanNow, can_now
from mobile.session.known import Known, found
from mobile.session.mix.jars import jar_of, jar_paint
from mobile.store.records import Paint
from mobile.words.places import UNKNOWN


@dataclass(frozen=True, slots=True)
class FromCan:
    """So much of one paint, and the can that it comes from; None where the paint has no can."""

    paint: Paint
    now: CanNow | None
    net_g: float
    others: tuple[CanNow, ...] = ()  # more cans of that paint

    @property
    def number(self) -> int | None:
        """The can's number."""
        return self.now.can.number if self.now else None

    @property
    def has_g(self) -> float | None:
        """What should be in the can; None while that is unknown."""
        return self.now.balance.should_be_g if self.now else None

    @property
    def short_g(self) -> float:
        """What is missing in the can and all others; 0 where they have enough or nobody knows."""
        each = [one.balance.should_be_g for one in self.others]
        if self.has_g is None or any(has_g is None for has_g in each):
            return 0.0
        others_g = sum(max(0.0, has_g or 0.0) for has_g in each)
        return max(0.0, self.net_g - self.has_g - others_g)

    @property
    def runs_out(self) -> bool:
        """Whether this pour empties the can, and another goes on."""
        return bool(self.others) and self.has_g is not None and self.net_g > self.has_g


def paint_of(known: Known, paint_id: str) -> Paint:
    """Find a paint, or a jar as one; one that is no longer kept has no name."""
    paint = found(known.paints, paint_id)
    if paint is None and (jar := jar_of(known, paint_id)):
        return jar_paint(known, jar)
    return paint or Paint(paint_id, 0.0, "", UNKNOWN)


def from_cans(
    known: Known, portions: tuple[Portion, ...], cans: tuple[str, ...]
) -> tuple[FromCan, ...]:
    """Say for each portion which can it comes from; `cans` holds one id, or "", a portion."""
    return tuple(from_can(known, portion, can) for portion, can in zip(portions, cans, strict=True))


def from_can(known: Known, portion: Portion, can_id: str) -> FromCan:
    """Say which can a portion comes from."""
    can = found(known.cans, can_id)
    if can is None:
        return FromCan(paint_of(known, portion.paint), None, portion.net_g)
    others = tuple(
        can_now(known, one)
        for one in known.cans
        if one.paint == portion.paint and one.id != can_id and not one.gone
    )
    now = can_now(known, can)
    return FromCan(paint_of(known, portion.paint), now, portion.net_g, others)
