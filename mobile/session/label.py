"""The label of a cup or a jar: what stands on it, and the address that its code opens."""

from mobile import clock
from mobile.device import label as device_label
from mobile.device.bridge import home
from mobile.device.label import Label
from mobile.device.page import save_file
from mobile.session.cups import jars_of
from mobile.session.known import Known
from mobile.session.session import Session
from mobile.store.pot import Pot
from mobile.words import label as words


def address_of(pot: Pot) -> str:
    """Give the address that opens a pot in the app, with a signal or without."""
    return f"{home()}#/mix/pots/{pot.id}"


def label_of(known: Known, pot: Pot) -> Label:
    """Give what stands on a pot's label: number, mix, date, grams, who, lots."""
    started = pot.started
    lots = tuple(dict.fromkeys(lot for lot in started.lots if lot))
    lines = (
        started.name,
        words.made(clock.day(pot.started.at_s), pot.in_cup_g),
        words.by(started.who),
        words.lots(lots),
        *(words.jar(jar.number, jar.net_g, jar.use_by_day) for jar in jars_of(known, pot)),
    )
    number = words.pot(started.number)
    return Label(number, tuple(line for line in lines if line), address_of(pot))


async def save_label(session: Session, pot: Pot) -> None:
    """Put a picture of the label into the phone's downloads."""
    data = device_label.picture(label_of(session.known, pot))
    save_file(words.file(pot.started.number), data, device_label.MIME)
    session.tell(words.SAVED)
