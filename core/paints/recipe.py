"""A recipe: how many parts by mass of each paint."""

from dataclasses import dataclass

from core.errors import require

PARTS_COUNT = 1e-3, 1e5  # a drop of tint to grams written as parts
PAINTS_COUNT = 1, 24  # what anyone weighs into one pot


@dataclass(frozen=True, slots=True)
class Part:
    """So many parts by mass of one paint; `paint` is its key, the parts are plain counts."""

    paint: str
    parts_count: float


def shares(parts: tuple[Part, ...]) -> tuple[float, ...]:
    """Find the mass share of each part.

    Parameters
    ----------
    parts
        1 to 24 different paints, each 0.001 to 100 000 parts.

    Returns
    -------
        One share a part, in the same order; they add up to 1.

    Source: definition of the mass fraction, ISO 80000-9.

    >>> shares((Part("orange", 3), Part("medium", 9)))
    (0.25, 0.75)
    """
    require_recipe(parts)
    total = sum(part.parts_count for part in parts)
    return tuple(part.parts_count / total for part in parts)


def require_recipe(parts: tuple[Part, ...]) -> None:
    """Refuse a recipe that nobody can weigh out.

    Parameters
    ----------
    parts
        1 to 24 different paints, each 0.001 to 100 000 parts; anything else is refused.

    >>> require_recipe((Part("orange", 3),))
    """
    require("paints_count", len(parts), *PAINTS_COUNT)
    require("different_paints_count", len({part.paint for part in parts}), len(parts), len(parts))
    for part in parts:
        require("parts_count", part.parts_count, *PARTS_COUNT)
