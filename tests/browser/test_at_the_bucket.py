"""At the bucket: what goes wrong is put right, a pot is halved the next day, a label opens it.

All with the signal cut. What a weigh-out shows can be read off a quarter of its screenshot, and
nothing beside the step hears a touch.
"""

import json
import re
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

import pytest

from mobile.session.mix.weigh_out import BOUNCE_S
from tests.browser.chromium import Chromium
from tests.browser.phone import Box, Phone
from tests.browser.site import Served
from tests.browser.test_story import BACK_UP, LONG_S
from tests.browser.test_wet_hands import at_the_mixes
from tests.browser.test_whole_job import take_in

pytestmark = pytest.mark.timeout(1200)
DAY, DAY_S = r"\d{4}-\d\d-\d\d", 86_400.0
PLACES_COUNT = 5


def on_the_marks(phone: Phone, *reads: str) -> None:
    """Pour parts on the mark, as the scale should read them."""
    for figure in reads:
        phone.see(figure)
        phone.tap("On the mark", "button")


def stirred(phone: Phone, said: str) -> None:
    """End the weigh-out."""
    phone.one("Stirred, done", "button")
    phone.tap("Stirred, done", "button")
    phone.see(said)


def test_the_scale_goes_off_half_is_made_the_next_day_and_a_label_opens_the_pot(
    phone: Phone, site: Served, tmp_path: Path
) -> None:
    at_the_mixes(phone, site)
    phone.cut()
    up_to_the_medium(phone)
    the_scale_goes_off(phone, lambda: dies(phone, site))
    stirred(phone, "232.0 g, is done.")
    a_day_later(phone, tmp_path / "yesterday.json")
    half(phone)
    says = label_read(phone, tmp_path / "label.png")
    assert says.startswith(f"{site.address}#/mix/pots/")
    assert printed(phone, tmp_path / "paper.png") == says
    phone.open(says)
    phone.reload()
    phone.see("116.0 g", LONG_S)
    phone.see("More of the same")
    assert phone.asked_elsewhere(site.address) == ()


def test_the_weigh_out_in_every_engine(each_phone: Phone, site: Served, tmp_path: Path) -> None:
    phone = each_phone
    at_the_mixes(phone, site)
    up_to_the_medium(phone)
    the_scale_goes_off(phone, phone.reload)  # not every driver keeps its profile after a death
    stirred(phone, "232.0 g, is done.")
    half(phone)
    assert label_read(phone, tmp_path / "label.png").startswith(f"{site.address}#/mix/pots/")


def test_too_much_is_answered_in_one_tap(phone: Phone, site: Served) -> None:
    at_the_mixes(phone, site)
    phone.cut()
    up_to_the_first(phone)
    on_the_marks(phone, "19.3 g")
    phone.see("77.3 g")
    phone.tap("Scale reads", "button")
    phone.keys("81.9")
    phone.tap("Use 81.9 g", "button")
    before = phone.taps
    phone.tap(phone.see("Make 250.4 g instead").name, "button")  # over.make.total
    phone.see("83.4 g")  # 81.9 and 1.5 of yellow: over.make.add.FY
    assert phone.taps - before == 1


def test_a_step_is_read_at_a_quarter_and_nothing_beside_it_hears_a_touch(
    phone: Phone, site: Served, tmp_path: Path
) -> None:
    at_the_mixes(phone, site)
    phone.cut()
    up_to_the_first(phone)
    for reads in ("19.3", "77.3", "232.0"):
        assert read_at_a_quarter(phone, tmp_path / "step.png", reads) == reads
        touched_all_over(phone)
        on_the_marks(phone, f"{reads} g")


def read_at_a_quarter(phone: Phone, path: Path, reads: str) -> str:
    """Read a step's main figure off a quarter of its screenshot."""
    pytest.importorskip("PIL.Image")
    from tests.browser import read_figure  # noqa: PLC0415  it wants an imaging library

    box = phone.one(f"{reads} g")
    phone.picture(path)
    cut = read_figure.digits_at_a_quarter(path, box, phone.screen.width)
    return read_figure.read(cut, re.sub(r"\d", "0", reads))


def touched_all_over(phone: Phone) -> None:
    """Touch all that is no button of the step: bar, figure, names, cup; nothing changes."""
    before = phone.words()
    wide, high = phone.screen.width, phone.screen.height
    bar = [(wide * (at + 0.5) / PLACES_COUNT, high - 20.0) for at in range(PLACES_COUNT)]
    buttons = [box for box in phone.boxes() if box.role == "button"]
    still = [box for box in phone.boxes() if box.name and not box.tap and box.role != "button"]
    for x, y in (*bar, *(box.middle for box in still)):
        if not any(inside(x, y, one) for one in buttons):
            phone.engine.touch(x, y)
    phone.pause(BOUNCE_S)
    assert phone.words() == before


def inside(x: float, y: float, box: Box) -> bool:
    """Tell whether a point lies on a node."""
    return box.left <= x <= box.left + box.width and box.top <= y <= box.top + box.height


def a_day_later(phone: Phone, path: Path) -> None:
    """Sleep a night: all that was kept is moved a day back, by way of a backup."""
    phone.tap("Job", "button")
    phone.scroll_to("Files save, take in, back up", "button")
    phone.tap("Files save, take in, back up", "button")
    phone.tap(BACK_UP, "button")
    book = json.loads(phone.saved().read_text(encoding="utf-8"))
    for record in book["records"]:
        record["at_s"] -= DAY_S
        if re.fullmatch(DAY, record.get("day", "")):
            record["day"] = str(date.fromisoformat(record["day"]) - timedelta(days=1))
    path.write_text(json.dumps(book), encoding="utf-8")
    take_in(phone, "Restore a backup it takes the place of everything here", path)
    phone.see("The backup is in place.")
    phone.tap("Mix", "button")  # it stands at the pot, as it was left
    phone.see("yesterday")


def up_to_the_medium(phone: Phone) -> None:
    """Weigh two of three parts; the cup's own weight is typed."""
    up_to_the_first(phone)
    on_the_marks(phone, "19.3 g", "77.3 g")
    phone.see("232.0 g")


def up_to_the_first(phone: Phone) -> None:
    """Put the cup on for ember wing; its own weight is typed."""
    phone.tap(phone.see("ember wing 232 g").name, "button")
    phone.see("Put the cup on and tare it")
    phone.tap("Empty cup", "button")
    phone.keys("21.4")
    phone.tap("Grams", "button")
    phone.tap("Weigh 232 g", "button")


def the_scale_goes_off(phone: Phone, begins_anew: Callable[[], None]) -> None:
    """Put the cup back, type what it shows; the app begins anew, and stands at the same step."""
    phone.tap("Scale went off", "button")
    phone.keys("98.7")  # cup and paint: 21.4 + 77.3
    phone.see("Cup and log agree: 77.3 g in it.")
    phone.tap("Carry on", "button")
    phone.see("253.4 g")  # 232.0 and the cup, not tared any more
    begins_anew()
    phone.see("253.4 g", LONG_S)
    on_the_marks(phone, "253.4 g")


def code_in(path: Path) -> str:
    """Read the one code of a picture by an independent decoder."""
    zxing = pytest.importorskip("zxingcpp")
    pictures = pytest.importorskip("PIL.Image")
    [read] = zxing.read_barcodes(pictures.open(path).convert("L"))
    return str(read.text)


def printed(phone: Phone, path: Path) -> str:
    """Print the label, as far as the paper; read the code off it."""
    phone.engine.ask("() => { globalThis.print = () => { globalThis.onPaper = 1; }; return 0; }")
    phone.tap("Print it", "button")
    phone.wait(lambda: phone.engine.ask("() => globalThis.onPaper"), None, lambda: "not printed")
    assert isinstance(phone.engine, Chromium)
    phone.engine.page.emulate_media(media="print")
    phone.picture(path)
    phone.engine.page.emulate_media(media="screen")
    return code_in(path)


def label_read(phone: Phone, path: Path) -> str:
    """Show the pot's label, and read its code from a screenshot."""
    phone.tap("Labels", "button")
    phone.see("Save as a picture")
    phone.picture(path)
    return code_in(path)


def dies(phone: Phone, site: Served) -> None:
    """Lose the battery, and start again."""
    phone.kill()
    phone.start()
    phone.open(site.address)


def half(phone: Phone) -> None:
    """Make half of the pot again, from what was really poured."""
    phone.tap("More of the same", "button")
    phone.see("as it was really poured")
    phone.keys("116")
    phone.tap("Weigh 116 g", "button")
    on_the_marks(phone, "9.7 g", "38.7 g", "116.0 g")
    stirred(phone, "116.0 g, is done.")
