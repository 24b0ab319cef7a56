"""Mass closes over a thousand random jobs, within what the scale can't show and what may dry off.

Poured = in pots + tipped out; pots = on walls + in tools + left + dried off + waste. The other
side of each sum is the truth, kept apart in `basement.py`. Source: conservation of mass.
"""

import pytest

from mobile.session.mix.pots import all_pots
from mobile.session.mix.went import where_it_went
from mobile.store.entries import Poured
from tests.session.basement import STEP_G, Basement, job_done

JOBS_COUNT = 1000
HAIR_G = 1e-6


@pytest.fixture(scope="module", name="jobs")
def _jobs() -> list[Basement]:
    return [job_done(seed) for seed in range(JOBS_COUNT)]


def rounded_g(job: Basement) -> float:
    """Sum the half steps that a job's readings can be off."""
    return job.readings_count * STEP_G / 2 + HAIR_G


def test_what_was_poured_is_in_pots_or_tipped(jobs: list[Basement]) -> None:
    for job in jobs:
        known = job.session.known
        poured_g = sum(pour.net_g for pour in known.of(Poured))
        assert poured_g == pytest.approx(sum(job.out_of_cans_g.values()), abs=rounded_g(job))
        made_g = sum(pot.made_g for pot in all_pots(known) if pot.ended == "stirred")
        assert made_g == pytest.approx(poured_g - job.tipped_g, abs=rounded_g(job))


def test_what_was_in_pots_is_on_walls_in_tools_left_dried_off_or_waste(
    jobs: list[Basement],
) -> None:
    for job in jobs:
        known = job.session.known
        done = [pot for pot in all_pots(known) if pot.ended == "stirred"]
        went = [where_it_went(known, pot) for pot in done]
        on_g = sum(one.account.walls_g + one.account.tools_g for one in went)
        dried_g = sum(one.account.dried_g for one in went)
        left_g = sum(one.in_cups_g + one.in_jars_g for one in went)
        left_g += sum(pot.left_g for pot in done)
        waste_g = sum(one.waste_g for one in went)
        made_g = sum(pot.made_g for pot in done)
        off_g = rounded_g(job)
        assert on_g + dried_g + left_g + waste_g == pytest.approx(made_g, abs=off_g)
        assert left_g == pytest.approx(sum(job.in_vessels_g.values()), abs=off_g)
        assert waste_g == pytest.approx(job.waste_g, abs=off_g)
        assert on_g == pytest.approx(job.on_walls_and_tools_g, abs=off_g + job.bound_g)


def test_the_jobs_are_of_all_kinds(jobs: list[Basement]) -> None:
    assert sum(job.tipped_g > 0 for job in jobs) > JOBS_COUNT / 10
    assert sum(job.waste_g > 0 for job in jobs) > JOBS_COUNT / 10
    assert sum(job.dried_g > 0 for job in jobs) > JOBS_COUNT / 10
    cupped = sum(any(cup for _, cup in job.in_vessels_g) for job in jobs)
    assert cupped > JOBS_COUNT / 10
