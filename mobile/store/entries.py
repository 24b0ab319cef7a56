"""What happened: entries are written once, never changed; a later one that names it corrects one.

Pots, cans and coats are computed from them. Instants are POSIX seconds; masses g, times s.
"""

from dataclasses import dataclass

from core.mixing.portions import Portion
from mobile.store.stamped import Stamped


@dataclass(frozen=True, slots=True)
class PotStarted(Stamped):
    """A cup was put on the scale for a mix; the portions are the whole batch's, in pouring order.

    `pot` of all pot entries is this entry's id. `Portion.paint` is a `Paint.id`.
    """

    job: str
    mix: str
    name: str
    number: int
    portions: tuple[Portion, ...]
    cans: tuple[str, ...]  # one `Can.id` a portion, "" where the paint has no can yet
    scale_step_g: float
    cup_g: float | None
    way: str = "total"
    like: str = ""  # the pot whose composition it repeats
    parts_band_ratio: tuple[float, ...] = ()  # one a portion; none is 1 % each
    who: str = ""
    lots: tuple[str, ...] = ()  # one a portion, as the cans had them then


@dataclass(frozen=True, slots=True)
class AimChanged(Stamped):
    """A pot is to hold other portions: "more" of it, a "correction", or what was "spilt" again.

    What is in it stays. But for a spill the pot was put back on the scale and tared.
    """

    pot: str
    portions: tuple[Portion, ...]  # of the whole pot, what is in it already too
    cans: tuple[str, ...]
    parts_band_ratio: tuple[float, ...]
    why: str


@dataclass(frozen=True, slots=True)
class Poured(Stamped):
    """Paint went from a can into a pot; `reads_g` is the reading typed, None for "on the mark"."""

    pot: str
    paint: str
    can: str
    net_g: float
    reads_g: float | None


@dataclass(frozen=True, slots=True)
class StrayPoured(Stamped):
    """The wrong can: paint went into a pot that is not in its recipe."""

    pot: str
    paint: str
    can: str
    net_g: float


@dataclass(frozen=True, slots=True)
class Spilt(Stamped):
    """A cup was knocked over: so much is left in it."""

    pot: str
    left_g: float


@dataclass(frozen=True, slots=True)
class MadeMore(Stamped):
    """An over-pour was answered by a bigger batch: all portions of the pot times `factor`."""

    pot: str
    factor_ratio: float


@dataclass(frozen=True, slots=True)
class KeptOver(Stamped):
    """An over-pour was kept as it is."""

    pot: str
    paint: str


@dataclass(frozen=True, slots=True)
class ScaleRestarted(Stamped):
    """The scale went off and shows `reads_g` with the cup back on it; so much it is off zero."""

    pot: str
    reads_g: float
    offset_g: float


@dataclass(frozen=True, slots=True)
class TippedOut(Stamped):
    """A pot was given up; its paint is lost."""

    pot: str


@dataclass(frozen=True, slots=True)
class Stirred(Stamped):
    """A pot is finished."""

    pot: str


@dataclass(frozen=True, slots=True)
class CupFilled(Stamped):
    """A cup was split off a pot, for somebody or for a place."""

    pot: str
    label: str
    whom: str
    net_g: float


@dataclass(frozen=True, slots=True)
class WeighedBack(Stamped):
    """What is left in a pot, or in one of its cups; the rest is on walls and in tools."""

    pot: str
    cup: str  # a `CupFilled.id`, "" for the pot itself
    net_g: float


@dataclass(frozen=True, slots=True)
class StoodOpen(Stamped):
    """A pot, or one of its cups, stood open for so long in such air; part of it dried off."""

    pot: str
    cup: str  # as in `WeighedBack`
    open_s: float
    across_m: float
    air_c: float
    rh_ratio: float
    air_m_per_s: float


@dataclass(frozen=True, slots=True)
class ThrownAway(Stamped):
    """So much of what was left of a pot went to waste."""

    pot: str
    net_g: float


@dataclass(frozen=True, slots=True)
class LeftoverKept(Stamped):
    """What is left of a pot went into a jar: a paint with a composition of its own.

    What it was taken from was weighed back as empty.
    """

    pot: str
    number: int
    net_g: float
    use_by_day: str  # `YYYY-MM-DD`, "" where nobody said
    coldest_c: float | None  # the coldest night where it stands


@dataclass(frozen=True, slots=True)
class ScaleChecked(Stamped):
    """A known mass stood on the scale."""

    known_g: float
    reads_g: float
    scale_step_g: float


@dataclass(frozen=True, slots=True)
class CanStirred(Stamped):
    """A can was stirred through to its bottom, on one day (`YYYY-MM-DD`, the phone's own)."""

    can: str
    day: str


@dataclass(frozen=True, slots=True)
class CanWeighed(Stamped):
    """A can stood on the scale; net follows from the tare known then."""

    can: str
    gross_g: float
    tare_g: float
    net_g: float


@dataclass(frozen=True, slots=True)
class LidOff(Stamped):
    """A can stood open for so long in such air; part of its paint dried off."""

    can: str
    open_s: float
    across_m: float
    air_c: float
    rh_ratio: float
    air_m_per_s: float


@dataclass(frozen=True, slots=True)
class CoatFinished(Stamped):
    """One step in one place, a `Wall` or a `Zone`: the rolling ended at `finished_at_s`.

    `started_at_s` is reckoned from the work planned, None where none was.
    """

    job: str
    place: str
    step: str
    finished_at_s: float
    started_at_s: float | None = None


@dataclass(frozen=True, slots=True)
class StillTacky(Stamped):
    """A finger said no: the coat waits at least `more_s` longer, from then or from its end."""

    coat: str
    more_s: float


@dataclass(frozen=True, slots=True)
class CautionRead(Stamped):
    """A caution was read, for one job and one day (`YYYY-MM-DD`, the phone's own)."""

    job: str
    caution: str
    day: str


@dataclass(frozen=True, slots=True)
class Undone(Stamped):
    """An entry was taken back; it stays in the book and counts no more."""

    entry: str


Entry = (
    PotStarted
    | AimChanged
    | Poured
    | StrayPoured
    | Spilt
    | MadeMore
    | KeptOver
    | ScaleRestarted
    | TippedOut
    | Stirred
    | CupFilled
    | WeighedBack
    | StoodOpen
    | ThrownAway
    | LeftoverKept
    | ScaleChecked
    | CanStirred
    | CanWeighed
    | LidOff
    | CoatFinished
    | StillTacky
    | CautionRead
    | Undone
)
