"""What *Coats* says."""

from mobile.words.grams import listed

# Which cautions (words/cautions.py) stand before which kind of step, in this order.
CAUTIONS_BEFORE = {
    "prepare": ("survey", "wipe-down"),
    "promoter": ("promoter",),
    "outline": ("solvent markers",),
    "film": ("blades",),
    "clear": ("clear coat",),
    "glaze": ("lamps",),
    "opaque": ("lamps",),
}

# Empty places
NO_WALLS = "Measure the first wall"
NO_WALLS_MORE = "A coat dries on a wall. Then each wall's wait stands here, on one clock."
NO_STEPS = "Write down the first step"
NO_STEPS_MORE = "Wash, base 1, glaze 1: each with the wait off its label. Every wall takes them."
MEASURE, FIRST_STEP = "Measure a wall", "Write a step"

# The thumb block
WEIGH_NEXT, WEIGH_ON, WEIGH, WEIGH_CAN = "Weigh next", "Weigh on", "Weigh", "Weigh a can"
CHOOSE_MIX, SHORTEST_FIRST = "choose a mix", "emptiest first"
EARLIER, LATER, MINUTES = "−5", "+5", "min"
ALL_DONE = "All steps are finished"
TAP_A_WALL = "tap a wall to log it all the same"

# A wall's board
READY, TOO_LATE, TO_START, DONE = "Ready", "Too late", "to start", "all steps finished"
READY_AT, READY_ON, ENDS_AT = "ready at", "ready", "ends at"
STILL_TACKY = "Still tacky: 10 min more"
LABEL, LABEL_WAIT, WITH_TACKY, BEFORE = "label", "label wait", "with still tacky", "recoat before"
USUAL, USUAL_WAIT = "usual", "usual wait"
STARTS = {
    "reckoned": "Its start is reckoned from the work planned; that wait counts from there.",
    "unknown": "Nobody knows when it was begun: what counts from its start counts from its end.",
}
LIMIT_GONE = "Its limit has passed: the label says what to do first."
LATE_HERE = "Past its recoat limit: the label decides."
STILL_WET = "The label's wait is not over: the label and a touch test decide."
NO_BELL = "The bell is off; Job, Settings turns it on."
CALENDAR, CALENDAR_SAVED = "Calendar", "The calendar file is in the phone's downloads."
WAITS_FOR, UNASKED = "waits", "its wait was not asked yet: Job, the schedule"
STILL_WET_USUAL = "The usual wait is not over: the label and a touch test decide."
HOW_NOTE_USUAL = "A usual wait stands in: read the label. A touch test and the label decide."
HOW_NOTE = "The wait is the label's own, read off the can; a touch test and the label decide."


def first_up(words: str) -> str:
    """Begin with a capital, and leave the rest as the person wrote it."""
    return words[:1].upper() + words[1:]


def then(finish: str) -> str:
    """Say what comes once the caution is read."""
    return f"then: {finish}"


def minutes(count: str) -> str:
    """Say by how many minutes a button moves the instant."""
    return f"{count} {MINUTES}"


def ring(wall: str, step: str) -> str:
    """Say that a wall is ready."""
    return f"{wall} is ready for {step}"


def ring_late(wall: str, hour: str) -> str:
    """Say that a limit comes near."""
    return f"{wall}: recoat before {hour}"


def calendar_more(job: str, step: str) -> str:
    """Say in a calendar what the ring is about."""
    return f"{job}: the wait after {step} ends. A touch test and the label decide."


def calendar_name(place: str, step: str) -> str:
    """Name a calendar file."""
    plain = "".join(sign if sign.isalnum() else "-" for sign in f"{place} {step}".lower())
    return f"duskcoat-{plain}.ics"


def after_others(steps: tuple[str, ...]) -> str:
    """Say what has to be finished elsewhere on the wall."""
    return f"after {listed(steps)} in its zones"


def on_wall(said: str, wall: str) -> str:
    """Add the wall on which a zone lies."""
    return f"{said}, {wall}" if wall else said


def finish(step: str) -> str:
    """Say what the main button logs."""
    return f"{first_up(step)} finished"


def finished(step: str, wall: str, hour: str) -> str:
    """Say that a coat was logged."""
    return f"{first_up(step)} finished on {wall} at {hour}."


def tacky(wall: str) -> str:
    """Say that a wait was made longer."""
    return f"{wall}: ten minutes more."


def ends_at(wall: str, when: str) -> str:
    """Say when the step was finished, or will be, if it is not just now."""
    return f"{wall}, at {when}"


def ready_at(wall: str, when: str) -> str:
    """Say when the next wall is ready."""
    return f"{wall} is ready at {when}"


def rolls_until(wall: str, when: str) -> str:
    """Say until when a wall is being painted."""
    return f"{wall} ends at {when}"


def again(step: str) -> str:
    """Offer to log a step once more, because its limit has passed."""
    return f"{first_up(step)} done again"


def within(wait: str) -> str:
    """Say how long a wait still is."""
    return f"in {wait}"


def since(when: str) -> str:
    """Say since when a wall is ready, or too late."""
    return f"since {when}"


def drying(step: str) -> str:
    """Say what dries on a wall."""
    return f"{step} dries"


def rolling(step: str) -> str:
    """Say what goes onto a wall now."""
    return f"{step} goes on"


def next_up(step: str) -> str:
    """Say what comes next on a wall."""
    return f"{step} next"


def long_wait(step: str, wall: str) -> str:
    """Say which step comes onto which wall after a long wait."""
    return f"{first_up(step)}, {wall}"


def after_step(wait: str, step: str, *, usual: bool) -> str:
    """Say what a long wait follows, and who says so."""
    return f"{wait} after {step}, {'as is usual' if usual else 'by the label'}"


def longer(wait: str) -> str:
    """Say what tacky made of a label's wait."""
    return f"{wait}, longer by still tacky"


def last_dries(step: str, when: str) -> str:
    """Say how long the last step still dries."""
    return f"{step}, the last step, dries until {when}"


def now_is(hour: str) -> str:
    """Say the hour on the plumb line."""
    return f"now {hour}"


def how_title(wall: str, step: str) -> str:
    """Head the working of a wait."""
    return f"{wall}, {step}"


def how_small(finished: str, ready: str) -> str:
    """Say a wait's two instants."""
    return f"finished {finished}, ready {ready}"


def strip(wall: str, ready: str, late: str) -> str:
    """Say what a strip shows."""
    return f"{wall} dries until {ready}" + (f", too late from {late}" if late else "")


def load(grams: str, number: int, of: int) -> str:
    """Say which load of how many; one alone by its grams."""
    return grams if of == 1 else f"load {number} of {of}"


def grams(mix: str, batch: str) -> str:
    """Say what is weighed next."""
    return f"{mix}, {batch}"


def pot(number: int) -> str:
    """Name the pot on the scale."""
    return f"pot {number}"
