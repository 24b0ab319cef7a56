"""The two upper buttons of the thumb's block: the next mix, and a can."""

from mobile.parts.tap import Action
from mobile.session.address import PICK, go
from mobile.session.known import Known
from mobile.session.mix.begin import start_planned
from mobile.session.mix.pots import under_way
from mobile.session.mix.to_weigh import to_weigh_next
from mobile.session.session import Session
from mobile.session.view import View
from mobile.words import coats as words
from mobile.words import places


def weigh_actions(session: Session, known: Known, view: View) -> tuple[Action, Action]:
    """Offer what is weighed next, and a can."""

    async def start() -> None:
        await session.attempt(start_planned(session), then=lambda _: go(places.MIX, "weigh"))

    can = Action(
        words.WEIGH_CAN, lambda: go(places.CANS, PICK), words.SHORTEST_FIRST, key="weigh a can"
    )
    pot, load = under_way(known), to_weigh_next(known)
    if pot:
        on = words.pot(pot.started.number)
        return Action(words.WEIGH_ON, lambda: go(places.MIX, "weigh"), on, key="weigh next"), can
    if load:
        grams = view.show("batch_g", load.load_g, 0)
        small = words.grams(load.mix.name, words.load(grams, load.number, load.of))
        return Action(words.WEIGH_NEXT, start, small, key="weigh next"), can
    return Action(words.WEIGH, lambda: go(places.MIX), words.CHOOSE_MIX, key="weigh next"), can
