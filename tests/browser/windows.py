"""The windows in which each screen is looked at, and what an eye finds wrong there."""

import time
from dataclasses import dataclass

from tests.browser.layout import outside, overlaps, small
from tests.browser.phone import Box, Phone
from tests.house.words import NOT_ON_A_SCREEN, PROMISE

PLACES = ("coats", "mix", "cans", "walls", "job")
PATIENCE_S = 20.0
REST_S = 0.3  # a screen that has not changed for so long is drawn
UNDER = "Scrim"  # a sheet lies over it, by its nature
DRAWN_S = 6.0  # a busy machine may still be at the last window's screen


@dataclass(frozen=True, slots=True)
class Window:
    """A window in dp, and the text size of the phone."""

    width: int
    height: int
    text: int = 100

    def __str__(self) -> str:
        """Name it, as in a file's name."""
        return f"{self.width}-{self.text}"


RAIL_FROM, RAIL_HIGH = 900, 560
HAND = Window(412, 915)
LAPTOP, SIDE = Window(1280, 800), Window(915, 412)
WINDOWS = (
    *(HAND, LAPTOP, Window(320, 640), Window(412, 915, 200), Window(320, 640, 200)),
    *(SIDE, Window(915, 412, 200)),
)


def fit(phone: Phone, window: Window) -> None:
    """Give the page this window, and the phone this text size."""
    phone.engine.resize(window.width, window.height)
    size = "(size) => { document.documentElement.style.fontSize = size; }"
    phone.engine.ask(size, f"{window.text}%")


def at_rest(phone: Phone) -> tuple[Box, ...]:
    """Wait until a screen holds still; return its nodes."""
    before, since, end = phone.boxes(), time.monotonic(), time.monotonic() + PATIENCE_S
    while time.monotonic() < min(since + REST_S, end):
        time.sleep(REST_S / 2)
        if (now := phone.boxes()) != before:
            before, since = now, time.monotonic()
    return before


def troubles(phone: Phone, window: Window) -> tuple[str, ...]:
    """Name what overlaps, leaves the window or is too small, once the screen is drawn."""
    end = time.monotonic() + DRAWN_S
    while True:
        boxes = tuple(box for box in at_rest(phone) if box.name != UNDER)
        found = (
            forbidden(boxes)
            + stale(boxes, window)
            + overlaps(boxes)
            + outside(boxes, window.width, window.height)
            + small(boxes)
        )
        if not found or time.monotonic() > end:
            return found


def forbidden(boxes: tuple[Box, ...]) -> tuple[str, ...]:
    """Name words that promise, or that no screen says, as a person reads them."""
    said = (f"{box.name} {box.value}" for box in boxes)
    return tuple(
        f"{found[0]!r} stands in {text!r}"
        for text in said
        for rule in (NOT_ON_A_SCREEN, PROMISE)
        for found in rule.finditer(text)
    )


def stale(boxes: tuple[Box, ...], window: Window) -> tuple[str, ...]:
    """Say so if the places still lie as in another window: at its foot, or on a laptop's rail."""
    spots = [box for box in boxes if box.name.lower() in PLACES and box.role == "button"]
    if len(spots) < len(PLACES):
        return ()
    first, last = spots[0], spots[-1]
    rail = last.top > first.top
    wide = window.width >= RAIL_FROM and window.height >= RAIL_HIGH  # not a phone on its side
    there = rail if wide else abs(right(last) - window.width) <= 1
    return () if there else (f"the places lie as in a window {right(last):.0f} wide",)


def right(box: Box) -> float:
    """Find the right side of a node."""
    return box.left + box.width
