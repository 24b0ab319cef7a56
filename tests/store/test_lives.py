"""Whole lives of a book beside a plain dictionary: kept, forgotten, full, killed, damaged."""

import asyncio
import random
from collections.abc import Coroutine
from contextlib import suppress
from typing import Any

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from mobile.store.door import COPY
from mobile.store.errors import Damaged, Full
from mobile.store.library import Library
from mobile.store.records import Record
from mobile.store.seal import unsealed
from tests.store import made
from tests.store.bad_doors import TEARS, DyingDoor, Killed

State = dict[str, Record]
NEVER = 10**9
THINGS = tuple(kind for kind in made.KINDS if kind not in made.ENTRIES)


class FailingDoor(DyingDoor):
    """Dies when told to, and has as much room as it is told."""

    room = NEVER

    def write(self, number: int, data: bytes) -> None:
        if len(data) > self.room:
            super().write(number, data[: self.room])
            raise Full(f"only {self.room} of {len(data)} bytes fitted")
        super().write(number, data)


def done(verb: Coroutine[Any, Any, Any]) -> Any:
    return asyncio.run(verb)


class Lives(RuleBasedStateMachine):
    """A library and what should be in it."""

    @initialize()
    def begin(self) -> None:
        self.door = FailingDoor(NEVER, TEARS["cut off"], 0)
        self.start()
        self.model: State = {}
        self.history: list[tuple[Record, ...]] = [()]
        self.number = 0

    def start(self) -> None:
        self.library: Library = done(Library.open(self.door, made.PHONE))

    def verb(self, records: list[Record], forget: tuple[str, ...]) -> State:
        """Keep and forget; return what should then be there."""
        after = {**self.model, **{record.id: record for record in records}}
        after = {key: record for key, record in after.items() if key not in forget}
        done(self.library.keep(*records, forget=forget))
        return after

    def fresh(self, data: st.DataObject) -> tuple[list[Record], tuple[str, ...]]:
        """Draw a verb that a book may do."""
        records: list[Record] = []
        for _ in range(data.draw(st.integers(0, 3))):
            self.number += 1
            records.append(made.poured(self.number))
        forms = st.sampled_from(["weigh", "walls/new", "cans/new"])
        records += [made.draft(data.draw(st.integers(0, 9)), f) for f in data.draw(st.sets(forms))]
        return records, tuple(data.draw(st.sets(forms, max_size=2)))

    @rule(data=st.data())
    def keep(self, data: st.DataObject) -> None:
        self.model = self.verb(*self.fresh(data))

    @rule(data=st.data(), room=st.integers(0, 400))
    def keep_with_little_room(self, data: st.DataObject, room: int) -> None:
        records, forget = self.fresh(data)
        self.door.room = room
        with suppress(Full):
            self.model = self.verb(records, forget)
        self.door.room = NEVER

    @rule()
    def start_again(self) -> None:
        self.start()

    @rule(
        data=st.data(),
        fatal=st.integers(1, 9),
        kind=st.sampled_from(sorted(TEARS)),
        at=st.integers(0, 3000),
    )
    def die_in_mid_verb(self, data: st.DataObject, fatal: int, kind: str, at: int) -> None:
        records, forget = self.fresh(data)
        before = self.model
        after = {**before, **{record.id: record for record in records}}
        after = {key: record for key, record in after.items() if key not in forget}
        self.door.left, self.door.tear, self.door.at = fatal, TEARS[kind], at
        self.door.flushed = list(self.door.files)
        with suppress(Killed):
            self.model = self.verb(records, forget)
        left = self.door.left_behind()
        self.door = FailingDoor(NEVER, TEARS["cut off"], 0, left)
        self.start()
        found = {record.id: record for record in self.library.records()}
        assert found in (before, after)
        assert not self.library.restored
        self.model = found

    @rule(seed=st.integers(0, 10**6))
    def damage_one_slot(self, seed: int) -> None:
        """The older one: the newest state is still there."""
        older = (self.library._book.state.sequence + 1) % 2
        self.door.files[older] = spoiled(self.door.files[older], random.Random(seed))
        self.start()

    @rule(seed=st.integers(0, 10**6))
    def damage_both_slots(self, seed: int) -> None:
        """The copy opens, as it was once committed; without one the book is refused untouched."""
        chance, before = random.Random(seed), list(self.door.files)
        if not all(before[:COPY]):
            return
        self.door.files = [*(spoiled(data, chance) for data in before[:COPY]), before[COPY]]
        damaged = list(self.door.files)
        if unsealed(before[COPY]):
            self.start()
            assert self.library.restored
            assert self.library.records() in self.history
            for data in damaged[:COPY]:
                assert any(kept.startswith(data) for kept in self.door.asides.values())
            self.model = {record.id: record for record in self.library.records()}
        else:
            with pytest.raises(Damaged):
                self.start()
            assert self.door.files == damaged
            self.door.files = before
            self.start()

    @invariant()
    def memory_is_the_model(self) -> None:
        if hasattr(self, "library"):
            assert self.library.records() == tuple(self.model.values())
            self.history.append(self.library.records())

    @invariant()
    def another_start_finds_the_model(self) -> None:
        if hasattr(self, "library"):
            again = done(Library.open(self.door.left_behind()))
            assert again.records() == tuple(self.model.values())
            assert not again.restored


def spoiled(data: bytes, chance: random.Random) -> bytes:
    if not data:
        return data
    flipped = bytearray(data)
    flipped[chance.randrange(min(len(data), 22))] ^= 1 << chance.randrange(
        8
    )  # behind the seal, stale bytes don't matter
    return bytes(flipped)[: chance.choice((len(data), chance.randrange(1, 30)))]


TestLives = Lives.TestCase
TestLives.settings = settings(max_examples=60, stateful_step_count=20, deadline=None)
