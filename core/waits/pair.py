"""The wait between two steps, from the label: how long at least, and at most."""

from dataclasses import dataclass
from typing import Literal

from core.errors import Refused, require
from core.working import Step, Working, step

WAIT_S = 0.0, 7.2e6  # 2000 h
MORE_S = 0.0, 7.2e6
INSTANT_S = 0.0, 1e11  # POSIX time, to the year 5138
TACKY_COUNT = 0, 1000
DRYINGS_COUNT = 1, 1000
FROM = "end", "start"

LABEL = "the label"
USUAL = "common practice, no published source: the label decides"
TOUCH = "touch test, common practice, no published source"

State = Literal["rolling", "drying", "ready", "too late"]


@dataclass(frozen=True, slots=True)
class Wait:
    """At least so long before the next step begins, and at most if the label says, both in s.

    Each counts from the end or the start of the step before: labels say either, and it makes hours
    of difference on a large wall. `usual` while common practice stands in for a label.
    """

    minimum_s: float
    maximum_s: float | None = None
    minimum_from: str = "end"
    maximum_from: str = "end"
    usual: bool = False


@dataclass(frozen=True, slots=True)
class PairWait:
    """The wait between two steps, by their keys: it belongs to the pair, not to a paint."""

    after: str
    before: str
    wait: Wait


@dataclass(frozen=True, slots=True)
class Drying:
    """The instants of one coat's wait, POSIX s; `late_at_s` is None without a maximum."""

    finished_at_s: float
    label_ready_at_s: float
    ready_at_s: float
    late_at_s: float | None
    working: Working


def after(
    finished_at_s: float,
    wait: Wait,
    tacky: tuple[tuple[float, float], ...] = (),
    started_at_s: float | None = None,
) -> Drying:
    """Find when a coat is ready for the next, and when it is too late.

    Parameters
    ----------
    finished_at_s
        When the rolling ended, POSIX s, 0 to 1e11.
    wait
        Minimum 0 to 7 200 000 s (2000 h), maximum no less than the minimum if both count from one
        instant.
    tacky
        Each time a finger said no: when, POSIX s, and how much longer to wait, s, counted from
        then or from when it would have been ready, whichever is later.
    started_at_s
        When the rolling began, POSIX s, no later than its end; None where nobody knows: then what
        counts from the start counts from the end for the minimum, and a maximum is refused.

    Returns
    -------
        The instants; ready is never before the label's minimum has passed, nor before the end.

    Source: the label; still tacky waits on, common practice, no published source.

    >>> coat = after(1000.0, Wait(minimum_s=900.0, maximum_s=14400.0), tacky=((1900.0, 600.0),))
    >>> coat.label_ready_at_s, coat.ready_at_s, coat.late_at_s
    (1900.0, 2500.0, 15400.0)
    """
    require("finished_at_s", finished_at_s, *INSTANT_S)
    require_wait(wait)
    require("tacky_count", len(tacky), *TACKY_COUNT)
    if started_at_s is not None:
        require("started_at_s", started_at_s, INSTANT_S[0], finished_at_s)
    steps = [_least(finished_at_s, wait, started_at_s)]
    label_at_s = ready_at_s = steps[0].value
    for said_at_s, more_s in tacky:
        require("said_at_s", said_at_s, *INSTANT_S)
        require("more_s", more_s, *MORE_S)
        inputs = {"ready_at_s": ready_at_s, "said_at_s": said_at_s, "more_s": more_s}
        ready_at_s = max(ready_at_s, said_at_s) + more_s
        formula = "max({ready_at_s}, {said_at_s}) + {more_s}"
        steps.append(step("ready_at_s", formula, ready_at_s, TOUCH, **inputs))
    late_at_s = None
    if wait.maximum_s is not None:
        steps.append(_most(finished_at_s, wait, wait.maximum_s, started_at_s))
        late_at_s = steps[-1].value
    return Drying(finished_at_s, label_at_s, ready_at_s, late_at_s, tuple(steps))


def require_wait(wait: Wait) -> None:
    """Refuse a wait that no label asks for.

    Parameters
    ----------
    wait
        Minimum 0 to 7 200 000 s (2000 h), maximum no less than the minimum if both count from one
        instant; each from the "end" or the "start".

    >>> require_wait(Wait(minimum_s=900.0))
    """
    require("minimum_s", wait.minimum_s, *WAIT_S)
    strange = sum(of not in FROM for of in (wait.minimum_from, wait.maximum_from))
    require("unknown_from_count", strange, 0, 0)
    if wait.maximum_s is not None:
        least_s = wait.minimum_s if wait.minimum_from == wait.maximum_from else 0.0
        require("maximum_s", wait.maximum_s, least_s, WAIT_S[1])


def _least(finished_at_s: float, wait: Wait, started_at_s: float | None) -> Step:
    source = USUAL if wait.usual else LABEL
    if wait.minimum_from == "end" or started_at_s is None:
        inputs = {"finished_at_s": finished_at_s, "minimum_s": wait.minimum_s}
        ready_at_s = finished_at_s + wait.minimum_s
        return step(
            "label_ready_at_s", "{finished_at_s} + {minimum_s}", ready_at_s, source, **inputs
        )
    ready_at_s = max(started_at_s + wait.minimum_s, finished_at_s)
    inputs = {"started_at_s": started_at_s, "minimum_s": wait.minimum_s}
    inputs["finished_at_s"] = finished_at_s
    formula = "max({started_at_s} + {minimum_s}, {finished_at_s})"
    return step("label_ready_at_s", formula, ready_at_s, source, **inputs)


def _most(finished_at_s: float, wait: Wait, maximum_s: float, started_at_s: float | None) -> Step:
    source = USUAL if wait.usual else LABEL
    if wait.maximum_from == "end":
        inputs = {"finished_at_s": finished_at_s, "maximum_s": maximum_s}
        late_at_s = finished_at_s + maximum_s
        return step("late_at_s", "{finished_at_s} + {maximum_s}", late_at_s, source, **inputs)
    if started_at_s is None:
        raise Refused("started_at_s", "", INSTANT_S[0], finished_at_s)
    inputs = {"started_at_s": started_at_s, "maximum_s": maximum_s}
    late_at_s = started_at_s + maximum_s
    return step("late_at_s", "{started_at_s} + {maximum_s}", late_at_s, source, **inputs)


def strictest(dryings: tuple[Drying, ...]) -> Drying:
    """Put several waits for one step together: ready when all are, too late when one is.

    Parameters
    ----------
    dryings
        1 to 1000 of them.

    Returns
    -------
        The instants; its end is that of the coat that keeps the step waiting longest.

    Source: this project's planning model.

    >>> film, base = after(0.0, Wait(7200.0)), after(1000.0, Wait(900.0, 9000.0))
    >>> both = strictest((film, base))
    >>> both.ready_at_s, both.late_at_s, both.finished_at_s
    (7200.0, 10000.0, 0.0)
    """
    require("dryings_count", len(dryings), *DRYINGS_COUNT)
    longest = max(dryings, key=lambda one: one.ready_at_s)
    late_s = [one.late_at_s for one in dryings if one.late_at_s is not None]
    working = tuple(line for one in dryings for line in one.working)
    return Drying(
        longest.finished_at_s,
        max(one.label_ready_at_s for one in dryings),
        longest.ready_at_s,
        min(late_s, default=None),
        working,
    )


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
