"""The earliest hand-over that all waits allow."""

from dataclasses import dataclass
from typing import cast

from core.errors import Refused, require
from core.waits.pair import FROM, INSTANT_S, WAIT_S, PairWait
from core.working import Step, Working, step

TASKS_COUNT = 0, 500
PAIRS_COUNT = 0, 5000
LONGEST = "longest path through the waits (critical path method)"

Bound = tuple[int, int, float, int]  # from which task's start, to which, at least, which pair
NO_PAIR = -1
HAIR_S = 1e-6  # less than any clock shows: sums of hours in binary


@dataclass(frozen=True, slots=True)
class Task:
    """Work that takes so long, s; `id` is its key; it can't begin before `earliest_s`."""

    id: str
    work_s: float = 0.0
    earliest_s: float = 0.0


@dataclass(frozen=True, slots=True)
class HandOver:
    """When each task can begin at the earliest, s from the first one's start, in the same order.

    `hand_over_s` is the end of the last; `path` are the tasks that it hangs on, in their order.
    """

    starts_s: tuple[float, ...]
    hand_over_s: float
    path: tuple[str, ...]
    working: Working


def hand_over(
    tasks: tuple[Task, ...], pairs: tuple[PairWait, ...], one_after_another: bool = False
) -> HandOver:
    """Find the earliest hand-over: every task as early as all waits let it.

    Parameters
    ----------
    tasks
        Up to 500 with different keys, each 0 to 7 200 000 s of work, not before 0 to 1e11 s.
    pairs
        Up to 5000 waits between two of them; a minimum says no sooner, a maximum no later.
    one_after_another
        True if one crew does the tasks in the order given, none while another is under way.

    Returns
    -------
        The earliest starts, the hand-over and what it hangs on.

    Raises
    ------
    Refused
        Named `impossible_pair` if no times keep all waits: its value is the place, in `pairs`, of
        a maximum that the others leave no room for, or of a minimum in a ring of them.

    Source: longest path in a graph of differences (Bellman, 1958) and critical path method (Kelley
    and Walker, 1959), both from memory; checked against trying all starts.

    >>> from core.waits.pair import Wait
    >>> work = Task("base", 3600.0), Task("clear", 1800.0)
    >>> hand_over(work, (PairWait("base", "clear", Wait(86400.0)),)).hand_over_s
    91800.0
    """
    _require(tasks, pairs)
    at = {task.id: i for i, task in enumerate(tasks)}
    bounds = [bound for i, pair in enumerate(pairs) for bound in _bounds(i, pair, at, tasks)]
    if one_after_another:
        bounds += [(i, i + 1, task.work_s, NO_PAIR) for i, task in enumerate(tasks[:-1])]
    starts_s, came_by = _longest([task.earliest_s for task in tasks], bounds)
    ends_s = [start_s + task.work_s for start_s, task in zip(starts_s, tasks, strict=True)]
    if not tasks:
        return HandOver((), 0.0, (), (step("hand_over_s", "0", 0.0, LONGEST),))
    path = _back(max(range(len(tasks)), key=lambda i: ends_s[i]), came_by)
    return HandOver(
        tuple(starts_s),
        max(ends_s),
        tuple(tasks[i].id for i in path),
        (_along(path, came_by, tasks, max(ends_s)),),
    )


def _bounds(
    number: int, pair: PairWait, at: dict[str, int], tasks: tuple[Task, ...]
) -> tuple[Bound, ...]:
    """Write a wait as differences of starts: at least so long after, at most so long after."""
    first, then, wait = at[pair.after], at[pair.before], pair.wait
    work_s = tasks[first].work_s
    least_s = wait.minimum_s + (work_s if wait.minimum_from == "end" else 0.0)
    sooner = (first, then, least_s, number)
    if wait.maximum_s is None:
        return (sooner,)
    most_s = wait.maximum_s + (work_s if wait.maximum_from == "end" else 0.0)
    return sooner, (then, first, -most_s, number)


def _longest(
    earliest_s: list[float], bounds: list[Bound]
) -> tuple[list[float], list[Bound | None]]:
    """Push each start back until every bound holds; what still moves then never ends."""
    starts_s = list(earliest_s)
    came_by: list[Bound | None] = [None] * len(starts_s)
    moved: Bound | None = None
    for _ in range(len(starts_s) + 1):
        moved = None
        for bound in bounds:
            first, then, least_s, _number = bound
            if starts_s[first] + least_s > starts_s[then] + HAIR_S:
                starts_s[then], came_by[then], moved = starts_s[first] + least_s, bound, bound
        if moved is None:
            return starts_s, came_by
    raise _impossible(cast(Bound, moved), came_by)


def _impossible(moved: Bound, came_by: list[Bound | None]) -> Refused:
    """Name a wait in the ring that can't be kept: its maximum, or a minimum if it has none."""
    at, ring = moved[1], list[Bound]()
    for _ in came_by:  # so far back one is in the ring for sure
        bound = came_by[at]
        at = bound[0] if bound else at
    first = at
    while not ring or at != first:
        bound = came_by[at]
        if bound is None:
            break
        ring.append(bound)
        at = bound[0]
    most = [bound for bound in ring if bound[2] < 0 and bound[3] != NO_PAIR]
    named = (most or [bound for bound in ring if bound[3] != NO_PAIR] or [moved])[0]
    return Refused("impossible_pair", float(named[3]), -1.0, -1.0)


def _back(last: int, came_by: list[Bound | None]) -> tuple[int, ...]:
    """Follow what each start hangs on, from the last task to one that hangs on nothing."""
    path = [last]
    while bound := came_by[path[-1]]:
        path.append(bound[0])
    return tuple(reversed(path))


def _along(
    path: tuple[int, ...], came_by: list[Bound | None], tasks: tuple[Task, ...], end_s: float
) -> Step:
    """Add up the path: from start to start, and the last one's work."""
    inputs = {"earliest_s": tasks[path[0]].earliest_s} if tasks[path[0]].earliest_s else {}
    for number, i in enumerate(path[1:], 1):
        bound = came_by[i]
        inputs[f"from_start_{number}_s"] = bound[2] if bound else 0.0
    inputs["work_s"] = tasks[path[-1]].work_s
    formula = " + ".join(f"{{{name}}}" for name in inputs)
    return step("hand_over_s", formula, end_s, LONGEST, **inputs)


def _require(tasks: tuple[Task, ...], pairs: tuple[PairWait, ...]) -> None:
    require("tasks_count", len(tasks), *TASKS_COUNT)
    require("pairs_count", len(pairs), *PAIRS_COUNT)
    known = {task.id for task in tasks}
    require("different_tasks_count", len(known), len(tasks), len(tasks))
    for task in tasks:
        require("work_s", task.work_s, *WAIT_S)
        require("earliest_s", task.earliest_s, *INSTANT_S)
    for pair in pairs:
        unknown = len({pair.after, pair.before} - known)
        require("unknown_tasks_count", unknown, 0, 0)
        require("minimum_s", pair.wait.minimum_s, *WAIT_S)
        if pair.wait.maximum_s is not None:
            require("maximum_s", pair.wait.maximum_s, *WAIT_S)
        strange = sum(of not in FROM for of in (pair.wait.minimum_from, pair.wait.maximum_from))
        require("unknown_from_count", strange, 0, 0)
