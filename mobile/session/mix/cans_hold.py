"""What the cans of a paint hold together: no pot is begun, and none made bigger, beyond it."""

from core.mixing.limit import Limit, limit
from core.mixing.portions import Portion
from core.mixing.scale import band_g
from mobile.session.cans.can import CanNow, cans_now
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.jars import jar_of, left_g
from mobile.session.session import Declined
from mobile.store.records import Mix
from mobile.words import mix as words


def holds_g(known: Known, paint: str) -> float | None:
    """Find what a jar, or all cans of a paint, should hold; None where nobody knows."""
    if jar := jar_of(known, paint):
        return left_g(known, jar)
    return held_by(tuple(now for now in cans_now(known) if now.can.paint == paint))


def limiting(known: Known, mix: Mix) -> Limit:
    """Find how much of a mix its cans allow, and which paint says so: all cans of it together."""
    return limit(mix.parts, tuple(holds_g(known, part.paint) for part in mix.parts))


def held_by(cans: tuple[CanNow, ...]) -> float | None:
    """Add up what cans should hold; None where there is none, or one was never weighed."""
    each = [now.balance.should_be_g for now in cans]
    told = [max(0.0, has_g) for has_g in each if has_g is not None]
    return sum(told) if told and len(told) == len(each) else None


def require_cans(known: Known, adds: tuple[Portion, ...]) -> None:
    """Raise `Declined` where the cans of a paint can't give what is to be poured of it."""
    if short := lacking(known, adds):
        raise Declined(words.cans_lack(short))


def lacking(known: Known, adds: tuple[Portion, ...]) -> tuple[str, ...]:
    """Say of which paints the cans lack how much.

    What is short by less than the part's own band is poured on the mark all the same.
    """
    step_g = known.settings.scale_step_g
    short = []
    for one in adds:
        has_g = holds_g(known, one.paint)
        if has_g is not None and one.net_g - has_g > band_g(one.net_g, step_g):
            name = paint_of(known, one.paint).name
            short.append(words.lacks(name, one.net_g - has_g, has_g))
    return tuple(short)


def taken_from(known: Known, paint: str, first: str, net_g: float) -> tuple[tuple[str, float], ...]:
    """Say which cans a pour of one paint came from: the first until it is empty, then the next.

    The last one gives whatever is missing: what was poured was poured.
    """
    now = [one for one in cans_now(known) if one.can.id == first]  # none if it is gone
    cans = [one for one in cans_now(known) if one.can.paint == paint and one.can.id != first]
    order = [*now, *sorted(cans, key=lambda one: one.balance.should_be_g or 0.0)]
    if not (first and order):  # nobody said which can, or there is none any more
        return ((first, net_g),)
    out: list[tuple[str, float]] = []
    for at, one in enumerate(order):
        has_g = one.balance.should_be_g
        rest_g = net_g - sum(g for _, g in out)
        last = has_g is None or at + 1 == len(order)
        out.append((one.can.id, rest_g if last else min(rest_g, max(0.0, has_g or 0.0))))
        if last:
            break
    given = tuple((can, g) for can, g in out if g > 0)
    return given or ((order[0].can.id, net_g),)
