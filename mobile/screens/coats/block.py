"""The thumb's block under the walls: weigh the next mix or a can, finish a coat."""

from dataclasses import replace

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import main_button, second_button, stack_or_row, thumb_block
from mobile.parts.tap import Action, Do
from mobile.screens.coats import thumb
from mobile.screens.coats.scene import Seen
from mobile.screens.coats.thumb import Aim
from mobile.screens.coats.weigh import weigh_actions
from mobile.session.coats import coat as verbs
from mobile.session.coats import due
from mobile.session.coats.standing import CoatNow
from mobile.session.session import Session
from mobile.words import coats as words

STRETCH = ft.CrossAxisAlignment.STRETCH


def thumb_of(
    coats: tuple[CoatNow, ...], coat: CoatNow | None, at: Seen
) -> tuple[list[ft.Control], ft.Control]:
    """Give the thumb's block; where the text is large only its main action stays pinned."""
    earlier = Action(words.EARLIER, None, words.MINUTES, key="earlier")
    later = Action(words.LATER, None, words.MINUTES, key="later")
    due = verbs.caution_before(at.known, coat, at.now_s) if coat else ""
    if coat is None:
        main = thumb.waiting_action(coats, at.now_s)
    elif due:
        main = thumb.read_action(coat, read_of(at.session, due))
    else:
        main = thumb.finish_action(coat, at.aim, at.now_s, finish_of(coat, at))
        earlier = replace(earlier, do=nudge_of(coat, at, -verbs.NUDGE_S))
        later = replace(later, do=nudge_of(coat, at, verbs.NUDGE_S))
    weigh = weigh_actions(at.session, at.known, at.view)
    sides = [earlier, later] if earlier.do else []
    if at.view.text_ratio >= t.STACKED_FROM:
        said = [replace(one, words=words.minutes(one.words), small="") for one in sides]
        row = [stack_or_row([second_button(one) for one in said], 1.0)] if said else []
        others = [*row, *(second_button(one) for one in weigh)]
        if t.sideways():
            return [], stacked([main_button(main), *others])
        return others, main_button(main)
    if sides:
        return [], thumb_block(weigh, main, earlier, later)
    upper = stack_or_row([second_button(one, height=58) for one in weigh], 1.0)
    return [], stacked([upper, main_button(main, height=78)])


def stacked(rows: list[ft.Control]) -> ft.Control:
    """Stand buttons under each other."""
    return ft.Column(rows, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH)


def read_of(session: Session, due: str) -> Do:
    """Give what reading a caution does."""

    async def read() -> None:
        await session.attempt(verbs.read_caution(session, due))

    return read


def finish_of(coat: CoatNow, at: Seen) -> Do:
    """Give what the main button does."""

    async def finish() -> None:
        verb = verbs.coat_finished(at.session, coat, at.aim.nudge_s)
        await at.session.attempt(verb, then=lambda _: at.set_aim(Aim()))

    return finish


def nudge_of(coat: CoatNow, at: Seen, by_s: float) -> Do:
    """Give what -5 and +5 do; two taps in one breath count twice."""

    def nudged(aim: Aim) -> Aim:
        return Aim(coat.id, due.nudged(coat, aim.nudge_s, by_s, at.now_s))

    return lambda: at.set_aim(nudged)
