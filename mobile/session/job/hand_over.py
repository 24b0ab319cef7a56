"""When the client can have the room: the earliest hand-over from here on."""

from dataclasses import dataclass

from core.coats.places import Coat
from core.coats.schedule import HAND_OVER, PlannedStep
from core.errors import Refused
from core.waits.hand_over import HandOver, Task, hand_over
from core.waits.pair import PairWait
from core.working import Working
from mobile.session.coats.standing import done_coats, drying_of, job_coats, to_do
from mobile.session.job.label_waits import job_now
from mobile.session.known import Known
from mobile.session.walls.walls import place_area_m2
from mobile.words import job as words


@dataclass(frozen=True, slots=True)
class Ahead:
    """The earliest start of each step still to do, by its id, and the hand-over: POSIX s."""

    starts_s: tuple[tuple[str, float], ...]
    hand_over_s: float
    from_now_s: float
    waits_only_s: float  # from here, no work counted
    works: bool  # whether any work was planned
    working: Working

    def start_s(self, step_id: str) -> float | None:
        """Give a step's earliest start; None for one that is finished."""
        return dict(self.starts_s).get(step_id)


def ahead(known: Known, now_s: float) -> Ahead | None:
    """Find the earliest hand-over from now on; None without steps, or where no time keeps it."""
    tasks, pairs = _left_to_do(known, now_s)
    if not tasks:
        return None
    try:
        plan = hand_over(tasks, pairs, one_after_another=True)
        idle = tuple(Task(task.id, 0.0, task.earliest_s) for task in tasks)
        bare = hand_over(idle, pairs, one_after_another=True)
    except Refused:
        return None
    return _told(now_s, tasks, plan, bare)


def hindered(known: Known, now_s: float) -> str:
    """Name the pair of steps whose waits leave no time; "" where there is a hand-over.

    A label can ask for what a schedule, once kept, has no room for.
    """
    tasks, pairs = _left_to_do(known, now_s)
    try:
        hand_over(tasks, pairs, one_after_another=True)
    except Refused as refusal:
        if refusal.name != "impossible_pair" or known.job is None:
            return ""
        names = {step.id: step.name for step in known.job.steps}
        pair = pairs[int(float(refusal.value))]
        return words.pair(names[pair.after], names[pair.before])
    return ""


def _left_to_do(known: Known, now_s: float) -> tuple[tuple[Task, ...], tuple[PairWait, ...]]:
    """Give the steps that are not finished as tasks, and the waits between them."""
    job = job_now(known)
    if job is None or all(step.use == HAND_OVER for step in job.steps):
        return (), ()
    coats, undone = job_coats(known), to_do(known)
    left = [step for step in job.steps if _left(step, coats, undone)]
    ids = {step.id for step in left}
    pairs = tuple(pair for pair in job.waits if {pair.after, pair.before} <= ids)
    return tuple(_task(known, step, job.waits, now_s) for step in left), pairs


def _told(now_s: float, tasks: tuple[Task, ...], plan: HandOver, bare: HandOver) -> Ahead:
    starts = tuple(
        (task.id, now_s + start_s) for task, start_s in zip(tasks, plan.starts_s, strict=True)
    )
    works = any(task.work_s for task in tasks)
    end_s = now_s + plan.hand_over_s
    return Ahead(starts, end_s, plan.hand_over_s, bare.hand_over_s, works, plan.working)


def _left(step: PlannedStep, coats: tuple[Coat, ...], undone: frozenset[Coat]) -> bool:
    """Tell whether a step is still to do."""
    own = [coat in undone for coat in coats if coat.step == step.id]
    return not own or any(own)


def _task(known: Known, step: PlannedStep, waits: tuple[PairWait, ...], now_s: float) -> Task:
    """Give a step's work that is left, and when the coats finished before let it begin."""
    coats, done = job_coats(known), done_coats(known)
    asked = {pair.after: pair.wait for pair in waits if pair.before == step.id}
    dryings = [
        drying_of(known, done[coat.step, coat.place], asked[coat.step])
        for coat in coats
        if coat.step in asked and (coat.step, coat.place) in done
    ]
    ends_s = [drying.ready_at_s for drying in dryings if drying]
    earliest_s = max((end_s - now_s for end_s in ends_s), default=0.0)
    return Task(step.id, step.work_s * _share_left(known, step), max(0.0, earliest_s))


def _share_left(known: Known, step: PlannedStep) -> float:
    """Find which share of a step is still to do, by area."""
    undone = to_do(known)
    own = [coat for coat in job_coats(known) if coat.step == step.id]
    areas_m2 = [place_area_m2(known, coat.place) * coat.coats_count for coat in own]
    left_m2 = sum(area_m2 for coat, area_m2 in zip(own, areas_m2, strict=True) if coat in undone)
    whole_m2 = sum(areas_m2)
    return left_m2 / whole_m2 if whole_m2 else 1.0
