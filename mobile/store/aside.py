"""What is kept aside for good, under names that a person can be shown.

Damaged files are `duskcoat.aside-1` and so on; what stood in the book before a backup took its
place is `duskcoat.before-1.json`, a file as `export.py` has it.
"""

from typing import Final

from mobile.store.door import Door

DAMAGED: Final = "aside-{}"
BEFORE: Final = "before-{}.json"


def _name(door: Door, kind: str, number: int) -> str:
    return f"{door.name}.{kind.format(number)}"


async def names_aside(door: Door, kind: str = DAMAGED) -> tuple[str, ...]:
    """List what of one kind was ever set aside, oldest first."""
    names: list[str] = []
    while await door.aside(name := _name(door, kind, len(names) + 1)) is not None:
        names.append(name)
    return tuple(names)


async def put_aside(door: Door, data: bytes, kind: str = DAMAGED) -> str:
    """Set data aside for good and return its name; what is there already is not set aside again.

    What a start that was cut short left of the same data is written on; nothing else is.
    """
    number = 1
    while (found := await door.aside(_name(door, kind, number))) is not None:
        if found.startswith(data):
            return _name(door, kind, number)
        if data.startswith(found):
            break
        number += 1
    name = _name(door, kind, number)
    await door.set_aside(name, data)
    if await door.aside(name) != data:
        raise OSError(f"{name} does not read as it was written")
    return name
