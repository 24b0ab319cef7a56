"""All mixes of the job, the pots that came of them, and what to weigh next."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, State, row, rows
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.chip import TwoLight
from mobile.parts.notices import empty
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, Do
from mobile.screens.mix.pots.outcome import came_out
from mobile.screens.mix.pots.vessels import jar_line
from mobile.session.address import NEW, go
from mobile.session.chips import chip_of
from mobile.session.job.demo import open_demo
from mobile.session.known import Known
from mobile.session.mix.begin import start_planned
from mobile.session.mix.jars import job_jars
from mobile.session.mix.pots import pot_by, pots, under_way
from mobile.session.mix.to_weigh import amount_or_none, made_g, next_load, to_weigh_next
from mobile.session.mix.weigh_out import give_up
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.store.pot import Pot
from mobile.store.records import Mix
from mobile.words import cups as of_cups
from mobile.words import grams as in_grams
from mobile.words import mix as words
from mobile.words import places

POTS_SHOWN = 12


@ft.component
def Mixes(known: Known, *, key: str | None = None) -> ft.Control:
    """List the mixes; the main button weighs the next one, or carries on."""
    view, session = use_view(), use_session()
    whole, show_whole = ft.use_state(False)
    pot, new = under_way(known), Action(words.NEW_MIX, lambda: go(places.MIX, NEW), key="new")
    done = tuple(one for one in reversed(pots(known)) if one.ended and one.in_cup_g)
    if not (known.job_mixes or pot or done):
        demo = Action(places.DEMO, lambda: session.attempt(open_demo(session)), key="demo")
        return empty(words.EMPTY, words.EMPTY_MORE, new, demo)

    async def start() -> None:
        await session.attempt(start_planned(session), then=lambda _: go(places.MIX, "weigh"))

    job = known.job.name if known.job else ""
    main = main_action(known, pot, start)
    other = None if main.words == new.words else outline_button(new)
    lines: list[ft.Control] = [header(words.title(len(known.job_mixes)), job, other)]
    if known.job_mixes:
        lines.append(rows([mix_row(known, mix, view) for mix in known.job_mixes]))
    lines += jar_list(known, view)
    lines += pot_list(known, done, None if whole else lambda: show_whole(True), view)
    tip = [give_up_button(session, pot)] if pot else []
    return screen(lines, [*tip, main_button(main)])


def jar_list(known: Known, view: View) -> list[ft.Control]:
    """List the jars that still hold something."""
    jars = tuple((jar, pot_by(known, jar.pot)) for jar in job_jars(known))
    lines = [jar_line(known, jar, pot.started.name, view) for jar, pot in jars if pot]
    return [header(of_cups.JARS, size=t.HEADING), rows(lines)] if lines else []


def pot_list(known: Known, done: tuple[Pot, ...], show: Do | None, view: View) -> list[ft.Control]:
    """List the newest pots, or all once they are asked for."""
    if not done:
        return []
    shown = done[:POTS_SHOWN] if show else done
    lines = [
        header(words.POTS, size=t.HEADING),
        rows([pot_row(known, one, view) for one in shown]),
    ]
    if len(shown) < len(done):
        lines.append(second_button(Action(words.all_pots(len(done)), show, key="all pots")))
    return lines


def give_up_button(session: Session, pot: Pot) -> ft.Control:
    """Offer to end a weigh-out; *Undo* brings it back."""

    async def tip() -> None:
        await session.attempt(give_up(session, pot))

    said = words.TAKE_OFF if pot.put_back else words.give_up(pot.in_cup_g)
    return second_button(Action(said, tip, key="give up"))


def main_action(known: Known, pot: Pot | None, start: Do) -> Action:
    """Choose the main action: carry on, weigh the planned mix, or write a new one."""
    if pot:
        said = words.carry_on(pot.started.name, where(pot))
        return Action(said, lambda: go(places.MIX, "weigh"), key="carry on")
    load = to_weigh_next(known)
    if load:
        batch = words.load(in_grams.whole(load.load_g), load.number, load.of)
        return Action(words.weigh(load.mix.name, batch), start, key="weigh next")
    return Action(words.NEW_MIX, lambda: go(places.MIX, NEW), key="new mix")


def where(pot: Pot) -> str:
    """Say how far a pot is."""
    if pot.over:
        return words.TOO_MUCH
    target = pot.target
    return (
        words.part_of(target.index + 1, len(pot.plan.portions)).lower() if target else words.ALL_IN
    )


def mix_row(known: Known, mix: Mix, view: View) -> ft.Control:
    """Show a mix: its two looks, its use, the grams to weigh, what is made so far."""
    made, load = made_g(known, mix), next_load(known, mix)
    value = words.loads(in_grams.whole(load.load_g), load.of - load.number + 1) if load else ""
    if load is None and not made and (amount := amount_or_none(known, mix)):
        value = in_grams.whole(amount.loads.batch_g) if amount.loads else ""
    under: tuple[str, State] = ("", "")
    if made or not value:
        under = words.pots_so_far(len(made)), "good" if made and load is None else ""
    elif len(mix.parts) == 1:
        under = words.FROM_CAN, ""
    said = Row(mix.name, words.use_and_coats(mix.use, coats_said(known, mix)), value, *under)
    chip = TwoLight(*chip_of(known, mix), 46)
    return row(said, lambda: go(places.MIX, mix.id, "weigh"), chip, view.text_ratio)


def coats_said(known: Known, mix: Mix) -> int:
    """Count the coats of a mix, where all that it goes on gets as many."""
    amount = amount_or_none(known, mix)
    counts = {patch.coats_count for _, patch in amount.patches} if amount else set()
    return counts.pop() if len(counts) == 1 else 0


def pot_row(known: Known, pot: Pot, view: View) -> ft.Control:
    """Show a pot: number, mix, grams, how it came out."""
    grams = in_grams.grams_at(pot.in_cup_g, pot.plan.scale_step_g)
    came, state = came_out(known, pot)
    said = Row(words.pot(pot.started.number), pot.started.name, grams, came, state)
    return row(said, lambda: go(places.MIX, "pots", pot.id), text_ratio=view.text_ratio)
