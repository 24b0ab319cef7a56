"""How much to weigh out: grams on the own keypad, the cup, and what comes from which can."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import main_button, outline_button
from mobile.parts.choice import segmented
from mobile.parts.figure import BigFigure
from mobile.parts.keypad import Keypad
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow
from mobile.screens.mix.pots.contents import can_for_it
from mobile.screens.mix.weigh_out.advice import Doing, Put, advice
from mobile.screens.mix.weigh_out.in_short import headed, in_short, short_high
from mobile.screens.mix.weigh_out.lines import narrow, parted
from mobile.screens.mix.weigh_out.room import inside, start_keys_high
from mobile.screens.mix.weigh_out.start_form import Batch, batch_of, how
from mobile.session.address import HOW, go
from mobile.session.how import use_how
from mobile.session.known import Known
from mobile.session.mix.begin import start_pot
from mobile.session.mix.pots import under_way
from mobile.session.mix.to_weigh import next_load
from mobile.session.session import Session, use_session
from mobile.session.typing import use_typing
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.store.records import Mix
from mobile.words import grams as in_grams
from mobile.words import mix as words
from mobile.words import places

ASKED = (("grams", words.GRAMS), ("cup", words.CUP))


@ft.component
def Start(
    known: Known, mix: Mix, how_up: bool, like: str = "", *, key: str | None = None
) -> ft.Control:
    """Ask for the grams, prefilled with the planned ones, and for the cup's weight once.

    `like` is the pot of which more of the same is made: then `mix` is what was really poured.
    """
    view, session = use_view(), use_session()
    asked, ask = ft.use_state("grams")
    load = None if like else next_load(known, mix)
    planned = view.typed("batch_g", load.load_g if load else None)
    cup = view.typed("cup_g", known.settings.cup_g)
    figures, press = use_typing(form_at(mix, like), (("grams", planned), ("cup", cup)))
    grams = figures.of("grams").text
    batch = batch_of(known, mix, grams, figures.of("cup").text, view)
    use_how(how(known, mix, batch, view) if how_up else None)

    async def start() -> None:
        now = press.now
        newest = batch_of(known, mix, now.of("grams").text, now.of("cup").text, view)
        if newest.grams_g is not None:
            verb = start_pot(session, mix, newest.grams_g, newest.cup_g, like)
            await session.attempt(verb, then=lambda _: go(places.MIX, "weigh"))

    if pot := under_way(known):
        return on_the_scale(top(mix, like, session, view), pot)
    figure = BigFigure(figures.of(asked).text, "g", inside(view), t.CAN, True)
    head = [top(mix, like, session, view), segmented(ASKED, asked, ask, view.text_ratio)]
    short = in_short(known, mix, batch)
    first, over = headed(head, figure, short, view)
    lines: list[ft.Control] = [
        *first,
        cup_and_how(batch, like or mix.id, bool(like)),
        *ready(batch, known.settings.scale_step_g, view),
        *advice(known, mix, batch, doing(session, batch, partial(press.put, "grams")), view),
    ]
    weigh = Action(words.weigh_grams(grams), start if batch.can_do else None, key="weigh")
    high = start_keys_high(view, len(mix.parts), short_high(short, view))
    keys = Keypad(weigh, lambda sign: press(asked, sign), inside(view), high, view.text_ratio)
    return screen(lines, [*over, keys])


def doing(session: Session, batch: Batch, put: Put) -> Doing:
    """Give what the advice's buttons do: put other grams there, use a jar of this colour up."""

    async def use_jar(mixed: Mix) -> None:
        if batch.grams_g is not None:
            verb = start_pot(session, mixed, batch.grams_g, batch.cup_g)
            await session.attempt(verb, then=lambda _: go(places.MIX, "weigh"))

    return Doing(put, use_jar)


def on_the_scale(head: ft.Control, pot: Pot) -> ft.Control:
    """Say that another pot stands on the scale, and lead to it."""
    on = words.carry_on(pot.started.name, words.pot(pot.started.number).lower())
    button = Action(on, lambda: go(places.MIX, "weigh"), key="carry on")
    return screen([head, t.say(words.ONE_SCALE, t.NAME)], [main_button(button)])


def form_at(mix: Mix, like: str) -> str:
    """Give the address of what is typed."""
    return f"mix/pots/{like}/more" if like else f"mix/{mix.id}/weigh"


def top(mix: Mix, like: str, session: Session, view: View) -> ft.Control:
    """Name the mix; beside it the way back and to its recipe."""

    async def back() -> None:
        await session.drafts.flush()
        go(places.MIX, *(["pots", like] if like else []))

    amount = Action(words.AMOUNT, lambda: go(places.MIX, mix.id, "amount"), key="amount")
    recipe = [
        outline_button(Action(words.RECIPE, lambda: go(places.MIX, mix.id), key="recipe")),
        outline_button(amount),
    ]
    buttons: list[ft.Control] = [
        *([] if like else recipe),
        outline_button(Action(places.BACK, back, key="back"), "back"),
    ]
    small = words.LIKE_POT if like else words.USES[mix.use]
    if narrow(view) or not like:
        return parted(list(reversed(buttons)), header(mix.name, small))
    return header(mix.name, small, ft.Row(buttons, spacing=t.GAP, tight=True))


def cup_and_how(batch: Batch, at: str, like: bool) -> ft.Control:
    """Say what is known of the cup; beside it how the portions come about."""
    said = grow(t.say(words.cup_line(batch.cup_g), t.SMALL, t.SOFT))
    where = ("pots", at, "more") if like else (at, "weigh")
    why = Action(places.HOW, lambda: go(places.MIX, *where, HOW), key="how")
    return ft.Row([said, *([outline_button(why)] if batch.grams_g else [])], spacing=12)


def ready(batch: Batch, step_g: float, view: View) -> list[ft.Control]:
    """Say what comes from which can, or why nothing can be weighed."""
    if batch.grams_g is None:
        said = t.say(batch.why, t.NAME, t.CAUTION if batch.why != words.HOW_MUCH else t.TEXT)
        return [ft.Semantics(live_region=True, container=True, content=said)]
    lines: list[ft.Control] = []
    for one in batch.parts:
        under, state = can_for_it(one, step_g)
        value = in_grams.grams_at(one.net_g, step_g)
        lines.append(row(Row(one.paint.name, "", value, under, state), text_ratio=view.text_ratio))
    return [rows(lines)]
