"""Job without a browser: its name, its steps with the label's waits, its settings."""

import asyncio

import pytest

from mobile.screens.job.place import JobPlace
from mobile.session.session import Session
from mobile.words import job as words
from tests.screens.seen import OnPlace, find, tap, write
from tests.screens.seen import words as said
from tests.session.ember import JOB, SETTINGS
from tests.session.shelf import Shelf


async def begun(at: str = "/job") -> tuple[Session, OnPlace]:
    session = Session(Shelf(), "phone")
    screen = OnPlace(session, JobPlace, "/job")
    await tap(screen, "begin")
    await write(screen, "name", "Cellar stair")
    await tap(screen, "keep")
    if at != "/job":
        screen.session.page.navigate(at)
        await asyncio.sleep(0.05)
    return session, screen


def test_a_job_is_named_and_renamed() -> None:
    async def story() -> None:
        session, screen = await begun()
        assert session.known.job is not None
        assert "Cellar stair" in said(screen)
        await tap(screen, "rename")
        assert find(screen, "name").value == "Cellar stair"
        await write(screen, "name", "North stair")
        await tap(screen, "keep")
        assert "North stair" in said(screen)

    asyncio.run(story())


def test_settings_that_keep_the_rule_do_not_speak_of_it() -> None:
    async def story() -> None:
        session, screen = await begun("/job/settings")
        await write(screen, "who", "Ro")
        await tap(screen, "keep")
        assert session.known.settings.who == "Ro"
        assert session.shown.told is not None
        assert session.shown.told.said == words.SETTINGS_KEPT

    asyncio.run(story())


def test_a_damaged_book_that_was_put_aside_is_found_on_every_later_day(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    saved: list[tuple[str, bytes]] = []
    monkeypatch.setattr(
        "mobile.session.session.device.save_file", lambda name, data, _: saved.append((name, data))
    )

    async def story() -> None:
        shelf = Shelf(JOB, SETTINGS)
        shelf.set_aside = ("duskcoat.aside-1",)
        screen = OnPlace(Session(shelf, "phone"), JobPlace, "/job")
        assert words.ASIDE in said(screen)
        await tap(screen, "duskcoat.aside-1")
        assert saved == [("duskcoat.aside-1", b"duskcoat.aside-1")]

    asyncio.run(story())


def test_settings_are_kept_at_a_tap_and_typed_ones_when_asked() -> None:
    async def story() -> None:
        session, screen = await begun("/job/settings")
        for key, value in (("look", "dim"), ("units", "us"), ("bell", False)):
            option = {"look": "dim", "units": "us", "bell": "off"}[key]
            await tap(screen, f"choose {option}")
            assert getattr(session.known.settings, key) == value
        await tap(screen, "choose 1.5")
        assert session.known.settings.text_ratio == pytest.approx(1.5)
        screen = OnPlace(session, JobPlace, "/job/scale")
        await tap(screen, "choose 1.0")
        assert session.known.settings.scale_step_g == pytest.approx(1.0)
        await write(screen, "capacity", "2000")
        await write(screen, "bucket", "2.5")
        await tap(screen, "keep")
        settings = session.known.settings
        assert (settings.scale_capacity_g, settings.bucket_l) == pytest.approx((2000.0, 2.5))

    asyncio.run(story())


def test_another_job_is_begun_and_come_back_to() -> None:
    async def story() -> None:
        session, screen = await begun("/job/jobs")
        await tap(screen, "new job")
        await write(screen, "name", "Second")
        await tap(screen, "keep")
        assert session.known.job is not None
        assert session.known.job.name == "Second"
        screen.session.page.navigate("/job/jobs")
        await asyncio.sleep(0.05)
        await tap(screen, "Cellar stair")
        assert session.known.job.name == "Cellar stair"
        assert session.shown.told is not None
        assert session.shown.told.said == words.now_at("Cellar stair")

    asyncio.run(story())
