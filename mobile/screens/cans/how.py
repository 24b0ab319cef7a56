"""How the paint in a can was found, and the gap to the ledger."""

from dataclasses import replace

from mobile import clock
from mobile.parts.boards import Fact
from mobile.parts.sheet import How
from mobile.screens.cans.drawn import name_of
from mobile.screens.cans.reading import Reading
from mobile.session.cans.can import CanNow
from mobile.session.how import how_of
from mobile.session.times import when
from mobile.session.view import View
from mobile.words import cans as words


def how(now: CanNow, reading: Reading, view: View) -> How | None:
    """Give the sheet for a reading; None where it says nothing."""
    found = reading.found
    if found is None:
        return None
    facts = [Fact(view.show("net_g", found.net_g), words.NET)]
    if found.volume_l is not None:
        facts.append(Fact(view.show("volume_l", found.volume_l), words.LITRES))
    small = words.NEVER_WEIGHED
    if now.weighed:
        grams = view.show("net_g", now.weighed.net_g)
        small = words.last(grams, when(now.weighed.at_s, clock.now_s()))
    title = words.how_title(now.can.number, name_of(now))
    sheet = how_of(title, small, found.working, view)
    return replace(sheet, answers=tuple(facts), note=words.HOW_NOTE)
