"""Verbs and views of *Cans*."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from core.cans.drying import Air, dried_off
from core.cans.ledger import Balance, balance, doubt, gap, speak_above
from core.cans.weighing import GROSS_G, LABEL_L, fill, net, tare_from_unopened, volume
from core.errors import Refused, require
from core.paints.blend import DENSITY_G_ML
from core.working import Working
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.store.entries import CanWeighed, LidOff, Poured, StoodOpen, StrayPoured
from mobile.store.records import Can, Paint
from mobile.words import cans as words

READS = "reads"  # the figure of that form
EMPTY, UNOPENED = "empty", "unopened"  # where a tare comes from


@dataclass(frozen=True, slots=True)
class CanNow:
    """A can and what should be in it."""

    can: Can
    paint: Paint | None
    weighed: CanWeighed | None
    balance: Balance
    poured: tuple[Poured | StrayPoured, ...] = ()  # since it was weighed last
    dried_bound_g: float = 0.0
    dried: Working = ()

    @property
    def level_ratio(self) -> float | None:
        """How full it should be; None while that is unknown."""
        return self.level(self.balance.should_be_g)

    def level(self, net_g: float | None) -> float | None:
        """Find how full the can is with so much in it, 0 to 1; None while that is unknown."""
        density_g_ml = self.paint.density_g_ml if self.paint else None
        if net_g is None or self.can.label_l is None or density_g_ml is None:
            return None
        return min(fill(max(net_g, 0.0), self.can.label_l, density_g_ml).full_ratio, 1.0)

    def volume_l(self, net_g: float | None) -> float | None:
        """Find the litres of so much of its paint; None while the density is unknown."""
        density_g_ml = self.paint.density_g_ml if self.paint else None
        if net_g is None or net_g < 0.0 or density_g_ml is None:
            return None
        return volume(net_g, density_g_ml).volume_l


@dataclass(frozen=True, slots=True)
class Found:
    """What a reading of the scale says of a can, beside what it should be."""

    net_g: float
    volume_l: float | None
    level_ratio: float | None
    gap_g: float | None  # above 0 something is missing
    speaks: bool  # the gap is more than readings can be off
    working: Working


def can_now(known: Known, can: Can) -> CanNow:
    """Put a can's entries together: the last weighing, and what was poured since."""
    return _now(known, can, (entry for entry in known.entries if _can_of(entry) == can.id))


@lru_cache(maxsize=2)  # asked by every screen, and known is replaced whole
def cans_now(known: Known) -> tuple[CanNow, ...]:
    """Give all cans that are still about: the emptiest first, the unknown last, by number."""
    entries: dict[str, list[object]] = {}
    for entry in known.entries:
        entries.setdefault(_can_of(entry), []).append(entry)
    cans = [_now(known, can, entries.get(can.id, ())) for can in known.cans if not can.gone]
    return tuple(sorted(cans, key=_emptiest))


def _can_of(entry: object) -> str:
    return entry.can if isinstance(entry, CanWeighed | Poured | StrayPoured | LidOff) else ""


def _now(known: Known, can: Can, entries: Iterable[object]) -> CanNow:
    weighed: CanWeighed | None = None
    poured: list[Poured | StrayPoured] = []
    lids: list[LidOff] = []
    for entry in entries:
        if isinstance(entry, CanWeighed):
            weighed = entry
            poured.clear()
            lids.clear()
        elif isinstance(entry, Poured | StrayPoured):
            poured.append(entry)
        elif isinstance(entry, LidOff):
            lids.append(entry)
    dried = [dried_off(lid.open_s, lid.across_m, air_of(lid)) for lid in lids]
    bound_g = sum(one.bound_g for one in dried)
    net_g = weighed.net_g if weighed else None
    settled = balance(net_g, tuple(pour.net_g for pour in poured), bound_g)
    working = tuple(line for one in dried for line in one.working)
    paint = found(known.paints, can.paint)
    return CanNow(can, paint, weighed, settled, tuple(poured), bound_g, working)


def air_of(lid: LidOff | StoodOpen) -> Air:
    """Give the air that a can or a cup stood open in."""
    return Air(lid.air_c, lid.rh_ratio, lid.air_m_per_s)


def _emptiest(now: CanNow) -> tuple[bool, float, int]:
    level = now.level_ratio
    return level is None, level or 0.0, now.can.number


def reading_of(now: CanNow, gross_g: float, scale_step_g: float) -> Found:
    """Find what a reading says of a can; raise `Refused` if it can't be that can's."""
    if now.can.tare_g is None:
        raise Refused("tare_g", "", *GROSS_G)
    paint = net(gross_g, now.can.tare_g)
    working = paint.working
    litres_l = now.volume_l(paint.net_g)
    if litres_l is not None and now.paint and now.paint.density_g_ml:
        working += volume(paint.net_g, now.paint.density_g_ml).working
    should_be_g = now.balance.should_be_g
    gap_g, speaks = None, False
    if should_be_g is not None:
        missing = gap(paint.net_g, should_be_g)
        off = doubt(scale_step_g, scale_step_g, len(now.poured), now.dried_bound_g)
        above = speak_above(now.balance.poured_since_g, scale_step_g, off.u_g)
        gap_g, speaks = missing.gap_g, abs(missing.gap_g) > above.speak_above_g
        working += (*now.dried, *now.balance.working, *missing.working)
        working += (*off.working, *above.working)
    return Found(paint.net_g, litres_l, now.level(paint.net_g), gap_g, speaks, working)


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


def paint_named(known: Known, name: str) -> Paint | None:
    """Find a paint by its name, as people write it."""
    wanted = name.strip().casefold()
    return next((paint for paint in known.paints if paint.name.casefold() == wanted), None)


def checked(known: Known, can: Can, paint: Paint, unopened_gross_g: float | None = None) -> Can:
    """Give a can with its tare, that of an unopened one worked out; refuse what can't be."""
    taken = {other.number for other in known.cans if other.id != can.id and not other.gone}
    if can.number in taken:
        raise Refused("number_taken", float(can.number), next_number(known), next_number(known))
    if can.label_l is not None:
        require("label_l", can.label_l, *LABEL_L)
    if paint.density_g_ml is not None:
        require("density_g_ml", paint.density_g_ml, *DENSITY_G_ML)
    if can.tare_g is not None:
        require("tare_g", can.tare_g, *GROSS_G)
    if unopened_gross_g is None:
        return can
    if can.label_l is None:
        raise Refused("label_l", "", *LABEL_L)
    if paint.density_g_ml is None:
        raise Refused("density_g_ml", "", *DENSITY_G_ML)
    tare_g = tare_from_unopened(unopened_gross_g, can.label_l, paint.density_g_ml).tare_g
    return replace(can, tare_g=tare_g, tare_from=UNOPENED)


async def keep_can(
    session: Session, can: Can, paint: Paint, unopened_gross_g: float | None = None
) -> Can:
    """Keep a can and its paint; one that was weighed unopened gives its tare and its first net."""
    known = session.known
    old, old_paint = found(known.cans, can.id), found(known.paints, paint.id)
    kept = checked(known, replace(can, paint=paint.id), paint, unopened_gross_g)
    kept = _stamped(session, kept)
    entries: tuple[CanWeighed, ...] = ()
    if unopened_gross_g is not None and kept.tare_g is not None:
        net_g = net(unopened_gross_g, kept.tare_g).net_g
        stamp = session.stamp()
        entries = (CanWeighed(*stamp, kept.id, unopened_gross_g, kept.tare_g, net_g),)
    paints = () if paint == old_paint else (paint,)
    await session.keep(*paints, kept, *entries, forget=(f"cans/{can.id if old else 'new'}",))
    before = tuple(thing for thing in (old, old_paint) if thing)
    made = tuple(thing.id for thing, was in ((kept, old), (paint, old_paint)) if was is None)
    session.tell(words.kept(kept.number), Undo(tuple(e.id for e in entries), before, made))
    return kept


def _stamped(session: Session, can: Can) -> Can:
    can_id, at_s, device = session.stamp(can.id)
    return replace(can, id=can_id, at_s=at_s, device=device)


async def weigh_can(session: Session, can: Can, gross_g: float) -> CanWeighed:
    """Settle a can by a weighing."""
    if can.tare_g is None:
        raise Refused("tare_g", "", *GROSS_G)
    net_g = net(gross_g, can.tare_g).net_g
    entry = CanWeighed(*session.stamp(), can.id, gross_g, can.tare_g, net_g)
    await session.keep(entry, forget=(weigh_form(can),))
    session.tell(words.weighed(can.number, net_g), Undo(entries=(entry.id,)))
    return entry


async def can_gone(session: Session, can: Can) -> None:
    """Put a can out of the list: empty, or given away."""
    await session.keep(_stamped(session, replace(can, gone=True)))
    session.tell(words.gone(can.number), Undo(things=(can,)))


def weigh_form(can: Can) -> str:
    """Give the address under which a reading of a can is typed."""
    return f"cans/{can.id}/weigh"


def typed_reading(session: Session, can: Can) -> str:
    """Give the reading that was typed for a can and not kept, "" if none."""
    return session.draft(weigh_form(can)).get(READS, "")
