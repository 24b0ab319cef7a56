"""*Coats*: from the address to its screen."""

import flet as ft

from mobile.parts.notices import empty
from mobile.parts.tap import Action
from mobile.screens.coats.board import CoatsBoard
from mobile.session.address import NEW, go, with_sheet
from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.words import coats as words
from mobile.words import places


@ft.component
def CoatsPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show what dries; without walls or steps, say what to do first."""
    wall_id, how_up = with_sheet(at)
    if known.job_walls and known.job and known.job.steps:
        return CoatsBoard(known, wall_id if how_up else "", key="board")
    return First(bool(known.job_walls), key="first")


@ft.component
def First(walls: bool, *, key: str | None = None) -> ft.Control:
    """Say what to do first, with the one button that does it."""
    session = use_session()
    demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
    if walls:
        step = Action(words.FIRST_STEP, lambda: go(places.JOB, "steps", NEW), key="first step")
        return empty(words.NO_STEPS, words.NO_STEPS_MORE, step, demo)
    measure = Action(words.MEASURE, lambda: go(places.WALLS, NEW), key="measure")
    return empty(words.NO_WALLS, words.NO_WALLS_MORE, measure, demo)
