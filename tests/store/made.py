"""Records of every kind, made up from their types alone."""

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from types import NoneType, UnionType
from typing import Any, Union, cast, get_args, get_origin

from hypothesis import strategies as st

from mobile.store.entries import Entry
from mobile.store.records import Record
from tests.store.pour_and_draft import PHONE, draft, poured

__all__ = ["PHONE", "draft", "poured"]

KINDS: tuple[type[Record], ...] = get_args(Record)
ENTRIES: tuple[type[Record], ...] = get_args(Entry)

_SCALARS: dict[Any, st.SearchStrategy[Any]] = {
    NoneType: st.none(),
    str: st.text(st.characters(codec="utf-8"), max_size=12),
    bool: st.booleans(),
    int: st.integers(-(2**70), 2**70),
    float: st.floats(allow_nan=False, allow_infinity=False),
}


def values(hint: Any) -> st.SearchStrategy[Any]:
    """Make values of a type."""
    if hint in _SCALARS:
        made = _SCALARS[hint]
    elif is_dataclass(hint):
        parts = {field.name: values(field.type) for field in fields(hint)}
        made = st.builds(cast(type, hint), **parts)
    elif get_origin(hint) is tuple and get_args(hint)[-1] is ...:
        made = st.lists(values(get_args(hint)[0]), max_size=3).map(tuple)
    elif get_origin(hint) is tuple:
        made = st.tuples(*map(values, get_args(hint)))
    else:
        assert get_origin(hint) in (Union, UnionType)
        made = st.one_of(*map(values, get_args(hint)))
    return made


def records(kinds: tuple[type[Record], ...] = KINDS) -> st.SearchStrategy[Record]:
    """Make records of some kinds."""
    return st.sampled_from(kinds).flatmap(values)


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[tuple[Any, ...], Any]]:
    """Give the path of everything inside a JSON value, with what it lies in."""
    for key in list(value) if isinstance(value, dict) else range(len(value)):
        yield (*path, key), value
        if isinstance(value[key], (dict, list)):
            yield from places(value[key], (*path, key))
