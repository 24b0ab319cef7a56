"""The other jobs of this phone, and the form that names one."""

from dataclasses import dataclass, replace

import flet as ft

from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import NEW, go
from mobile.session.forms import use_form
from mobile.session.job import jobs as verbs
from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.store.records import Job
from mobile.words import job as words
from mobile.words import places


def back() -> ft.Control:
    """Go back to the job."""
    return outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")


@ft.component
def Jobs(known: Known, *, key: str | None = None) -> ft.Control:
    """List the other jobs; a tap goes there."""
    session = use_session()

    async def demo() -> None:
        await session.attempt(open_demo(session), then=lambda _: go(places.JOB))

    async def away() -> None:
        if known.job:
            verb = verbs.put_away(session, known.job)
            await session.attempt(verb, then=lambda _: go(places.JOB))

    others = sorted((job for job in known.jobs if job is not known.job), key=lambda job: job.away)
    controls: list[ft.Control] = [header(words.JOBS, "", back())]
    if others:
        controls.append(rows([_line(session, job) for job in others]))
    if known.job:
        controls.append(
            second_button(Action(words.put_this_away(known.job.name), away, key="put away"))
        )
    controls.append(second_button(Action(places.DEMO, demo, words.DEMO_MORE, "demo")))
    begin = Action(words.NEW_JOB, lambda: go(places.JOB, NEW), key="new job")
    return screen(controls, [main_button(begin)])


def _line(session: Session, job: Job) -> ft.Control:
    async def come() -> None:
        await session.attempt(verbs.open_job(session, job), then=lambda _: go(places.JOB))

    return row(Row(job.name, words.AWAY if job.away else ""), come)


@dataclass(frozen=True, slots=True)
class NameForm:
    """A job's name as typed."""

    name: str = ""


@ft.component
def NameScreen(known: Known, new: bool, *, key: str | None = None) -> ft.Control:
    """Name a new job, or the open one anew."""
    session = use_session()
    blank = NameForm("" if new or known.job is None else known.job.name)
    form, edit, earlier = use_form("job/new" if new else "job/name", blank)

    async def keep() -> None:
        verb = (
            verbs.new_job(session, edit.now.name, edit.id)
            if new
            else verbs.name_job(session, edit.now.name)
        )
        await session.attempt(verb, then=lambda _: go(places.JOB))

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, name=text))

    title = words.NEW_JOB if new else words.RENAME
    field = Field("name", words.NAME, form.name, number=False)
    main = Action(words.BEGIN if new else words.KEEP_NAME, keep, key="keep")
    controls = [
        header(title, places.DRAFT if earlier else "", back()),
        Fields((field,), typed, keep),
    ]
    return screen(controls, [main_button(main)])
