"""Changing a can changes what is typed, and nothing else of it or of its paint."""

import asyncio
from dataclasses import replace

import pytest

from mobile.screens.cans.place import CansPlace
from mobile.session.mix.begin import said_stirred, start_pot, stir_due
from mobile.session.mix.weigh_out import give_up
from mobile.store.entries import CanStirred
from tests.screens.mix_place import now
from tests.screens.seen import OnPlace, tap, write
from tests.session import moth_cellar as job


def test_another_density_leaves_sizes_waits_solids_and_the_cans_own_facts() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        can = job.can(session.known, 7)
        paint = next(one for one in session.known.paints if one.id == can.paint)
        assert paint.sizes
        assert can.across_m is not None
        screen = OnPlace(session, CansPlace, f"/cans/{can.id}/edit")
        await write(screen, "density", "1.2")
        await write(screen, "lot", "L-2031")
        await tap(screen, "keep")
        after = job.can(session.known, 7)
        painted = next(one for one in session.known.paints if one.id == can.paint)
        assert painted.density_g_ml == pytest.approx(1.2)
        before = replace(paint, at_s=painted.at_s, device=painted.device)
        assert painted == replace(before, density_g_ml=painted.density_g_ml)
        assert (after.lot, after.across_m, after.tare_g) == ("L-2031", can.across_m, can.tare_g)

    asyncio.run(story())


def test_each_can_is_asked_for_once_a_day() -> None:
    async def story() -> None:
        session = await job.at_moth_cellar()
        ember, rose = (job.mix(session.known, name) for name in ("ember wing", "rose wing"))
        await start_pot(session, ember, 232.0, None)
        assert stir_due(session.known, now(session))
        await said_stirred(session, now(session))
        assert not stir_due(session.known, now(session))
        assert len(session.known.of(CanStirred)) == len(ember.parts)
        await give_up(session, now(session))
        await start_pot(session, ember, 232.0, None)
        assert not stir_due(session.known, now(session))
        await give_up(session, now(session))
        await start_pot(session, rose, 201.0, None)
        assert stir_due(session.known, now(session))  # the pink was not stirred yet
        await said_stirred(session, now(session))
        assert len(session.known.of(CanStirred)) == len(ember.parts) + 1

    asyncio.run(story())
