"""How much of a mix, and of everything, without a browser."""

import asyncio
from dataclasses import replace

import pytest

from mobile.screens.job.place import JobPlace
from mobile.screens.mix.place import MixPlace
from mobile.session.walls.amounts import amount_of
from mobile.words import amounts as words
from mobile.words import how_much
from tests.screens.seen import OnPlace, find, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_what_a_glaze_needs_follows_each_digit() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        mix = job.mix(session.known, "ember wing")
        screen = OnPlace(session, MixPlace, f"/mix/{mix.id}/amount")
        assert {"232 g", "147.7 g", "66 g", "17.4 g", "1.42 m², 2 coats"} <= set(said(screen))
        await write(screen, "rate", "60")
        assert "256 g" in said(screen)  # 2.84 x 60 + 66 + 0.2 x 60 + 7 = 255.4
        await write(screen, "rate", "sixty")
        assert words.AMOUNT_UNKNOWN in said(screen)
        await tap(screen, "keep")
        assert job.mix(session.known, "ember wing").g_m2 == pytest.approx(52.0)
        await write(screen, "rate", "60")
        await tap(screen, "kit no")
        await write(screen, "brush", "0")
        await tap(screen, "keep")
        kept = job.mix(session.known, "ember wing")
        assert kept.g_m2 == pytest.approx(60.0)
        assert not kept.kit
        assert {one.tool: one.wettings_count for one in kept.tools or ()}["brush"] == 0
        assert kept.parts == mix.parts

    asyncio.run(story())


def test_what_nobody_said_is_marked_as_assumed() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        mix = job.mix(session.known, "ember wing")
        screen = OnPlace(session, MixPlace, f"/mix/{mix.id}/amount")
        await tap(screen, "rate usual")
        assert words.stands_in(("rate",)) in said(screen)
        assert "55.0 g/m² a coat" in " ".join(said(screen))

    asyncio.run(story())


def test_a_label_that_lacks_is_asked_for_when_it_is_needed() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        known = session.known
        violet = next(paint for paint in known.paints if paint.name == "fluorescent violet")
        await session.keep(replace(violet, density_g_ml=None, solids_ratio=None))
        mix = job.mix(known, "base")
        screen = OnPlace(session, MixPlace, f"/mix/{mix.id}/amount")
        assert words.stands_in(("density", "solids")) in said(screen)
        await tap(screen, "label fluorescent violet")
        assert screen.session.page.route == f"/cans/paints/{violet.id}"

    asyncio.run(story())


def test_a_film_and_its_losses_give_the_grams_of_a_base() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        mix = job.mix(session.known, "base")
        screen = OnPlace(session, MixPlace, f"/mix/{mix.id}/amount")
        assert (find(screen, "rate").value, find(screen, "loss").value) == ("32", "12")
        assert "8968 g" in said(screen)
        await write(screen, "loss", "15")
        assert "9276 g" in said(screen)  # reference job: base loss + 0.03

    asyncio.run(story())


def test_how_much_of_everything_by_paint_mix_and_step() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        screen = OnPlace(session, JobPlace, "/job/how-much")
        seen = set(said(screen))
        lines = {line for text in seen for line in text.split("\n")}
        assert {"1 × 0.50 L and 2 × 2.50 L, 211.50", "you have 6160 g"} <= lines
        assert how_much.cans_cost("510.50") in seen
        await tap(screen, "by mix")
        assert {"8968 g", "7.566 L, 2 loads"} <= set(said(screen))
        await tap(screen, "by step")
        assert {"base, 24.52 m²", "ember wing, 1.42 m²", "hot orange, 0.70 m²"} <= set(said(screen))

    asyncio.run(story())


@pytest.mark.parametrize("way", ["total", "each", "can"])
def test_parts_are_weighed_in_one_of_three_ways(way: str) -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        screen = OnPlace(session, JobPlace, "/job/scale")
        await tap(screen, f"choose {way}")
        assert session.known.settings.way == way

    asyncio.run(story())


def test_what_a_tool_keeps_is_weighed_and_counts_for_every_mix() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        screen = OnPlace(session, JobPlace, "/job/settings")
        await tap(screen, "tools")
        assert find(screen, "brush").value == "8"
        await write(screen, "brush", "300")
        assert find(screen, "brush").error
        await tap(screen, "keep")
        assert session.known.settings.keeps == ()
        await write(screen, "brush", "10")
        await tap(screen, "keep")
        mix = job.mix(session.known, "ember wing")
        assert amount_of(session.known, mix).need.need_g == pytest.approx(231.08 + 2)

    asyncio.run(story())
