"""Typing in a field, at any speed: the page's text and the form agree in the end.

The page is played here: it types, it takes what the app sends, and all messages take their time on
the way. Chance chooses in which order things happen.
"""

import asyncio
from collections import deque
from typing import Any

import flet as ft
from flet.controls.context import _context_page
from flet.messaging.protocol import Message, MessageAction
from hypothesis import example, given
from hypothesis import strategies as st

from mobile.parts.fields import EntryField, Field, Fields
from tests.screens.headless import Screen

KEYS = "0123456789,.x"
OWN = ("", "5.62", "7")  # what the app itself sets: *Clear*, a suggestion, another
KEY, HEAR, PAINT, SHOW, SET = "key", "hear", "paint", "show", "set"

keys = st.sampled_from(KEYS).map(lambda key: (KEY, key))
ways = st.sampled_from([(HEAR, ""), (PAINT, ""), (SHOW, "")])
own = st.sampled_from(OWN).map(lambda text: (SET, text))
typed_only = st.lists(st.one_of(keys, ways), max_size=60)
steps = st.lists(st.one_of(keys, ways, own), max_size=60)


class Page:
    """A page with one field, and the two ways that messages take between it and the app."""

    def __init__(self) -> None:
        self.form, self.text, self.id = "", "", 0
        self.to_app: deque[tuple[int, str]] = deque()
        self.to_page: deque[tuple[int, str]] = deque()
        self.tasks: set[asyncio.Task[None]] = set()

        @ft.component
        def Bench() -> ft.Control:  # noqa: N802  components are PascalCase
            self.form, self.set_form = ft.use_state("")
            wrong = "no number" if "x" in self.form else ""
            return EntryField(Field("width", "Width, m", self.form, wrong), self.change)

        self.screen = Screen(Bench)
        self.screen.session.connection.send_message = self.sent  # type: ignore[method-assign]
        self.id = next(
            one._i for one in self.screen.session.index.values() if isinstance(one, ft.TextField)
        )

    def change(self, text: str) -> None:
        """Do what forms do."""
        self.set_form(lambda _now: text)

    def sent(self, message: Message) -> None:
        """Put what the app says of the field on the way: a field anew, or another text in it."""
        assert message.action == MessageAction.PATCH_CONTROL
        for operation in message.body.patch[1:]:
            value: Any = getattr(operation[-1], "content", operation[-1])
            if isinstance(value, ft.TextField):
                self.to_page.append((value._i, value.value))
            else:
                assert operation[2] != "selection", "the cursor is the person's"
                if operation[2] == "value":
                    self.to_page.append((0, value))

    def key(self, key: str) -> None:
        """Press a key: what then stands in the field is told."""
        self.text += key
        self.to_app.append((self.id, self.text))

    def hear(self) -> None:
        """Bring the oldest news to the app, as Flet does: the control first, then the event."""
        if self.to_app:
            target, text = self.to_app.popleft()
            session = self.screen.session
            session.apply_patch(target, {"value": text})
            task = asyncio.create_task(session.dispatch_event(target, "change", text))
            self.tasks.add(task)

    def show(self) -> None:
        """Bring the app's oldest news to the page; a field anew begins with its text."""
        if self.to_page:
            target, self.text = self.to_page.popleft()
            self.id = target or self.id

    async def step(self, what: str, text: str) -> None:
        """Let one thing happen."""
        if what == KEY:
            self.key(text)
        elif what == HEAR:
            self.hear()
        elif what == SHOW:
            self.show()
        elif what == PAINT:
            await asyncio.sleep(0)
        else:
            self.change(text)

    async def rest(self) -> None:
        """Let everything arrive."""
        while self.to_app or self.to_page:
            self.hear()
            for _ in range(6):
                await asyncio.sleep(0)
            self.show()
        for _ in range(6):
            await asyncio.sleep(0)
        assert not self.screen.troubles, self.screen.troubles[0]


async def played(moves: list[tuple[str, str]]) -> Page:
    """Play the moves on a new page, and let everything arrive."""
    page = Page()
    _context_page.set(page.screen.session.page)
    await asyncio.sleep(0)
    for what, text in moves:
        await page.step(what, text)
    for _ in range(3):
        await page.rest()
    return page


@given(typed_only)
@example([(KEY, "2"), (HEAR, ""), (PAINT, ""), (KEY, ","), (HEAR, ""), (PAINT, ""), (KEY, "8")])
def test_what_is_typed_is_never_wiped(moves: list[tuple[str, str]]) -> None:
    page = asyncio.run(played(moves))
    text = "".join(text for what, text in moves if what == KEY)
    assert (page.text, page.form) == (text, text)


@given(steps)
@example([(KEY, "2"), (HEAR, ""), (SET, "")])
@example([(KEY, "2"), (HEAR, ""), (PAINT, ""), (PAINT, ""), (SET, ""), (KEY, "3"), (PAINT, "")])
def test_page_and_form_agree_whatever_the_app_sets_meanwhile(moves: list[tuple[str, str]]) -> None:
    page = asyncio.run(played(moves))
    assert page.text == page.form


@given(steps, st.sampled_from(OWN))
def test_what_the_app_sets_last_stands_in_the_field(
    moves: list[tuple[str, str]], text: str
) -> None:
    async def run() -> Page:
        page = await played(moves)
        page.change(text)
        await page.rest()
        await page.rest()
        return page

    page = asyncio.run(run())
    assert (page.text, page.form) == (text, text)


def test_a_part_painted_by_itself_with_an_older_form_wipes_nothing() -> None:
    again: list[Any] = []

    @ft.component
    def Section(text: str, change: Any) -> ft.Control:  # noqa: N802
        times, paint = ft.use_state(0)
        again[:] = [lambda: paint(times + 1)]
        return Fields((Field("width", "Width, m", text),), change)

    @ft.component
    def Bench() -> ft.Control:  # noqa: N802
        form, set_form = ft.use_state("")

        def change(_name: str, text: str) -> None:
            again[0]()
            set_form(lambda _now: text)

        return Section(form, change)

    async def run() -> None:
        screen = Screen(Bench)
        for text in ("2", "2,", "2,8"):
            field = next(
                one for one in screen.session.index.values() if isinstance(one, ft.TextField)
            )
            screen.session.apply_patch(field._i, {"value": text})
            await screen.fire(field, "change", text)
            live = screen.find("width")
            assert (live._i, live.value) == (field._i, text)

    asyncio.run(run())
