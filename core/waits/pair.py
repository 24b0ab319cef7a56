"""The wait between two steps on one wall, from the label."""

from dataclasses import dataclass
from typing import Literal

from core.errors import require
from core.working import Step, Working, step

WAIT_S = 0.0, 7.2e6  # 2000 h
MORE_S = 0.0, 7.2e6
INSTANT_S = 0.0, 1e11  # POSIX time, to the year 5138
TACKY_COUNT = 0, 1000

LABEL = "the label"
TOUCH = "touch test, common practice, no published source"

State = Literal["rolling", "drying", "ready", "too late"]


@dataclass(frozen=True, slots=True)
class Wait:
    """From the end of a step to the start of the next: at least, and at most if the label says.

    Both in s.
    """

    minimum_s: float
    maximum_s: float | None = None


@dataclass(frozen=True, slots=True)
class Drying:
    """The instants of one coat's wait, POSIX s; `late_at_s` is None without a maximum."""

    finished_at_s: float
    label_ready_at_s: float
    ready_at_s: float
    late_at_s: float | None
    working: Working


def after(finished_at_s: float, wait: Wait, tacky: tuple[tuple[float, float], ...] = ()) -> Drying:
    """Find when a coat is ready for the next, and when it is too late.

    Parameters
    ----------
    finished_at_s
        When the rolling ended, POSIX s, 0 to 1e11.
    wait
        The label's: minimum 0 to 7 200 000 s (2000 h), maximum no less than the minimum.
    tacky
        Each time a finger said no: when, POSIX s, and how much longer to wait, s, counted from
        then or from when it would have been ready, whichever is later.

    Returns
    -------
        The instants; ready is never before the label's minimum has passed.

    Source: the label; still tacky waits on, common practice, no published source.

    >>> coat = after(1000.0, Wait(minimum_s=900.0, maximum_s=14400.0), tacky=((1900.0, 600.0),))
    >>> coat.label_ready_at_s, coat.ready_at_s, coat.late_at_s
    (1900.0, 2500.0, 15400.0)
    """
    require("finished_at_s", finished_at_s, *INSTANT_S)
    require_wait(wait)
    require("tacky_count", len(tacky), *TACKY_COUNT)
    label_at_s = finished_at_s + wait.minimum_s
    steps = [_later("label_ready_at_s", finished_at_s, "minimum_s", wait.minimum_s)]
    ready_at_s = label_at_s
    for said_at_s, more_s in tacky:
        require("said_at_s", said_at_s, *INSTANT_S)
        require("more_s", more_s, *MORE_S)
        inputs = {"ready_at_s": ready_at_s, "said_at_s": said_at_s, "more_s": more_s}
        ready_at_s = max(ready_at_s, said_at_s) + more_s
        formula = "max({ready_at_s}, {said_at_s}) + {more_s}"
        steps.append(step("ready_at_s", formula, ready_at_s, TOUCH, **inputs))
    late_at_s = None
    if wait.maximum_s is not None:
        steps.append(_later("late_at_s", finished_at_s, "maximum_s", wait.maximum_s))
        late_at_s = steps[-1].value
    return Drying(finished_at_s, label_at_s, ready_at_s, late_at_s, tuple(steps))


def require_wait(wait: Wait) -> None:
    """Refuse a wait that no label asks for.

    Parameters
    ----------
    wait
        Minimum 0 to 7 200 000 s (2000 h), maximum no less than the minimum.

    >>> require_wait(Wait(minimum_s=900.0))
    """
    require("minimum_s", wait.minimum_s, *WAIT_S)
    if wait.maximum_s is not None:
        require("maximum_s", wait.maximum_s, wait.minimum_s, WAIT_S[1])


def _later(name: str, finished_at_s: float, wait: str, wait_s: float) -> Step:
    inputs = {"finished_at_s": finished_at_s, wait: wait_s}
    return step(name, f"{{finished_at_s}} + {{{wait}}}", finished_at_s + wait_s, LABEL, **inputs)


def state(drying: Drying, now_s: float) -> State:
    """Find where a coat stands now.

    Parameters
    ----------
    drying
        The coat's instants.
    now_s
        POSIX s, 0 to 1e11.

    Returns
    -------
        "rolling" before its end, then "drying", "ready" from the very instant on, and
        "too late" once the maximum has passed, dry or not.

    Source: the label.

    >>> coat = after(1000.0, Wait(minimum_s=900.0, maximum_s=14400.0))
    >>> [state(coat, now_s) for now_s in (999.0, 1899.0, 1900.0, 15400.0, 15401.0)]
    ['rolling', 'drying', 'ready', 'ready', 'too late']
    """
    require("now_s", now_s, *INSTANT_S)
    if now_s < drying.finished_at_s:
        return "rolling"
    if drying.late_at_s is not None and now_s > drying.late_at_s:
        return "too late"
    return "drying" if now_s < drying.ready_at_s else "ready"
