"""A pot, put together from its entries, in the order in which they were written."""

from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache
from typing import Any, Final

from core.mixing.plan import TOTAL, Plan, Pour
from core.mixing.portions import Portion
from core.mixing.pot import contents
from core.mixing.spill import reads_below
from mobile.store.entries import (
    AimChanged,
    CupFilled,
    Entry,
    KeptOver,
    MadeMore,
    PotStarted,
    Poured,
    ScaleRestarted,
    Spilt,
    Stirred,
    StrayPoured,
    TippedOut,
    WeighedBack,
)
from mobile.store.pot import SPILL, SPILT, Pot

OfAPot = (
    Poured
    | MadeMore
    | KeptOver
    | ScaleRestarted
    | StrayPoured
    | Spilt
    | AimChanged
    | CupFilled
    | WeighedBack
    | Stirred
    | TippedOut
)


@lru_cache(maxsize=512)  # a change is of one pot; the others are as they were
def pot_of(started: PotStarted, entries: tuple[Entry, ...]) -> Pot:
    """Put a pot together from its own entries, in the order in which they were written."""
    step_g, bands = started.scale_step_g, started.parts_band_ratio
    plan = Plan(started.portions, 1.0, step_g, 0.0, started.way, bands)
    pot = Pot(started, plan, started.cans)
    for entry in entries:
        pot = _after(pot, entry)
    return pot


def _after(pot: Pot, entry: Entry) -> Pot:
    last = (*pot.last, entry) if _one_act(pot.last, entry) else (entry,)
    return _THEN[type(entry)](replace(pot, last=last, idle=_idle(pot.idle, entry)), entry)


def _idle(idle: tuple[Entry, ...], entry: Entry) -> tuple[Entry, ...]:
    """Give the entries since a pot was put back; none once something was poured or spilt."""
    if isinstance(entry, AimChanged) and entry.why != SPILT:
        return (entry,)
    return (*idle, entry) if idle and isinstance(entry, ScaleRestarted) else ()


def _poured(pot: Pot, entry: Poured) -> Pot:
    return replace(pot, poured=(*pot.poured, Pour(entry.paint, entry.net_g)))


def _made_more(pot: Pot, entry: MadeMore) -> Pot:
    return replace(pot, plan=replace(pot.plan, factor_ratio=entry.factor_ratio))


def _kept_over(pot: Pot, entry: KeptOver) -> Pot:
    now = (one for one in contents((*pot.poured, *pot.strays)) if one.paint == entry.paint)
    return replace(pot, kept_at=(*pot.kept_at, *now))


def _restarted(pot: Pot, entry: ScaleRestarted) -> Pot:
    return replace(pot, plan=replace(pot.plan, offset_g=entry.offset_g))


def _stray_poured(pot: Pot, entry: StrayPoured) -> Pot:
    """Let the cup weigh more by what is in it and in no portion; a part or a can is tared anew."""
    plan = replace(pot.plan, offset_g=pot.plan.offset_g + entry.net_g)
    strays = (*pot.strays, Pour(entry.paint, entry.net_g))
    cans = (*pot.stray_cans, (entry.paint, entry.can))
    after = replace(pot, strays=strays, stray_cans=cans, plan=plan)
    return after if plan.way == TOTAL else _tared(after)


def _aim_changed(pot: Pot, entry: AimChanged) -> Pot:
    now = _scaled(pot, pot.left_g)
    offset_g = now.plan.offset_g
    if entry.why != SPILT:  # a stray is a part of it now, and it is tared with all that is in it
        now = replace(now, poured=(*now.poured, *now.strays), strays=())
        offset_g = -sum(pour.net_g for pour in now.poured)
    now = replace(now, used_g=pot.used_g + pot.in_cup_g - now.in_cup_g)
    plan = replace(now.plan, portions=entry.portions, factor_ratio=1.0, offset_g=offset_g)
    plan = replace(plan, parts_band_ratio=entry.parts_band_ratio)
    now = replace(now, plan=plan, cans=entry.cans, ended="")
    if entry.why == SPILT:  # all of it is as much smaller: what was kept over stays kept
        return now
    return replace(now, kept_at=(), fates=(*pot.fates, entry.why))


def _spilt(pot: Pot, entry: Spilt) -> Pot:
    """Keep what is left; where the tare is gone it is tared again, or it shows cup and all."""
    lost_g = max(0.0, pot.in_cup_g - entry.left_g)
    spilt_g = pot.spilt_g + lost_g
    left = replace(_scaled(pot, entry.left_g), fates=(*pot.fates, SPILL), spilt_g=spilt_g)
    if left.plan.way == TOTAL and not reads_below(pot.plan, pot.strays_g):
        return left
    cup_g = pot.started.cup_g
    if left.plan.way != TOTAL or cup_g is None:
        return _tared(left)
    return replace(left, plan=replace(left.plan, offset_g=cup_g + left.strays_g))


def _drawn(pot: Pot, entry: CupFilled) -> Pot:
    return replace(pot, drawn_g=pot.drawn_g + entry.net_g)


def _weighed_back(pot: Pot, entry: WeighedBack) -> Pot:
    if entry.cup:
        return pot
    return replace(pot, drawn_g=max(0.0, pot.in_cup_g - entry.net_g))


def _tared(pot: Pot) -> Pot:
    """Give a pot tared with all that is in it, or whose can is: what comes now is read from 0."""
    return replace(pot, plan=replace(pot.plan, offset_g=-sum(one.net_g for one in pot.poured)))


def _scaled(pot: Pot, left_g: float) -> Pot:
    """Give a pot of which only so much is left, in its own proportion."""
    share = left_g / pot.in_cup_g if pot.in_cup_g else 0.0
    return replace(
        pot,
        poured=tuple(Pour(pour.paint, pour.net_g * share) for pour in pot.poured),
        strays=tuple(Pour(pour.paint, pour.net_g * share) for pour in pot.strays),
        kept_at=tuple(Portion(one.paint, one.net_g * share) for one in pot.kept_at),
        plan=replace(pot.plan, offset_g=pot.plan.offset_g - pot.strays_g * (1 - share)),
        drawn_g=0.0,
    )


def _one_act(last: tuple[Entry, ...], entry: Entry) -> bool:
    """Tell whether an entry was written with the one before it: one act, one *Undo*.

    So are a restart and the pour that it found, a spill and the smaller aim after it, and a pour
    that emptied one can and went on with the next.
    """
    pair = (type(last[-1]), type(entry)) if last else ()
    together = pair in {(ScaleRestarted, Poured), (Spilt, AimChanged), (Poured, Poured)}
    return together and last[0].at_s == entry.at_s


_THEN: Final[dict[type[Entry], Callable[[Pot, Any], Pot]]] = {
    Poured: _poured,
    MadeMore: _made_more,
    KeptOver: _kept_over,
    ScaleRestarted: _restarted,
    StrayPoured: _stray_poured,
    Spilt: _spilt,
    AimChanged: _aim_changed,
    CupFilled: _drawn,
    WeighedBack: _weighed_back,
    Stirred: lambda pot, _: replace(pot, ended="stirred"),
    TippedOut: lambda pot, _: replace(pot, ended="tipped"),
}
