"""Lines over and under the places: notices that hold, and what happened last with its Undo."""

import flet as ft

from mobile import theme as t
from mobile.device import page as device
from mobile.parts.buttons import outline_button
from mobile.parts.icons import icon
from mobile.parts.notices import notice
from mobile.parts.tap import Action, grow
from mobile.session.mix.pots import under_way
from mobile.session.session import use_session
from mobile.words import places as words


@ft.component
def Notices(*, key: str | None = None) -> ft.Control:
    """Say what holds until it is settled: another tab, a newer version, a book put aside."""
    session = use_session()
    shown, _ = ft.use_state(session.shown)
    lines: list[ft.Control] = []
    if shown.taken:
        lines.append(notice(words.TAKEN_OVER, (Action(words.TAKE_OVER, device.reload),), "caution"))
    if shown.aside:
        save = Action(words.ASIDE_SAVE, session.save_aside)
        hide = Action(words.CLOSE, session.aside_seen)
        lines.append(notice(words.ASIDE, (save, hide), "caution"))
    if shown.newer and not under_way(shown.known):
        later = Action(words.LATER, session.not_now)
        lines.append(notice(words.NEW_VERSION, (Action(words.USE_NEW, device.use_update), later)))
    return ft.Column(lines, spacing=0, tight=True, visible=bool(lines))


@ft.component
def ToldLine(room_needed: bool, large: bool, *, key: str | None = None) -> ft.Control:
    """Say what happened last; *Undo* stands until the next step, under it where text is large.

    Where a number needs the room, only what is bad is said; the line is back on the next screen.
    """
    session = use_session()
    shown, _ = ft.use_state(session.shown)
    told = shown.told
    if told is None or (room_needed and not told.bad):
        return ft.Container(visible=False)
    color = t.CAUTION if told.bad else t.GOOD
    sign = icon("warning" if told.bad else "check", 20, color)
    said = ft.Row([sign, grow(t.say(told.said, t.SMALL, weight=t.MEDIUM))], spacing=10)
    undo = [outline_button(Action(words.UNDO, session.undo, key="undo"))] if told.undo else []
    close = outline_button(Action(words.CLOSE, session.hush, key="hush"))
    buttons = ft.Row([*undo, close], spacing=10, tight=True)
    line = ft.Row([grow(said), buttons], spacing=10)
    face = ft.Container(
        ft.Column([said, buttons], spacing=6, tight=True) if large else line,
        bgcolor=t.BOARD,
        border=ft.Border(top=ft.BorderSide(1.5, t.LINE)),
        padding=ft.Padding(t.MARGIN, 6, t.MARGIN, 6),
    )
    return ft.Semantics(live_region=True, container=True, content=face)
