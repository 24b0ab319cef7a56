"""Two thousand spoiled books are refused, or read as what they say."""

import copy
import json
import random
from collections import Counter
from typing import Any

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from mobile.store import rows
from mobile.store.contents import Contents, Kept, document_of, read_contents
from mobile.store.errors import Newer, Unreadable
from mobile.store.migrations import schema_of
from mobile.store.records import Record
from tests.store import made

BOOKS = 40
SPOILED = 2000
WORDS = ("", "order", "id", "schema", "about", "Poured", "paint", "\ud83d", "x" * 99)
VALUES: tuple[Any, ...] = (
    *(None, True, False, 0, 1, -1, 2, 5.5, -0.0, 1e308, 10**30, "", "5", [], {}, [[]], {"a": {}}),
    *(float("nan"), float("inf"), {"order": 1}, [None], ["a", "b"], [["a", "b"]]),
)


def document(kept: tuple[Kept, ...], device: str = made.PHONE) -> dict[str, Any]:
    """Give the document of a book."""
    tables: dict[str, Any] = {"about": {"about": {"device": device, "schema": schema_of()}}}
    for each in kept:
        name = type(each.record).__name__
        tables.setdefault(name, {})[each.record.id] = document_of(each)
    return tables


def written(tables: Any) -> bytes:
    """Write any JSON value as a spoiled file might hold it, NaN and all."""
    return json.dumps(tables).encode("ascii")


def same(one: Any, other: Any) -> bool:
    """Say whether two JSON values are the same; 5 may stand for 5.0, true not for 1."""
    numbers = (int, float)
    if type(one) in numbers and type(other) in numbers:
        return bool(one == other)
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(same(one[key], other[key]) for key in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(same, one, other))
    return type(one) is type(other) and bool(one == other)


def spoil(tables: Any, chance: random.Random) -> None:
    """Change one thing somewhere."""
    path, where = chance.choice(list(made.places(tables)))
    key = path[-1]
    where[key] = copy.deepcopy(chance.choice([*VALUES, where[key]]))
    if chance.random() < 0.5:
        return
    if isinstance(where, dict):
        old = where.pop(key)
        if chance.random() < 0.5:
            where[chance.choice(WORDS)] = old
    else:
        where.insert(chance.randrange(len(where) + 1), copy.deepcopy(chance.choice(VALUES)))


def outcome(data: bytes) -> str:
    """Read a spoiled book; say how it went, and insist that it is one of the right ways."""
    try:
        found = read_contents(data)
    except (Unreadable, Newer) as refusal:
        return type(refusal).__name__ if str(refusal) else "refused without a word"
    plain = {name: documents for name, documents in json.loads(data).items() if documents}
    if plain:  # a book that calls itself older, and holds nothing that has changed since
        plain["about"]["about"]["schema"] = schema_of()
    assert same(document(found.kept, found.device) if plain else {}, plain)
    return "read"


@st.composite
def books(draw: st.DrawFn) -> tuple[Kept, ...]:
    given = draw(st.lists(made.records(), min_size=1, max_size=12, unique_by=lambda r: r.id))
    return tuple(Kept(number, record) for number, record in enumerate(given, 1))


@given(books())
def test_a_book_comes_back_in_its_order(kept: tuple[Kept, ...]) -> None:
    tables = {name: rows.table(documents) for name, documents in document(kept).items()}
    found = read_contents(rows.written(tables))
    assert found.kept == kept
    assert found.device == made.PHONE
    assert found.tables == tables


def test_two_thousand_spoiled_books_are_refused_or_read_as_what_they_say() -> None:
    whole: list[tuple[Kept, ...]] = []

    @settings(max_examples=BOOKS, database=None, phases=[Phase.generate])
    @given(books())
    def gather(kept: tuple[Kept, ...]) -> None:
        whole.append(kept)

    gather()
    chance = random.Random(1)
    seen: Counter[str] = Counter()
    for number in range(SPOILED):
        tables = document(whole[number % len(whole)])
        for _ in range(chance.choice((1, 1, 1, 2, 5))):
            spoil(tables, chance)
            if not tables:
                break
        seen[outcome(written(tables))] += 1
    assert seen.total() == SPOILED
    assert {"Unreadable", "read"} <= set(seen) <= {"Unreadable", "Newer", "read"}


def test_two_thousand_books_with_spoiled_bytes_are_refused_or_read_as_what_they_say() -> None:
    chance = random.Random(3)
    records: list[Record] = [*map(made.poured, range(3)), made.draft(1)]
    whole = written(document(tuple(Kept(n, record) for n, record in enumerate(records, 1))))
    seen: Counter[str] = Counter()
    for _ in range(2000):
        data = bytearray(whole)
        for _ in range(chance.choice((1, 1, 3))):
            at = chance.randrange(len(data))
            data[at : at + chance.randrange(2)] = chance.choice(
                (b"", b"9", b"\xff", b'"', b"{", b"e")
            )
        seen[outcome(bytes(data))] += 1
    assert {"Unreadable", "read"} <= set(seen) <= {"Unreadable", "Newer", "read"}


@pytest.mark.parametrize(
    "data",
    [b"", b"[]", b"null", b"{", b"\xff", b"[" * 100_000, b'{"a":' * 100_000, b'{"Poured":[]}'],
)
def test_what_is_no_book_at_all_is_refused(data: bytes) -> None:
    with pytest.raises(Unreadable):
        read_contents(data)


def test_an_empty_document_is_a_new_book() -> None:
    assert read_contents(b"{}") == Contents({}, "", ())


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"Brush": {}}, "Brush: unknown kind"),
        ({"Draft": {"pour-1": {"order": 9}}}, "missing"),
        ({"about": {"about": {"schema": 2}}}, "about: not what"),
        ({"about": {"about": {"schema": 2, "device": ""}}}, "about.about.device"),
        ({"about": {"about": {"schema": True, "device": "a"}}}, "about.about.schema"),
        ({"about": {}}, "about.about.schema: no schema"),
        ({"about": {"about": {"schema": 2, "device": "a"}, "more": {}}}, "about: not what"),
    ],
)
def test_what_does_not_belong_in_a_book_is_refused(change: dict[str, Any], said: str) -> None:
    tables = {**document((Kept(1, made.poured(1)),)), **change}
    with pytest.raises(Unreadable, match=said):
        read_contents(written(tables))


@pytest.mark.parametrize(("order", "again"), [(2, 2), (1, 1)])
def test_one_place_in_the_order_holds_one_record(order: int, again: int) -> None:
    kept = (Kept(order, made.poured(1)), Kept(again, made.poured(2)))
    with pytest.raises(Unreadable, match="one place"):
        read_contents(written(document(kept)))


def test_one_id_names_one_record() -> None:
    kept = (Kept(1, made.draft(1, "a")), Kept(2, made.poured(1)))
    tables = document(kept)
    tables["Draft"]["pour-1"] = tables["Draft"].pop("a")
    with pytest.raises(Unreadable, match="one id"):
        read_contents(written(tables))
