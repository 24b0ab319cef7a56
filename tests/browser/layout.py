"""What can be wrong with where things lie: they overlap, leave the window, or are too small."""

from itertools import combinations

from tests.browser.phone import Box

HAIR = 1.0  # dp; two boards that meet may share a rounded edge
LEAST = 48.0  # dp; the least side of anything to tap


def overlaps(boxes: tuple[Box, ...]) -> tuple[str, ...]:
    """Name the pairs that lie over each other, though neither is inside the other."""
    parents = {box.id: box.parent for box in boxes}
    whole = [box for box in boxes if not box.cut]
    return tuple(
        f"{one.name!r} and {other.name!r} overlap by {wide:.0f} × {high:.0f}"
        for one, other in combinations(whole, 2)
        if one.id not in line(other.id, parents) and other.id not in line(one.id, parents)
        for wide, high in (shared(one, other),)
        if wide > HAIR and high > HAIR
    )


def line(name: str, parents: dict[str, str]) -> tuple[str, ...]:
    """Name a node and all that it is inside of."""
    found = [name]
    while above := parents.get(found[-1], ""):
        found.append(above)
    return tuple(found)


def shared(one: Box, other: Box) -> tuple[float, float]:
    """Measure what two boxes share: its width and height, negative where they are apart."""
    right = min(one.left + one.width, other.left + other.width)
    bottom = min(one.top + one.height, other.top + other.height)
    return right - max(one.left, other.left), bottom - max(one.top, other.top)


def outside(boxes: tuple[Box, ...], width: float, height: float) -> tuple[str, ...]:
    """Name what leaves the window and can't be scrolled into it."""
    return tuple(
        f"{box.name!r} lies at {box.left:.0f}, {box.top:.0f} to {right:.0f}, {bottom:.0f}"
        for box in boxes
        if not box.cut
        for right, bottom in ((box.left + box.width, box.top + box.height),)
        if min(box.left, box.top) < -HAIR or right > width + HAIR or bottom > height + HAIR
    )


def small(boxes: tuple[Box, ...], least: float = LEAST) -> tuple[str, ...]:
    """Name what is to be tapped and has a side that is too short for a thumb."""
    return tuple(
        f"{box.name!r} is {box.width:.0f} × {box.height:.0f}"
        for box in boxes
        if box.tap and not box.cut and min(box.width, box.height) < least - 0.5
    )
