"""What *Mix* refuses, and what survives: recipes, readings, a full phone, a restart."""

from dataclasses import replace

import pytest

from core.errors import Refused
from core.paints.recipe import Part
from mobile.session.known import found
from mobile.session.mix import begin, recipes, weigh_out
from mobile.session.mix.pots import pots, under_way
from mobile.session.session import Session
from mobile.store.entries import Undone
from mobile.store.errors import Full
from mobile.store.records import Mix, Paint
from tests.session.ember import EMBER, SETTINGS, STAMP, again, ember
from tests.session.shelf import Shelf
from tests.session.weighing import now, reads, run, to_orange


@pytest.mark.parametrize("reads_g", [19.1, -1.0, 5000.1])
def test_a_reading_that_cannot_be_is_refused_and_logs_nothing(reads_g: float) -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        entries = session.known.entries
        with pytest.raises(Refused):
            await weigh_out.scale_reads(session, now(session), reads_g)
        assert session.known.entries == entries

    run(story())


@pytest.mark.parametrize(
    ("batch_g", "cup_g", "name"),
    [
        (4978.7, 21.4, "batch_g"),  # beside the cup the scale takes 4978.6
        (0.0, None, "batch_g"),
        (1.0, 5000.1, "cup_g"),
    ],
)
def test_a_batch_that_the_scale_cannot_take_is_refused(
    batch_g: float, cup_g: float | None, name: str
) -> None:
    async def story() -> None:
        session = ember()
        with pytest.raises(Refused) as refused:
            await begin.start_pot(session, EMBER, batch_g, cup_g)
        assert refused.value.name == name
        assert under_way(session.known) is None

    run(story())


def test_a_part_below_the_scales_step_is_refused() -> None:
    async def story() -> None:
        session = ember()
        tint = replace(EMBER, parts=(Part("FO", 10000.0), Part("FY", 1.0)))
        with pytest.raises(Refused) as refused:
            await begin.start_pot(session, tint, 20.0, None)
        assert refused.value.name == "portion_g"

    run(story())


def test_a_recipe_that_nobody_can_weigh_is_refused() -> None:
    async def story() -> None:
        session = ember()
        for parts in (
            (),
            (Part("FO", 0.0),),
            (Part("FO", 1.0), Part("FO", 2.0)),
        ):
            with pytest.raises(Refused):
                await recipes.keep_mix(session, replace(EMBER, parts=parts))
        assert found(session.known.mixes, "ember") == EMBER

    run(story())


def test_a_new_recipe_brings_its_job_and_its_paints_and_all_go_with_undo() -> None:
    async def story() -> None:
        session = Session(Shelf(), "phone")
        paint = Paint("new", *STAMP, "moss")
        moss = Mix("", *STAMP, "", "moss wing", (Part("new", 1.0),), "glaze", None)
        kept = await recipes.keep_mix(session, moss, (paint,))
        assert session.known.job is not None
        assert (kept.job, session.known.job_mixes) == (session.known.job.id, (kept,))
        await session.undo()
        assert (session.known.mixes, session.known.paints) == ((), ())

    run(story())


def test_a_changed_recipe_leaves_a_weighed_pot_as_it_was() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.stirred(session, now(session))
        before = pots(session.known)[0]
        await recipes.keep_mix(session, replace(EMBER, parts=(Part("FO", 1.0),)))
        assert pots(session.known)[0] == before
        await recipes.remove_mix(session, EMBER)
        assert pots(session.known)[0] == before

    run(story())


def test_a_full_phone_keeps_the_step() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        session.shelf.full = True  # type: ignore[attr-defined]
        with pytest.raises(Full):
            await weigh_out.on_the_mark(session, now(session))
        assert reads(session) == ("FO", 77.3)

    run(story())


def test_a_restart_stands_at_the_same_step_with_what_was_typed() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        session.drafts.typed("weigh", (("reads", "81."),))
        await session.drafts.flush()
        started_again = again(session)
        assert reads(started_again) == ("FO", 77.3)
        assert started_again.known.draft("weigh") == {"reads": "81."}

    run(story())


def test_cans_are_asked_to_be_stirred_once_a_day() -> None:
    async def story() -> None:
        session = ember()
        await begin.start_planned(session)
        assert begin.stir_due(session.known, now(session))
        await begin.said_stirred(session, now(session))
        assert not begin.stir_due(session.known, now(session))

    run(story())


def test_a_pot_of_another_job_is_carried_on_and_numbered_by_its_own() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await session.keep(replace(SETTINGS, job="elsewhere"))
        await weigh_out.tip_out(session, now(session))
        assert now(session).started.number == 2

    run(story())


def test_undone_entries_stay_in_the_book() -> None:
    async def story() -> None:
        session = ember()
        await to_orange(session)
        await weigh_out.undo_last(session, now(session))
        kinds = [type(record) for record in session.shelf.records()]
        assert Undone in kinds
        assert reads(again(session)) == ("FY", 19.3)

    run(story())
