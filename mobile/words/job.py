"""What *Job* says."""

from collections.abc import Callable

Saying = Callable[[str], str]

EMPTY = "Name the job"
EMPTY_MORE = "Its walls, mixes, waits and cans are kept under it, on this phone."
NAME, NEW_JOB, RENAME, BEGIN, KEEP_NAME = (
    *("Job", "New job", "Rename", "Begin the job", "Keep the name"),
)
ADD_STEP, STEP, KIND, STEP_NAME = "Add a step", "Step", "Kind of step", "Step"
WAIT, WAIT_MORE = "Wait before the next step", "From the end of this one; read it off the label."
LIMIT, NO_LIMIT, AT_MOST, RECOAT = "Recoat limit", "None", "At most", "Recoat within"
REMOVE_STEP, UP, DOWN = "Take it out", "Move up", "Move down"
NO_STEPS = "No steps yet. A step is what is done on every wall, with the label's wait after it."
HAND_OVER = "hand-over"
SETTINGS, SETTINGS_MORE = "Settings", "look, units, scale, bell"
SETTINGS_KEPT = "Settings are kept."
EXPORT, EXPORT_MORE, EXPORTED = (
    *("Export everything", "one file of all jobs", "The file is in the phone's downloads."),
)
ASIDE = "damaged, put aside: save it as a file"
JOBS, DEMO_MORE = "Other jobs", "invented: Moth Cellar"
WHOLE, NOT_WHOLE = "Works without a signal.", "Not all of the app is on this phone yet."
RING, RING_MORE = "Bell", "when a coat is ready"
ON, OFF = "On", "Off"
LOOK, UNITS, TEXT, SCALE_STEP, CAPACITY, RULE = (
    *("Look", "Units", "Text size", "The scale's step", "The scale's capacity"),
    "Openings come off above",
)
LOOKS = (("dark", "Dark"), ("dim", "Dim"), ("light", "Light"))
SYSTEMS = (("metric", "Metric"), ("us", "US"))
TEXTS = (("1.0", "100\xa0%"), ("1.25", "125\xa0%"), ("1.5", "150\xa0%"), ("2.0", "200\xa0%"))
STEPS_G = (("0.01", "0.01 g"), ("0.1", "0.1 g"), ("1.0", "1 g"))
BELLS = (("on", ON), ("off", OFF))
LIMITS = (("none", NO_LIMIT), ("most", AT_MOST))
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


def named(name: str) -> str:
    """Say the job's new name."""
    return f"The job is called {name}."


def rule_set(name: str) -> str:
    """Say that the rule for openings has changed."""
    return f"{name}: the rule for openings is kept."


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


def keep_step(name: str) -> str:
    """Say what the main button keeps."""
    return f"Keep {name or 'the step'}"


def file_name(day: str) -> str:
    """Name the exported file."""
    return f"duskcoat-{day}.json"
