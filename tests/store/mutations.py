"""Ways in which a file goes wrong on its way, or is made wrong on purpose; all from a seed."""

import copy
import json
import random
from collections.abc import Callable
from typing import Any

from tests.store.made import places

Mutation = Callable[[bytes, random.Random], bytes]
VALUES: tuple[Any, ...] = (
    *(None, True, False, 0, 1, -1, 2, 5.5, -0.0, 1e-300, 1e308, -1e308, 2**53 + 1, 10**30, 10**400),
    *("", "5", "x" * 3000, "settings", "new", "\ud83d", "\u0000", "é", "../..", "#ff7a1a"),
    *([], {}, [[]], {"a": {}}, [None], ["a", "b"], [["a", "b"]], [[0.0, 0.0]] * 30),
    *(float("nan"), float("inf"), float("-inf")),
)
NAMES = (
    "more",
    "id",
    "kind",
    "order",
    "schema",
    "device",
    "job",
    "about",
    "__class__",
    "\ud83d",
    "",
)
OTHERS: tuple[Any, ...] = (
    {"type": "FeatureCollection", "features": [{"type": "Feature", "geometry": None}]},
    {"swagger": "2.0", "info": {"title": "x", "version": "1"}, "paths": {}},
    {"name": "x", "version": "0.1.0", "dependencies": {}},
    {"format": "another", "job": None, "records": [], "schema": 1},
    [{"id": 1, "kind": "Job"}],
)


def written(found: Any) -> bytes:
    """Write any JSON value as a spoiled file might hold it, NaN and all."""
    return json.dumps(found).encode("ascii")


def cut(data: bytes, chance: random.Random) -> bytes:
    """Cut it short."""
    return data[: chance.randrange(len(data))]


def bits(data: bytes, chance: random.Random) -> bytes:
    """Turn some bits."""
    spoiled = bytearray(data)
    for _ in range(chance.choice((1, 1, 2, 40))):
        spoiled[chance.randrange(len(spoiled))] ^= 1 << chance.randrange(8)
    return bytes(spoiled)


def piece(data: bytes, chance: random.Random) -> bytes:
    """Lose a piece, have it twice, or somewhere else."""
    first, last = sorted(chance.randrange(len(data)) for _ in range(2))
    last = min(last, first + 400)
    other = chance.randrange(len(data))
    return chance.choice(
        (
            data[:first] + data[last:],
            data[:last] + data[first:],
            data[:other] + data[first:last] + data[other:],
        )
    )


def digits(data: bytes, chance: random.Random) -> bytes:
    """Put another number where one stands, as no program would write it."""
    spot = chance.randrange(len(data) - 100)
    while not 48 <= data[spot] <= 57:
        spot += 1
    other = chance.choice(
        (b"9" * 5000, b"1e999", b"NaN", b"-Infinity", b"--1", b"0x1f", b"1.", b"9")
    )
    return data[:spot] + other + data[spot + 1 :]


def deep(data: bytes, chance: random.Random) -> bytes:
    """Nest something deep."""
    depth = chance.choice((50, 900, 5000, 100_000))
    start, end = chance.choice((("[", "]"), ('{"a":', "}")))
    value = start * depth + "1" + end * (depth if chance.random() < 0.5 else 0)
    names = data.decode("ascii").split(": ")
    at = chance.randrange(1, len(names))
    return ": ".join([*names[:at], value, *names[at:]]).encode()


def coded(data: bytes, chance: random.Random) -> bytes:
    """Save it in another code."""
    code = chance.choice(("utf-16", "utf-16-le", "utf-32", "utf-8-sig", "cp037"))
    return data.decode("ascii").encode(code)


def another(data: bytes, chance: random.Random) -> bytes:
    """Give a file of another program."""
    return chance.choice(
        (
            written(chance.choice(OTHERS)),
            chance.randbytes(chance.randrange(300)),
            b"",
            b"PK\x03\x04" + data[:200],
            b"<html>" + data + b"</html>",
            data.replace(b"duskcoat-book", b"another-book", 1),
        )
    )


def twice(data: bytes, chance: random.Random) -> bytes:
    """Say a name twice in one object."""
    lines = data.split(b"\n")
    at = chance.randrange(4, len(lines) - 3)
    body, comma = lines[at].removesuffix(b","), lines[at].endswith(b",")
    lines[at] = body[:-1] + b', "at_s": 5.0}' + (b"," if comma else b"")
    return b"\n".join(lines)


def head(data: bytes, chance: random.Random) -> bytes:
    """Change what the file says about itself."""
    found = json.loads(data)
    name = chance.choice(list(found))
    if chance.random() < 0.3:
        del found[name]
    elif chance.random() < 0.3:
        found[chance.choice(NAMES)] = copy.deepcopy(chance.choice(VALUES))
    else:
        found[name] = copy.deepcopy(chance.choice((*VALUES, 1, 2, 3, "duskcoat-book")))
    return written(found)


def value(data: bytes, chance: random.Random) -> bytes:
    """Put something else somewhere."""
    found = json.loads(data)
    path, where = _somewhere(found, chance)
    where[path[-1]] = copy.deepcopy(chance.choice(VALUES))
    return written(found)


def near(data: bytes, chance: random.Random) -> bytes:
    """Make a number somewhat other, or much; a text another one of the same file."""
    found = json.loads(data)
    path, where = _somewhere(found, chance)
    old = where[path[-1]]
    if isinstance(old, float | int):
        where[path[-1]] = type(old)(old * chance.choice((-1, 0, 0.5, 1.01, 2, 1000, 1e9)))
    else:
        _, elsewhere = _somewhere(found, chance)
        where[path[-1]] = copy.deepcopy(chance.choice(list(_values(elsewhere))))
    return written(found)


def swapped(data: bytes, chance: random.Random) -> bytes:
    """Swap two values, of one field in two records or of any two places."""
    found = json.loads(data)
    one, other = (chance.choice(found["records"]) for _ in range(2))
    both = sorted(one.keys() & other.keys())
    name, second = chance.choice(both), chance.choice(both)
    second = name if chance.random() < 0.7 else second
    one[name], other[second] = other[second], one[name]
    return written(found)


def fields(data: bytes, chance: random.Random) -> bytes:
    """Drop a field or a row, or add one."""
    found = json.loads(data)
    path, where = _somewhere(found, chance)
    if chance.random() < 0.5:
        del where[path[-1]]
    elif isinstance(where, dict):
        where[chance.choice(NAMES)] = copy.deepcopy(chance.choice(VALUES))
    else:
        where.append(copy.deepcopy(chance.choice((*where, *VALUES))))
    return written(found)


def whole(data: bytes, chance: random.Random) -> bytes:
    """Drop records, have them twice, or in another order."""
    found = json.loads(data)
    some = found["records"]
    kind = chance.choice(some)["kind"]
    found["records"] = chance.choice(
        (
            [one for one in some if chance.random() < 0.9],
            [one for one in some if one["kind"] != kind],
            [*some, chance.choice(some)],
            [*some, {**chance.choice(some), "id": "another"}],
            chance.sample(some, len(some)),
        )
    )
    return written(found)


def _somewhere(found: Any, chance: random.Random) -> tuple[tuple[Any, ...], Any]:
    """Choose a place, in any record or in the head."""
    inside = found if chance.random() < 0.1 else chance.choice(found["records"])
    return chance.choice(list(places(inside)))


def _values(where: Any) -> Any:
    return where.values() if isinstance(where, dict) else where


MUTATIONS: tuple[Mutation, ...] = (
    *(cut, bits, piece, digits, deep, coded, another, twice, head),
    *(value, near, swapped, fields, whole),
)
