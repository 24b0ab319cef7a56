"""Damaged files are kept under names that a person can be shown: `duskcoat.aside-1` and so on."""

from mobile.store.door import Door


def _name(door: Door, number: int) -> str:
    return f"{door.name}.aside-{number}"


async def names_aside(door: Door) -> tuple[str, ...]:
    """List what was ever set aside, oldest first."""
    names: list[str] = []
    while await door.aside(name := _name(door, len(names) + 1)) is not None:
        names.append(name)
    return tuple(names)


async def put_aside(door: Door, data: bytes) -> str:
    """Set data aside for good and return its name; what is there already is not set aside again.

    What a start that was cut short left of the same data is written on; nothing else is.
    """
    number = 1
    while (found := await door.aside(_name(door, number))) is not None:
        if found.startswith(data):
            return _name(door, number)
        if data.startswith(found):
            break
        number += 1
    name = _name(door, number)
    await door.set_aside(name, data)
    if await door.aside(name) != data:
        raise OSError(f"{name} does not read as it was written")
    return name
