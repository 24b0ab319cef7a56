"""Parts on a screen: what is said, what can be tapped, what stands under each other."""

import asyncio
from collections.abc import Callable
from typing import Any

import flet as ft
import flet.canvas as cv
import pytest

from mobile import theme as t
from mobile.parts.bar import Place, PlaceBar, word_size
from mobile.parts.boards import Fact, facts
from mobile.parts.buttons import main_button, thumb_block
from mobile.parts.chip import TwoLight
from mobile.parts.choice import segmented
from mobile.parts.measure import text_width, unparted
from mobile.parts.notices import told
from mobile.parts.sheet import How, HowStep, how_sheet
from mobile.parts.tap import Action
from mobile.words.places import CLOSE
from tests.parts.scenes import SCENES
from tests.screens.headless import Screen

PLACES = tuple(Place(words, words.lower(), f"/{words.lower()}") for words in ("Coats", "Mix"))


def shown(build: Callable[[], ft.Control]) -> Screen:
    @ft.component
    def Bench() -> ft.Control:  # noqa: N802
        return ft.Column([build()])

    return Screen(Bench)


def of_kind(screen: Screen, kind: type) -> list[Any]:
    return [one for one in screen.session.index.values() if isinstance(one, kind)]


@pytest.mark.parametrize("look", t.LOOKS, ids=lambda look: look.name)
@pytest.mark.parametrize("ratio", [1.0, 2.0])
@pytest.mark.parametrize("scene", SCENES)
def test_every_scene_is_drawn_in_every_look(scene: str, ratio: float, look: t.Look) -> None:
    async def run() -> None:
        t.LOOK.default_value.name = look.name
        screen = shown(lambda: SCENES[scene](380.0, ratio, 915.0))
        assert not screen.troubles
        for drawing in of_kind(screen, ft.Semantics):
            assert drawing.label or not drawing.image

    asyncio.run(run())


def test_a_new_look_repaints_only_what_shows_a_paint() -> None:
    async def run() -> None:
        screen = shown(lambda: TwoLight("#E79B67", "#FF7A1C", "ember wing"))

        def fill() -> str:
            canvas = of_kind(screen, cv.Canvas)[0]
            return str(canvas.shapes[0].paint.color)

        assert fill() == "#E79B67"
        t.LOOK.default_value.name = "dim"
        await asyncio.sleep(0.1)
        assert fill() == t.paint("#E79B67", "dim") != "#E79B67"

    asyncio.run(run())


def test_an_action_without_a_verb_cannot_be_tapped() -> None:
    async def run() -> None:
        dead = shown(lambda: main_button(Action("Keep", None, key="keep"))).find("keep")
        alive = shown(lambda: main_button(Action("Keep", print, key="keep"))).find("keep")
        assert dead.on_click is None
        assert alive.on_click is not None
        assert alive.bgcolor == t.FILL != dead.bgcolor

    asyncio.run(run())


def test_the_current_place_is_told_as_selected_and_a_tap_goes_there() -> None:
    async def run() -> None:
        screen = shown(lambda: PlaceBar(PLACES, ("Mix",), 412.0, 1.0))
        said = {one.label: one.selected for one in of_kind(screen, ft.Semantics) if one.label}
        assert said == {"Coats": False, "Mix": True}
        gone: list[str] = []
        screen.session.page.navigate = gone.append
        await screen.fire(face(screen, "Coats"))
        assert gone == ["/coats"]

    asyncio.run(run())


def face(screen: Screen, key: str) -> Any:
    return next(one for one in of_kind(screen, ft.Container) if one.key == key and one.on_click)


@pytest.mark.parametrize("width", [320.0, 412.0])
@pytest.mark.parametrize("ratio", [1.0, 1.3, 2.0])
def test_five_places_stand_side_by_side(width: float, ratio: float) -> None:
    size = word_size(width, ratio) * ratio
    assert max(text_width(word, size) for word in ("Coats", "Walls")) <= width / 5
    assert size >= 14


def test_a_choice_says_which_and_calls_with_its_key() -> None:
    async def run() -> None:
        picked: list[str] = []
        screen = shown(lambda: segmented((("day", "Day"), ("lamp", "Lamp")), "lamp", picked.append))
        chosen = [one.selected for one in of_kind(screen, ft.Semantics) if one.button]
        assert chosen == [False, True]
        await screen.fire(screen.find("choose day"))
        assert picked == ["day"]

    asyncio.run(run())


def test_facts_stand_under_each_other_in_large_text() -> None:
    both = (Fact("201.1 g", "net"), Fact("212.9 g", "should be"))
    assert isinstance(facts(both), ft.Row)
    assert isinstance(facts(both, 1.5), ft.Column)


def test_the_thumb_block_keeps_every_button_in_large_text() -> None:
    async def run(ratio: float) -> list[str]:
        upper = (Action("Weigh next", print), Action("Weigh a can", print))
        main, less, more = (Action(words, print, "min") for words in ("Finished", "−5", "+5"))
        screen = shown(lambda: thumb_block(upper, main, less, more, ratio))
        assert len([one for one in of_kind(screen, ft.Container) if one.on_click]) == 5
        return sorted(" ".join(text.value for text in of_kind(screen, ft.Text)).split())

    assert asyncio.run(run(1.0)) == asyncio.run(run(2.0))


def test_undo_is_offered_where_there_is_something_to_take_back_and_closes_the_line() -> None:
    async def run() -> None:
        screen = shown(lambda: ft.Column([]))
        back: list[str] = []
        screen.session.page.show_dialog(told("Kept."))
        assert not [one for one in of_kind(screen, ft.Container) if one.key == "undo"]

        async def undo() -> None:
            back.append("back")

        bar = told("Kept.", undo)
        screen.session.page.show_dialog(bar)
        screen.session.get_page_patch()
        await screen.fire(screen.find("undo"))
        assert back == ["back"]
        assert not bar.open

    asyncio.run(run())


def test_the_sheet_shows_each_step_with_its_source_and_a_way_out() -> None:
    async def run() -> None:
        shut: list[str] = []
        how = How("Wall 1", "net", (HowStep("Gross", "5.62 × 2.80", "15.74 m²", "geometry"),))

        @ft.component
        def Bench() -> ft.Control:  # noqa: N802
            ft.use_dialog(how_sheet(how, lambda: shut.append("shut"), 915.0))
            return ft.Column([])

        screen = Screen(Bench)
        await asyncio.sleep(0.1)
        screen.session.get_page_patch()
        said = {one.value for one in of_kind(screen, ft.Text)}
        assert {"Wall 1", "Gross", "5.62 × 2.80", "15.74 m²", "geometry", CLOSE} <= said
        await screen.fire(screen.find("close sheet"))
        assert shut == ["shut"]

    asyncio.run(run())


def test_a_unit_is_never_parted_from_its_figure() -> None:
    assert unparted("Use 81.9 g") == "Use 81.9\u00a0g"
    assert unparted("Next can") == "Next can"
