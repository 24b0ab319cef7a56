"""What a headless screen shows: its words, its buttons, its drawings, as a person finds them."""

import asyncio
from collections.abc import Callable, Iterator
from typing import Any

import flet as ft
from flet.components.component import Component

from mobile.session.address import place_of
from mobile.session.session import SESSION, Session
from mobile.session.view import VIEW, View
from tests.screens.headless import Screen

QUIET = 8  # turns of the loop with nothing to draw


class OnPlace(Screen):
    """A place on the screen; addresses of its own are followed, the others are noted."""

    def __init__(
        self, session: Session, place: Callable[..., Any], at: str, view: View | None = None
    ) -> None:
        self.went: list[str] = []
        name, rest = place_of(at)

        @ft.component
        def root() -> Any:
            known = ft.use_state(session.shown)[0].known
            now, self.follow = ft.use_state(rest)
            return SESSION(session, lambda: VIEW(view or View(), lambda: place(known, now)))

        super().__init__(root)

        def navigate(route: str) -> None:
            self.went.append(route)
            self.session.page.route = route
            if place_of(route)[0] == name:
                self.follow(place_of(route)[1])

        object.__setattr__(self.session.page, "navigate", navigate)
        self.session.page.route = at


def shown(control: Any) -> Iterator[Any]:
    """Yield each control that is on the screen, in reading order."""
    if isinstance(control, (list, tuple)):
        for one in control:
            yield from shown(one)
    elif isinstance(control, ft.BaseControl):
        if not getattr(control, "visible", True):
            return
        yield control
        if isinstance(control, Component):
            yield from shown(control._b)
            return
        for name in ("content", "controls"):
            yield from shown(getattr(control, name, None))


def controls(screen: Screen) -> list[Any]:
    """Give all that is on the screen."""
    return [one for view in screen.session.page.views for one in shown(view.controls)]


def words(screen: Screen) -> list[str]:
    """Give all words on the screen, those of drawings too."""
    said: list[str] = []
    for one in controls(screen):
        if isinstance(one, ft.Text):
            said.append(one.semantics_label or one.value)
        elif isinstance(one, ft.Semantics) and one.label:
            said.append(one.label)
    return said


def has(screen: Screen, key: str) -> bool:
    """Say whether there is something with a key that can be tapped or typed into."""
    return any(one.key == key and not isinstance(one, Component) for one in controls(screen))


def find(screen: Screen, key: str) -> Any:
    """Give what bears a key: the control itself, not the component around it."""
    return next(
        one for one in controls(screen) if one.key == key and not isinstance(one, Component)
    )


async def settled(screen: Screen) -> None:
    """Wait until nothing is left to be drawn, however busy the machine is."""
    quiet = 0
    while quiet < QUIET:
        await asyncio.sleep(0.005)
        session: Any = screen.session
        busy = session._Session__pending_updates or session._Session__pending_effects
        quiet = 0 if busy else quiet + 1
    assert not screen.troubles, screen.troubles[0]


async def tap(screen: Screen, key: str) -> None:
    """Tap a button and let the repaint happen."""
    face = find(screen, key)
    assert face.on_click, f"{key} can't be tapped"
    await screen.fire(face)
    await settled(screen)


async def write(screen: Screen, key: str, text: str) -> None:
    """Type into a field, as the page would report it."""
    field = find(screen, key)
    screen.session.apply_patch(field._i, {"value": text})
    await screen.fire(field, "change", text)
    await settled(screen)


def finish_words(screen: Screen) -> str:
    """Give what the main button of Coats says, its small line behind a stroke."""
    texts = [one.value for one in shown(find(screen, "finish")) if isinstance(one, ft.Text)]
    return " / ".join(texts)
