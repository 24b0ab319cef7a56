"""One step of the schedule: what is done on every wall, and the label's wait after it."""

from dataclasses import dataclass, replace

import flet as ft

from core.coats.schedule import PlannedStep
from core.errors import Refused
from core.waits.pair import WAIT_S, Wait
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button, stack_or_row
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session import job as verbs
from mobile.session.address import go
from mobile.session.forms import Edit, use_form
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.words import job as words
from mobile.words import places, trouble

NONE, MOST = "none", "most"


@dataclass(frozen=True, slots=True)
class StepForm:
    """What has been typed, untouched."""

    name: str = ""
    use: str = "base"
    wait: str = ""
    limit: str = NONE
    most: str = ""

    def step(self, view: View, step_id: str) -> PlannedStep:
        """Read the form; raise `Refused` at the first field that gives no number."""
        minimum_s = view.read("minimum_s", self.wait)
        maximum_s = view.read("maximum_s", self.most) if self.limit == MOST else None
        if maximum_s is not None and maximum_s <= minimum_s:
            raise Refused("limit_before_wait", maximum_s, minimum_s, minimum_s)
        name = self.name.strip() or dict(words.KINDS)[self.use]
        return PlannedStep(step_id, name, self.use, Wait(minimum_s, maximum_s))


def form_of(step: PlannedStep | None, view: View) -> StepForm:
    """Write a kept step as one would type it."""
    if step is None:
        return StepForm()
    most_s = step.wait.maximum_s
    limit = NONE if most_s is None else MOST
    wait = view.typed("minimum_s", step.wait.minimum_s)
    return StepForm(step.name, step.use, wait, limit, view.typed("maximum_s", most_s))


@ft.component
def StepScreen(known: Known, step_id: str, *, key: str | None = None) -> ft.Control:
    """Plan one step; a maximum is asked for, never assumed."""
    session, view = use_session(), use_view()
    steps = known.job.steps if known.job else ()
    step = next((step for step in steps if step.id == step_id), None)
    form, edit, earlier = use_form(f"job/steps/{step_id}", form_of(step, view))
    tried, mark_tried = ft.use_state(False)

    async def keep() -> None:
        try:
            made = edit.now.step(view, step.id if step else edit.id)
        except Refused as refusal:
            mark_tried(True)
            session.refuse(refusal)
            return
        await session.attempt(verbs.keep_step(session, made), then=lambda _: go(places.JOB))

    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    title = form.name.strip() or words.STEP
    rows: list[ft.Control] = [
        header(title, places.DRAFT if earlier else "", back),
        *fields(form, edit, view, tried),
    ]
    if step:
        rows += order(session, steps, step, view)
    keep_it = Action(words.keep_step(form.name.strip()), keep, key="keep")
    return screen(rows, [main_button(keep_it)])


def fields(form: StepForm, edit: Edit[StepForm], view: View, tried: bool) -> list[ft.Control]:
    """Ask for the name, the kind, the wait and its limit; once *Keep* was tried, say what lacks."""

    def wrong(name: str, text: str) -> str:
        lacks = tried and not text.strip()
        if lacks:
            return trouble.refused(Refused(name, text, 0, 0), view.show)
        return view.error(name, text, WAIT_S)

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    name = Field("name", words.STEP_NAME, form.name, number=False)
    label = view.label(words.WAIT, "minimum_s")
    wait = Field("wait", label, form.wait, wrong("minimum_s", form.wait))
    label = view.label(words.RECOAT, "maximum_s")
    most = Field("most", label, form.most, wrong("maximum_s", form.most))
    kinds = [
        segmented(words.KINDS[at : at + 2], form.use, lambda key: typed("use", key), 1.0)
        for at in range(0, len(words.KINDS), 2)
    ]
    limit = segmented(words.LIMITS, form.limit, lambda key: typed("limit", key), view.text_ratio)
    return [
        Fields((name,), typed),
        t.say(words.KIND, t.SMALL, t.SOFT),
        *kinds,
        Fields((wait,), typed),
        t.say(words.WAIT_MORE, t.CAPTION, t.SOFT),
        t.say(words.LIMIT, t.SMALL, t.SOFT),
        limit,
        *([Fields((most,), typed)] if form.limit == MOST else []),
    ]


def order(
    session: Session, steps: tuple[PlannedStep, ...], step: PlannedStep, view: View
) -> list[ft.Control]:
    """Offer to move the step, or to take it out."""

    async def change(after: tuple[PlannedStep, ...], said: str, *, leave: bool) -> None:
        done = await session.attempt(verbs.keep_steps(session, after, said))
        if done and leave:
            go(places.JOB)

    async def up() -> None:
        await change(verbs.moved(steps, step, -1), words.step_moved(step.name), leave=False)

    async def down() -> None:
        await change(verbs.moved(steps, step, 1), words.step_moved(step.name), leave=False)

    async def out() -> None:
        rest = tuple(other for other in steps if other.id != step.id)
        await change(rest, words.step_removed(step.name), leave=True)

    moves: list[ft.Control] = [
        second_button(Action(words.UP, up, key="up")),
        second_button(Action(words.DOWN, down, key="down")),
    ]
    remove = second_button(Action(words.REMOVE_STEP, out, key="remove"))
    return [stack_or_row(moves, view.text_ratio), remove]
