"""Whatever goes wrong at the bucket: no step takes paint out, no can gives more than it has.

At the end the ratio is within its bands, or the screen says that it is not.
"""

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import replace

import pytest

pytest.importorskip("hypothesis")

from hypothesis import given, settings
from hypothesis import strategies as st

from core.errors import Refused
from core.mixing.plan import DUST_G, band_of_g, targets_g
from mobile.screens.mix.pots.outcome import came_out
from mobile.session.mix import weigh_out
from mobile.session.mix.begin import start_pot, takes_g
from mobile.session.mix.cans_hold import holds_g
from mobile.session.mix.mishaps import hide_stray, make_smaller, pour_again, saved, wrong_can
from mobile.session.mix.pots import pot_by, under_way
from mobile.session.session import Declined, Session
from mobile.store.pot import Pot
from mobile.words import mix as words
from tests.session.ember import EMBER, MEDIUM, SETTINGS, ember

CAPACITY_G, BUCKET_L, BATCH_G = 900.0, 0.7, 180.0
STEP_G = 0.1
WHITE = replace(MEDIUM, id="SW", name="standard white", density_g_ml=1.38)

SLIP = st.tuples(st.just("pour"), st.floats(-0.4, 0.4))
ACTS = st.lists(
    st.one_of(
        SLIP,
        SLIP,
        SLIP,
        st.tuples(st.just("mark"), st.just(0.0)),
        st.tuples(st.just("wrong"), st.floats(0.001, 0.2)),
        st.tuples(st.just("spill"), st.floats(0.1, 0.95)),
        st.tuples(st.just("less"), st.floats(0.3, 0.95)),
        st.tuples(st.just("off"), st.floats(0.0, 0.5)),
        st.tuples(st.just("undo"), st.just(0.0)),
    ),
    max_size=14,
)
ANSWERS = st.lists(st.sampled_from(("make", "keep", "tip")), min_size=1, max_size=6)


async def act(session: Session, pot: Pot, kind: str, much: float) -> None:
    """Do one thing at the scale; what the app refuses does not happen."""
    target = pot.target
    shows_g = pot.plan.offset_g + sum(pour.net_g for pour in pot.poured)
    verbs: dict[str, Callable[[], Awaitable[object]]] = {
        "mark": lambda: weigh_out.on_the_mark(session, pot),
        "undo": lambda: weigh_out.undo_last(session, pot),
        "spill": lambda: pour_again(session, pot, shows_g * much),
        "less": lambda: make_smaller(session, pot, shows_g * much),
        "wrong": lambda: wrong_can(session, pot, "SW", round(shows_g + 200 * much, 1)),
    }
    if target:
        read_g = round(target.reads_g + target.net_g * much, 1)
        verbs["pour"] = lambda: weigh_out.scale_reads(session, pot, read_g)
        in_it_g = pot.in_cup_g + target.net_g * much
        verbs["off"] = lambda: weigh_out.scale_restarted(session, pot, round(21.4 + in_it_g, 1))
    try:
        if kind in verbs:
            await verbs[kind]()
    except (Refused, Declined):
        return


async def answered(session: Session, pot: Pot, answer: str) -> None:
    """Answer an over-pour or a stray; what does not fit is kept."""
    if pot.over:
        make = pot.answers(takes_g(session.known, pot)).make
        if answer == "make" and make.fits:
            await weigh_out.make_more(session, pot, make)
        elif answer == "tip":
            await weigh_out.tip_out(session, pot)
        else:
            await weigh_out.keep_over(session, pot, pot.over.paint)
    elif answer == "make" and saved(session.known, pot).fits:
        await hide_stray(session, pot)
    elif answer == "tip":
        await weigh_out.tip_out(session, pot)
    else:
        await weigh_out.keep_over(session, pot, "SW")


def hold(session: Session, pot: Pot) -> None:
    """Hold what must be so at every step."""
    target = pot.target
    if pot.over or pot.strays_show or target is None:
        return
    assert target.net_g > 0
    assert target.reads_g > pot.plan.offset_g + sum(pour.net_g for pour in pot.poured)
    for at, wanted_g in enumerate(targets_g(pot.plan)):
        paint = pot.plan.portions[at].paint
        has_g = holds_g(session.known, paint)
        to_come_g = wanted_g - pot.paint_g(paint)
        assert has_g is None or to_come_g <= has_g + band_of_g(pot.plan, at) + DUST_G


def within_bands(pot: Pot) -> bool:
    """Tell whether each part of a pot is as its batch wants it."""
    each = zip(pot.plan.portions, targets_g(pot.plan), strict=True)
    return not pot.strays and all(
        abs(pot.paint_g(one.paint) - want_g) <= band_of_g(pot.plan, at) + STEP_G
        for at, (one, want_g) in enumerate(each)
    )


async def story(acts: list[tuple[str, float]], answers: list[str]) -> None:
    """Weigh a pot out with all that happens; end it on the marks."""
    session = ember(WHITE, replace(SETTINGS, scale_capacity_g=CAPACITY_G, bucket_l=BUCKET_L))
    await start_pot(session, EMBER, BATCH_G, 21.4)
    said = iter(answers * 20)
    for kind, much in (*acts, *((("mark", 0.0),) * 12)):
        pot = under_way(session.known)
        if pot is None:
            break
        for _ in range(4):  # one act can call for more than one answer
            if not (pot.over or pot.strays_show):
                break
            await answered(session, pot, next(said))
            pot = under_way(session.known)
            if pot is None:  # tipped out, and the cans had no more for another
                return
        hold(session, pot)
        await act(session, pot, kind, much)
    pot = under_way(session.known)
    if pot is None or pot.target or pot.over or pot.strays_show:
        return
    await weigh_out.stirred(session, pot)
    done = pot_by(session.known, pot.id)
    assert done
    came, _ = came_out(session.known, done)
    assert within_bands(done) or came != words.AS_PLANNED


@settings(max_examples=50, deadline=None)
@given(ACTS, ANSWERS)
def test_whatever_happens(acts: list[tuple[str, float]], answers: list[str]) -> None:
    asyncio.run(story(acts, answers))
