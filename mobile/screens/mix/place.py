"""*Mix*: from the address to its screen."""

from collections.abc import Callable

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import main_button
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.screens.mix.amount.amount import AmountScreen
from mobile.screens.mix.mixes import Mixes
from mobile.screens.mix.pots.add import AddToPot
from mobile.screens.mix.pots.correct import Correct
from mobile.screens.mix.pots.cups import Cups
from mobile.screens.mix.pots.label import LabelScreen
from mobile.screens.mix.pots.left import Left
from mobile.screens.mix.pots.pot import PotScreen
from mobile.screens.mix.pots.went import WhereItWentScreen
from mobile.screens.mix.recipes.recipe import Recipe
from mobile.screens.mix.weigh_out.all_in import AllIn
from mobile.screens.mix.weigh_out.knocked_over import KnockedOver
from mobile.screens.mix.weigh_out.over import TooMuch
from mobile.screens.mix.weigh_out.reads import ScaleReads
from mobile.screens.mix.weigh_out.restart import ScaleWentOff
from mobile.screens.mix.weigh_out.room import narrowed
from mobile.screens.mix.weigh_out.start import Start
from mobile.screens.mix.weigh_out.step import WeighStep
from mobile.screens.mix.weigh_out.stray import StrayAnswers
from mobile.screens.mix.weigh_out.wrong_can import WrongCan
from mobile.session.address import HOW, NEW, go, with_sheet
from mobile.session.known import Known, found
from mobile.session.mix.begin import like_pot
from mobile.session.mix.pots import pot_by, under_way
from mobile.session.mix.ways import ways_of
from mobile.session.view import VIEW, use_view
from mobile.store.pot import Pot
from mobile.words import mix as words
from mobile.words import places

MISHAPS: dict[str, Callable[..., ft.Control]] = {
    "scale": ScaleWentOff,
    "wrong": WrongCan,
    "spilt": KnockedOver,
}
OF_A_POT: dict[str, Callable[..., ft.Control]] = {
    "add": AddToPot,
    "correct": Correct,
    "cups": Cups,
    "left": Left,
    "went": WhereItWentScreen,
}
CENTER, STRETCH = ft.MainAxisAlignment.CENTER, ft.CrossAxisAlignment.STRETCH


@ft.component
def MixPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show the weigh-out, a recipe, a pot, or all mixes; what is not there leads to all."""
    view = use_view()
    at, how = with_sheet(at)
    head, _, rest = at.partition("/")
    pot = under_way(known)
    if head == "weigh" and pot:
        seen = narrowed(view)
        shown = VIEW(seen, lambda: weigh_out(known, pot, rest, how))
        wide = t.sideways()
        middle = ft.Container(shown, width=None if wide else seen.width, expand=wide)
        return ft.Row([middle], alignment=CENTER, expand=True, vertical_alignment=STRETCH)
    if head == "pots" and rest:
        return pots_place(known, rest, how)
    return recipes(known, head, rest, how)


def pots_place(known: Known, rest: str, how: bool) -> ft.Control:
    """Show a pot, or the start of more of the same; say so where there is no such pot."""
    pot_id, _, more = rest.partition("/")
    pot = pot_by(known, pot_id)
    if pot is None:
        to_all = Action(words.ALL_MIXES, lambda: go(places.MIX), key="all mixes")
        said = [header(words.NO_POT), t.say(words.NO_POT_MORE, t.NAME, t.SOFT)]
        return screen(said, [main_button(to_all)])
    if more == "more" and pot.in_cup_g:
        return Start(known, like_pot(known, pot), how, pot.id, key=f"more {pot_id}")
    return pot_place(known, pot, more, how)


def pot_place(known: Known, pot: Pot, rest: str, how: bool) -> ft.Control:
    """Show a pot, or what is done with it."""
    way, _, vessel = rest.partition("/")
    if way not in ways_of(known, pot):
        return PotScreen(known, pot, how, key=f"pot {pot.id}")
    if way == "label":
        return LabelScreen(known, pot, vessel, key=f"label {pot.id} {vessel}")
    return OF_A_POT[way](known, pot, how, key=f"{way} {pot.id}")


def recipes(known: Known, head: str, rest: str, how: bool) -> ft.Control:
    """Show a recipe, the start of its weigh-out, or all."""
    mix = found(known.mixes, head)
    if mix and rest == "weigh":
        return Start(known, mix, how, key=f"start {head}")
    if mix and rest == "amount":
        return AmountScreen(known, mix, how, key=f"amount {head}")
    if mix or head == NEW:
        return Recipe(known, mix, how, key=f"recipe {head}")
    return Mixes(known, key="mixes")


def weigh_out(known: Known, pot: Pot, rest: str, how: bool) -> ft.Control:
    """Show where a weigh-out stands: its pot says it, not the address."""
    logged = f"{pot.id} {pot.last[-1].id if pot.last else ''}"
    if rest in MISHAPS:
        return MISHAPS[rest](known, pot, key=f"{rest} {logged}")
    if pot.over:
        return TooMuch(known, pot, pot.over, HOW if how else rest, key=f"over {logged}")
    if pot.strays_show:
        return StrayAnswers(known, pot, how, key=f"stray {logged}")
    return pouring(known, pot, rest, how)


def pouring(known: Known, pot: Pot, rest: str, how: bool) -> ft.Control:
    """Show the part to pour now, its keypad, or that all is in."""
    target = pot.target
    if target is None:
        return AllIn(known, pot, how, key=f"all in {pot.id}")
    if rest == "reads":
        logged = pot.last[-1].id if pot.last else ""
        return ScaleReads(known, pot, target, key=f"reads {pot.id} {logged}")
    return WeighStep(known, pot, target, how, key=f"step {pot.id}")
