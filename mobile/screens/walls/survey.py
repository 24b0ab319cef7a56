"""All walls of the job, each to scale, with what there is to paint."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Fact, board, fact, head
from mobile.parts.buttons import main_button
from mobile.parts.elevation import Elevation
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, tap
from mobile.screens.walls.drawn import dimensions, drawn_high, drawn_wide
from mobile.session.address import NEW, go
from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.session.walls.walls import area_of, job_area_m2
from mobile.store.records import Wall
from mobile.words import places
from mobile.words import walls as words

BARS = 260.0  # header, main action and bar of places, dp
END = ft.CrossAxisAlignment.END


@ft.component
def Survey(known: Known, *, key: str | None = None) -> ft.Control:
    """List the walls; with none, say what to do first."""
    view, session = use_view(), use_session()
    measure = Action(words.MEASURE, lambda: go(places.WALLS, NEW), key="measure")
    if not known.job_walls:
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        return empty(words.EMPTY, words.EMPTY_MORE, measure, demo)
    job = known.job.name if known.job else ""
    title = words.title(view.show("net_m2", job_area_m2(known), 2))
    high = drawn_high(len(known.job_walls), view.height - BARS)
    rows = [header(title, job), *(_board(known, wall, view, high) for wall in known.job_walls)]
    return screen(rows, [main_button(measure)])


def _board(known: Known, wall: Wall, view: View, high: float) -> ft.Control:
    area = area_of(known, wall.shape)
    net = fact(Fact(view.show("net_m2", area.net_m2, 2), words.NET), t.FACT, END)
    off = words.after(tuple(o.name for o in wall.shape.openings)) if area.deducted_m2 else ""
    size = (drawn_wide(view), high)
    drawing = Elevation(wall.shape, dimensions(wall.name, wall.shape, view), size)
    face = ft.Container(board([head(wall.name, off, net), drawing]))
    return tap(face, lambda: go(places.WALLS, wall.id), key=wall.name)
