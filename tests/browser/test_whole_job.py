"""The job worked by hand, on the screens: one wall, one glaze, one can typed, the rest loaded.

Figures are those of `tests/reference`, as a painter reads them. The rest comes from a file, by the
app's own import; at the end the job goes into a file, the phone is wiped, and the file brings the
same job back.
"""

import json
import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from core.walls.shape import Wall as Shape
from mobile.store.export import exported
from mobile.store.migrations import schema_of
from mobile.store.records import Draft, Record, Settings, Wall
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.test_story import LONG_S
from tests.session.moth_cellar import moth_cellar, wall

pytestmark = pytest.mark.timeout(1500)
SESSION = moth_cellar()  # here, for within a test Playwright's loop runs
FILES = "Files save, take in, back up"
IMPORT = "A job from a file it comes beside what is here"
EXPORT = "This job as a file for another phone, or to keep"
BACK_UP = "Back up everything one file of all jobs, cans and settings"
RESTORE = "Restore a backup it takes the place of everything here"


def the_rest(folder: Path) -> Path:
    """Write the job as a file, its first wall not measured yet."""
    session = SESSION
    first = wall(session.known, "Wall 1")

    def kept(record: Record) -> Record:
        if isinstance(record, Wall) and record.id == first.id:
            return replace(record, shape=Shape(1.0, 1.0, 1.0))
        return record

    job = session.known.job
    assert job is not None
    records = (r for r in session.shelf.records() if not isinstance(r, (Settings, Draft)))
    path = folder / "moth-cellar.json"
    path.write_bytes(exported(map(kept, records), job.id, schema_of()))
    return path


def take_in(phone: Phone, label: str, path: Path) -> None:
    """Choose a file on the Files screen."""
    phone.tap("Job", "button")
    phone.scroll_to(FILES, "button")
    phone.tap(FILES, "button")
    phone.tap(label, "button")
    phone.engine.choose(path)


def measure(phone: Phone) -> None:
    """Type the first wall with its door."""
    phone.tap("Walls", "button")
    phone.tap(phone.see("Wall 1").name, "button")
    phone.tap("Measure", "button")
    phone.type("Width, m", "5.62")
    phone.type("Height, m", "2.8")
    phone.scroll_to("Add an opening", "button")
    phone.tap("Add an opening", "button")
    for label, size in (("Opening width, m", "80 cm"), ("Opening height, m", "1.82")):
        phone.scroll_to(label, "textbox")
        phone.type(label, size)
    phone.tap(phone.see("Keep Wall 1").name, "button")
    phone.see("14.28 m²")  # area.W1.net
    phone.tap("Walls", "button")
    phone.see("24.52 m²")  # area.total


def weigh_the_can(phone: Phone) -> None:
    """Weigh can 7: what it should be, and what is missing."""
    phone.tap("Cans", "button")
    phone.tap(phone.see("Weigh a can").name, "button")
    phone.see("Which can is on the scale?")
    phone.tap(phone.see("fluorescent orange").name, "button")
    phone.keys("257.7")
    phone.see("201.1 g left")  # ledger.net
    phone.see("212.9 g")  # ledger.should_be
    phone.see("11.8 g")  # ledger.gap
    phone.see("Spilt, lent, or another mix?")  # ledger.flag
    phone.tap("Keep, next can", "button")
    phone.see("Can 7: 201.1 g, kept.")


def weigh_the_glaze(phone: Phone) -> None:
    """Weigh ember wing out, 4.6 g too much orange, and make more of it."""
    phone.tap("Mix", "button")
    phone.see("2 × 4484 g")  # base.loads, base.load_g
    phone.tap(phone.see("ember wing").name, "button")
    phone.tap("Empty cup", "button")
    phone.keys("21.4")
    phone.tap("Weigh 232 g", "button")
    phone.see("19.3 g")  # weigh.FY.running
    phone.tap("On the mark", "button")
    phone.see("77.3 g")  # weigh.FO.running
    phone.tap("Scale reads", "button")
    phone.keys("81.9")
    phone.see("4.6 g over")
    phone.tap("Use 81.9 g", "button")
    phone.see("18.4 g more, worth 0.47")  # over.make.extra_g, over.make.extra_minor
    phone.see("26.5")  # over.keep.share
    phone.see("lose 81.9 g, worth 3.40")  # over.tip
    phone.tap(phone.see("Make 250.4 g instead").name, "button")
    for reads in ("83.4 g", "250.4 g"):  # 1.5 g of yellow more, then 167.0 g of medium
        phone.see(reads)
        phone.tap("On the mark", "button")
    phone.one("Stirred, done", "button")
    phone.tap("Stirred, done", "button")
    phone.see(" g, is done.")


def see_the_figures(phone: Phone) -> None:
    """Read the main figures as a painter does."""
    phone.tap("Job", "button")
    phone.see("163 h 30 min")  # wait.nonstop_h
    phone.see("149 h")  # wait.waits_only_h
    phone.scroll_to("How much paints, cans, mixes, steps", "button")
    phone.tap("How much paints, cans, mixes, steps", "button")
    phone.see("1 × 0.50 L and 2 × 2.50 L, 211.50")  # buy.BF.set
    phone.tap("Mixes", "button")
    for batch in ("8968 g", "201 g", "107 g", "139 g", "66 g", "129 g", "118 g", "2540 g"):
        phone.see(batch)


def records_of(path: Path) -> list[object]:
    """Read the records of a file."""
    found: list[object] = json.loads(path.read_text(encoding="utf-8"))["records"]
    return found


def test_one_real_job_from_survey_to_a_file_and_back(
    phone: Phone, site: Served, tmp_path: Path
) -> None:
    phone.open(site.address)
    phone.see("Measure the first wall", LONG_S)
    take_in(phone, IMPORT, the_rest(tmp_path))
    phone.see("is on this phone")
    measure(phone)
    weigh_the_can(phone)
    weigh_the_glaze(phone)
    see_the_figures(phone)
    there_and_back(phone, site, tmp_path)
    assert phone.asked_elsewhere(site.address) == ()
    assert phone.engine.troubles() == ()


def there_and_back(phone: Phone, site: Served, folder: Path) -> None:
    """Save job and backup, wipe the phone, restore the backup: it makes the same bytes again."""
    phone.tap("Job", "button")
    phone.tap("Job", "button")
    phone.scroll_to(FILES, "button")
    phone.tap(FILES, "button")
    phone.tap(EXPORT, "button")
    job = kept(phone, folder / "job.json")
    phone.tap(BACK_UP, "button")
    backup = kept(phone, folder / "backup.json")
    wipe(phone, site)
    take_in(phone, RESTORE, backup)
    phone.see("The backup is in place.")
    phone.scroll_to(FILES, "button")
    phone.tap(FILES, "button")
    phone.tap(BACK_UP, "button")
    again = kept(phone, folder / "again.json")
    assert again.read_bytes() == backup.read_bytes()
    assert {str(one) for one in records_of(job)} <= {str(one) for one in records_of(again)}


def kept(phone: Phone, path: Path) -> Path:
    """Take the newest download out of the phone's folder."""
    phone.saved().replace(path)
    return path


def wipe(phone: Phone, site: Served) -> None:
    """Begin with an empty browser: its whole profile is gone."""
    phone.kill()
    shutil.rmtree(phone.home)
    phone.home.mkdir()
    phone.start()
    phone.open(site.address)
    phone.see("Measure the first wall", LONG_S)
