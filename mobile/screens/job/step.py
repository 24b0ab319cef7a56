"""One step of the schedule: what is done, how long it takes, where; the waits before it."""

from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.coats.schedule import HAND_OVER, PlannedStep
from core.errors import Refused
from core.waits.pair import WAIT_S
from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.choice import any_of, segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.job.order import order
from mobile.screens.job.said import wait_said
from mobile.session.address import go
from mobile.session.forms import Edit, use_form
from mobile.session.job.label_waits import job_now
from mobile.session.job.schedule import keep_step, wait_between
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.words import job as words
from mobile.words import places


@dataclass(frozen=True, slots=True)
class StepForm:
    """What has been typed, untouched; `walls` are ids, none for all."""

    name: str = ""
    use: str = "base"
    takes: str = ""
    walls: tuple[tuple[str, ...], ...] = ()

    def step(self, view: View, step_id: str) -> PlannedStep:
        """Read the form; raise `Refused` at the first field that gives no number."""
        work_s = view.read("work_s", self.takes) if self.takes.strip() else 0.0
        name = self.name.strip() or dict(words.KINDS)[self.use]
        return PlannedStep(step_id, name, self.use, work_s, tuple(wall for (wall,) in self.walls))


def form_of(step: PlannedStep | None, view: View) -> StepForm:
    """Write a kept step as one would type it."""
    if step is None:
        return StepForm()
    takes = view.typed("work_s", step.work_s) if step.work_s else ""
    return StepForm(step.name, step.use, takes, tuple((wall,) for wall in step.walls))


@ft.component
def StepScreen(known: Known, step_id: str, *, key: str | None = None) -> ft.Control:
    """Plan one step; after a new one its wait is asked."""
    session, view = use_session(), use_view()
    steps = known.job.steps if known.job else ()
    step = next((step for step in steps if step.id == step_id), None)
    form, edit, earlier = use_form(f"job/steps/{step_id}", form_of(step, view))

    async def keep() -> None:
        try:
            made = edit.now.step(view, step.id if step else edit.id)
        except Refused as refusal:
            session.refuse(refusal)
            return
        done = await session.attempt(keep_step(session, made))
        if done:
            go(places.JOB, *(() if step else wait_to_ask(steps, made)))

    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    title = form.name.strip() or words.STEP
    lines: list[ft.Control] = [
        header(title, places.DRAFT if earlier else "", back),
        *fields(form, edit, view),
        *on_walls(known, form, edit),
    ]
    if step:
        lines += waits_before(known, step, view)
        lines += order(session, steps, step, view) if step.use != HAND_OVER else []
    keep_it = Action(words.keep_step(form.name.strip()), keep, key="keep")
    return screen(lines, [main_button(keep_it)])


def wait_to_ask(steps: tuple[PlannedStep, ...], made: PlannedStep) -> tuple[str, ...]:
    """Give the address of the wait between the last step so far and a new one, if there is one."""
    before = [step for step in steps if step.use != HAND_OVER]
    return ("waits", before[-1].id, made.id) if before else ()


def fields(form: StepForm, edit: Edit[StepForm], view: View) -> list[ft.Control]:
    """Ask for the name, the kind and the work."""

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))  # type: ignore[arg-type]

    name = Field("name", words.STEP_NAME, form.name, number=False)
    wrong = view.error("work_s", form.takes, WAIT_S)
    takes = Field("takes", view.label(words.TAKES, "work_s"), form.takes, wrong)
    kinds = [
        segmented(words.KINDS[at : at + 2], form.use, partial(typed, "use"), 1.0)
        for at in range(0, len(words.KINDS), 2)
    ]
    asked = [t.say(words.KIND, t.SMALL, t.SOFT), *kinds] if form.use != HAND_OVER else []
    more = t.say(words.TAKES_MORE, t.CAPTION, t.SOFT)
    return [Fields((name,), typed), *asked, Fields((takes,), typed), more]


def on_walls(known: Known, form: StepForm, edit: Edit[StepForm]) -> list[ft.Control]:
    """Offer the walls where there are several: none chosen is all of them."""
    options = tuple((wall.id, wall.name) for wall in known.job_walls)
    if len(options) == 1 or not options or form.use == HAND_OVER:
        return []

    def choose(walls: tuple[str, ...]) -> None:
        edit(lambda now: replace(now, walls=tuple((wall,) for wall in walls)))

    chosen = tuple(wall for (wall,) in form.walls)
    return [t.say(words.ON_WALLS, t.SMALL, t.SOFT), any_of(options, chosen, choose)]


def waits_before(known: Known, step: PlannedStep, view: View) -> list[ft.Control]:
    """List the waits before a step, after each earlier one; a tap leads to one."""
    steps = known.job.steps if known.job else ()
    earlier = [one for one in reversed(steps[: steps.index(step)]) if one.use != HAND_OVER]
    if not earlier:
        return []
    lines = []
    for at, one in enumerate(earlier):
        wait = wait_between(job_now(known), one.id, step.id)
        said = wait_said(wait, view) if wait else words.NO_WAIT if at else words.NOT_ASKED
        under = words.USUAL if wait and wait.usual else ""
        line = Row(words.after_step(one.name), "", said, under, "" if wait or at else "caution")
        lines.append(row(line, partial(go, places.JOB, "waits", one.id, step.id)))
    return [t.say(words.WAITS_BEFORE, t.SMALL, t.SOFT), rows(lines)]
