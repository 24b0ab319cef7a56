"""What happened: entries are written once, never changed; a later one that names it corrects one.

Pots, cans and coats are computed from them. Instants are POSIX seconds; masses g, times s.
"""

from dataclasses import dataclass

from core.mixing.portions import Portion


@dataclass(frozen=True, slots=True)
class PotStarted:
    """A cup was put on the scale for a mix; the portions are the whole batch's, in pouring order.

    `pot` of all pot entries is this entry's id. `Portion.paint` is a `Paint.id`.
    """

    id: str
    at_s: float
    device: str
    job: str
    mix: str
    name: str
    number: int
    portions: tuple[Portion, ...]
    cans: tuple[str, ...]  # one `Can.id` a portion, "" where the paint has no can yet
    scale_step_g: float
    cup_g: float | None
    tared_each: bool = False
    like: str = ""  # the pot whose composition it repeats


@dataclass(frozen=True, slots=True)
class Poured:
    """Paint went from a can into a pot; `reads_g` is the reading typed, None for "on the mark"."""

    id: str
    at_s: float
    device: str
    pot: str
    paint: str
    can: str
    net_g: float
    reads_g: float | None


@dataclass(frozen=True, slots=True)
class MadeMore:
    """An over-pour was answered by a bigger batch: all portions of the pot times `factor`."""

    id: str
    at_s: float
    device: str
    pot: str
    factor_ratio: float


@dataclass(frozen=True, slots=True)
class KeptOver:
    """An over-pour was kept as it is."""

    id: str
    at_s: float
    device: str
    pot: str
    paint: str


@dataclass(frozen=True, slots=True)
class ScaleRestarted:
    """The scale went off and shows `reads_g` with the cup back on it; so much it is off zero."""

    id: str
    at_s: float
    device: str
    pot: str
    reads_g: float
    offset_g: float


@dataclass(frozen=True, slots=True)
class TippedOut:
    """A pot was given up; its paint is lost."""

    id: str
    at_s: float
    device: str
    pot: str


@dataclass(frozen=True, slots=True)
class Stirred:
    """A pot is finished."""

    id: str
    at_s: float
    device: str
    pot: str


@dataclass(frozen=True, slots=True)
class CanWeighed:
    """A can stood on the scale; net follows from the tare known then."""

    id: str
    at_s: float
    device: str
    can: str
    gross_g: float
    tare_g: float
    net_g: float


@dataclass(frozen=True, slots=True)
class LidOff:
    """A can stood open for so long in such air; part of its paint dried off."""

    id: str
    at_s: float
    device: str
    can: str
    open_s: float
    across_m: float
    air_c: float
    rh_ratio: float
    air_m_per_s: float


@dataclass(frozen=True, slots=True)
class CoatFinished:
    """One step in one place, a `Wall` or a `Zone`: the rolling ended at `finished_at_s`.

    `started_at_s` is reckoned from the work planned, None where none was.
    """

    id: str
    at_s: float
    device: str
    job: str
    place: str
    step: str
    finished_at_s: float
    started_at_s: float | None = None


@dataclass(frozen=True, slots=True)
class StillTacky:
    """A finger said no: the coat waits at least `more_s` longer, from then or from its end."""

    id: str
    at_s: float
    device: str
    coat: str
    more_s: float


@dataclass(frozen=True, slots=True)
class CautionRead:
    """A caution was read, for one job and one day (`YYYY-MM-DD`, the phone's own)."""

    id: str
    at_s: float
    device: str
    job: str
    caution: str
    day: str


@dataclass(frozen=True, slots=True)
class Undone:
    """An entry was taken back; it stays in the book and counts no more."""

    id: str
    at_s: float
    device: str
    entry: str


Entry = (
    PotStarted
    | Poured
    | MadeMore
    | KeptOver
    | ScaleRestarted
    | TippedOut
    | Stirred
    | CanWeighed
    | LidOff
    | CoatFinished
    | StillTacky
    | CautionRead
    | Undone
)
