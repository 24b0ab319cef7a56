"""The job: its schedule on the plumb line, and its drawers."""

from functools import partial

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.parts.boards import tile, tiles
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.schedule import schedule
from mobile.parts.tap import Action
from mobile.screens.job.stops import stops_of
from mobile.session.address import NEW, go
from mobile.session.job.demo import open_demo
from mobile.session.job.hand_over import Ahead, ahead, hindered
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.session.times import when
from mobile.session.view import View, use_view
from mobile.store.records import Job
from mobile.words import files, how_much, places, trouble
from mobile.words import job as words


@ft.component
def Home(known: Known, *, key: str | None = None) -> ft.Control:
    """Show the open job; with none, say what to do first."""
    session, view = use_session(), use_view()
    shown, _ = ft.use_state(session.shown)
    if known.job is None:
        begin = Action(words.BEGIN, lambda: go(places.JOB, NEW), key="begin")
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        other = Action(files.TITLE, lambda: go(places.JOB, "files"), files.SMALL, "files")
        return empty(words.EMPTY, words.EMPTY_MORE, begin, demo, other)
    rename = Action(words.RENAME, lambda: go(places.JOB, "name"), key="rename")
    now_s = clock.now_s()
    plan = ahead(known, now_s)
    title, small = hand_over_said(known.job, plan, now_s, view)
    lines = [
        header(title, known.job.name if plan else "", outline_button(rename)),
        *([t.say(small, t.CAPTION, t.SOFT)] if small else []),
        *no_time(known, plan, now_s),
        *hung(known, plan, view),
        tiles(drawers(session, known), view.width, view.text_ratio),
        t.say(words.WHOLE if shown.whole else words.NOT_WHOLE, t.CAPTION, t.SOFT),
    ]
    return screen(lines)


def hand_over_said(job: Job, plan: Ahead | None, now_s: float, view: View) -> tuple[str, str]:
    """Say the earliest hand-over and what it counts on; the job's name while there is none."""
    if plan is None:
        return job.name, ""
    whole = view.show("wait_s", plan.from_now_s)
    small = words.earliest(whole, view.show("wait_s", plan.waits_only_s), plan.works)
    return words.hand_over_at(when(plan.hand_over_s, now_s)), small


def no_time(known: Known, plan: Ahead | None, now_s: float) -> list[ft.Control]:
    """Say which pair of steps leaves no time, where no hand-over can be said."""
    pair = hindered(known, now_s) if plan is None else ""
    said = trouble.SENTENCES["impossible_pair"].format(pair)
    return [t.say(said, t.NAME, t.CAUTION)] if pair else []


def hung(known: Known, plan: Ahead | None, view: View) -> list[ft.Control]:
    """Hang the schedule on its line; without steps, offer ready-made ones."""
    add = Action(words.ADD_STEP, lambda: go(places.JOB, "steps", NEW), key="add step")
    if known.job and known.job.steps:
        stops = stops_of(known, plan, view)
        line = schedule(stops, lambda step: go(places.JOB, "steps", step), view.text_ratio)
        return [line, second_button(add)]
    ready = Action(
        words.READY_MADE,
        lambda: go(places.JOB, "ready-made"),
        words.READY_MADE_MORE,
        key="ready-made",
    )
    return [t.say(words.NO_STEPS, t.NAME, t.SOFT), main_button(ready), second_button(add)]


def drawers(session: Session, known: Known) -> list[ft.Control]:
    """Offer what else belongs to the job."""
    others = len([job for job in known.jobs if job is not known.job])
    damaged = [
        tile("download", name, words.ASIDE, partial(session.save_aside, name), name)
        for name in session.shelf.set_aside
    ]
    return [
        tile("drop", how_much.TITLE, how_much.SMALL, lambda: go(places.JOB, "how-much")),
        tile("download", files.TITLE, files.SMALL, lambda: go(places.JOB, "files")),
        tile("gear", words.SETTINGS, words.SETTINGS_MORE, lambda: go(places.JOB, "settings")),
        tile("job", words.JOBS, str(others), lambda: go(places.JOB, "jobs")),
        *damaged,
    ]
