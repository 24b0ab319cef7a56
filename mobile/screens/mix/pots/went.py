"""Where a pot went: on walls, in tools, dried off; what is left, what is waste."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import HOW, go
from mobile.session.how import how_of, use_how
from mobile.session.known import Known
from mobile.session.mix.cups import HAIR_G
from mobile.session.mix.ways import ways_of
from mobile.session.mix.went import WhereItWent, where_it_went
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.words import cups as words
from mobile.words import grams as in_grams
from mobile.words import mix as of_mix
from mobile.words import places


@ft.component
def WhereItWentScreen(
    known: Known, pot: Pot, how_up: bool, *, key: str | None = None
) -> ft.Control:
    """Say where a pot went."""
    view = use_view()
    went = where_it_went(known, pot)
    working = (*went.dried, *went.account.working)
    use_how(how_of(words.WENT, title(pot), working, view) if how_up else None)
    back = Action(places.BACK, lambda: go(places.MIX, "pots", pot.id), key="back")
    why = Action(places.HOW, lambda: go(places.MIX, "pots", pot.id, "went", HOW), key="how")
    lines: list[ft.Control] = [
        header(words.WENT, title(pot), outline_button(back, "back")),
        rows([row(one, text_ratio=view.text_ratio) for one in rows_of(pot, went, view)]),
        ft.Row([outline_button(why)]),
    ]
    if not went.account.walls_g:
        lines.append(t.say(words.ALL_THERE, t.NAME, t.SOFT))
    if "left" not in ways_of(known, pot):
        return screen(lines)
    left = Action(words.LEFT, lambda: go(places.MIX, "pots", pot.id, "left"), key="left")
    return screen(lines, [main_button(left)])


def title(pot: Pot) -> str:
    """Name the pot and its mix."""
    return f"{of_mix.pot(pot.started.number)}, {pot.started.name}"


def rows_of(pot: Pot, went: WhereItWent, view: View) -> tuple[Row, ...]:
    """Say each share that is one, the walls first."""
    of_all = went.account
    off = words.give_or_take(of_all.u_g) if of_all.walls_g else ""
    said = (
        (words.POURED, "", pot.poured_g),
        (words.OVER, "", pot.spilt_g),
        (words.ON_WALLS, off, of_all.walls_g),
        (words.IN_TOOLS, words.USUAL, of_all.tools_g),
        (words.DRIED, words.HALF, of_all.dried_g),
        (words.IN_POT, "", pot.left_g),
        (words.IN_CUPS, "", went.in_cups_g),
        (words.IN_JARS, "", went.in_jars_g),
        (words.FROM_JARS, words.INTO_POTS, went.moved_g),
        (words.WASTE, "", went.waste_g),
    )
    return tuple(
        Row(name, small, in_grams.grams(net_g))
        for name, small, net_g in said
        if net_g > HAIR_G or name == words.ON_WALLS
    )
