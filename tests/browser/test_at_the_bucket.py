"""At the bucket: a scale that goes off, half a pot again, and a label that opens the pot."""

from pathlib import Path

import pytest

from mobile.session.weigh_out import BOUNCE_S
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.test_story import LONG_S
from tests.browser.test_wet_hands import at_the_demo

pytestmark = pytest.mark.timeout(900)


def on_the_marks(phone: Phone, *reads: str) -> None:
    """Pour parts on the mark, as the scale should read them."""
    for figure in reads:
        phone.see(figure)
        phone.pause(BOUNCE_S)
        phone.tap("On the mark", "button")


def stirred(phone: Phone, said: str) -> None:
    """End the weigh-out."""
    phone.one("Stirred, done", "button")
    phone.pause(BOUNCE_S)
    phone.tap("Stirred, done", "button")
    phone.see(said)


def test_the_scale_goes_off_half_is_made_again_and_a_label_opens_the_pot(
    phone: Phone, site: Served, tmp_path: Path
) -> None:
    at_the_demo(phone, site)
    up_to_the_medium(phone)
    the_scale_goes_off(phone, site)
    stirred(phone, "232.0 g, is done.")
    half(phone)
    says = label_read(phone, tmp_path / "label.png")
    assert says.startswith(f"{site.address}#/mix/pots/")
    phone.cut()
    phone.open(says)
    phone.reload()
    phone.see("116.0 g", LONG_S)
    phone.see("More of the same")


def up_to_the_medium(phone: Phone) -> None:
    """Weigh two of three parts; the cup's own weight is typed."""
    phone.tap(phone.see("ember wing 232 g").name, "button")
    phone.see("Put the cup on and tare it")
    phone.tap("Empty cup", "button")
    phone.keys("21.4")
    phone.tap("Grams", "button")
    phone.tap("Weigh 232 g", "button")
    on_the_marks(phone, "19.3 g", "77.3 g")
    phone.see("232.0 g")


def the_scale_goes_off(phone: Phone, site: Served) -> None:
    """Put the cup back and type what it shows; then the phone dies, and stands at the same step."""
    phone.tap("Scale went off", "button")
    phone.keys("98.7")  # cup and paint: 21.4 + 77.3
    phone.see("Cup and log agree: 77.3 g in it.")
    phone.tap("Carry on", "button")
    phone.see("253.4 g")  # 232.0 and the cup, not tared any more
    phone.kill()
    phone.start()
    phone.open(site.address)
    phone.see("253.4 g", LONG_S)
    on_the_marks(phone, "253.4 g")


def label_read(phone: Phone, path: Path) -> str:
    """Show the pot's label, and read its code by an independent decoder from a screenshot."""
    zxing = pytest.importorskip("zxingcpp")
    pictures = pytest.importorskip("PIL.Image")
    label = "Labels"
    phone.scroll_to(label, "button")
    phone.tap(label, "button")
    phone.see("Save as a picture")
    phone.picture(path)
    [read] = zxing.read_barcodes(pictures.open(path).convert("L"))
    return str(read.text)


def half(phone: Phone) -> None:
    """Make half of the pot again, from what was really poured."""
    phone.tap("More of the same", "button")
    phone.see("as it was really poured")
    phone.keys("116")
    phone.tap("Weigh 116 g", "button")
    on_the_marks(phone, "9.7 g", "38.7 g", "116.0 g")
    stirred(phone, "116.0 g, is done.")
