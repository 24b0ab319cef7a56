"""The job: its schedule on the plumb line, and its drawers."""

from functools import partial

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.device import page as device
from mobile.parts.boards import tile, tiles
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.schedule import Stop, schedule
from mobile.parts.tap import Action
from mobile.session import job as verbs
from mobile.session.address import NEW, go
from mobile.session.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.words import job as words
from mobile.words import places


@ft.component
def Home(known: Known, *, key: str | None = None) -> ft.Control:
    """Show the open job; with none, say what to do first."""
    session, view = use_session(), use_view()
    shown, _ = ft.use_state(session.shown)
    if known.job is None:
        begin = Action(words.BEGIN, lambda: go(places.JOB, NEW), key="begin")
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        return empty(words.EMPTY, words.EMPTY_MORE, begin, demo)
    rename = Action(words.RENAME, lambda: go(places.JOB, "name"), key="rename")
    stops = stops_of(known, view)
    add = Action(words.ADD_STEP, lambda: go(places.JOB, "steps", NEW), key="add step")
    hung: list[ft.Control] = (
        [schedule(stops, lambda step: go(places.JOB, "steps", step))]
        if known.job.steps
        else [t.say(words.NO_STEPS, t.NAME, t.SOFT)]
    )
    rows = [
        header(known.job.name, "", outline_button(rename)),
        *hung,
        second_button(add),
        tiles(drawers(session, known), view.width, view.text_ratio),
        t.say(words.WHOLE if shown.whole else words.NOT_WHOLE, t.CAPTION, t.SOFT),
    ]
    return screen(rows)


def stops_of(known: Known, view: View) -> tuple[Stop, ...]:
    """Hang the steps of the job on the line; the hand-over is its bob."""
    steps = known.job.steps if known.job else ()
    states = verbs.step_states(known)
    stops = tuple(
        Stop(step.id, step.name, state, wait_words(step.wait.minimum_s, step.wait.maximum_s, view))
        for step, state in zip(steps, states, strict=True)
    )
    return (*stops, Stop("end", words.HAND_OVER, "hand-over"))


def wait_words(minimum_s: float, maximum_s: float | None, view: View) -> str:
    """Say a wait as one reads it off a label."""
    most = view.show("maximum_s", maximum_s) if maximum_s is not None else ""
    return words.wait(view.show("minimum_s", minimum_s), most)


def drawers(session: Session, known: Known) -> list[ft.Control]:
    """Offer what else belongs to the job."""

    async def export() -> None:
        await session.drafts.flush()
        name = words.file_name(clock.day(clock.now_s()))
        device.save_file(name, verbs.export(session), "application/json")
        session.tell(words.EXPORTED)

    others = len([job for job in known.jobs if job is not known.job])
    damaged = [
        tile("download", name, words.ASIDE, partial(session.save_aside, name), name)
        for name in session.shelf.set_aside
    ]
    return [
        tile("gear", words.SETTINGS, words.SETTINGS_MORE, lambda: go(places.JOB, "settings")),
        tile("download", words.EXPORT, words.EXPORT_MORE, export),
        tile("job", words.JOBS, str(others), lambda: go(places.JOB, "jobs")),
        *damaged,
    ]
