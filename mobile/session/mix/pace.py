"""How long a pour takes whoever pours here: measured, never promised."""

from core.mixing.over_pour import Make
from core.mixing.plan import targets_g
from mobile.session.known import Known
from mobile.store.entries import PotStarted, Poured
from mobile.store.pot import Pot

A_POUR_S = 3.0, 600.0  # what is longer was a break
COUNTED, FEWEST = 30, 3
TEN_S = 10.0


def pace_s(known: Known) -> float | None:
    """Find how long a pour takes here: the median of the last ones; None after too few."""
    last_s: dict[str, float] = {}
    took: list[float] = []
    for entry in known.entries:
        if isinstance(entry, PotStarted):
            last_s[entry.id] = entry.at_s
        elif isinstance(entry, Poured):
            took.append(entry.at_s - last_s.get(entry.pot, entry.at_s))
            last_s[entry.pot] = entry.at_s
    pours = [one_s for one_s in took if A_POUR_S[0] <= one_s <= A_POUR_S[1]][-COUNTED:]
    return sorted(pours)[len(pours) // 2] if len(pours) >= FEWEST else None


def more_pours(pot: Pot, make: Make) -> int:
    """Count the pours that a bigger batch asks for beyond the plan: of paints that are all in."""
    step_g, wanted = pot.plan.scale_step_g, targets_g(pot.plan)
    return sum(
        1
        for add, want_g in zip(make.adds, wanted, strict=True)
        if add.net_g >= step_g and pot.paint_g(add.paint) >= want_g - step_g
    )


def pours_again(pot: Pot) -> int:
    """Count the pours that are lost when a pot is tipped out."""
    return len({pour.paint for pour in pot.poured})


def tens_s(count: int, one_s: float) -> float:
    """Give how long so many pours take, to ten seconds: nobody pours by the second."""
    return max(TEN_S, round(count * one_s / TEN_S) * TEN_S)
