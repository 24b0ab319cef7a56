"""The coat schedule: the steps of a job in their order."""

from dataclasses import dataclass

from core.errors import require
from core.waits.pair import Wait

USES = ("prepare", "promoter", "base", "film", "glaze", "opaque", "outline", "clear")
STEPS_COUNT = 0, 200


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """One step of the job, on every wall; `wait` runs from its end to the start of the next.

    `use` is one of `USES`.
    """

    id: str
    name: str
    use: str
    wait: Wait


def next_step(steps: tuple[PlannedStep, ...], finished: tuple[str, ...]) -> PlannedStep | None:
    """Find the step that comes next on a wall.

    Parameters
    ----------
    steps
        The schedule, up to 200 steps with different ids and uses out of `USES`.
    finished
        Ids of the steps that are finished on this wall; those of steps since dropped from the
        schedule don't count.

    Returns
    -------
        The first step in order that is not finished; None when all are.

    Source: this project's planning model.

    >>> base = PlannedStep("b1", "base 1", "base", Wait(900.0))
    >>> clear = PlannedStep("c", "clear coat", "clear", Wait(172800.0))
    >>> next_step((base, clear), finished=("b1",)).name
    'clear coat'
    """
    require_schedule(steps)
    return next((step for step in steps if step.id not in finished), None)


def require_schedule(steps: tuple[PlannedStep, ...]) -> None:
    """Refuse a schedule with two steps of one id, or a use that is not known.

    Parameters
    ----------
    steps
        Up to 200 steps with different ids and uses out of `USES`.

    >>> require_schedule((PlannedStep("b1", "base 1", "base", Wait(900.0)),))
    """
    require("steps_count", len(steps), *STEPS_COUNT)
    require("different_steps_count", len({step.id for step in steps}), len(steps), len(steps))
    unknown = sum(step.use not in USES for step in steps)
    require("unknown_uses_count", unknown, 0, 0)
