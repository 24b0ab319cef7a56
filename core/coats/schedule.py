"""The coat schedule: the steps of a job in their order, and the waits between them."""

from dataclasses import dataclass

from core.errors import require
from core.waits.pair import WAIT_S, PairWait, require_wait

HAND_OVER = "hand-over"
USES = (
    *("prepare", "promoter", "base", "film", "glaze", "opaque", "outline", "clear"),
    HAND_OVER,
)
STEPS_COUNT = 0, 200
PAIRS_COUNT = 0, 5000


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """One step of the job; `use` is one of `USES`, `walls` those it is for, none for all of them.

    `work_s` is how long it takes on all of them together, s; 0 while nobody said.
    """

    id: str
    name: str
    use: str
    work_s: float = 0.0
    walls: tuple[str, ...] = ()


def require_schedule(steps: tuple[PlannedStep, ...], waits: tuple[PairWait, ...] = ()) -> None:
    """Refuse a schedule with two steps of one id, an unknown use, or a wait that leads nowhere.

    Parameters
    ----------
    steps
        Up to 200 steps with different ids and uses out of `USES`, each 0 to 7 200 000 s of work;
        the hand-over, if it is among them, is the last.
    waits
        Up to 5000, each from a step to one that comes later, no two for one pair.

    >>> require_schedule((PlannedStep("b1", "base 1", "base"),))
    """
    require("steps_count", len(steps), *STEPS_COUNT)
    order = {step.id: number for number, step in enumerate(steps)}
    require("different_steps_count", len(order), len(steps), len(steps))
    unknown = sum(step.use not in USES for step in steps)
    require("unknown_uses_count", unknown, 0, 0)
    early = sum(step.use == HAND_OVER for step in steps[:-1])
    require("early_hand_overs_count", early, 0, 0)
    for step in steps:
        require("work_s", step.work_s, *WAIT_S)
    require("pairs_count", len(waits), *PAIRS_COUNT)
    pairs = {(pair.after, pair.before) for pair in waits}
    require("different_pairs_count", len(pairs), len(waits), len(waits))
    astray = sum(order.get(first, 0) >= order.get(then, -1) for first, then in pairs)
    require("astray_waits_count", astray + sum(first not in order for first, _ in pairs), 0, 0)
    for pair in waits:
        require_wait(pair.wait)


def kept_waits(steps: tuple[PlannedStep, ...], waits: tuple[PairWait, ...]) -> tuple[PairWait, ...]:
    """Give the waits that still lead from a step to a later one, after a change of the order.

    Parameters
    ----------
    steps
        The schedule as it is now.
    waits
        The waits as they were.

    Returns
    -------
        Those of them that still make sense, in their order.

    Source: this project's planning model.

    >>> base, clear = PlannedStep("b", "base", "base"), PlannedStep("c", "clear", "clear")
    >>> from core.waits.pair import Wait
    >>> kept_waits((clear, base), (PairWait("b", "c", Wait(900.0)),))
    ()
    """
    order = {step.id: number for number, step in enumerate(steps)}
    last = len(steps)
    return tuple(pair for pair in waits if order.get(pair.after, last) < order.get(pair.before, -1))
