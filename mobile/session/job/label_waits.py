"""What the labels of a step's paints say of the wait before another step."""

from dataclasses import dataclass, replace
from functools import lru_cache

from core.coats.schedule import PlannedStep
from core.waits.pair import PairWait, Wait
from mobile.session.known import Known
from mobile.store.records import Job, Paint


@dataclass(frozen=True, slots=True)
class LabelSays:
    """A wait, and the paint off whose label it is."""

    paint: str
    wait: Wait


def label_wait(known: Known, first: PlannedStep, then: PlannedStep) -> LabelSays | None:
    """Find the longest wait that a paint of the first step asks for; None where no label is known.

    Of several limits the least counts.
    """
    used = {part.paint for mix in known.job_mixes if mix.use == first.use for part in mix.parts}
    paints = [paint for paint in known.paints if paint.id in used]
    told = [(paint, wait) for paint in paints if (wait := _before(paint, then.use))]
    if not told:
        return None
    paint, longest = max(told, key=lambda one: one[1].minimum_s)
    limits = [wait for _, wait in told if wait.maximum_s is not None]
    tightest = min(limits, key=lambda wait: wait.maximum_s or 0.0, default=longest)
    limit = {"maximum_s": tightest.maximum_s, "maximum_from": tightest.maximum_from}
    return LabelSays(paint.name, replace(longest, **limit))  # type: ignore[arg-type]


@lru_cache(maxsize=2)  # asked by several screens, and known is replaced whole
def job_now(known: Known) -> Job | None:
    """Give the open job; where a label says a wait, the usual one stands in no longer."""
    job = known.job
    if job is None:
        return None
    steps = {step.id: step for step in job.steps}

    def asked(pair: PairWait) -> PairWait:
        says = label_wait(known, steps[pair.after], steps[pair.before]) if pair.wait.usual else None
        return replace(pair, wait=says.wait) if says else pair

    return replace(job, waits=tuple(asked(pair) for pair in job.waits))


def _before(paint: Paint, use: str) -> Wait | None:
    """Give what a label says before a kind of step, else what it says before any."""
    by_use = {one.use: one.wait for one in paint.waits}
    return by_use.get(use) or by_use.get("")
