"""The schedule: steps in their order, waits between pairs, and the earliest hand-over."""

import asyncio

import pytest

from core.coats.schedule import HAND_OVER, PlannedStep
from core.errors import Refused
from core.paints.recipe import Part
from core.waits.pair import PairWait, Wait
from core.walls.shape import Wall as Shape
from mobile.session.coats.coat import coat_finished
from mobile.session.coats.standing import place_now
from mobile.session.job import schedule as verbs
from mobile.session.job.hand_over import ahead
from mobile.session.job.label_waits import label_wait
from mobile.session.job.ready_made import ready_made, take
from mobile.session.session import Session
from mobile.session.walls.walls import keep_wall
from mobile.store.records import Job, LabelWait, Mix, Paint
from tests.session.shelf import Shelf
from tests.session.two_walls import PROMOTED, STAMP, Watch, hour_s, two_walls

STEPS = tuple(PlannedStep(name, name, "base") for name in "abc")
END = PlannedStep("end", "hand-over", HAND_OVER)


def job_of(session: Session) -> Job:
    """Give the open job."""
    assert session.known.job is not None
    return session.known.job


@pytest.mark.parametrize(
    ("name", "by", "order"),
    [
        ("a", -1, "abcend"),
        ("a", 1, "bacend"),
        ("c", -1, "acbend"),
        ("c", 1, "abcend"),
        ("b", 1, "acbend"),
    ],
)
def test_a_step_moves_by_one_and_stays_before_the_hand_over(name: str, by: int, order: str) -> None:
    steps = (*STEPS, END)
    step = next(step for step in steps if step.id == name)
    assert "".join(step.id for step in verbs.moved(steps, step, by)) == order


def test_steps_are_kept_changed_and_taken_back() -> None:
    session = Session(Shelf(), "phone")

    async def run() -> None:
        await verbs.keep_step(session, STEPS[0])
        await verbs.keep_step(session, STEPS[1])
        changed = PlannedStep("a", "first", "base", 3600.0)
        await verbs.keep_step(session, changed)
        *steps, end = job_of(session).steps
        assert tuple(steps) == (changed, STEPS[1])
        assert end.use == HAND_OVER
        await session.undo()
        assert job_of(session).steps[:2] == STEPS[:2]

    asyncio.run(run())


def test_a_wait_belongs_to_its_pair_and_is_dropped_when_the_pair_turns_round() -> None:
    session = Session(Shelf(), "phone")
    wait = PairWait("a", "b", Wait(900.0))

    async def run() -> None:
        for step in STEPS:
            await verbs.keep_step(session, step)
        await verbs.keep_wait(session, wait)
        await verbs.keep_wait(session, PairWait("a", "c", Wait(3600.0)))
        steps = verbs.moved(job_of(session).steps, STEPS[1], -1)
        await verbs.keep_steps(session, steps, "moved")
        assert [(w.after, w.before) for w in job_of(session).waits] == [("a", "c")]
        await session.undo()
        assert verbs.wait_between(session.known.job, "a", "b") == wait.wait
        await verbs.drop_wait(session, wait)
        assert verbs.wait_between(session.known.job, "a", "b") is None

    asyncio.run(run())


def test_a_wait_that_leaves_no_room_for_others_is_refused_by_its_names() -> None:
    session = Session(Shelf(), "phone")

    async def run() -> None:
        for step in STEPS:
            await verbs.keep_step(session, step)
        await verbs.keep_wait(session, PairWait("a", "b", Wait(7200.0)))
        with pytest.raises(Refused) as refused:
            await verbs.keep_wait(session, PairWait("a", "c", Wait(0.0, 3600.0)))
        assert (refused.value.name, refused.value.value) == ("impossible_pair", "a to c")
        assert len(job_of(session).waits) == 1

    asyncio.run(run())


def test_ready_made_schedules_say_that_their_waits_stand_in() -> None:
    for one in ready_made():
        session = Session(Shelf(), "phone")
        asyncio.run(take(session, one))
        job = job_of(session)
        assert job.steps[-1].use == HAND_OVER
        assert job.waits
        assert all(pair.wait.usual and pair.wait.maximum_s is None for pair in job.waits)
        pairs = {(pair.after, pair.before) for pair in job.waits}
        assert all((a.id, b.id) in pairs for a, b in zip(job.steps, job.steps[1:], strict=False))


def test_the_hand_over_counts_what_is_left_from_now() -> None:
    now_s = hour_s(9)
    fresh = ahead(two_walls().known, now_s)
    assert fresh is not None
    # 1 h, 30 min, 15 min, 24 h, 2 h: the waits of the schedule, one after another.
    assert fresh.hand_over_s - now_s == pytest.approx(3600 + 1800 + 900 + 86400 + 7200)
    now_s = hour_s(12, 54)
    later = ahead(two_walls(*PROMOTED).known, now_s)
    assert later is not None
    assert later.start_s("wash") is None
    assert later.start_s("base2") == pytest.approx(hour_s(12, 50) + 900)
    assert later.hand_over_s == pytest.approx(hour_s(12, 50) + 900 + 86400 + 7200)


def test_a_label_says_the_wait_before_a_kind_of_step() -> None:
    told = (LabelWait("", Wait(900.0)), LabelWait("film", Wait(86400.0)))
    violet = Paint("violet", *STAMP, "violet", waits=told)
    tight = Paint("white", *STAMP, "white", waits=(LabelWait("base", Wait(600.0, 7200.0)),))
    parts = (Part("violet", 1.0), Part("white", 1.0))
    known = two_walls(violet, tight, Mix("m", *STAMP, "job", "base", parts, "base")).known
    steps = {step.id: step for step in known.job.steps} if known.job else {}
    again = label_wait(known, steps["base1"], steps["base2"])
    assert again is not None
    assert (again.paint, again.wait) == ("violet", Wait(900.0, 7200.0))
    film = label_wait(known, steps["base2"], steps["film"])
    assert film is not None
    assert film.wait == Wait(86400.0)
    assert label_wait(known, steps["wash"], steps["promoter"]) is None


@pytest.mark.parametrize(
    ("work_s", "late", "start"),
    [
        (2700.0, (15, 15), "reckoned"),  # 4 h from 11:15
        (0.0, (16, 0), "unknown"),  # nobody planned its work: from its end, and said so
    ],
)
def test_a_limit_from_the_start_counts_the_work_and_says_what_it_counts_from(
    monkeypatch: pytest.MonkeyPatch, work_s: float, late: tuple[int, int], start: str
) -> None:
    Watch(monkeypatch, hour_s(12))
    session = Session(Shelf(), "phone")

    async def run() -> None:
        await verbs.keep_step(session, PlannedStep("p", "promoter", "promoter", work_s))
        await verbs.keep_step(session, STEPS[0])
        await verbs.keep_wait(session, PairWait("p", "a", Wait(1800.0, 14400.0, "end", "start")))
        await keep_wall(session, "w", "Wall 1", Shape(3.0, 2.0, 2.0))
        now = place_now(session.known, "w")
        assert now is not None
        await coat_finished(session, now)
        dries = place_now(session.known, "w")
        assert dries is not None
        assert dries.drying is not None
        assert dries.drying.ready_at_s == pytest.approx(hour_s(12, 30))
        assert dries.drying.late_at_s == pytest.approx(hour_s(*late))
        assert dries.start == start
        plan = ahead(session.known, hour_s(12))
        assert plan is not None
        assert plan.start_s("a") == pytest.approx(hour_s(12, 30))

    asyncio.run(run())
