"""What the book holds: frozen records with an id, an instant and the device that wrote them.

*Planned or owned* things (a job, a wall, a paint) are replaced whole. What *happened* is an
**entry** (`entries.py`): written once, never changed.

Instants are POSIX seconds (`at_s`); masses g, lengths m, volumes l, times s.
"""

from dataclasses import dataclass

from core.cans.price import Size
from core.coats.schedule import PlannedStep
from core.paints.recipe import Part
from core.waits.pair import PairWait, Wait
from core.walls.shape import Wall as Shape
from mobile.store.entries import Entry
from mobile.store.stamped import Stamped


@dataclass(frozen=True, slots=True)
class Job(Stamped):
    """A job: its name, its steps in order with the waits between them, the rule for openings."""

    name: str
    steps: tuple[PlannedStep, ...] = ()
    waits: tuple[PairWait, ...] = ()
    deducted_above_m2: float = 0.5
    away: bool = False


@dataclass(frozen=True, slots=True)
class Wall(Stamped):
    """A wall of a job."""

    job: str
    name: str
    shape: Shape


@dataclass(frozen=True, slots=True)
class Zone(Stamped):
    """A part of a wall with an area of its own, and so many coats of a mix; "" for no mix yet."""

    job: str
    wall: str
    name: str
    area_m2: float
    mix: str = ""
    coats_count: int = 1


@dataclass(frozen=True, slots=True)
class LabelWait:
    """What a paint's label says of the wait before a kind of step, "" for any."""

    use: str
    wait: Wait


@dataclass(frozen=True, slots=True)
class Paint(Stamped):
    """A paint of the shop; looks are `#rrggbb`, empty while unknown; None is what nobody said.

    `solids_ratio` is by volume; what one coat takes stands on the label as m² a litre or g a m².
    """

    name: str
    day: str = ""
    lamp: str = ""
    density_g_ml: float | None = None
    solids_ratio: float | None = None
    spread_m2_l: float | None = None
    g_m2: float | None = None
    sizes: tuple[Size, ...] = ()
    waits: tuple[LabelWait, ...] = ()


@dataclass(frozen=True, slots=True)
class Can(Stamped):
    """A can of the shop. Its number is painted on its lid; its tare says where it comes from."""

    number: int
    paint: str
    label_l: float | None = None
    tare_g: float | None = None
    tare_from: str = ""  # "empty", "unopened", or nothing while unknown
    gone: bool = False
    across_m: float | None = None  # inside, where paint can dry off
    lot: str = ""  # the maker's, off the label


@dataclass(frozen=True, slots=True)
class Wetting:
    """A kind of tool, and how many times it is wetted with a mix over all its coats."""

    tool: str
    wettings_count: int


@dataclass(frozen=True, slots=True)
class Version:
    """How a recipe was until it was changed, and why it was: "typed" or "corrected"."""

    until_s: float
    parts: tuple[Part, ...]
    why: str = "typed"


@dataclass(frozen=True, slots=True)
class Mix(Stamped):
    """A recipe: parts by mass of paints, its use, what it takes, how it looks.

    `Part.paint` is a `Paint.id`, or the id of a `LeftoverKept`. One of `g_m2`, `spread_m2_l` and
    `dft_um` says what a coat takes; the usual stands in while none does, and for `tools` while they
    are None. `walls` are those that a mix for whole walls goes on, none for all that have a step of
    its use.
    """

    job: str
    name: str
    parts: tuple[Part, ...]
    use: str = "glaze"  # promoter, base, glaze, opaque, clear
    planned_g: float | None = None  # typed; else what its walls and zones need
    g_m2: float | None = None
    spread_m2_l: float | None = None
    dft_um: float | None = None
    loss_ratio: float = 0.0
    tools: tuple[Wetting, ...] | None = None
    cups_count: int = 1
    kit: bool = False
    walls: tuple[str, ...] = ()
    day: str = ""
    lamp: str = ""
    notes: str = ""
    typed_as: str = "parts"  # parts, percent, grams
    versions: tuple[Version, ...] = ()


@dataclass(frozen=True, slots=True)
class ToolKeeps:
    """What a tool of one kind keeps each time it is wetted."""

    tool: str
    hold_up_g: float


@dataclass(frozen=True, slots=True)
class Settings(Stamped):
    """What this phone is set to; there is one, its id is "settings"."""

    job: str = ""
    look: str = "dark"  # dark, dim, light
    units: str = "metric"  # metric, us
    text_ratio: float = 1.0
    scale_step_g: float = 0.1
    scale_capacity_g: float = 5000.0
    cup_g: float | None = None
    bell: bool = True
    way: str = "total"  # what the scale shows: total, each, can
    keeps: tuple[ToolKeeps, ...] = ()  # weighed; the usual stands in for the others
    margin_ratio: float = 0.05  # bought above the need
    who: str = ""  # who has this phone
    bucket_l: float | None = None  # what the bucket takes
    check_g: float | None = None  # a known mass, once a day on the scale
    voice: bool = False  # steps are spoken
    awake: bool = False  # the screen stays on while weighing


@dataclass(frozen=True, slots=True)
class Draft(Stamped):
    """What is typed and not kept yet; its id is the form's address, its fields as typed."""

    fields: tuple[tuple[str, str], ...]


Thing = Job | Wall | Zone | Paint | Can | Mix | Settings | Draft
Record = Thing | Entry
