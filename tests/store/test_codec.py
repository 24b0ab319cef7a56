"""A record comes back as it was; what isn't exactly a record is refused."""

import json
from dataclasses import fields, replace
from types import NoneType
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.mixing.portions import Portion
from core.walls.shape import Opening
from core.walls.shape import Wall as Shape
from mobile.store.codec import KINDS, decode, encode
from mobile.store.entries import PotStarted, Poured
from mobile.store.errors import Unreadable
from mobile.store.records import Record, Wall
from tests.store import made

POURED = made.poured(1)
POT = PotStarted(
    *("pot", 1.9e9, made.PHONE, "job", "mix", "ember wing", 7),
    (Portion("a", 77.3), Portion("b", 154.7)),
    ("can", ""),
    *(0.1, None),
)
WALL = Wall(
    *("wall", 1.9e9, made.PHONE, "job", "Wall 1"),
    Shape(6.2, 2.6, 2.4, (Opening("door", 0.9, 2.0),)),
)
MAY_BE_NONE = ("reads_g", "cup_g")


@pytest.mark.parametrize("kind", made.KINDS, ids=lambda kind: kind.__name__)
def test_every_kind_of_record_comes_back_through_json_as_it_was(kind: type[Record]) -> None:
    @given(made.values(kind))
    def round_trip(record: Record) -> None:
        document = json.loads(json.dumps(encode(record), allow_nan=False))
        back = decode(kind, document)
        assert back == record
        assert repr(back) == repr(record)  # 5 is not 5.0, and -0.0 is not 0.0

    round_trip()


def test_every_kind_has_an_id_an_instant_and_a_device_and_no_field_of_the_books_own() -> None:
    for kind in KINDS.values():
        names = [field.name for field in fields(kind)]
        assert names[:3] == ["id", "at_s", "device"]
        assert "order" not in names
        assert "kind" not in names


def wrong(name: Any, value: Any) -> list[Any]:
    """Give values of other types than this one."""
    fits = {float: (float, int), NoneType: (float, int, NoneType)}.get(type(value), (type(value),))
    others: tuple[Any, ...] = (None, True, 5, 5.5, "5", [], [5], {}, {"x": 5})
    return [
        each
        for each in others
        if type(each) not in fits and not (each is None and name in MAY_BE_NONE)
    ]


@pytest.mark.parametrize("record", [POURED, POT, WALL], ids=lambda record: type(record).__name__)
def test_a_wrong_type_anywhere_is_refused_with_the_path_to_it(record: Record) -> None:
    document = encode(record)
    tried = 0
    for path, where in list(made.places(document)):
        name = path[-1]
        value = where[name]
        for other in wrong(name, value):
            where[name] = other
            with pytest.raises(Unreadable) as refusal:
                decode(type(record), document)
            assert refusal.value.path[: len(path)] == tuple(map(str, path))
            tried += 1
        where[name] = value
    assert tried > 50
    assert decode(type(record), document) == record


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf"), 10**400, 2**60])
def test_what_no_float_holds_is_refused_with_its_path(value: float) -> None:
    document = encode(POT)
    document["portions"][1]["net_g"] = value
    with pytest.raises(Unreadable, match=r"portions\.1\.net_g: .* no finite number") as refusal:
        decode(PotStarted, document)
    assert refusal.value.path == ("portions", "1", "net_g")
    assert len(str(refusal.value)) < 100


def test_a_whole_number_is_taken_for_a_float_and_becomes_one() -> None:
    back = decode(Poured, {**encode(POURED), "net_g": 77})
    assert isinstance(back, Poured)
    assert repr(back.net_g) == "77.0"


@pytest.mark.parametrize("name", [field.name for field in fields(Poured)])
def test_a_missing_field_is_refused_by_name(name: str) -> None:
    document = encode(POURED)
    del document[name]
    with pytest.raises(Unreadable, match="missing") as refusal:
        decode(Poured, document)
    assert refusal.value.path == (name,)


def test_an_unknown_field_is_refused_by_name() -> None:
    with pytest.raises(Unreadable, match="unknown") as refusal:
        decode(Poured, {**encode(POURED), "gram": 5.0})
    assert refusal.value.path == ("gram",)


def test_only_kinds_of_record_are_decoded() -> None:
    kind: Any = Portion
    with pytest.raises(Unreadable, match="no kind"):
        decode(kind, {"paint": "a", "net_g": 5.0})


@given(made.records(), st.sampled_from([float("nan"), float("inf")]))
def test_a_record_that_holds_no_number_is_refused_on_its_way_in(record: Record, bad: float) -> None:
    spoiled = replace(record, at_s=bad)
    with pytest.raises(Unreadable):
        decode(type(spoiled), encode(spoiled))
