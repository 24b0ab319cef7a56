"""Fields: what is typed stays, what is there is selected on entry, Enter goes on."""

import asyncio

import flet as ft

from mobile.parts.fields import Field, Fields
from tests.screens.headless import Screen

done: list[str] = []


@ft.component
def Bench() -> ft.Control:  # noqa: N802  components are PascalCase
    nothing: tuple[tuple[str, str], ...] = (("width", "5.62"), ("height", ""))
    form, set_form = ft.use_state(nothing)

    def change(name: str, text: str) -> None:
        set_form(lambda now: tuple((k, text if k == name else v) for k, v in now))
        if text == "same":  # as a draft that is offered again changes a field
            set_form(lambda now: (("width", "3 again"), now[1]))

    fields = tuple(
        Field(name, f"{name.title()}, m", text, "no number" if "x" in text else "")
        for name, text in form
    )
    return Fields(fields, change, lambda: done.append("done"))


def field(screen: Screen, name: str) -> ft.TextField:
    return next(
        one
        for one in screen.session.index.values()
        if isinstance(one, ft.TextField) and one.key == name
    )


async def put(screen: Screen, name: str, text: str) -> None:
    one = field(screen, name)
    screen.session.apply_patch(one._i, {"value": text})
    await screen.fire(one, "change", text)


def test_half_a_number_and_nonsense_stay_as_typed() -> None:
    async def run() -> None:
        screen = Screen(Bench)
        for text in ("12.", "3,5", "12' 6 1/2\"", "2x", ""):
            await put(screen, "width", text)
            assert field(screen, "width").value == text
            assert field(screen, "width").error == ("no number" if "x" in text else None)
        assert field(screen, "height").value == ""

    asyncio.run(run())


def test_two_fields_typed_in_one_tick_both_stay() -> None:
    async def run() -> None:
        screen = Screen(Bench)
        await asyncio.gather(put(screen, "width", "1"), put(screen, "height", "2"))
        assert (field(screen, "width").value, field(screen, "height").value) == ("1", "2")

    asyncio.run(run())


def test_fingers_quicker_than_the_painting_lose_nothing() -> None:
    async def run() -> None:
        screen = Screen(Bench)
        one = field(screen, "width")
        for text in ("3", "3,", "3,5"):  # all typed before the first is painted
            screen.session.apply_patch(one._i, {"value": text})
            await screen.session.dispatch_event(one._i, "change", text)
        screen.session.apply_patch(one._i, {"value": "3,52"})  # and one more, not yet told
        await asyncio.sleep(0.05)
        assert field(screen, "width").value == "3,52"
        await screen.fire(field(screen, "width"), "change", "3,52")
        assert field(screen, "width").value == "3,52"

    asyncio.run(run())


def test_a_text_from_elsewhere_is_shown() -> None:
    async def run() -> None:
        screen = Screen(Bench)
        await put(screen, "width", "3")
        await put(screen, "height", "same")
        assert field(screen, "width").value == "3 again"
        await put(screen, "width", "4")
        assert field(screen, "width").value == "4"

    asyncio.run(run())


def test_enter_in_the_last_field_is_the_main_action() -> None:
    async def run() -> None:
        done.clear()
        screen = Screen(Bench)
        await screen.fire(field(screen, "height"), "submit")
        assert done == ["done"]

    asyncio.run(run())


def test_the_unit_stands_in_the_label() -> None:
    async def run() -> None:
        screen = Screen(Bench)
        assert field(screen, "width").label == "Width, m"
        assert field(screen, "width").suffix is None

    asyncio.run(run())
