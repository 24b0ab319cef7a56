"""The area of a wall that gets painted."""

from dataclasses import dataclass

from core.errors import require
from core.walls.shape import Opening, Wall
from core.working import Step, Working, step

WIDTH_M = 0.01, 500.0  # a strip beside a door to a hall
HEIGHT_M = 0.0, 50.0  # 0 where a gable's side runs out
HIGHER_M = 0.01, 50.0  # the higher side, or the one height
OPENING_M = 0.01, 500.0  # a hatch to a shop front
OPENINGS_COUNT = 1, 1000
DEDUCTED_ABOVE_M2 = 0.0, 100.0
HAIR_M2 = 1e-9  # less than any tape measure: 1.25 × 0.4 is 0.5, whatever binary makes of it

IS_1200 = "IS 1200 (Part 13):1994, clause 3.2"


@dataclass(frozen=True, slots=True)
class PaintedArea:
    """A wall's whole area, what is taken off for openings, and what is left, m²."""

    gross_m2: float
    deducted_m2: float
    net_m2: float
    working: Working


def painted_area(wall: Wall, deducted_above_m2: float = 0.5) -> PaintedArea:
    """Find the area to be painted: the wall without its larger openings.

    Each opening larger than the threshold is taken off; a smaller one is not, as cutting in round
    it takes the time and paint that it saves. Reveals are not added: published rules differ.

    Parameters
    ----------
    wall
        Width 0.01 to 500 m, heights 0 to 50 m and not both 0; openings that fit into it, each
        0.01 m or more both ways.
    deducted_above_m2
        The size, m², that one opening must exceed to be taken off, 0 to 100.

    Returns
    -------
        The area of one face, m², with its working.

    Source: geometry of the trapezium; IS 1200 (Part 13):1994, clause 3.2, for the 0.5 m² rule.

    >>> door = Opening("door", width_m=0.8, height_m=1.82)
    >>> round(painted_area(Wall(5.62, 2.8, 2.8, (door,))).net_m2, 6)
    14.28
    """
    require("deducted_above_m2", deducted_above_m2, *DEDUCTED_ABOVE_M2)
    gross = _gross(wall)
    _require_fit(wall, gross.value)
    openings = tuple(
        line for opening in wall.openings for line in _opening(opening, deducted_above_m2)
    )
    deducted = _sum(tuple(line.value for line in openings if line.name == "opening_deducted_m2"))
    net_m2 = max(0.0, gross.value - deducted.value)  # openings fit, so below 0 is a rounding error
    formula, both = (
        "{gross_m2} − {deducted_m2}",
        {gross.name: gross.value, deducted.name: deducted.value},
    )
    net = step("net_m2", formula, net_m2, "geometry", **both)
    return PaintedArea(gross.value, deducted.value, net_m2, (gross, *openings, deducted, net))


def _gross(wall: Wall) -> Step:
    require("width_m", wall.width_m, *WIDTH_M)
    require("left_height_m", wall.left_height_m, *HEIGHT_M)
    require("right_height_m", wall.right_height_m, *HEIGHT_M)
    require("height_m", max(wall.left_height_m, wall.right_height_m), *HIGHER_M)
    width, left, right = wall.width_m, wall.left_height_m, wall.right_height_m
    if left == right:
        formula = "{width_m} × {height_m}"
        return step("gross_m2", formula, width * left, "geometry", width_m=width, height_m=left)
    return step(
        "gross_m2",
        "{width_m} × ({left_height_m} + {right_height_m}) ÷ 2",
        width * (left + right) / 2,
        "geometry",
        width_m=width,
        left_height_m=left,
        right_height_m=right,
    )


def _require_fit(wall: Wall, gross_m2: float) -> None:
    """Refuse openings that the wall can't hold; where they sit in it is not known."""
    high_m = max(wall.left_height_m, wall.right_height_m)
    total_m2 = 0.0
    for opening in wall.openings:
        require("opening_width_m", opening.width_m, OPENING_M[0], wall.width_m)
        require("opening_height_m", opening.height_m, OPENING_M[0], high_m)
        require("opening_count", opening.count, *OPENINGS_COUNT)
        total_m2 += opening.count * opening.width_m * opening.height_m
    require("openings_m2", total_m2, 0.0, gross_m2 + HAIR_M2)


def _opening(opening: Opening, deducted_above_m2: float) -> tuple[Step, Step]:
    """Find what one opening measures and what is taken off for it."""
    own_m2 = opening.width_m * opening.height_m
    sides = {"opening_width_m": opening.width_m, "opening_height_m": opening.height_m}
    own = step("opening_m2", "{opening_width_m} × {opening_height_m}", own_m2, "geometry", **sides)
    name = "opening_deducted_m2"
    if own_m2 <= deducted_above_m2 + HAIR_M2:
        rule = {"opening_m2": own_m2, "deducted_above_m2": deducted_above_m2}
        return own, step(name, "{opening_m2} ≤ {deducted_above_m2}", 0.0, IS_1200, **rule)
    counted = {"opening_count": float(opening.count), "opening_m2": own_m2}
    total_m2 = opening.count * own_m2
    return own, step(name, "{opening_count} × {opening_m2}", total_m2, IS_1200, **counted)


def _sum(deducted_m2: tuple[float, ...]) -> Step:
    inputs = {f"opening_{i}_m2": m2 for i, m2 in enumerate(deducted_m2, 1)}
    formula = " + ".join(f"{{{name}}}" for name in inputs) or "0"
    return step("deducted_m2", formula, sum(deducted_m2), "geometry", **inputs)
