"""Moving a step up or down the schedule, or taking it out."""

import flet as ft

from core.coats.schedule import PlannedStep
from mobile.parts.buttons import second_button, stack_or_row
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.job.schedule import keep_steps, moved
from mobile.session.session import Session
from mobile.session.view import View
from mobile.words import job as words
from mobile.words import places


def order(
    session: Session, steps: tuple[PlannedStep, ...], step: PlannedStep, view: View
) -> list[ft.Control]:
    """Offer to move the step, or to take it out."""

    async def change(after: tuple[PlannedStep, ...], said: str, *, leave: bool) -> None:
        done = await session.attempt(keep_steps(session, after, said))
        if done and leave:
            go(places.JOB)

    async def up() -> None:
        await change(moved(steps, step, -1), words.step_moved(step.name), leave=False)

    async def down() -> None:
        await change(moved(steps, step, 1), words.step_moved(step.name), leave=False)

    async def out() -> None:
        rest = tuple(other for other in steps if other.id != step.id)
        await change(rest, words.step_removed(step.name), leave=True)

    moves: list[ft.Control] = [
        second_button(Action(words.UP, up, key="up")),
        second_button(Action(words.DOWN, down, key="down")),
    ]
    remove = second_button(Action(words.REMOVE_STEP, out, key="remove"))
    return [stack_or_row(moves, view.text_ratio), remove]
