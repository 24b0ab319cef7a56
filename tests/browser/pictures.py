"""Make the pictures of README's tour: `python -m tests.browser.pictures`.

The built app in Chromium at phone size, at the demo job; written to `assets/tour`.
"""

import tempfile
from collections.abc import Iterator
from pathlib import Path

from tests.browser.chromium import Chromium
from tests.browser.conftest import BUILT, ROOT
from tests.browser.engine import Screen
from tests.browser.phone import phone_of
from tests.browser.site import Served
from tests.browser.tour import Walk
from tests.browser.windows import at_rest

OUT = ROOT / "assets" / "tour"


def tour(walk: Walk) -> Iterator[str]:
    """Go from survey to hand-over; name each picture."""
    yield from planning(walk)
    yield from doing(walk)


def planning(walk: Walk) -> Iterator[str]:
    """See the schedule, a wall, and how much of everything."""
    walk.to("coats", "Measure the first wall")
    walk.tap("Look at the demo job", "Weigh next")
    walk.to("job", "Hand-over")
    yield "1-schedule"
    walk.to("walls", "m²")
    walk.tap("Wall 1", "Mark a zone")
    yield "2-wall"
    walk.to("job/how-much", "Cans 510.50")
    yield "3-how-much"


def doing(walk: Walk) -> Iterator[str]:
    """Weigh a glaze out with too much of one part, weigh a can, finish a coat."""
    walk.to("mix", "New mix")
    walk.tap("ember wing", "Weigh 232 g")
    walk.tap("Weigh 232 g", "On the mark")
    walk.tap("On the mark", "77.3 g")
    yield "4-weigh-out"
    walk.to("mix/weigh/reads", "Use")
    walk.keys("81.9")
    walk.tap("Use ", "instead")
    yield "5-over-pour"
    walk.tap("Make ", "On the mark")
    walk.to("cans/pick", "emptiest first")
    walk.tap("fluorescent orange", "Keep, next can")
    walk.keys("195.1")
    yield "6-can"
    walk.finish("Wash", "Wash finished on")
    walk.to("coats", "Weigh a can")
    yield "7-coats"


def main() -> None:
    """Make all pictures."""
    served = Served(BUILT)
    with (
        tempfile.TemporaryDirectory() as home,
        phone_of(Chromium, Path(home) / "phone", Screen(pixels=1.0)) as phone,
    ):
        phone.open(served.address)
        for name in tour(Walk(phone)):
            at_rest(phone)
            phone.picture(OUT / f"{name}.png")
    served.stop()


if __name__ == "__main__":
    main()
