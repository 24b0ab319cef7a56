"""What a scale shows after a cup was knocked over, and what may be read from it."""

import pytest

from core.errors import Refused
from mobile.session.mix import mishaps, weigh_out
from tests.session.ember import ember
from tests.session.weighing import now, run, to_orange


def test_a_reading_as_logged_or_a_step_above_is_nothing_lost() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        for reads_g in (30.1, 40.3, 55.7, 77.3):  # sums of these are binary dust
            await weigh_out.scale_reads(session, now(session), reads_g)
            for above_g in (0.0, 0.1):
                found = mishaps.left_of(now(session), round(reads_g + above_g, 1))
                assert found.lost_g == 0
                assert found.left_ratio == 1
            with pytest.raises(Refused):
                mishaps.left_of(now(session), round(reads_g + 0.2, 1))

    run(story())
