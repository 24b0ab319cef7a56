"""A record as a document of the book, and back.

The record's class says it all: its name is the table, its fields are the document's, their types
are what is let through. Tuples are JSON arrays, dataclasses are
objects. A missing or unknown field, a wrong type, NaN and infinity are refused with the path to
the place. (A general library for this was tried: it took 45 µs for a record that takes 4 µs here,
and let NaN, and true for a number, through.)
"""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from functools import cache
from math import isfinite
from types import NoneType, UnionType
from typing import Any, Final, Union, cast, get_args, get_origin

from mobile.store.errors import Unreadable
from mobile.store.records import Record

KINDS: Final[dict[str, type[Record]]] = {kind.__name__: kind for kind in get_args(Record)}

Reader = Callable[[Any], Any]


def encode(record: Record) -> dict[str, Any]:
    """Give a record's fields."""
    plain: dict[str, Any] = _plain(record)
    return plain


def decode(kind: type[Record], document: dict[str, Any]) -> Record:
    """Make a record of its fields; raise `Unreadable` if they aren't exactly those of that kind."""
    if KINDS.get(kind.__name__) is not kind:
        raise Unreadable(f"{kind.__name__} is no kind of record")
    return cast(Record, _reader(kind)(document))


def _plain(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain(each) for each in value]
    names = names_of(value.__class__)
    return {name: _plain(getattr(value, name)) for name in names} if names else value


@cache
def names_of(kind: type) -> tuple[str, ...]:
    """Give the fields of a record, or of what lies in one; none of a text or a number."""
    return tuple(field.name for field in fields(kind)) if is_dataclass(kind) else ()


def _reader(hint: Any) -> Reader:
    """Choose how a value of a type is read; the first time that takes a moment."""
    return _chosen(hint)


@cache
def _chosen(hint: Any) -> Reader:
    if hint in _SCALARS:
        return _SCALARS[hint]
    if is_dataclass(hint):
        return _object(cast(type, hint))
    origin, inner = get_origin(hint), get_args(hint)
    if origin is tuple:
        return _array(_reader(inner[0])) if inner[1:] == (...,) else _fixed(inner)
    some = [each for each in inner if each is not NoneType]
    if origin in {Union, UnionType} and len(some) == 1:
        return _optional(_reader(some[0]))
    raise TypeError(f"no record may hold {hint}")


def _text(value: Any) -> str:
    if isinstance(value, str):
        return str(value)
    raise Unreadable(f"{value!r:.40} is no text")


def _bool(value: Any) -> bool:
    if value is True or value is False:
        return value
    raise Unreadable(f"{value!r:.40} is neither true nor false")


def _int(value: Any) -> int:
    if type(value) is int:
        return value
    raise Unreadable(f"{value!r:.40} is no whole number")


def _float(value: Any) -> float:
    if type(value) is float and isfinite(value):
        return value
    if type(value) is int and abs(value) <= 1 << 53:  # a whole number that a float holds exactly
        return float(value)
    raise Unreadable(f"{value!r:.40} is no finite number")


_SCALARS: Final[dict[object, Reader]] = {str: _text, bool: _bool, int: _int, float: _float}


def _object(kind: type) -> Reader:
    readers = tuple((field.name, _reader(field.type)) for field in fields(kind))
    names = {name for name, _ in readers}

    def read(value: Any) -> Any:
        if not isinstance(value, dict):
            raise Unreadable(f"{value!r:.40} is no {kind.__name__}")
        if value.keys() != names:
            odd = sorted(value.keys() ^ names)
            raise Unreadable(f"{'unknown' if odd[0] in value else 'missing'}", (str(odd[0]),))
        try:
            return kind(*[reader(value[name]) for name, reader in readers])
        except Unreadable:
            _tell_where(readers, value)
            raise

    return read


def _tell_where(readers: tuple[tuple[str, Reader], ...], value: dict[str, Any]) -> None:
    for name, reader in readers:
        try:
            reader(value[name])
        except Unreadable as problem:
            raise problem.under(name) from None


def _array(item: Reader) -> Reader:
    return lambda value: tuple([_at(item, number, each) for number, each in _items(value)])


def _fixed(hints: tuple[Any, ...]) -> Reader:
    readers = tuple(map(_reader, hints))

    def read(value: Any) -> tuple[Any, ...]:
        items = _items(value)
        if len(items) != len(readers):
            raise Unreadable(f"{len(items)} values instead of {len(readers)}")
        return tuple(_at(readers[number], number, each) for number, each in items)

    return read


def _optional(reader: Reader) -> Reader:
    return lambda value: None if value is None else reader(value)


def _items(value: Any) -> list[tuple[int, Any]]:
    if isinstance(value, (list, tuple)):
        return list(enumerate(value))
    raise Unreadable(f"{value!r:.40} is no list")


def _at(reader: Reader, number: int, value: Any) -> Any:
    try:
        return reader(value)
    except Unreadable as problem:
        raise problem.under(str(number)) from None
