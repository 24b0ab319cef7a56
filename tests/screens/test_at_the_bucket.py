"""At the bucket: ways of weighing, bands from looks, the check weight, buckets."""

import asyncio
from dataclasses import replace

import pytest

from core.errors import Refused
from mobile.screens.job.place import JobPlace
from mobile.screens.mix.place import MixPlace
from mobile.session.mix.begin import split, start_pot, takes_g
from mobile.session.mix.pots import under_way
from mobile.session.mix.scale import check_scale, error_g, part_suffers
from mobile.session.mix.spoken import spoken_step
from mobile.session.mix.weigh_out import on_the_mark, scale_reads
from mobile.session.session import Session
from mobile.session.walls.amounts import amount_of
from mobile.store.pot import Pot
from mobile.words import weigh_out as words
from tests.screens.seen import OnPlace, tap, write
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def now(session: Session) -> Pot:
    """Give the pot on the scale."""
    pot = under_way(session.known)
    assert pot is not None
    return pot


async def at_ember(way: str = "total") -> Session:
    """Give the demo job with ember wing on the scale."""
    session = await job.at_moth_cellar()
    await session.keep(replace(session.known.settings, way=way, who="Ro"))
    await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
    session.hush()
    return session


def test_the_can_on_the_scale_reads_less_than_nothing_and_serves_can_and_cup() -> None:
    async def story() -> None:
        session = await at_ember("can")
        screen = OnPlace(session, MixPlace, "/mix/weigh")
        seen = said(screen)
        assert f"{words.MINUS}19.3 g" in seen
        assert words.CAN_TARED in seen
        assert words.SPURTS not in seen  # 19.3 g is no small part at 0.1 g
        await on_the_mark(session, now(session))
        assert now(session).target is not None
        await scale_reads(session, now(session), 57.8)  # typed without its sign
        pot = now(session)
        assert [pour.net_g for pour in pot.poured] == pytest.approx([19.3, 57.8])
        assert pot.target is not None
        assert pot.target.reads_g == pytest.approx(-154.7)
        with pytest.raises(Refused):
            await scale_reads(session, pot, 9000.0)

    asyncio.run(story())


def test_small_parts_are_warned_of_slow_drops_after_a_tare() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(replace(session.known.settings, way="each"))
        await start_pot(session, job.mix(session.known, "dusk violet"), 66.0, None)
        assert words.SPURTS in said(OnPlace(session, MixPlace, "/mix/weigh"))

    asyncio.run(story())


def test_a_band_comes_from_what_a_slip_does_to_the_colour_where_all_looks_are_known() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        await start_pot(session, job.mix(session.known, "base"), 4484.0, None)
        ratios = now(session).plan.parts_band_ratio
        assert len(ratios) == 2
        assert all(0 < ratio <= 0.05 for ratio in ratios)
        ember = await at_ember()
        assert now(ember).plan.parts_band_ratio == ()  # clear medium has no look: 1 %
        assert now(ember).started.who == "Ro"

    asyncio.run(story())


def test_a_bucket_splits_loads_and_refuses_what_it_cant_hold() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        base = job.mix(session.known, "base")
        before = amount_of(session.known, base).loads
        assert before is not None
        assert before.loads_count == 2
        await session.keep(replace(session.known.settings, bucket_l=2.5))
        after = amount_of(session.known, base).loads
        assert after is not None
        assert after.loads_count == 4  # 7.566 L in buckets of 2.5 L
        with pytest.raises(Refused) as refusal:
            split(session.known, base, 4484.0, None)
        assert refusal.value.name == "bucket_g"

    asyncio.run(story())


def test_the_check_weight_is_kept_and_warns_of_parts_that_suffer() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        assert not error_g(session.known)
        screen = OnPlace(session, JobPlace, "/job/check")
        await write(screen, "mass", "200")
        await write(screen, "shows", "199.4")
        assert "The scale shows 0.6 g too little." in said(screen)
        await tap(screen, "keep")
        assert error_g(session.known) == pytest.approx(-0.6)
        assert part_suffers(session.known, 19.3)
        assert not part_suffers(session.known, 154.7)
        assert session.known.settings.check_g == pytest.approx(200.0)
        await check_scale(session, 200.0, 200.1)
        assert not error_g(session.known)  # the last digit

    asyncio.run(story())


def test_steps_are_spoken_and_the_screen_stays_on_only_where_one_asks_for_it() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        assert not (session.known.settings.voice)
        assert not (session.known.settings.awake)
        screen = OnPlace(session, JobPlace, "/job/scale")
        await tap(screen, "speak on")
        await tap(screen, "stay on")
        assert session.known.settings.voice
        assert session.known.settings.awake
        assert spoken_step(session.known) == ""
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
        said_aloud = "Can 8, fluorescent yellow. The scale should read 19.3 grams."
        assert spoken_step(session.known) == said_aloud
        while now(session).target:
            await on_the_mark(session, now(session))
        assert spoken_step(session.known) == words.SAID_ALL_IN

    asyncio.run(story())


def test_a_bigger_batch_that_the_bucket_cant_hold_is_no_answer() -> None:
    async def story() -> None:
        session = await at_ember()
        await on_the_mark(session, now(session))
        await scale_reads(session, now(session), 81.9)  # 4.6 g of orange too much
        answers = now(session).answers(takes_g(session.known, now(session)))
        assert answers.make.fits
        await session.keep(replace(session.known.settings, bucket_l=0.22))
        answers = now(session).answers(takes_g(session.known, now(session)))
        assert not answers.make.fits  # 250.4 g are more than 0.22 L
        assert answers.best == "tip"

    asyncio.run(story())
