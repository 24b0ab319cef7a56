"""Every screen has its place in every window: nothing overlaps, leaves, or is too small to tap."""

import re

import pytest

from tests.browser.conftest import SHOTS
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.tour import Walk
from tests.browser.windows import HAND, LAPTOP, WINDOWS, at_rest, fit, troubles

# A look changes colours and not a place: one is looked at in all windows, the others in two.
LOOKS = {"dark": WINDOWS, "dim": (HAND, LAPTOP), "light": (HAND, LAPTOP)}


@pytest.mark.timeout(1800)
@pytest.mark.parametrize("look", LOOKS)
def test_every_screen_has_its_place(phone: Phone, site: Served, look: str) -> None:
    walk = Walk(phone)
    phone.open(site.address)
    walk.dress(look)
    found: list[str] = []
    for screen in walk.whole():
        for window in LOOKS[look]:
            fit(phone, window)
            if wrong := troubles(phone, window):
                found += [f"{screen}, {window}: {each}" for each in wrong]
                phone.picture(SHOTS / "screens" / f"{named(screen)}-{window}.png")
        fit(phone, HAND)
        at_rest(phone)  # or the next touch lands where something stood in the last window
    assert found == []
    assert phone.engine.troubles() == ()


def named(screen: str) -> str:
    """Name a screen as in a file's name."""
    return re.sub(r"\W+", "-", screen)
