"""All walls on one clock, and the thumb's block under them."""

from collections.abc import Callable
from dataclasses import dataclass, replace

import flet as ft

from mobile import clock
from mobile import theme as t
from mobile.parts.buttons import thumb_block
from mobile.parts.notices import caution as caution_board
from mobile.parts.page import header, inset, screen
from mobile.parts.tap import Action, Do
from mobile.parts.waits import Clock, TimeAxis
from mobile.screens.coats import thumb
from mobile.screens.coats.card import coat_board
from mobile.screens.coats.clock import clock_of, ticks_of, use_now
from mobile.screens.coats.foot import line
from mobile.screens.coats.how import how
from mobile.screens.coats.scene import Hands, Scene
from mobile.screens.coats.thumb import Aim
from mobile.screens.coats.weigh import weigh_actions
from mobile.session import coats as verbs
from mobile.session.coats import CoatNow, coats_now, in_order
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.words import cautions
from mobile.words import coats as words

Set = Callable[[Aim], None]


@ft.component
def CoatsBoard(known: Known, how_of: str, *, key: str | None = None) -> ft.Control:
    """Show every wall, the next thing to finish under the thumb."""
    session, view = use_session(), use_view()
    aim, set_aim = ft.use_state(Aim())
    coats = coats_now(known)
    now_s = use_now(coats)
    use_how(how(coats, how_of, now_s, view))
    shown = in_order(coats, now_s)
    at = Seen(session, known, view, aim, now_s)
    hands = hands_of(session, set_aim)
    scene = scene_of(shown, at)
    boards = [coat_board(coat, scene, hands) for coat in shown]
    coat = thumb.aimed(coats, aim, now_s)
    due = verbs.caution_before(known, coat, now_s) if coat else ""
    rows = [*top_of(at, scene.clock), *([caution_of(session, due)] if due else []), *boards]
    return screen(rows, pinned(coats, coat, at, set_aim))


@dataclass(frozen=True, slots=True)
class Seen:
    """What is drawn: for whom, of which state, at which instant."""

    session: Session
    known: Known
    view: View
    aim: Aim
    now_s: float


def hands_of(session: Session, set_aim: Set) -> Hands:
    """Give what the boards' buttons do."""

    async def tacky(coat: CoatNow) -> None:
        await session.attempt(verbs.still_tacky(session, coat))

    async def again(coat: CoatNow) -> None:
        await session.attempt(verbs.done_again(session, coat))

    return Hands(lambda coat: set_aim(Aim(coat.wall.id)), tacky, again)


def scene_of(shown: tuple[CoatNow, ...], at: Seen) -> Scene:
    """Find what all boards share."""
    timed = [coat for coat in shown if verbs.on_clock(coat, at.now_s)]
    soonest = verbs.soonest(shown, at.now_s)
    return Scene(
        at.now_s,
        at.view,
        clock_of(shown, at.now_s, at.view),
        at.aim.wall,
        timed[-1].wall.id if timed else "",
        soonest.wall.id if soonest else "",
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


def caution_of(session: Session, due: str) -> ft.Control:
    """Put the caution before its step."""
    said = cautions.CAUTIONS[due]

    async def read() -> None:
        await session.attempt(verbs.read_caution(session, due))

    return caution_board(
        said.title, said.lines, said.decides, Action(cautions.READ, read, key="caution read")
    )


def pinned(
    coats: tuple[CoatNow, ...], coat: CoatNow | None, at: Seen, set_aim: Set
) -> list[ft.Control]:
    """Lay out the thumb's block, with what speaks against its main action over it."""
    weigh = weigh_actions(at.session, at.known, at.view)
    earlier = Action(words.EARLIER, None, words.MINUTES, key="earlier")
    later = Action(words.LATER, None, words.MINUTES, key="later")
    if coat is None:
        main = thumb.waiting_action(coats, at.now_s)
        return [thumb_block(weigh, main, earlier, later, at.view.text_ratio)]
    due = verbs.caution_before(at.known, coat, at.now_s)

    async def finish() -> None:
        verb = verbs.coat_finished(at.session, coat, at.aim.nudge_s)
        await at.session.attempt(verb, then=lambda _: set_aim(Aim()))

    def nudge(by_s: float) -> Do:
        moved = verbs.nudged(coat, at.aim.nudge_s, by_s, at.now_s)
        return lambda: set_aim(Aim(coat.wall.id, moved))

    main = thumb.finish_action(coat, at.aim, at.now_s, due, finish)
    block = thumb_block(
        weigh,
        main,
        earlier if due else replace(earlier, do=nudge(-verbs.NUDGE_S)),
        later if due else replace(later, do=nudge(verbs.NUDGE_S)),
        at.view.text_ratio,
    )
    against = thumb.warning(coat, at.now_s)
    return [*([line("warning", against, t.CAUTION)] if against else []), block]
