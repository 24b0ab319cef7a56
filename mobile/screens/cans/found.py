"""What a reading says of a can, in large: what is left, what should be, the gap."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Fact, State, answer, board, facts
from mobile.parts.buttons import outline_button
from mobile.parts.tap import Action, grow
from mobile.screens.cans.reading import Reading
from mobile.session.address import EDIT, HOW, POURS, go
from mobile.session.cans.can import CanNow, Found
from mobile.session.cans.goes_over import GoesOver, goes_over
from mobile.session.known import Known
from mobile.session.view import View
from mobile.words import cans as words
from mobile.words import places


def found_rows(known: Known, now: CanNow, reading: Reading, view: View) -> list[ft.Control]:
    """Say what is left, or what to type."""
    found = reading.found
    content = said_of(known, now, reading, view)
    said = ft.Semantics(live_region=True, container=True, content=content)
    rows: list[ft.Control] = [said]
    should = now.balance.should_be_g
    several = [] if should is None else [Fact(view.show("should_be_g", should), words.SHOULD_BE)]
    if found and found.gap_g is not None:
        several.append(gap_of(found, found.gap_g, view))
    if several:
        rows.append(ft.Container(facts(tuple(several), view.text_ratio), padding=SIDES))
    if found and found.speaks:
        rows.append(ft.Container(t.say(words.WHERE, t.SMALL, t.CAUTION), padding=SIDES))
    return [*rows, foot(now, reading, view)]


def said_of(known: Known, now: CanNow, reading: Reading, view: View) -> ft.Control:
    """Put the answer on its board."""
    if reading.found is None:
        tare_g = now.can.tare_g or 0.0
        if not reading.text:
            return board([t.say(words.ASK, t.FACT), t.say(words.ASK_MORE, t.SMALL, t.SOFT)])
        less = words.less(view.show("tare_g", tare_g))
        return board([t.say(words.LESS, t.FACT), t.say(less, t.SMALL, t.SOFT)])
    left = words.left(view.show("net_g", reading.found.net_g))
    coats = [
        t.say(over(one, view), t.SMALL, t.TEXT)
        for one in goes_over(known, now.can, reading.found.net_g)
    ]
    lines = [answer(left), t.say(litres(reading.found, view), t.SMALL, t.SOFT), *coats]
    return board(lines, spacing=2)


def over(one: GoesOver, view: View) -> str:
    """Say how much wall it goes over, for a coat that comes straight from the can."""
    area = view.show("area_m2", one.over_m2, 2)
    return words.over_assumed(one.mix, area) if one.assumed else words.over(one.mix, area)


def litres(found: Found, view: View) -> str:
    """Say the litres and how full that is, or what is missing to know."""
    if found.volume_l is None:
        return words.LITRES_UNKNOWN
    share = "" if found.level_ratio is None else view.show("full_ratio", found.level_ratio)
    return words.about(view.show("volume_l", found.volume_l), share)


def gap_of(found: Found, gap_g: float, view: View) -> Fact:
    """Say the gap to the ledger."""
    state: State = "caution" if found.speaks else ""
    shown = view.show("gap_g", abs(gap_g))
    if not found.speaks:
        return Fact(shown, words.AGREES)
    return Fact(shown, words.MISSING if gap_g > 0 else words.MORE, state)


def foot(now: CanNow, reading: Reading, view: View) -> ft.Control:
    """Say where the empty weight comes from; offer to change it, and the working."""
    tare = words.tare(view.show("tare_g", now.can.tare_g or 0.0), now.can.tare_from)
    change = Action(words.CHANGE, lambda: go(places.CANS, now.can.id, EDIT), key="change")
    pours = Action(words.SEE_POURS, lambda: go(places.CANS, now.can.id, POURS), key="pours")
    buttons = [outline_button(pours), outline_button(change)]
    if reading.found:
        why = Action(places.HOW, lambda: go(places.CANS, now.can.id, HOW), key="how")
        buttons.append(outline_button(why))
    text = t.say(tare, t.CAPTION, t.SOFT)
    if view.text_ratio >= t.STACKED_FROM:
        content: ft.Control = ft.Column([text, *buttons], spacing=t.GAP, tight=True)
    else:
        content = ft.Row([grow(text), *buttons], spacing=t.GAP)
    return ft.Container(content, padding=SIDES)


SIDES = ft.Padding(4, 0, 4, 0)
