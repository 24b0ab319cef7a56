"""Verbs and views of *Cans*."""

from dataclasses import dataclass

from core.cans.ledger import Balance, balance
from core.cans.weighing import net, tare_from_unopened
from core.errors import Refused
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.store.records import Can, CanWeighed, Paint, Poured
from mobile.words import cans as words


@dataclass(frozen=True, slots=True)
class CanNow:
    """A can and what should be in it."""

    can: Can
    paint: Paint | None
    weighed: CanWeighed | None
    balance: Balance

    @property
    def full_g(self) -> float | None:
        """What the can held unopened, by its label; None while that is unknown."""
        if self.can.label_l is None or self.paint is None or self.paint.density_g_ml is None:
            return None
        return self.can.label_l * 1000.0 * self.paint.density_g_ml

    @property
    def level_ratio(self) -> float | None:
        """How full it is; None while that is unknown."""
        full_g, should_be_g = self.full_g, self.balance.should_be_g
        if not full_g or should_be_g is None:
            return None
        return min(max(should_be_g / full_g, 0.0), 1.0)


def can_now(known: Known, can: Can) -> CanNow:
    """Put a can's entries together: the last weighing, and what was poured since."""
    weighed: CanWeighed | None = None
    poured_g: tuple[float, ...] = ()
    for entry in known.entries:
        if isinstance(entry, CanWeighed) and entry.can == can.id:
            weighed, poured_g = entry, ()
        elif isinstance(entry, Poured) and entry.can == can.id:
            poured_g = (*poured_g, entry.net_g)
    paint = found(known.paints, can.paint)
    return CanNow(can, paint, weighed, balance(weighed.net_g if weighed else None, poured_g))


def cans_now(known: Known) -> tuple[CanNow, ...]:
    """Give all cans that are still about: the emptiest first, the unknown last, by number."""
    cans = [can_now(known, can) for can in known.cans if not can.gone]
    return tuple(
        sorted(
            cans,
            key=lambda now: (
                now.level_ratio is None,
                now.level_ratio if now.level_ratio is not None else 0.0,
                now.can.number,
            ),
        )
    )


def can_for(known: Known, paint: str, need_g: float) -> str:
    """Choose the can that a pour comes from: the emptiest that holds enough, else the fullest."""
    cans = [now for now in cans_now(known) if now.can.paint == paint]
    if not cans:
        return ""

    def holds_g(now: CanNow) -> float:
        return now.balance.should_be_g if now.balance.should_be_g is not None else 0.0

    enough = [now for now in cans if holds_g(now) >= need_g]
    chosen = min(enough, key=holds_g) if enough else max(cans, key=holds_g)
    return chosen.can.id


def next_number(known: Known) -> int:
    """Give the next can's number."""
    return 1 + max((can.number for can in known.cans), default=0)


async def keep_can(
    session: Session, can: Can, paint: Paint, unopened_gross_g: float | None = None
) -> Can:
    """Keep a can and its paint; one that was weighed unopened gives its tare and its first net."""
    known = session.known
    _number_is_free(known, can)
    old = found(known.cans, can.id)
    old_paint = found(known.paints, paint.id)
    tare_g, tare_from, weighing = can.tare_g, can.tare_from, None
    if unopened_gross_g is not None:
        tare_g = _tare_unopened_g(can, paint, unopened_gross_g)
        tare_from = "unopened"
    stamp = session.stamp(can.id)
    kept = Can(*stamp, can.number, paint.id, can.label_l, tare_g, tare_from, can.gone)
    if (
        unopened_gross_g is not None
        and tare_g is not None
        and (old is None or old.tare_g != tare_g)
    ):
        net_g = net(unopened_gross_g, tare_g).net_g
        weighing = CanWeighed(*session.stamp(), kept.id, unopened_gross_g, tare_g, net_g)
    entries = (weighing,) if weighing else ()
    forget = (f"cans/{can.id if old else 'new'}",)
    await session.keep(paint, kept, *entries, forget=forget)
    before = tuple(thing for thing in (old, old_paint) if thing)
    undo = Undo(tuple(e.id for e in entries), before, () if old else (kept.id,))
    session.tell(words.kept(kept.number), undo)
    return kept


def _tare_unopened_g(can: Can, paint: Paint, gross_g: float) -> float:
    if can.label_l is None:
        raise Refused("label_l", "", 0.01, 100.0)
    if paint.density_g_ml is None:
        raise Refused("density_g_ml", "", 0.5, 3.0)
    return tare_from_unopened(gross_g, can.label_l, paint.density_g_ml).tare_g


def _number_is_free(known: Known, can: Can) -> None:
    taken = {other.number for other in known.cans if other.id != can.id and not other.gone}
    if can.number in taken:
        raise Refused("number_taken", float(can.number), next_number(known), next_number(known))


async def weigh_can(session: Session, can: Can, gross_g: float) -> CanWeighed:
    """Settle a can by a weighing."""
    if can.tare_g is None:
        raise Refused("tare_g", "", 0.0, 1e5)
    net_g = net(gross_g, can.tare_g).net_g
    entry = CanWeighed(*session.stamp(), can.id, gross_g, can.tare_g, net_g)
    await session.keep(entry, forget=(f"cans/{can.id}/weigh",))
    session.tell(words.weighed(can.number, net_g), Undo(entries=(entry.id,)))
    return entry


async def can_gone(session: Session, can: Can) -> None:
    """Put a can out of the list: empty, or given away."""
    gone = Can(
        *session.stamp(can.id),
        *(can.number, can.paint, can.label_l, can.tare_g, can.tare_from, True),
    )
    await session.keep(gone)
    session.tell(words.gone(can.number), Undo(things=(can,)))
