"""The three wet-hands paths, taps counted: from the opened app, on the second use of the day.

What is asked once a day (are the cans stirred, the cautions) is answered before and counted apart.
"""

import pytest

from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.test_story import LONG_S

pytestmark = pytest.mark.timeout(900)
ONCE_A_DAY = 3  # the two cautions before the wipe-down, and the cans stirred


def at_the_mixes(phone: Phone, site: Served) -> None:
    """Open the app, the demo job in it, at its mixes."""
    phone.open(site.address)
    phone.see("Measure the first wall", LONG_S)
    phone.tap("Look at the demo job", "button")
    phone.see("Weigh next")
    phone.tap("Mix", "button")


def at_the_demo(phone: Phone, site: Served) -> None:
    """Open the demo job; take the mix off that comes before the three-part one."""
    at_the_mixes(phone, site)
    phone.tap(phone.see("base, 3 coats").name, "button")
    phone.tap("Recipe", "button")
    phone.scroll_to("Take it off the list", "button")
    phone.tap("Take it off the list", "button")
    phone.see("base is off the list")


def asked_once_a_day(phone: Phone) -> int:
    """Answer what is asked once a day; return how many taps that took."""
    phone.tap("Coats", "button")
    before = phone.taps
    for said in ("Before you sand, scrape or drill", "Before the wipe-down"):
        phone.see(said)
        phone.tap(phone.see("I have read it").name, "button")
        phone.gone(said)
    read = phone.taps - before
    phone.tap(phone.see("Weigh next").name, "button")
    phone.tap("All stirred?", "button")
    phone.gone("All stirred?")
    phone.tap("Leave", "button")
    phone.tap("Don't weigh it", "button")
    phone.see("Weigh ember wing, 232")
    return read + 1


def opened_again(phone: Phone, site: Served) -> int:
    """Open the app anew; return the taps so far."""
    phone.open(f"{site.address}#/coats")
    phone.reload()
    phone.see("Weigh next", LONG_S)
    return phone.taps


def test_the_three_wet_hands_paths(phone: Phone, site: Served) -> None:
    at_the_demo(phone, site)
    phone.cut()
    assert asked_once_a_day(phone) == ONCE_A_DAY
    weigh_a_planned_mix(phone, site)
    finish_a_planned_coat(phone, site)
    weigh_a_can(phone, site)


def weigh_a_planned_mix(phone: Phone, site: Served) -> None:
    """Three parts on the mark: five taps."""
    before = opened_again(phone, site)
    phone.tap(phone.see("Weigh next").name, "button")
    for reads in ("19.3 g", "77.3 g", "232.0 g"):
        phone.see(reads)
        phone.tap("On the mark", "button")
    phone.one("Stirred, done", "button")
    phone.tap("Stirred, done", "button")
    phone.see("232.0 g, is done.")
    assert phone.taps - before == 5


def finish_a_planned_coat(phone: Phone, site: Served) -> None:
    """A planned coat: one tap."""
    before = opened_again(phone, site)
    phone.tap("Wash finished Wall 1", "button")
    phone.see("Wash finished on Wall 1 at")
    assert phone.taps - before == 1


def weigh_a_can(phone: Phone, site: Served) -> None:
    """What is left in a can: two taps and the digits to know it, one more to keep it."""
    digits = "640.0"
    before = opened_again(phone, site)
    phone.tap(phone.see("Weigh a can").name, "button")
    phone.see("Which can is on the scale?")
    phone.tap(phone.see("adhesion promoter").name, "button")
    phone.keys(digits)
    phone.see("528.5 g left")
    phone.see("goes over 5.24 m²")  # can.can 1.m2_left
    assert phone.taps - before == 2 + len(digits)
    phone.tap("Keep, next can", "button")
    phone.see("528.5 g, kept.")
    assert phone.taps - before == 3 + len(digits)
