"""What the book holds: frozen records with an id, an instant and the device that wrote them.

*Planned or owned* things (a job, a wall, a paint) are replaced whole. What *happened* is an
**entry**: written once, never changed; a correction or an undo is a later entry that names it.
Pots, cans and coats are computed from entries.

Instants are POSIX seconds (`at_s`); masses g, lengths m, volumes l, times s.
"""

from dataclasses import dataclass

from core.coats.schedule import PlannedStep
from core.mixing.portions import Portion
from core.paints.recipe import Part
from core.walls.shape import Wall as Shape


@dataclass(frozen=True, slots=True)
class Job:
    """A job: its name, its steps in order, and the rule for openings."""

    id: str
    at_s: float
    device: str
    name: str
    steps: tuple[PlannedStep, ...] = ()
    deducted_above_m2: float = 0.5
    away: bool = False


@dataclass(frozen=True, slots=True)
class Wall:
    """A wall of a job."""

    id: str
    at_s: float
    device: str
    job: str
    name: str
    shape: Shape


@dataclass(frozen=True, slots=True)
class Paint:
    """A paint of the shop; looks are `#rrggbb`, empty while unknown; density None while unknown."""

    id: str
    at_s: float
    device: str
    name: str
    day: str = ""
    lamp: str = ""
    density_g_ml: float | None = None


@dataclass(frozen=True, slots=True)
class Can:
    """A can of the shop. Its number is painted on its lid; its tare says where it comes from."""

    id: str
    at_s: float
    device: str
    number: int
    paint: str
    label_l: float | None = None
    tare_g: float | None = None
    tare_from: str = ""  # "empty", "unopened", or nothing while unknown
    gone: bool = False


@dataclass(frozen=True, slots=True)
class Mix:
    """A recipe: parts by mass of paints (`Part.paint` is a `Paint.id`)."""

    id: str
    at_s: float
    device: str
    job: str
    name: str
    parts: tuple[Part, ...]
    use: str = "glaze"  # base, glaze, opaque
    planned_g: float | None = None


@dataclass(frozen=True, slots=True)
class Settings:
    """What this phone is set to; there is one, its id is "settings"."""

    id: str
    at_s: float
    device: str
    job: str = ""
    look: str = "dark"  # dark, dim, light
    units: str = "metric"  # metric, us
    text_ratio: float = 1.0
    scale_step_g: float = 0.1
    scale_capacity_g: float = 5000.0
    cup_g: float | None = None
    bell: bool = True


@dataclass(frozen=True, slots=True)
class Draft:
    """What is typed and not kept yet; its id is the form's address, its fields as typed."""

    id: str
    at_s: float
    device: str
    fields: tuple[tuple[str, str], ...]


# --- entries -------------------------------------------------------------------------------


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
class CoatFinished:
    """One step on one wall: the rolling ended at `finished_at_s`."""

    id: str
    at_s: float
    device: str
    job: str
    wall: str
    step: str
    finished_at_s: float


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


Thing = Job | Wall | Paint | Can | Mix | Settings | Draft
Entry = (
    PotStarted
    | Poured
    | MadeMore
    | KeptOver
    | ScaleRestarted
    | TippedOut
    | Stirred
    | CanWeighed
    | CoatFinished
    | StillTacky
    | CautionRead
    | Undone
)
Record = Thing | Entry
