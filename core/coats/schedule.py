"""The coat schedule: the steps of a job in their order."""

from dataclasses import dataclass

from core.waits.pair import Wait


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """One step of the job, on every wall; `wait` runs from its end to the start of the next.

    `use` is one of `USES`.
    """

    id: str
    name: str
    use: str
    wait: Wait
