"""Files: the job or everything saved as one, a job's file taken in, a backup restored."""

from collections.abc import Awaitable, Callable
from functools import partial
from typing import Any

import flet as ft

from mobile import theme as t
from mobile.device import page as device
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.job import files as verbs
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.words import files as words
from mobile.words import job as job_words
from mobile.words import places

Take = Callable[[str, bytes], Awaitable[Any]]


@ft.component
def Files(known: Known, *, key: str | None = None) -> ft.Control:
    """Offer to save the job or everything, to take a file in, to restore a backup."""
    session = use_session()
    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    title = header(words.TITLE, known.job.name if known.job else "", back)
    restore = pick(session, lambda _name, data: verbs.restore(session, data))
    take_in = pick(session, partial(verbs.import_file, session))
    every = [
        line(words.BACK_UP, words.BACK_UP_MORE, lambda: session.attempt(verbs.back_up(session))),
        line(words.RESTORE, words.RESTORE_MORE, restore),
    ]
    several = [*of_the_job(session, known), line(words.IMPORT, words.IMPORT_MORE, take_in)]
    return screen(
        [
            title,
            rows(several),
            rows(every),
            t.say(words.RESTORE_ASK, t.SMALL, t.SOFT),
            *aside(session),
        ]
    )


def line(name: str, small: str, do: Callable[[], Any]) -> ft.Control:
    """Offer one thing to do with a file."""
    return row(Row(name, small), do)


def of_the_job(session: Session, known: Known) -> list[ft.Control]:
    """Offer the job as a file, where there is one."""
    if known.job is None:
        return []
    save = partial(_export, session)
    return [line(words.EXPORT_JOB, words.EXPORT_JOB_MORE, save)]


async def _export(session: Session) -> None:
    await session.drafts.flush()
    await session.attempt(verbs.export_job(session))


def aside(session: Session) -> list[ft.Control]:
    """List what was put aside: damaged books, and what backups took the place of."""
    lines = [
        line(name, said, partial(session.save_aside, name))
        for names, said in (
            (session.shelf.set_aside, job_words.ASIDE),
            (session.shelf.before, words.BEFORE_MORE),
        )
        for name in names
    ]
    return [rows(lines)] if lines else []


def pick(session: Session, take: Take) -> Callable[[], None]:
    """Give a button that lets a file be chosen, and takes it in."""

    def choose() -> None:
        page = ft.context.page

        async def taken(name: str, data: bytes) -> None:
            await session.attempt(take(name, data), then=lambda _: go(places.JOB))

        def heard(name: str, data: bytes) -> None:
            page.run_task(taken, name, data)

        device.on_picked(heard)
        device.pick_file(words.ACCEPT)

    return choose
