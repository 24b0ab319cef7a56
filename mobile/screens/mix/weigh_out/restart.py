"""The scale went off: put the cup back, type what it shows, carry on."""

from functools import partial

import flet as ft

from core.mixing.plan import CAN
from mobile import theme as t
from mobile.parts.boards import COLORS
from mobile.parts.figure import BigFigure
from mobile.parts.icons import icon
from mobile.parts.page import screen
from mobile.parts.tap import Action, grow
from mobile.screens.mix.weigh_out.lines import back_corner, large
from mobile.screens.mix.weigh_out.mishap import keys, which_mishap
from mobile.screens.mix.weigh_out.room import inside, mishap_figure, tight
from mobile.screens.mix.weigh_out.verdict import Verdict, concluded
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.pots import RESTART
from mobile.session.mix.weigh_out import scale_restarted
from mobile.session.session import use_session
from mobile.session.touch import use_touch
from mobile.session.typing import use_typing
from mobile.session.view import use_view
from mobile.store.pot import Pot
from mobile.words import mix as words
from mobile.words import places
from mobile.words import weigh_out as weigh_words


@ft.component
def ScaleWentOff(known: Known, pot: Pot, *, key: str | None = None) -> ft.Control:
    """Take what the scale shows with the cup back on it, and say what that means."""
    view, session, touch = use_view(), use_session(), use_touch(pot)
    figures, press = use_typing(RESTART, (("reads", ""),))
    text = figures.of("reads").text
    said = concluded(known, pot, text, view)

    async def carry_on() -> None:
        if said.reads_g is not None:
            reads_g = said.reads_g
            await touch(
                lambda: scale_restarted(session, pot, reads_g), lambda: go(places.MIX, "weigh")
            )

    async def back() -> None:
        await session.drafts.flush()
        go(places.MIX, "weigh")

    title = ft.Semantics(header=True, container=True, content=t.say(weigh_words.WENT_OFF, t.FACT))
    figure = BigFigure(text, "g", inside(view), mishap_figure(view), True)
    ask = weigh_words.PUT_ON if pot.plan.way == CAN else weigh_words.PUT_BACK
    put_back = t.say(ask, t.HEADING)
    asked = [put_back, figure, conclusion(said)]
    which = which_mishap("scale", view)
    rows: list[ft.Control] = [
        back_corner(title, back, view),
        which,
        *(reversed(asked) if large(view) else asked),
    ]
    if tight(view):
        rows = [rows[0], figure, conclusion(said) if text else put_back, which]
    rows += cup_known(pot)
    usable = said.reads_g is not None
    action = Action(weigh_words.CARRY_ON, carry_on if usable else None, key="use")
    return screen(rows, [keys(action, partial(press, "reads"), text, view)])


def cup_known(pot: Pot) -> list[ft.Control]:
    """Say what is known of the cup; of one that is not it would say to tare, and lose count."""
    if pot.started.cup_g is None:
        return []
    counted = pot.plan.offset_g - pot.strays_g > 0
    line = words.cup_counted if counted else words.cup_line
    return [t.say(line(pot.started.cup_g), t.SMALL, t.SOFT)]


def conclusion(said: Verdict) -> ft.Control:
    """Say what the reading means."""
    color = COLORS[said.state]
    sign = [icon(said.sign, 26, color, heavy=True)] if said.sign else []
    line = ft.Row(
        [*sign, grow(t.say(said.said, t.NAME, color, t.MEDIUM))],
        spacing=10,
        vertical_alignment=ft.CrossAxisAlignment.START,
    )
    return ft.Semantics(live_region=True, container=True, content=line)
