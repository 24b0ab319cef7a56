"""Cans: the ledger's figures, a weighing that settles it, tares, and what can't be kept."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from mobile.session.cans.can import (
    can_for,
    can_gone,
    can_now,
    cans_now,
    keep_can,
    next_number,
    paint_named,
    reading_of,
    typed_reading,
    weigh_can,
    weigh_form,
)
from mobile.session.known import found
from mobile.session.mix import weigh_out
from mobile.session.session import Session
from mobile.store.entries import CanWeighed, Poured
from mobile.store.records import Can, Paint
from tests.session.ember import CAN_7, CAN_12, MEDIUM, ORANGE, STAMP, ember
from tests.session.weighing import now, run, to_orange


def pour(name: str, can: str, net_g: float) -> Poured:
    return Poured(name, *STAMP, "pot", "FO", can, net_g, None)


POURED = pour("p1", "can7", 58.1), pour("p2", "can7", 13.4)
FULL = CanWeighed("w7 full", *STAMP, "can7", 341.6, 56.6, 285.0)


def test_a_can_holds_what_was_weighed_less_what_was_poured() -> None:
    now = can_now(ember(FULL, *POURED).known, CAN_7)
    assert now.balance.should_be_g == pytest.approx(213.5)  # 285.0 - 58.1 - 13.4, by hand
    assert now.level_ratio == pytest.approx(213.5 / 285.0)  # 0.25 L x 1.14 g/mL is 285 g
    assert now.volume_l(201.1) == pytest.approx(0.176404, abs=1e-6)


def test_a_reading_says_what_is_left_and_what_is_missing() -> None:
    now = can_now(ember(FULL, *POURED).known, CAN_7)
    said = reading_of(now, 257.7, 0.1)
    assert said.net_g == pytest.approx(201.1)  # the reference job: can 7, net
    assert said.gap_g == pytest.approx(12.4)
    assert said.speaks  # above 1 % of 71.5 g, which is 0.715 g
    assert not reading_of(now, 56.6 + 213.0, 0.1).speaks
    more = reading_of(now, 56.6 + 215.0, 0.1)
    assert more.gap_g == pytest.approx(-1.5)
    assert more.speaks


def test_a_reading_below_the_empty_can_is_refused() -> None:
    with pytest.raises(Refused, match="gross_g"):
        reading_of(can_now(ember().known, CAN_7), 56.5, 0.1)


def test_a_weighing_settles_the_ledger_and_forgets_what_was_typed() -> None:
    session = ember(FULL, *POURED)

    async def run() -> None:
        session.drafts.typed(weigh_form(CAN_7), (("reads", "257.7"),))
        assert typed_reading(session, CAN_7) == "257.7"
        await session.drafts.flush()
        assert typed_reading(session, CAN_7) == "257.7"
        await weigh_can(session, CAN_7, 257.7)

    asyncio.run(run())
    now = can_now(session.known, CAN_7)
    assert now.balance.should_be_g == pytest.approx(201.1)
    assert now.balance.poured_since_g == pytest.approx(0.0)
    assert typed_reading(session, CAN_7) == ""
    asyncio.run(session.undo())
    assert can_now(session.known, CAN_7).balance.should_be_g == pytest.approx(213.5)


def test_weighing_unopened_gives_tare_and_first_net_in_one_commit() -> None:
    session = ember()
    commits = session.shelf.commits  # type: ignore[attr-defined]
    can = Can(*session.stamp(), 15, "", 0.25)
    kept = asyncio.run(keep_can(session, can, ORANGE, 341.6))
    assert session.shelf.commits == commits + 1  # type: ignore[attr-defined]
    assert kept.tare_g == pytest.approx(56.6)  # the reference job: ledger.tare
    assert kept.tare_from == "unopened"
    assert can_now(session.known, kept).balance.should_be_g == pytest.approx(285.0)
    asyncio.run(session.undo())
    assert all(one.id != kept.id for one in session.known.cans)
    assert not any(isinstance(e, CanWeighed) and e.can == kept.id for e in session.known.entries)


def test_a_new_paint_is_taken_back_with_its_can() -> None:
    session = ember()
    paint = Paint(*session.stamp(), "fluorescent red")
    asyncio.run(keep_can(session, Can(*session.stamp(), 15, ""), paint))
    assert paint_named(session.known, " Fluorescent RED ") == paint
    asyncio.run(session.undo())
    assert paint_named(session.known, "fluorescent red") is None
    assert paint_named(session.known, "fluorescent orange") == ORANGE


def test_a_changed_paint_is_taken_back_too() -> None:
    session = ember()
    asyncio.run(keep_can(session, CAN_7, replace(ORANGE, density_g_ml=1.2)))
    assert session.known.paints[0].density_g_ml == pytest.approx(1.2)
    asyncio.run(session.undo())
    assert session.known.paints[0] == ORANGE


@pytest.mark.parametrize(
    ("can", "density_g_ml", "gross_g", "name"),
    [
        (Can("", *STAMP, 7, "FO"), 1.14, None, "number_taken"),
        (Can("", *STAMP, 15, "FO", 0.001), 1.14, None, "label_l"),
        (Can("", *STAMP, 15, "FO", 0.25), 12.0, None, "density_g_ml"),
        (Can("", *STAMP, 15, "FO", 0.25, -1.0), 1.14, None, "tare_g"),
        (Can("", *STAMP, 15, "FO"), 1.14, 341.6, "label_l"),
        (Can("", *STAMP, 15, "FO", 0.25), None, 341.6, "density_g_ml"),
        (Can("", *STAMP, 15, "FO", 0.25), 1.14, 200.0, "gross_g"),
    ],
)
def test_what_can_t_be_is_refused_and_nothing_changes(
    can: Can, density_g_ml: float | None, gross_g: float | None, name: str
) -> None:
    session = ember()
    before = session.known
    paint = replace(ORANGE, density_g_ml=density_g_ml)
    with pytest.raises(Refused) as refusal:
        asyncio.run(keep_can(session, can, paint, gross_g))
    assert refusal.value.name == name
    assert session.known is before


def test_a_can_keeps_its_own_number_and_gives_a_free_one() -> None:
    session = ember()
    asyncio.run(keep_can(session, replace(CAN_7, label_l=0.5), ORANGE))
    assert next_number(session.known) == 13
    asyncio.run(can_gone(session, CAN_12))
    asyncio.run(keep_can(session, Can(*session.stamp(), 12, ""), MEDIUM))  # its number is free now
    assert sorted(now.can.number for now in cans_now(session.known)) == [7, 8, 12]


def test_the_emptiest_can_comes_first_and_the_unknown_last() -> None:
    unknown = Can("can3", *STAMP, 3, "FO")
    session = ember(unknown)
    assert [now.can.number for now in cans_now(session.known)] == [7, 12, 8, 3]
    # 201.1 of 285, 740.9 of 1030, 257.8 of 277.5 g


def test_a_pour_comes_from_the_emptiest_can_that_has_enough() -> None:
    other = Can("can9", *STAMP, 9, "FO", 0.25, 56.6, "unopened")
    session = ember(other, CanWeighed("w9", *STAMP, "can9", 106.6, 56.6, 50.0))
    assert can_for(session.known, "FO", 40.0) == "can9"
    assert can_for(session.known, "FO", 60.0) == "can7"
    assert can_for(session.known, "FO", 500.0) == "can7"  # none has it: the fullest
    assert can_for(session.known, "nobody", 1.0) == ""


def test_a_can_without_a_tare_can_t_be_settled() -> None:
    session: Session = ember()
    with pytest.raises(Refused, match="tare_g"):
        asyncio.run(weigh_can(session, replace(CAN_7, tare_g=None), 257.7))
    with pytest.raises(Refused, match="tare_g"):
        reading_of(can_now(session.known, replace(CAN_7, tare_g=None)), 257.7, 0.1)


def test_what_is_gone_is_off_the_list_until_it_is_taken_back() -> None:
    session = ember()
    asyncio.run(can_gone(session, CAN_7))
    assert [now.can.number for now in cans_now(session.known)] == [12, 8]
    asyncio.run(session.undo())
    assert len(cans_now(session.known)) == 3


def test_an_overdrawn_can_is_drawn_empty() -> None:
    now = can_now(ember(pour("p1", "can7", 300.0)).known, CAN_7)
    assert now.balance.should_be_g == pytest.approx(-98.9)
    assert now.level_ratio == pytest.approx(0.0)
    assert now.volume_l(now.balance.should_be_g) is None


def test_nothing_is_poured_from_a_can_that_is_gone() -> None:
    async def story() -> None:
        other = Can("can9", *STAMP, 9, "FO", 0.25, 56.6, "unopened")
        session = ember(other, CanWeighed("w9", *STAMP, "can9", 257.7, 56.6, 201.1))
        await to_orange(session)
        gone = now(session).can("FO")
        can = found(session.known.cans, gone)
        assert can is not None
        await can_gone(session, can)
        await weigh_out.on_the_mark(session, now(session))
        last = session.known.of(Poured)[-1]
        assert last.paint == "FO"
        assert last.can != gone

    run(story())
