"""Cans without a browser: taps, digits, and what stands on the screen then."""

import asyncio
from collections.abc import Coroutine
from typing import Any

import flet as ft
import pytest

from core.units import System
from mobile.screens.cans.place import CansPlace
from mobile.session.cans.can import can_now
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.records import Can
from mobile.words import cans as words
from mobile.words import looks, places
from tests.screens.seen import OnPlace, find, settled, shown, tap, write
from tests.screens.seen import words as said
from tests.session.ember import CAN_7, STAMP, ember
from tests.session.shelf import Shelf


def run(story: Coroutine[Any, Any, None]) -> None:
    asyncio.run(story)


async def digits(screen: OnPlace, text: str) -> None:
    for sign in text:
        await tap(screen, f"key {sign}")


def test_a_shop_without_cans_says_what_to_do_first() -> None:
    async def story() -> None:
        session = Session(Shelf(), "phone")
        assert words.EMPTY in said(OnPlace(session, CansPlace, "/cans/pick"))
        screen = OnPlace(session, CansPlace, "/cans")
        await tap(screen, "new can")
        assert find(screen, "number").value == "1"
        screen = OnPlace(session, CansPlace, "/cans")
        await tap(screen, "demo")
        assert "212.9 g" in said(screen)

    run(story())


def test_two_taps_and_the_digits_and_one_more_to_keep() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/pick")  # the first tap was on Coats
        await tap(screen, "can 7")
        assert words.ASK in said(screen)
        await digits(screen, "200.7")
        assert "144.1 g left" in said(screen)  # 200.7 - 56.6
        assert "0.126 L, 50.6 % of a full can" in said(screen)  # 144.1 / 1.14, of 285 g
        assert words.NOT_KEPT in said(screen)
        await tap(screen, "keep")
        assert can_now(session.known, CAN_7).balance.should_be_g == pytest.approx(200.7 - 56.6)
        assert words.PICK in said(screen)

    run(story())


def test_the_answer_follows_each_digit() -> None:
    async def story() -> None:
        screen = OnPlace(ember(), CansPlace, "/cans/can7")
        await digits(screen, "5")
        assert words.LESS in said(screen)
        assert not find(screen, "keep").on_click
        await digits(screen, "7")
        assert "0.4 g left" in said(screen)
        assert "200.7 g" in said(screen)
        assert words.MISSING in said(screen)
        assert words.WHERE in said(screen)
        await tap(screen, "key delete")
        assert words.LESS in said(screen)

    run(story())


def test_what_is_typed_stays_and_is_shown_as_not_kept() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/can7")
        await digits(screen, "25")
        screen = OnPlace(session, CansPlace, "/cans")  # at once, before the draft is kept
        assert words.typed("25") in said(screen)
        await session.drafts.flush()
        again = Session(session.shelf, "phone")
        screen = OnPlace(again, CansPlace, "/cans")
        assert words.typed("25") in said(screen)
        assert can_now(again.known, CAN_7).balance.should_be_g == pytest.approx(201.1)
        screen = OnPlace(again, CansPlace, "/cans/can7")
        await digits(screen, "7.7")
        assert "201.1 g left" in said(screen)

    run(story())


def test_a_can_without_an_empty_weight_is_asked_for_it_first() -> None:
    async def story() -> None:
        session = ember(Can("can3", *STAMP, 3, "FO", 0.25))
        screen = OnPlace(session, CansPlace, "/cans/pick")
        await tap(screen, "can 3")
        assert words.TARE_FIRST in said(screen)
        await write(screen, "grams", "57,5")
        await tap(screen, "keep")
        assert words.ASK in said(screen)
        assert words.tare("57.5 g", "empty") in said(screen)

    run(story())


def test_a_new_can_weighed_unopened_knows_its_tare() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/new")
        assert find(screen, "number").value == "13"
        await tap(screen, "paint fluorescent orange")
        assert find(screen, "density").value == "1.14"
        await write(screen, "label", "250 ml")
        await tap(screen, "choose unopened")
        await write(screen, "grams", "341.6")
        await tap(screen, "keep")
        can = next(can for can in session.known.cans if can.number == 13)
        assert can.paint == "FO"
        assert can.tare_from == "unopened"
        assert "285.0 g" in said(screen)

    run(story())


def test_errors_stand_at_their_field_and_nothing_typed_is_lost() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/new")
        assert not find(screen, "paint").error
        await tap(screen, "keep")
        assert find(screen, "paint").error == "Say which paint is in it."
        await write(screen, "paint", "fluorescent red")
        assert not find(screen, "paint").error
        await write(screen, "number", "7")
        assert "Another can" in find(screen, "number").error
        await write(screen, "number", "13")
        await write(screen, "density", "heavy")
        assert find(screen, "density").error
        await write(screen, "density", "")
        await write(screen, "grams", "x")
        assert find(screen, "grams").error
        assert find(screen, "paint").value == "fluorescent red"
        await write(screen, "grams", "")
        await tap(screen, "keep")
        assert [paint.name for paint in session.known.paints][-1] == "fluorescent red"

    run(story())


def test_a_form_comes_back_after_a_restart() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/new")
        await write(screen, "paint", "fluo")
        await session.drafts.flush()
        screen = OnPlace(Session(session.shelf, "phone"), CansPlace, "/cans/new")
        assert find(screen, "paint").value == "fluo"
        assert places.DRAFT in said(screen)

    run(story())


def test_a_paints_looks_are_chosen_and_kept() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/can7/edit")
        await tap(screen, "looks")
        await tap(screen, f"{looks.BY_DAY} #f2ee2c")
        await tap(screen, f"{looks.UNDER_LAMP} #57e03c")
        await tap(screen, "keep")
        assert (session.known.paints[0].day, session.known.paints[0].lamp) == (
            *("#f2ee2c", "#57e03c"),
        )
        assert session.known.cans[0].tare_from == "unopened"  # nobody touched its tare

    run(story())


def test_a_look_that_is_no_colour_is_said_and_an_emptied_one_is_unknown_again() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/can7/edit")
        await tap(screen, "looks")
        await write(screen, looks.BY_DAY, "orange-ish")
        assert find(screen, looks.BY_DAY).error == looks.LIKE
        await tap(screen, "keep")
        assert session.known.paints[0].day == "#ff7a1a"
        await tap(screen, f"{looks.BY_DAY} unknown")
        await tap(screen, "keep")
        assert session.known.paints[0].day == ""

    run(story())


def test_a_can_is_put_away_and_taken_back() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/can7/edit")
        await tap(screen, "put away")
        assert "201.1 g" not in said(screen)
        await session.undo()
        await settled(screen)
        assert "201.1 g" in said(screen)

    run(story())


def test_how_shows_the_working_and_closes() -> None:
    async def story() -> None:
        screen = OnPlace(ember(), CansPlace, "/cans/can7")
        await digits(screen, "257.7")
        await tap(screen, "how")
        sheet = screen.told()
        assert sheet.open
        assert screen.went[-1] == "/cans/can7/how"
        sheet_said = [one.value for one in shown(sheet) if isinstance(one, ft.Text)]
        assert "257.7 g − 56.6 g" in sheet_said
        assert "201.1 g ÷ 1.14 g/mL ÷ 1000" in sheet_said
        await screen.fire(sheet, "dismiss")
        assert screen.went[-1] == "/cans/can7"

    run(story())


def test_a_us_painter_reads_fluid_ounces() -> None:
    async def story() -> None:
        screen = OnPlace(ember(), CansPlace, "/cans/can7", View(system=System.US))
        await digits(screen, "257.7")
        assert "6.0 fl oz, 70.6 % of a full can" in said(screen)
        assert "201.1 g left" in said(screen)  # scales show grams

    run(story())


def test_a_full_phone_keeps_what_is_typed() -> None:
    async def story() -> None:
        session = ember()
        screen = OnPlace(session, CansPlace, "/cans/can7")
        await digits(screen, "257.7")
        session.shelf.full = True  # type: ignore[attr-defined]
        await tap(screen, "keep")
        assert "201.1 g left" in said(screen)
        assert session.shown.told
        assert session.shown.told.bad

    run(story())
