"""One job's file beside what is on the phone: new, newer, kept; in one commit, or not at all."""

import asyncio
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from mobile.store.door import MemoryDoor
from mobile.store.entries import CanWeighed, Poured, Undone
from mobile.store.errors import Clash, Full, Senseless, WrongFile
from mobile.store.export import exported
from mobile.store.incoming import Incoming, read_file
from mobile.store.library import Library
from mobile.store.merge import TakenIn, merged
from mobile.store.migrations import schema_of
from mobile.store.records import Can, Job, Paint, Record, Settings
from tests.store import made
from tests.store.bad_doors import TEARS, DyingDoor, Killed, SmallDoor, copied
from tests.store.moth_cellar import BACKUP, ONE_JOB, library_with
from tests.store.test_export import CELLAR, GARDEN, PHONE, SHOP

JOB = read_file(ONE_JOB)
(MOTH_CELLAR,) = (record for record in JOB.records if isinstance(record, Job))
P = made.PHONE


def door_of(library: Library) -> MemoryDoor:
    door = library._book.door
    assert isinstance(door, MemoryDoor)
    return door


async def again(library: Library) -> Library:
    """Give what the next start finds."""
    return await Library.open(copied(door_of(library)))


def test_a_job_comes_back_on_an_empty_phone_byte_for_byte() -> None:
    async def run() -> None:
        library = await library_with(device="another phone")
        taken = await library.take_in(JOB)
        assert taken == TakenIn(added=JOB.records)
        assert library.export(JOB.job) == ONE_JOB
        assert (await again(library)).export(JOB.job) == ONE_JOB

    asyncio.run(run())


def test_beside_another_job_its_file_is_the_same_and_the_others_too() -> None:
    async def run() -> None:
        mine = (Can(f"mine-{n}", 1.0, P, n, "spare") for n in (7, 8, 20))
        library = await library_with(*PHONE, *SHOP, *CELLAR, *GARDEN, *mine)
        before = library.export("cellar"), library.export("garden")
        taken = await library.take_in(JOB)
        moved = dict(taken.moved)
        assert {7, 8} <= moved.keys()
        assert not {7, 8, 20} & set(moved.values())
        assert (library.export("cellar"), library.export("garden")) == before
        found = read_file(library.export(JOB.job))
        back = {new: old for old, new in moved.items()}
        on_the_lid = tuple(
            replace(one, number=back.get(one.number, one.number)) if isinstance(one, Can) else one
            for one in found.records
        )
        assert exported(on_the_lid, JOB.job, schema_of()) == ONE_JOB

    asyncio.run(run())


def test_what_is_here_already_is_passed_over_and_costs_no_commit() -> None:
    async def run() -> None:
        library = await library_with(*PHONE, *SHOP, *CELLAR)
        await library.take_in(JOB)
        before, commits = library.export(), library._book.state.sequence
        taken = await library.take_in(JOB)
        assert (taken.added, taken.before, taken.moved) == ((), (), ())
        assert taken.same_count + taken.stay_count == len(JOB.records)
        assert library.export() == before
        assert library._book.state.sequence == commits

    asyncio.run(run())


def test_the_thing_that_was_kept_later_wins_in_its_place() -> None:
    async def run() -> None:
        library = await library_with(*JOB.records)
        old, new = (
            replace(MOTH_CELLAR, name=name, at_s=MOTH_CELLAR.at_s + more_s)
            for name, more_s in (("older", -1.0), ("newer", 1.0))
        )
        same_age = replace(MOTH_CELLAR, name="of the same second")
        for other in (old, same_age):
            taken = await library.take_in(Incoming(JOB.job, (other,)))
            assert taken == TakenIn(stay_count=1)
            assert library.records() == JOB.records
        taken = await library.take_in(Incoming(JOB.job, (new,)))
        assert taken == TakenIn(before=(MOTH_CELLAR,))
        assert library.records() == tuple(new if r == MOTH_CELLAR else r for r in JOB.records)
        assert (await again(library)).records() == library.records()

    asyncio.run(run())


@pytest.mark.parametrize("kind", ["contents", "another kind"])
def test_an_entry_with_other_contents_is_refused_whole(kind: str) -> None:
    async def run() -> None:
        pour = next(record for record in JOB.records if isinstance(record, Poured))
        other: Record = replace(pour, net_g=pour.net_g + 1.0)
        if kind == "another kind":
            other = Paint(pour.id, 0.0, P, "a paint by the name of a pour")
        library = await library_with(*SHOP, other)
        before = library.export()
        with pytest.raises(Clash):
            await library.take_in(JOB)
        assert library.export() == before == (await again(library)).export()

    asyncio.run(run())


def test_a_backup_is_not_taken_in_and_a_job_does_not_take_everythings_place() -> None:
    async def run() -> None:
        library = await library_with(*SHOP)
        with pytest.raises(WrongFile):
            await library.take_in(read_file(BACKUP))
        with pytest.raises(WrongFile):
            await library.restore(JOB)
        assert library.records() == SHOP

    asyncio.run(run())


def test_a_known_can_keeps_its_number_here_and_one_that_is_gone_gives_its_number_away() -> None:
    paint = Paint("p", 1.0, P, "ember")
    mine, theirs = Can("mine", 1.0, P, 7, "p"), Can("theirs", 1.0, P, 7, "p")
    file = (paint, theirs, replace(theirs, id="gone too", gone=True))
    one = merged((paint, mine), file)
    assert [r.number for r in one.records if isinstance(r, Can)] == [7, 8, 7]
    assert one.taken.moved == ((7, 8),)
    later = replace(theirs, at_s=2.0, label_l=0.5)
    two = merged(one.records, (paint, later))
    assert two.records[2] == replace(later, number=8)
    assert two.taken.moved == ((7, 8),)
    three = merged((paint, replace(mine, gone=True)), file)
    assert [r.number for r in three.records if isinstance(r, Can)] == [7, 7, 7]


def test_numbers_run_on_below_where_the_highest_is_in_use() -> None:
    mine = tuple(Can(f"mine-{n}", 1.0, P, n, "p") for n in (1, 9999))
    theirs = tuple(Can(f"theirs-{n}", 1.0, P, n, "p") for n in (1, 2, 9999))
    cans = [r for r in merged(mine, theirs).records if isinstance(r, Can)]
    assert sorted(can.number for can in cans) == [1, 2, 3, 4, 9999]


def weighed(name: str, at_s: float, can: str = "can") -> CanWeighed:
    return CanWeighed(name, at_s, P, can, 912.0, 118.0, 794.0)


def ids(records: tuple[Record, ...]) -> list[str]:
    return [record.id for record in records]


def test_entries_of_two_phones_fall_in_by_their_instants() -> None:
    here = (weighed("h1", 10.0), weighed("h2", 30.0), Paint("p", 99.0, P, "changed late"))
    file = (Paint("q", 99.0, P, "q"), weighed("f1", 5.0), weighed("f2", 20.0), weighed("f3", 40.0))
    assert ids(merged(here, file).records) == ["q", "f1", "h1", "f2", "h2", "p", "f3"]


def test_what_follows_an_entry_that_both_have_stays_behind_it_though_a_clock_is_slow() -> None:
    both = weighed("both", 100.0)
    here, file = (both, weighed("h", 200.0)), (both, weighed("slow", 95.0))
    assert ids(merged(here, file).records) == ["both", "slow", "h"]


ENTRIES = st.lists(st.tuples(st.integers(0, 9), st.integers(0, 12)), max_size=8, unique=True)


@settings(max_examples=200)
@given(ENTRIES, ENTRIES)
def test_each_phones_entries_keep_their_order_and_none_is_lost(
    here: list[tuple[int, int]], file: list[tuple[int, int]]
) -> None:
    def entries(phone: str, some: list[tuple[int, int]]) -> tuple[Record, ...]:
        return tuple(weighed(f"{phone}{n}-{at}", float(at)) for n, at in some)

    mine, theirs = entries("h", here), entries("f", file)
    records = merged(mine, theirs).records
    assert tuple(r for r in records if r in mine) == mine
    assert tuple(r for r in records if r in theirs) == theirs
    assert len(records) == len(mine) + len(theirs)
    assert merged(records, theirs).records == records


def test_two_phones_that_swap_their_files_hold_the_same_job() -> None:
    async def run() -> None:
        one, other = await library_with(*JOB.records), await library_with(*JOB.records)
        can = next(record for record in JOB.records if isinstance(record, Can))
        last_s = max(record.at_s for record in JOB.records)
        await one.keep(weighed("at-one", last_s + 10.0, can.id))
        await other.keep(weighed("at-other", last_s + 5.0, can.id), Undone("u", last_s, P, "x"))
        taken_back = next(r.id for r in JOB.records if isinstance(r, Poured))
        await other.keep(Undone("undone", last_s + 6.0, P, taken_back))
        files = read_file(one.export(JOB.job)), read_file(other.export(JOB.job))
        await one.take_in(files[1])
        await other.take_in(files[0])
        assert one.export(JOB.job) == other.export(JOB.job)

    asyncio.run(run())


def test_file_and_book_that_cant_be_drawn_together_are_refused() -> None:
    async def run() -> None:
        pours = [record for record in JOB.records if isinstance(record, Poured)]
        many = (replace(pours[0], id=f"p-{n}", net_g=0.0) for n in range(9_999))
        library = await library_with(*(r for r in JOB.records if r not in pours), *many)
        before = library.export()
        with pytest.raises(Senseless, match="pours_count"):
            await library.take_in(JOB)
        assert library.export() == before

    asyncio.run(run())


def test_what_is_kept_with_it_is_kept_in_the_same_commit_and_all_goes_again() -> None:
    async def run() -> None:
        library = await library_with(*PHONE, *SHOP, *CELLAR)
        before, commits = library.export(), library._book.state.sequence
        taken = await library.take_in(JOB, Settings("settings", 5.0, P, JOB.job or ""))
        assert library._book.state.sequence == commits + 1
        await library.take_back(PHONE[0], forget=tuple(record.id for record in taken.added))
        assert library._book.state.sequence == commits + 2
        assert library.export() == before == (await again(library)).export()
        assert (await library.take_in(JOB)) == taken

    asyncio.run(run())


@pytest.mark.parametrize("kind", TEARS)
def test_a_death_at_any_step_leaves_the_book_with_the_job_or_without(kind: str) -> None:
    async def run(fatal: int, at: int, before: MemoryDoor, states: set[bytes]) -> int:
        dying = DyingDoor(fatal, TEARS[kind], at, before)
        library = await Library.open(dying)
        with pytest.raises(Killed):
            await library.take_in(JOB)
        found = await Library.open(dying.left_behind())
        assert found.export() in states
        assert not found.restored
        return dying.pending()

    async def all_deaths() -> None:
        library = await library_with(*SHOP, *CELLAR)
        before = door_of(library)
        states = {library.export()}
        whole = await again(library)
        await whole.take_in(JOB)
        states.add(whole.export())
        for fatal in range(1, 9):
            pending = await run(fatal, 0, before, states)
            for at in range(1, pending + 1, max(1, pending // 9)):
                await run(fatal, at, before, states)

    asyncio.run(all_deaths())


def test_a_full_phone_takes_nothing_in() -> None:
    async def run() -> None:
        door = SmallDoor()
        library = await Library.open(door)
        await library.keep(*SHOP)
        before, door.room = library.export(), 5000
        with pytest.raises(Full):
            await library.take_in(JOB)
        assert library.export() == before
        door.room = SmallDoor.room
        await library.take_in(JOB)
        assert library.export(JOB.job) != before

    asyncio.run(run())
