"""What the browser's Python starts: open the book, build the session, render the app."""

import asyncio
import sys
import traceback
from contextvars import copy_context
from dataclasses import dataclass
from functools import partial
from typing import Any
from uuid import uuid4

import flet as ft

from core.units import warm
from mobile import clock
from mobile import theme as t
from mobile.app import App
from mobile.device import page as device
from mobile.parts.notices import empty
from mobile.parts.tap import Action
from mobile.session.job.jobs import export
from mobile.session.session import Session
from mobile.store.book import start_over
from mobile.store.door import Door, MemoryDoor
from mobile.store.errors import Busy, Damaged, Newer
from mobile.store.library import Library
from mobile.words import places as words
from mobile.words import trouble

BOOK = "duskcoat"
AGAIN_S = 5.0  # a drawing that fails twice in this time will fail for ever
DRAWING = "_Session__updates_task"  # Flet's own; the test of `guard` says if it is renamed


@ft.observable
@dataclass
class Stage:
    """How far the start is: a session, or why there is none yet and what can be done."""

    session: Session | None = None
    why: str = ""
    more: str = ""
    actions: tuple[Action, ...] = ()
    text_ratio: float = 1.0
    still: bool = False  # the phone asks for no motion


async def wants_stillness() -> bool:
    """Ask the phone whether this person wants no motion; a phone that doesn't say wants it."""
    try:
        features = await ft.SemanticsService().get_accessibility_features()
    except (RuntimeError, TimeoutError):
        return False
    return features.disable_animations or features.reduce_motion


async def door_of(*, take_over: bool) -> Door:
    """Open this browser's door to the book; on any other Python the book lives in memory."""
    if sys.platform != "emscripten":
        return MemoryDoor()
    from mobile.store import doors  # noqa: PLC0415  only the browser has what it needs

    return await (doors.take_over(BOOK) if take_over else doors.open_door(BOOK))


class Start:
    """Opening the book, with every way in which it can fail."""

    def __init__(self, page: ft.Page) -> None:
        self.page, self.stage = page, Stage()

    async def open(self, *, take_over: bool = False) -> None:
        """Open the book and show the app, or say why not."""
        try:
            door = await door_of(take_over=take_over)
        except Busy:
            again = Action(words.TAKE_OVER, lambda: self.open(take_over=True), key="take over")
            self.say(words.IN_OTHER_TAB, words.IN_OTHER_TAB_MORE, (again,))
            return
        except OSError as error:
            self.say(trouble.GONE, str(error), (Action(words.AGAIN, self.open, key="again"),))
            return
        await self.read(door)

    async def read(self, door: Door) -> None:
        """Read the book behind a door."""
        try:
            library = await Library.open(door, uuid4().hex, partial(copy_context().run, self.taken))
        except Newer:
            self.say(words.NEWER, "")
        except Damaged as damaged:
            self.say(words.DAMAGED, words.DAMAGED_MORE, self.after_damage(door, damaged))
        except OSError as error:
            self.say(trouble.GONE, str(error), (Action(words.AGAIN, self.open, key="again"),))
        else:
            session = Session(library, library.device)
            session.shown.aside = library.set_aside if library.restored else ()
            device.on_hidden(lambda: _flush(self.page, session))
            device.on_version(lambda version: _told(session, version))
            self.stage.session = session

    def after_damage(self, door: Door, damaged: Damaged) -> tuple[Action, ...]:
        """Offer to save what can't be read, and to begin anew beside it."""

        def save() -> None:
            for name, data in damaged.files:
                device.save_file(name, data, "application/octet-stream")

        async def anew() -> None:
            await start_over(door)
            await self.read(door)

        return (
            Action(words.DAMAGED_SAVE, save, key="save"),
            Action(words.BEGIN_ANEW, anew, key="anew"),
        )

    def unshowable(self) -> None:
        """Say that the book can't be drawn, and let the person save it; nothing in it changes."""
        session, self.stage.session = self.stage.session, None
        if session is None:
            return

        def save() -> None:
            device.save_file(f"{BOOK}.json", export(session), "application/json")

        again = Action(words.AGAIN, device.reload, key="again")
        actions = (Action(words.SAVE, save, key="save"), again)
        self.say(words.UNSHOWABLE, words.UNSHOWABLE_MORE, actions)

    def say(self, why: str, more: str, actions: tuple[Action, ...] = ()) -> None:
        """Say why the app is not here yet."""
        self.stage.why, self.stage.more, self.stage.actions = why, more, actions

    def sized(self, ratio: float) -> None:
        """Take note of how large the phone writes."""
        self.stage.text_ratio = ratio

    def taken(self) -> None:
        """Say that another tab has the book now."""
        if self.stage.session:
            self.stage.session.shown.taken = True


def _flush(page: ft.Page, session: Session) -> None:
    page.run_task(session.drafts.flush)


def _told(session: Session, version: device.Version) -> None:
    session.shown.whole, session.shown.newer = version.kept, version.newer


@ft.component
def Root(start: Start) -> ft.Control:
    """Show the app, or how far its start is."""
    stage, _ = ft.use_state(start.stage)
    if stage.session:
        return App(stage.session, stage.text_ratio, stage.still)
    if not stage.why:
        return ft.Container(t.say(words.OPENING, t.NAME, t.SOFT), padding=t.MARGIN)
    main, *others = stage.actions or (Action(words.AGAIN, device.reload, key="again"),)
    return empty(stage.why, stage.more, main, others[0] if others else None)


def guard(page: ft.Page, start: Start) -> None:
    """Show any bug as a line and keep the app usable.

    Flet would put a page of errors over it when a handler fails, and would draw nothing ever again
    when a drawing fails: its task that draws ends with the exception, so it is begun anew.
    """
    flet: Any = page.session
    failed_at_s = 0.0

    def trouble_at(report: str) -> None:
        sys.stderr.write(report + "\n")  # the browser's console is the log
        if start.stage.session:
            start.stage.session.tell(trouble.BUG, bad=True)

    def drawn_to_its_end(task: "asyncio.Task[None]") -> None:
        if task.cancelled() or (bug := task.exception()) is None:
            return
        nonlocal failed_at_s
        flet.start_updates_scheduler()
        watch()
        trouble_at("".join(traceback.format_exception(bug)))
        before_s, failed_at_s = failed_at_s, clock.now_s()
        if failed_at_s - before_s < AGAIN_S:  # saying so can't be drawn either
            give_way(page, start)

    def watch() -> None:
        task = getattr(flet, DRAWING)  # there is one from the first drawing on
        task.add_done_callback(drawn_to_its_end)

    flet.error = trouble_at
    watch()


def show(page: ft.Page, start: Start) -> None:
    """Draw the app; if what is in the book can't be drawn, say so instead of nothing."""
    try:
        page.render(Root, start)
    except Exception:  # noqa: BLE001 - whatever it is, the person must get at the book
        sys.stderr.write(traceback.format_exc())
        give_way(page, start)


def give_way(page: ft.Page, start: Start) -> None:
    """Draw why there is no app, on an empty page: what was half drawn can't be drawn over."""
    start.unshowable()
    page.views = [ft.View()]
    page.render(Root, start)


def unstarted(report: str) -> None:
    """Have the page say that the start failed, and why; Flet would show its own page of errors."""
    sys.stderr.write(report + "\n")
    device.failed(report.rstrip().rpartition("\n")[2])


async def main(page: ft.Page) -> None:
    """Dress the page, guard it, open the book and hand over."""
    flet: Any = page.session
    flet.error = unstarted
    start = Start(page)
    t.dress(page, t.DARK)
    device.on_text(start.sized)
    await start.open()
    look = t.look_of(start.stage.session.known.settings.look if start.stage.session else "dark")
    t.dress(page, look)
    show(page, start)
    guard(page, start)  # only now is there a task that draws
    device.shown(look.ground, look.text)
    device.persist()
    await asyncio.sleep(1)
    start.stage.still = await wants_stillness()
    warm()  # after the first picture: Pint takes half a second
    if start.stage.session:
        start.stage.session.shelf.warm()


def start() -> None:
    """Run the app; the page's worker calls this."""
    ft.run(main)


if __name__ == "__main__":
    start()
