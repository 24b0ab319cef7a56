"""Addresses: `/walls/new` is the place Walls, at `new`. Sheets are part of the address."""

import flet as ft

from mobile.words.places import CANS, COATS, MIX, PLACES

WEIGH_OUT = "/mix/weigh"
HOW, NEW, PICK, EDIT = "how", "new", "pick", "edit"
MEASURE, ZONES, PAINTS, POURS, LID = "measure", "zones", "paints", "pours", "lid"
NO_CAN = ("", NEW, PICK, PAINTS)


def place_of(route: str) -> tuple[str, str]:
    """Split an address into the place and what follows; what is no place is *Coats*."""
    first, _, rest = route.strip("/").partition("/")
    name = first.title()
    return (name, rest) if name in PLACES else (COATS, "")


def address(place: str, *parts: str) -> str:
    """Put an address together."""
    return "/" + "/".join((place.lower(), *(part for part in parts if part)))


def go(place: str, *parts: str) -> None:
    """Go to an address; Back in the browser comes back."""
    ft.context.page.navigate(address(place, *parts))


def at_keypad(route: str) -> bool:
    """Tell whether the app's keypad is up: there a number needs all the room.

    >>> at_keypad("/cans/a1"), at_keypad("/cans/pick"), at_keypad("/mix/b2/weigh")
    (True, False, True)
    """
    place, rest = place_of(route)
    first, _, then = with_sheet(rest)[0].partition("/")
    if place == CANS:
        return first not in NO_CAN and then not in {EDIT, POURS, LID}
    return place == MIX and (then == "weigh" or then.endswith("/more"))


def with_sheet(at: str) -> tuple[str, bool]:
    """Say where one is, and whether the *How?* sheet is up there."""
    head, _, last = at.rpartition("/")
    return (head, True) if last == HOW else (at, False)
