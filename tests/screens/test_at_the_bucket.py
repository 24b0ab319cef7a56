"""What is read at the bucket is large: 26 dp is about 20 arc minutes at an arm's length."""

import flet as ft
import pytest

from mobile import theme as t
from mobile.parts.figure import LEAST, figure_size
from mobile.screens.cans.place import CansPlace
from mobile.session.view import View
from tests.screens.mix_place import at_orange, keys, on_mix, run
from tests.screens.seen import OnPlace, controls, tap
from tests.session.ember import ember

READ_DP = 26.0
VIEWS = (View(width=320.0, height=640.0), View(width=412.0, height=915.0), View(width=1280.0))


def sizes(screen: OnPlace) -> dict[str, float]:
    """Give the size of each text on the screen, dp."""
    found: dict[str, float] = {}
    for one in controls(screen):
        if isinstance(one, ft.Text) and one.style and one.style.size:
            found[one.value.replace("\xa0", " ")] = float(one.style.size)
    return found


def too_small(screen: OnPlace, *facts: str) -> dict[str, float]:
    """Name the facts that nobody reads at the bucket."""
    read = sizes(screen)
    return {fact: read[fact] for fact in facts if read[fact] < READ_DP}


@pytest.mark.parametrize("view", VIEWS, ids=lambda view: f"{view.width:.0f}")
def test_facts_of_a_weigh_out_are_read_at_the_bucket(view: View) -> None:
    async def story() -> None:
        session = ember()
        await at_orange(session)
        screen = on_mix(session, "weigh", view)
        assert too_small(screen, "Part 2 of 3", "fluorescent orange", "band 76.7 to 77.9 g") == {}
        await tap(screen, "reads")
        await keys(screen, "81.9")
        facts = ("Part 2 of 3", "fluorescent orange", "4.6 g over", "not 77.3")
        assert too_small(screen, *facts) == {}
        await tap(screen, "use")
        assert too_small(screen, "4.6 g over", "Tip it out, start again") == {}

    run(story())


def test_what_is_left_in_a_can_is_read_at_the_scale() -> None:
    async def story() -> None:
        screen = OnPlace(ember(), CansPlace, "/cans/pick")
        await tap(screen, "can 7")
        await keys(screen, "200.7")
        assert too_small(screen, "fluorescent orange", "144.1 g left") == {}

    run(story())


@pytest.mark.parametrize("reads", ["0.4", "77.3", "258.4", "4999.9"])
def test_what_the_scale_should_read_is_large_on_any_phone(reads: str) -> None:
    assert figure_size(reads, "g", 320.0 - 2 * t.MARGIN, t.READS) >= LEAST
