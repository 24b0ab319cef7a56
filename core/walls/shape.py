"""The shape of a wall and of what is cut out of it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Opening:
    """A door, a window, a hatch: `count` openings of the same size.

    `width_m` and `height_m` are clear sizes, m.
    """

    name: str
    width_m: float
    height_m: float
    count: int = 1


@dataclass(frozen=True, slots=True)
class Wall:
    """A wall with a level foot and two upright sides; its top runs straight between them.

    With equal heights it is a rectangle. All in m.
    """

    width_m: float
    left_height_m: float
    right_height_m: float
    openings: tuple[Opening, ...] = ()
