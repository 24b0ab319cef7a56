"""Measuring one wall: what is typed of it, its drawing, its square metres."""

from dataclasses import replace
from math import inf

import flet as ft

from core.errors import Refused
from core.walls.area import PaintedArea
from mobile import theme as t
from mobile.parts.boards import Fact, board, facts
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.elevation import Elevation
from mobile.parts.page import header, screen
from mobile.parts.sheet import How
from mobile.parts.tap import Action, grow
from mobile.screens.walls.drawn import dimensions, drawn_wide
from mobile.screens.walls.fields import measures, openings
from mobile.screens.walls.form import WallForm, form_of, limits
from mobile.session.address import HOW, MEASURE, NEW, go
from mobile.session.forms import use_form
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import Limits, View, use_view
from mobile.session.walls.walls import area_of, keep_wall, next_name, remove_wall
from mobile.store.records import Wall
from mobile.words import places, trouble
from mobile.words import walls as words

DRAWN_HIGH = 170.0


@ft.component
def MeasureScreen(
    known: Known, wall: Wall | None, how_up: bool, *, key: str | None = None
) -> ft.Control:
    """Measure one wall; the answer follows each digit."""
    view, session = use_view(), use_session()
    wall_id = wall.id if wall else NEW
    form, edit, earlier = use_form(f"walls/{wall_id}", form_of(wall, view))
    outcome = outcome_of(known, form, view)
    name = form.name.strip() or next_name(known)
    use_how(how(name, outcome, view) if how_up else None)

    async def keep() -> None:
        now = edit.now
        verb = keep_wall(session, wall.id if wall else edit.id, now.name or name, now.shape(view))
        await session.attempt(verb, then=lambda kept: go(places.WALLS, *leads_to(wall, kept)))

    async def remove() -> None:
        if wall:
            await session.attempt(remove_wall(session, wall), then=lambda _: go(places.WALLS))

    at = (wall.id,) if wall else ()
    back = outline_button(Action(places.BACK, lambda: go(places.WALLS, *at), key="back"), "back")
    rows: list[ft.Control] = [
        header(name, places.DRAFT if earlier else "", back),
        measures(form, edit, view),
        *openings(form, edit, view),
        t.say(words.rule(threshold(known, view)), t.CAPTION, t.SOFT),
        # Under the fields: what comes and goes above one pushes it away from under the cursor.
        *answer(name, outcome, form, view, how_at(wall)),
    ]
    if wall:
        rows.append(second_button(Action(words.REMOVE_WALL, remove, key="remove")))
    good = isinstance(outcome, PaintedArea)
    kept = Action(words.keep(name), keep if good else None, small_of(outcome, view), "keep")
    return screen(rows, [main_button(kept)])


def how_at(wall: Wall | None) -> tuple[str, ...]:
    """Give the address of the sheet that says how."""
    return (wall.id, MEASURE) if wall else (NEW,)


def leads_to(before: Wall | None, kept: Wall) -> tuple[str, ...]:
    """Say where one goes on: a wall that was changed is shown, after a new one all are."""
    return (kept.id,) if before else ()


def outcome_of(known: Known, form: WallForm, view: View) -> PaintedArea | Refused:
    """Give what there is to paint, or why it can't be said."""
    try:
        return area_of(known, form.shape(view))
    except Refused as refusal:
        return refusal


def small_of(outcome: PaintedArea | Refused, view: View) -> str:
    """Say what there is to paint; else what is missing before a wall can be kept."""
    if isinstance(outcome, PaintedArea):
        return words.to_paint(view.show("net_m2", outcome.net_m2, 2))
    if outcome.value != "":
        return words.TODO_RIGHT
    return words.TODO_OPENING if outcome.name.startswith("opening") else words.TODO


def fits(refusal: Refused, within: dict[str, Limits]) -> bool:
    """Tell whether each field by itself would do: then it is the wall as a whole that won't."""
    low, high = within.get(refusal.name, (-inf, inf))
    return not isinstance(refusal.value, str) and low <= refusal.value <= high


def answer(
    name: str, outcome: PaintedArea | Refused, form: WallForm, view: View, at: tuple[str, ...]
) -> list[ft.Control]:
    """Show the square metres and the drawing; where all is typed and can't be, say why."""
    if isinstance(outcome, Refused):
        if isinstance(outcome.value, str) or not fits(outcome, limits(form, view)):
            return []  # the field says it
        return [t.say(trouble.refused(outcome, view.show), t.NAME, t.CAUTION)]
    shape = form.shape(view)
    size = (drawn_wide(view), DRAWN_HIGH)
    drawing = Elevation(shape, dimensions(name, shape, view), size)
    several = [Fact(view.show("net_m2", outcome.net_m2, 2), words.NET)]
    if outcome.deducted_m2:
        several.append(Fact(view.show("gross_m2", outcome.gross_m2, 2), words.GROSS))
        several.append(Fact(view.show("net_m2", outcome.deducted_m2, 2), words.OFF))
    said = facts(tuple(several), view.text_ratio)
    why = Action(places.HOW, lambda: go(places.WALLS, *at, HOW), key="how")
    foot = ft.Row([grow(said), outline_button(why)], spacing=12)
    return [board([drawing, foot])]


def how(name: str, outcome: PaintedArea | Refused, view: View) -> How | None:
    """Say how the square metres come about."""
    if isinstance(outcome, Refused):
        return None
    net = Fact(view.show("net_m2", outcome.net_m2, 2), words.NET)
    return replace(how_of(name, "", outcome.working, view), answers=(net,))


def threshold(known: Known, view: View) -> str:
    """Write the size above which openings come off."""
    return view.show("deducted_above_m2", known.job.deducted_above_m2 if known.job else 0.5, 2)
