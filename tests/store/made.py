"""Records of every kind, made up from their types alone."""

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from types import NoneType, UnionType
from typing import Any, Union, cast, get_args, get_origin

from hypothesis import strategies as st

from mobile.store.records import Draft, Entry, Poured, Record

KINDS: tuple[type[Record], ...] = get_args(Record)
ENTRIES: tuple[type[Record], ...] = get_args(Entry)
PHONE = "6f1c2a34-0000-4000-8000-000000000001"

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


def poured(n: int, pot: str = "pot", paint: str = "paint", can: str = "can") -> Poured:
    """Give the nth pour."""
    return Poured(f"pour-{n}", 1.9e9 + n, PHONE, pot, paint, can, 77.3, 231.9)


def draft(n: int, form: str = "weigh") -> Draft:
    """Give a draft as typed the nth time."""
    return Draft(form, 1.9e9 + n, PHONE, (("grams", f"{n}."),))


def places(value: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[tuple[Any, ...], Any]]:
    """Give the path of everything inside a JSON value, with what it lies in."""
    for key in list(value) if isinstance(value, dict) else range(len(value)):
        yield (*path, key), value
        if isinstance(value[key], (dict, list)):
            yield from places(value[key], (*path, key))
