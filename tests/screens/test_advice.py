"""What is said before a weigh-out: small parts, the can that limits, the scale's error."""

import asyncio

import pytest

from mobile.session.mix.advice import small_part
from mobile.session.mix.begin import split
from mobile.session.mix.cans_hold import limiting
from mobile.session.mix.scale import check_scale
from mobile.words import advice as words
from tests.screens.mix_place import keys, on_mix
from tests.screens.seen import tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_a_part_too_small_for_the_scale_says_which_pot_would_do_and_how_to_let_it_down() -> None:
    known = job.moth_cellar().known
    violet = job.mix(known, "dusk violet")
    assert small_part(known, split(known, violet, 232.0, None)) is None
    small = small_part(known, split(known, violet, 66.0, None))
    assert small is not None
    assert (small.net_g, small.least_g) == pytest.approx((7.8, 8.2))  # of the reference job: 66 g
    again = split(known, violet, small.batch_g, None)
    assert min(part.net_g for part in again) >= 8.2 - 0.1
    assert small.let_down is not None
    assert small.let_down.tint_g == pytest.approx(8.2)


def test_the_can_that_runs_out_first_says_how_much_can_be_made() -> None:
    known = job.moth_cellar().known
    found = limiting(known, job.mix(known, "ember wing"))
    assert found.most_g is not None
    orange = next(p.id for p in known.paints if p.name == "fluorescent orange")
    assert found.paint == orange
    assert found.most_g == pytest.approx(212.94413 * 12 / 3)  # ledger.should_be, 3 parts of 12


def test_other_grams_are_a_tap_away() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        violet = job.mix(session.known, "dusk violet")
        screen = on_mix(session, f"{violet.id}/weigh")
        small = small_part(session.known, split(session.known, violet, 66.0, None))
        assert small is not None
        await tap(screen, f"instead {small.batch_g:g}")
        assert f"{small.batch_g:g} g" in said(screen)
        ember = job.mix(session.known, "ember wing")
        screen = on_mix(session, f"{ember.id}/weigh")
        await keys(screen, "900")
        assert words.cans_allow("851 g", "fluorescent orange") in said(screen)
        await tap(screen, "instead 851")
        assert "851 g" in said(screen)
        await check_scale(session, 200.0, 198.0)
        screen = on_mix(session, f"{ember.id}/weigh")
        assert any("2.0 g off today" in text for text in said(screen))

    asyncio.run(story())
