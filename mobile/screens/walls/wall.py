"""One wall to scale: what there is to paint, its zones, the pots that were mixed for it."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Fact, Row, State, board, facts, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button, stack_or_row
from mobile.parts.chip import TwoLight
from mobile.parts.elevation import Elevation
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.walls.drawn import dimensions, drawn_wide
from mobile.session.address import MEASURE, NEW, ZONES, go
from mobile.session.chips import chip_of
from mobile.session.known import Known, found
from mobile.session.view import View, use_view
from mobile.session.walls.walls import area_of
from mobile.session.walls.zones import pots_for, zones_m2, zones_of
from mobile.store.pot import Pot
from mobile.store.records import Wall, Zone
from mobile.words import grams as in_grams
from mobile.words import places
from mobile.words import walls as words

DRAWN_HIGH, CHIP = 190.0, 40.0


@ft.component
def WallScreen(known: Known, wall: Wall, *, key: str | None = None) -> ft.Control:
    """Show a wall with its zones; measure it, or mark another zone."""
    view = use_view()
    back = outline_button(Action(places.BACK, lambda: go(places.WALLS), key="back"), "back")
    size = (drawn_wide(view), DRAWN_HIGH)
    drawing = Elevation(wall.shape, dimensions(wall.name, wall.shape, view), size)
    zones = zones_of(known, wall)
    job = known.job.name if known.job else ""
    lines: list[ft.Control] = [
        header(wall.name, job, back),
        board([drawing, measures(known, wall, view)]),
    ]
    if zones:
        lines.append(rows([zone_row(known, zone, view) for zone in zones]))
    else:
        lines.append(t.say(words.NO_ZONES, t.SMALL, t.SOFT))
    lines += pot_list(pots_for(known, wall), view)
    measure = Action(words.MEASURE_AGAIN, lambda: go(places.WALLS, wall.id, MEASURE), key=MEASURE)
    mark = Action(words.MARK, lambda: go(places.WALLS, wall.id, ZONES, NEW), key="mark")
    sides = [second_button(measure, height=t.MAIN), main_button(mark)]
    return screen(lines, [stack_or_row(sides, view.text_ratio)])


def measures(known: Known, wall: Wall, view: View) -> ft.Control:
    """Say what there is to paint, and how much of it lies in zones."""
    area = area_of(known, wall.shape)
    several = [Fact(view.show("net_m2", area.net_m2, 2), words.NET)]
    in_zones_m2 = zones_m2(known, wall)
    if in_zones_m2:
        over: State = "caution" if in_zones_m2 > area.gross_m2 else ""
        several.append(Fact(view.show("net_m2", in_zones_m2, 2), words.IN_ZONES, over))
    return facts(tuple(several), view.text_ratio)


def zone_row(known: Known, zone: Zone, view: View) -> ft.Control:
    """Show a zone: its mix in two lights, its use and coats, its area."""
    mix = found(known.mixes, zone.mix)
    small = words.zone_small(mix.use, zone.coats_count) if mix else words.NO_MIX
    said = Row(zone.name, small, view.show("area_m2", zone.area_m2, 2))
    chip = TwoLight(*chip_of(known, mix), CHIP) if mix else None
    return row(said, lambda: go(places.WALLS, zone.wall, ZONES, zone.id), chip, view.text_ratio)


def pot_list(pots: tuple[Pot, ...], view: View) -> list[ft.Control]:
    """List the pots that were mixed for what is on this wall."""
    if not pots:
        return []
    lines = []
    for pot in pots:
        grams = in_grams.grams_at(pot.in_cup_g, pot.plan.scale_step_g)
        said = Row(words.pot(pot.started.number), pot.started.name, grams)
        lines.append(row(said, partial(go, places.MIX, "pots", pot.id), None, view.text_ratio))
    return [t.say(words.POTS, t.SMALL, t.SOFT), rows(lines)]
