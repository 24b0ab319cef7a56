"""What only the page can do, asked for by Python in a real browser."""

import pytest

from tests.browser.engine import until
from tests.browser.phone import Phone
from tests.pwa.test_offline import AGAIN, SPLASH

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]

TEXT = "() => getComputedStyle(document.documentElement).fontSize"
KEYBOARD = "() => document.querySelector('input').inputMode"


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
    opened.touch(opened.one("Grams", "textbox"))
    until(lambda: opened.engine.ask(KEYBOARD) == "decimal", 20, lambda: "no decimal point")
    assert opened.engine.troubles() == ()


def test_the_next_start_begins_in_the_colours_of_the_last(opened: Phone) -> None:
    ground = "() => getComputedStyle(document.getElementById('splash')).backgroundColor"
    assert opened.engine.ask(ground) == "rgb(14, 16, 20)"
    opened.engine.ask("() => localStorage.setItem('ground', '#F6F3EC')")
    opened.reload()
    until(lambda: opened.engine.ask(ground) == "rgb(246, 243, 236)", 60, lambda: "another colour")


def test_a_python_that_can_not_start_is_told_and_can_be_tried_again(opened: Phone) -> None:
    opened.engine.ask("""async () => {
      const cache = await caches.open((await caches.keys())[0]);
      await cache.delete(`${document.baseURI}.kept/version`);
      localStorage.setItem('ground', '#0E1014');
    }""")  # the version in force is forgotten: the worker's own stands in for it
    opened.reload()
    opened.see("first edition")
    assert "did not start" not in str(opened.engine.ask(SPLASH))
    assert opened.engine.ask(AGAIN) == [0, 0]  # nothing to tap while all is well
