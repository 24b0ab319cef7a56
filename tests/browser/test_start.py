"""The built app comes up with its words in every engine, and asks nobody else for anything."""

import pytest

from tests.browser.phone import Phone
from tests.browser.site import Served

PLACES = ("Coats", "Mix", "Cans", "Walls", "Job")


@pytest.mark.timeout(600)
def test_the_five_places_come_up_in_every_engine(each_phone: Phone, site: Served) -> None:
    each_phone.open(site.address)
    for place in PLACES:
        each_phone.one(place, "button")
    assert each_phone.asked_elsewhere(site.address) == ()
    assert each_phone.engine.troubles() == ()
