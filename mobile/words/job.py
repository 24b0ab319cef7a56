"""What *Job* says."""

from collections.abc import Callable
from datetime import date

Saying = Callable[[str], str]

EMPTY = "Name the job"
EMPTY_MORE = "Its walls, mixes, waits and cans are kept under it, on this phone."
NAME, NEW_JOB, RENAME, BEGIN, KEEP_NAME = (
    *("Job", "New job", "Rename", "Begin the job", "Keep the name"),
)
ADD_STEP, STEP, KIND, STEP_NAME = "Add a step", "Step", "Kind of step", "Step"
WAIT, COUNTED = "Wait", "Counted from"
LIMIT, NO_LIMIT, AT_MOST, RECOAT = "Recoat limit", "None", "At most", "Recoat within"
LIMIT_COUNTED = "The limit is counted from"
TAKES, TAKES_MORE = "Takes", "On all its walls together. Left empty, no work is counted."
ON_WALLS, WAITS_BEFORE = "On these walls", "Waits before it"
NOT_ASKED, NO_WAIT, USUAL = "not asked yet", "no wait", "usual, not off your label"
USUAL_MORE = "A usual wait stands in here. Read the label, then keep it."
OFF_LABEL_MORE = "Read it off the label of what was put on before."
DROP_WAIT, KEEP_WAIT = "No wait between them", "Keep the wait"
READY_MADE, READY_MADE_MORE = "Ready-made schedules", "usual steps, usual waits"
USUAL_ALL = (
    "Their waits are common practice, no more: each says so until you have read its label. "
    "Recoat limits are asked, never assumed."
)
REMOVE_STEP, UP, DOWN = "Take it out", "Move up", "Move down"
NO_STEPS = "No steps yet. A step is what is done on a wall or a zone; waits stand between them."
HAND_OVER = "hand-over"
WAIT_DROPPED = "That wait is out. The schedule shows where one is asked."
SETTINGS, SETTINGS_MORE = "Settings", "look, units, scale, bell"
SETTINGS_KEPT = "Settings are kept."
ASIDE = "damaged, put aside: save it as a file"
JOBS, DEMO_MORE, AWAY = "Other jobs", "invented: Moth Cellar", "put away"
WHOLE, NOT_WHOLE = "Works without a signal.", "Not all of the app is on this phone yet."
RING, RING_MORE = "Bell", "when a coat is ready"
ON, OFF = "On", "Off"
LOOK, UNITS, TEXT, RULE = "Look", "Units", "Text size", "Openings come off above"
WHO = "Who has this phone"
LOOKS = (("dark", "Dark"), ("dim", "Dim"), ("light", "Light"))
SYSTEMS = (("metric", "Metric"), ("us", "US"))
TEXTS = (("1.0", "100\xa0%"), ("1.25", "125\xa0%"), ("1.5", "150\xa0%"), ("2.0", "200\xa0%"))
DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
BELLS = (("on", ON), ("off", OFF))
LIMITS = (("none", NO_LIMIT), ("most", AT_MOST))
FROM = (("end", "its end"), ("start", "its start"))
LIMIT_FROM = (("end", "from its end"), ("start", "from its start"))
KINDS = (
    ("prepare", "prepare"),
    ("promoter", "promoter"),
    ("base", "base"),
    ("film", "film"),
    ("glaze", "glaze"),
    ("opaque", "opaque"),
    ("outline", "outline"),
    ("clear", "clear coat"),
)


def first_job(others: int) -> str:
    """Name a job that was begun without a name."""
    return "My job" if others == 0 else f"My job {others + 1}"


def begun(name: str) -> str:
    """Say that a job was begun."""
    return f"{name} is begun."


def now_at(name: str) -> str:
    """Say which job is on the screen."""
    return f"Now at {name}."


def put_away(name: str) -> str:
    """Say that a job is off the list."""
    return f"{name} is put away. Its walls, pots and coats are kept."


def put_this_away(name: str) -> str:
    """Offer to put the job away that is on the screen."""
    return f"Put {name} away"


def named(name: str) -> str:
    """Say the job's new name."""
    return f"The job is called {name}."


def rule_set(name: str) -> str:
    """Say that the rule for openings has changed."""
    return f"{name}: the rule for openings is kept."


def hand_over_at(when: str) -> str:
    """Say the earliest hand-over."""
    return f"Hand-over {when}"


def earliest(whole: str, waits: str, works: bool) -> str:
    """Say what the earliest hand-over counts on."""
    if not works:
        return f"At the earliest, {waits} of waits from now; no work is counted."
    return f"At the earliest, {whole} from now: {waits} of waits, someone there day and night."


def wait_title(after: str) -> str:
    """Head a wait by the step that it runs from."""
    return f"Wait after {after}"


def wait_small(before: str) -> str:
    """Say which step a wait is before."""
    return f"before {before}"


def wait_before(minimum: str, before: str) -> str:
    """Say a wait that is not for the next step."""
    return f"{minimum} before {before}"


def asked_before(before: str) -> str:
    """Say that the wait before the next step is not asked yet."""
    return f"wait before {before}: {NOT_ASKED}"


def label_of(paint: str) -> str:
    """Say off which label a wait comes."""
    return f"Off the label of {paint}. Counts and limit as that label has them."


def after_step(step: str) -> str:
    """Name the step that a wait runs from."""
    return f"after {step}"


def pair(after: str, before: str) -> str:
    """Name a pair of steps."""
    return f"{after} to {before}"


def wait_kept(pair_of: str) -> str:
    """Say that a wait is kept."""
    return f"The wait from {pair_of} is kept."


def schedule_taken(name: str) -> str:
    """Say that a ready-made schedule is the job's now."""
    return f"{name}: its waits are the usual ones. Read each off your labels."


def step_kept(name: str) -> str:
    """Say that a step is in the schedule."""
    return f"{name} is in the schedule."


def step_moved(name: str) -> str:
    """Say that the order has changed."""
    return f"{name} has moved."


def step_removed(name: str) -> str:
    """Say that a step is out of the schedule; coats that were finished stay in the book."""
    return f"{name} is out of the schedule."


def wait(minimum: str, maximum: str) -> str:
    """Say a wait, and its limit if there is one."""
    return f"{minimum}, at most {maximum}" if maximum else minimum


def counted(span: str, counted_from: str) -> str:
    """Say that a span counts from the start of the coat before, where it does."""
    return f"{span} from its start" if counted_from == "start" else span


def usual(wait_of: str) -> str:
    """Mark a wait that stands in for the label's."""
    return f"{wait_of}, usual"


def all_waits(several: tuple[str, ...]) -> str:
    """Put the waits after a step together."""
    return "; ".join(several)


def short_day(day: str, ahead: int) -> str:
    """Say a day, `2031-05-17`, by its name, or by its date where that is a week off or more."""
    told = date.fromisoformat(day)
    return (
        DAYS[told.weekday()] if 0 <= ahead < len(DAYS) else f"{told.day} {MONTHS[told.month - 1]}"
    )


def keep_step(name: str) -> str:
    """Say what the main button keeps."""
    return f"Keep {name or 'the step'}"
