"""The label of a pot, a cup or a jar: what stands on it, and the address that its code opens."""

from itertools import takewhile

from mobile import clock
from mobile.device import label as device_label
from mobile.device.bridge import home
from mobile.device.label import Label
from mobile.device.page import print_picture, save_file
from mobile.session.chips import looks_of_pot
from mobile.session.known import Known, found
from mobile.session.mix.begin import lots_of
from mobile.session.mix.cups import cups_of
from mobile.session.mix.jars import jar_of
from mobile.session.mix.leftovers import jars_of
from mobile.session.mix.pots import pot_by
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.entries import CupFilled, LeftoverKept, Poured, StrayPoured
from mobile.store.pot import Pot
from mobile.words import label as words

Vessel = CupFilled | LeftoverKept | None  # None is the pot itself


def address_of(pot: Pot) -> str:
    """Give the address that opens a pot in the app, with a signal or without."""
    return f"{home()}#/mix/pots/{pot.id}"


def vessels_of(known: Known, pot: Pot) -> tuple[Vessel, ...]:
    """Give all that of a pot has a label of its own: it, its cups, its jars."""
    ids = {cup.id for cup in cups_of(known, pot)}
    return (None, *(e for e in known.of(CupFilled) if e.id in ids), *jars_of(known, pot))


def vessel_by(known: Known, pot: Pot, vessel_id: str) -> Vessel:
    """Find a cup or a jar of a pot; else it is the pot."""
    own = tuple(one for one in vessels_of(known, pot) if one)
    return found(own, vessel_id)


def label_of(known: Known, pot: Pot, vessel: Vessel, view: View) -> Label:
    """Give what stands on a label: number, mix, date, grams, whose, who, lots."""
    number, own = _own(pot, vessel, view)
    lots = words.lots(lots_in(known, pot, vessel.id if vessel else ""))
    lines = (*own, words.by(pot.started.who), lots)
    day, lamp, _ = looks_of_pot(known, pot)
    return Label(number, tuple(line for line in lines if line), address_of(pot), day, lamp)


def lots_in(known: Known, pot: Pot, before: str = "") -> tuple[str, ...]:
    """Give the lots of all that is in a pot: of its first cans, and of what was poured later.

    Of a cup or a jar it is what was in before it was filled; a jar in the pot has lots of its own.
    """
    lots = list(pot.started.lots)
    for entry in takewhile(lambda one: one.id != before, known.entries):
        if isinstance(entry, Poured | StrayPoured) and entry.pot == pot.id:
            lots += _lots_of_pour(known, entry)
    return tuple(dict.fromkeys(lot for lot in lots if lot))


def _lots_of_pour(known: Known, pour: Poured | StrayPoured) -> tuple[str, ...]:
    jar = jar_of(known, pour.paint)
    if jar and (pot := pot_by(known, jar.pot)):
        return lots_in(known, pot, jar.id)
    return lots_of(known, (pour.can,))


def _own(pot: Pot, vessel: Vessel, view: View) -> tuple[str, tuple[str, ...]]:
    started, mix = pot.started, pot.started.name
    if vessel is None:
        made = words.made(clock.day(started.at_s), pot.in_cup_g)
        return words.pot(started.number), (mix, made)
    day = words.made(clock.day(vessel.at_s), vessel.net_g)
    if isinstance(vessel, CupFilled):
        number = words.cup(started.number, vessel.label)
        return number, (mix, words.whose(vessel.whom), day)
    coldest = "" if vessel.coldest_c is None else view.show("coldest_c", vessel.coldest_c)
    keeps = words.keeps(vessel.use_by_day, coldest)
    return words.jar(vessel.number), (words.from_pot(started.number, mix), day, keeps)


async def save_label(session: Session, label: Label) -> None:
    """Put a picture of a label into the phone's downloads."""
    save_file(words.file(label.number), device_label.picture(label), device_label.MIME)
    session.tell(words.SAVED)


async def print_label(label: Label) -> None:
    """Ask the phone to print a label."""
    print_picture(device_label.picture(label), device_label.MIME)
