"""All walls on one clock, and the thumb's block under them."""

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.parts.notices import caution
from mobile.parts.page import header, inset, screen
from mobile.parts.waits import Clock, TimeAxis
from mobile.screens.coats import thumb
from mobile.screens.coats.block import thumb_of
from mobile.screens.coats.card import coat_board
from mobile.screens.coats.clock import clock_of, ticks_of, use_now
from mobile.screens.coats.foot import line
from mobile.screens.coats.how import how
from mobile.screens.coats.scene import Hands, Scene, Seen
from mobile.screens.coats.thumb import Aim
from mobile.session.coats import coat as verbs
from mobile.session.coats import due
from mobile.session.coats.due import in_order
from mobile.session.coats.standing import CoatNow, coats_now
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import use_view
from mobile.words import cautions
from mobile.words import coats as words


@ft.component
def CoatsBoard(known: Known, how_of: str, *, key: str | None = None) -> ft.Control:
    """Show every wall, the next thing to finish under the thumb."""
    session, view = use_session(), use_view()
    aim, set_aim = ft.use_state(Aim())
    coats = coats_now(known)
    now_s = use_now(coats)
    use_how(how(coats, how_of, now_s, view))
    shown = in_order(coats, now_s)
    at = Seen(session, known, view, aim, now_s, set_aim)
    hands = hands_of(at)
    scene = scene_of(shown, at)
    boards = [coat_board(coat, scene, hands) for coat in shown]
    coat = thumb.aimed(coats, aim, now_s)
    due = verbs.caution_before(known, coat, now_s) if coat else ""
    rows = [*top_of(at, scene.clock), *caution_of(due), *boards]
    others, main = thumb_of(coats, coat, at)
    against = thumb.warning(coat, now_s) if coat and not due else ""
    said = [line("warning", against, t.CAUTION)] if against else []
    return screen([*rows, *others], [*said, main])


def hands_of(at: Seen) -> Hands:
    """Give what the boards' buttons do."""

    async def tacky(coat: CoatNow) -> None:
        await at.session.attempt(verbs.still_tacky(at.session, coat))

    async def again(coat: CoatNow) -> None:
        if verbs.caution_before(at.known, coat, at.now_s):
            at.set_aim(Aim(coat.id))  # its caution comes first
            return
        await at.session.attempt(verbs.done_again(at.session, coat))

    def choose(coat: CoatNow) -> None:
        at.set_aim(Aim() if at.aim.wall == coat.id else Aim(coat.id))

    async def calendar(coat: CoatNow) -> None:
        await at.session.attempt(verbs.save_calendar(at.session, coat))

    return Hands(choose, tacky, again, calendar)


def scene_of(shown: tuple[CoatNow, ...], at: Seen) -> Scene:
    """Find what all boards share."""
    timed = [coat for coat in shown if due.on_clock(coat, at.now_s)]
    soonest = due.soonest(shown, at.now_s)
    return Scene(
        at.now_s,
        at.view,
        clock_of(shown, at.now_s, at.view),
        at.aim.wall,
        timed[-1].id if timed else "",
        soonest.id if soonest else "",
        at.known.settings.bell,
    )


def top_of(at: Seen, one: Clock | None) -> list[ft.Control]:
    """Say which job, and the hour: on the plumb line where there is one."""
    job = at.known.job.name if at.known.job else ""
    hour = clock.hour(at.now_s)
    if one is None:
        return [header(job, "", t.say(hour, t.HEADING, weight=t.STRONG), t.HEADING)]
    axis = TimeAxis(one, ticks_of(one.axis, one.width), words.now_is(hour))
    return [header(job, "", None, t.HEADING), inset(axis)]


def caution_of(due: str) -> list[ft.Control]:
    """Put a caution before its step."""
    said = cautions.CAUTIONS.get(due)
    return [caution(said.title, said.lines, said.decides)] if said else []
