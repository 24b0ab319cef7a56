"""Addresses: `/walls/new` is the place Walls, at `new`. Sheets are part of the address."""

import flet as ft

from mobile.words.places import COATS, PLACES

WEIGH_OUT = "/mix/weigh"
HOW = "how"


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


def with_sheet(at: str) -> tuple[str, bool]:
    """Say where one is, and whether the *How?* sheet is up there."""
    head, _, last = at.rpartition("/")
    return (head, True) if last == HOW else (at, False)
