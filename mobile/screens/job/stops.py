"""The steps as they hang on the line: waits under them, the earliest hour beside them."""

from core.coats.schedule import HAND_OVER, PlannedStep
from mobile import clock
from mobile.parts.schedule import Stop
from mobile.screens.job.said import wait_said
from mobile.session.job.hand_over import Ahead
from mobile.session.job.label_waits import job_now
from mobile.session.job.schedule import step_states, wait_between
from mobile.session.known import Known
from mobile.session.view import View
from mobile.store.records import Job
from mobile.words import job as words


def stops_of(known: Known, plan: Ahead | None, view: View) -> tuple[Stop, ...]:
    """Hang the steps of the job on the line; the hand-over is its bob."""
    job = job_now(known)
    if job is None:
        return ()
    days = [day_of(plan, step) for step in job.steps]
    befores, afters = ["", *days], [*days[1:], ""]
    states = step_states(known)
    return tuple(
        Stop(
            step.id,
            step.name,
            "hand-over" if step.use == HAND_OVER else states[at],
            waits_after(job, at, view),
            hour_of(plan, step),
            day_said(days[at]) if days[at] != befores[at] else "",
            bool(days[at] and afters[at] and days[at] != afters[at]),
        )
        for at, step in enumerate(job.steps)
    )


def waits_after(job: Job, at: int, view: View) -> str:
    """Say the waits that run from a step: before the next one, then before others."""
    step, rest = job.steps[at], job.steps[at + 1 :]
    said = []
    for place, then in enumerate(rest):
        wait = wait_between(job, step.id, then.id)
        if wait is None:
            said += [words.asked_before(then.name)] if not place else []
            continue
        spoken = wait_said(wait, view)
        named = words.wait_before(spoken, then.name) if place else spoken
        said.append(words.usual(named) if wait.usual else named)
    return words.all_waits(tuple(said))


def shown_s(plan: Ahead | None, step: PlannedStep) -> float | None:
    """Give a step's earliest start; of the hand-over its end, None for what is done."""
    if plan is None:
        return None
    return plan.hand_over_s if step.use == HAND_OVER else plan.start_s(step.id)


def day_of(plan: Ahead | None, step: PlannedStep) -> str:
    """Give the day of that instant, "" where there is none."""
    at_s = shown_s(plan, step)
    return "" if at_s is None else clock.day(at_s)


def day_said(day: str) -> str:
    """Say a day by its name, one further off than a week by its date."""
    return words.short_day(day, clock.days_from_now(day)) if day else ""


def hour_of(plan: Ahead | None, step: PlannedStep) -> str:
    """Give the hour of that instant, "" where there is none."""
    at_s = shown_s(plan, step)
    return "" if at_s is None else clock.hour(at_s)
