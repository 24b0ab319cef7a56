"""What only the page can do, asked for by Python in a real browser."""

import time

import pytest

from mobile.pwa import bytecode
from tests.browser.engine import until
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.pwa.conftest import Files, changed, laid
from tests.pwa.test_offline import AGAIN, SPLASH, comes

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]

TEXT = "() => getComputedStyle(document.documentElement).fontSize"
KEYBOARD = "() => document.querySelector('input')?.inputMode"
SHOWN = "() => document.getElementById('splash')?.hidden"


def test_it_rings_saves_and_scales_text(opened: Phone) -> None:
    opened.tap("Ring", "button")
    opened.see("base 1 is due")
    opened.tap("Silence", "button")
    opened.tap("Save", "button")
    assert opened.saved().name == "night garden.txt"
    assert opened.saved().read_bytes() == b"moths"
    opened.see("text is 1.00")
    opened.tap("Larger", "button")
    opened.see("text is 1.50")
    assert opened.engine.ask(TEXT) == "24px"
    assert opened.engine.troubles() == ()


def test_a_field_for_numbers_gets_a_keyboard_with_a_decimal_point(
    hand: Phone, host: Served
) -> None:
    hand.open(host.address)
    until(lambda: hand.engine.ask(SHOWN), 90, lambda: "not shown")
    field_x, field_y = (
        100,
        110,
    )  # with a screen reader on Flutter chooses no keyboard: touch blindly

    def keyboard() -> object:
        hand.engine.touch(field_x, field_y)
        return hand.engine.ask(KEYBOARD)

    until(lambda: keyboard() == "decimal", 20, lambda: f"it is {keyboard()}")


def test_the_next_start_begins_in_the_colours_of_the_last(opened: Phone) -> None:
    ground = "() => document.querySelector('[name=theme-color]')?.content"
    assert opened.engine.ask(ground) == "#0E1014"
    opened.engine.ask("() => localStorage.setItem('ground', '#F6F3EC')")
    opened.reload()
    until(lambda: opened.engine.ask(ground) == "#F6F3EC", 60, lambda: "another colour")


def test_a_worker_that_lost_its_note_of_the_version_in_force_takes_its_own(opened: Phone) -> None:
    opened.engine.ask("""async () => {
      const cache = await caches.open((await caches.keys())[0]);
      await cache.delete(`${document.baseURI}.kept/version`);
    }""")
    opened.reload()
    opened.see("first edition")


def test_a_python_that_can_not_start_says_why_and_what_to_do(
    hand: Phone, files: Files, host: Served
) -> None:
    laid(host.folder, changed(files, "python/app.zip", bytecode.stored({"core/nothing.pyc": b""})))
    hand.open(host.address)
    until(lambda: "did not start" in str(hand.engine.ask(SPLASH)), 90, lambda: "it started")
    told = str(hand.engine.ask(SPLASH))
    assert "What you kept is still on this phone; nothing was deleted." in told
    assert "No module named 'mobile'" in told
    assert "damaged" not in told
    kept = "async () => (await navigator.serviceWorker.getRegistration())?.active?.state"
    until(lambda: hand.engine.ask(kept) == "activated", 90, lambda: "not kept")
    laid(host.folder, files)  # its maker mends it
    hand.reload()
    until(lambda: "newer version is there" in str(hand.engine.ask(SPLASH)), 90, lambda: "not told")
    hand.engine.touch(*hand.engine.ask(AGAIN))
    comes(hand, "first edition")


def test_a_script_that_does_not_come_is_told_and_nothing_starts_without_it(
    hand: Phone, host: Served
) -> None:
    script = host.folder / "page" / "device.js"
    code = script.read_bytes()
    script.unlink()
    hand.open(host.address)
    until(lambda: "could not be loaded" in str(hand.engine.ask(SPLASH)), 90, lambda: "not told")
    time.sleep(3)  # Flutter would be up by then, and would say in its own words that it is lost
    told = str(hand.engine.ask(SPLASH))
    assert "What you kept is still on this phone; nothing was deleted." in told
    assert "Go where there is signal, then try again." in told
    assert "page/start.js could not be loaded." in told
    assert hand.words() == ""
    script.write_bytes(code)
    hand.engine.touch(*hand.engine.ask(AGAIN))
    comes(hand, "first edition")
