"""A recipe: how many parts by mass of each paint."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Part:
    """So many parts by mass of one paint; `paint` is its key, the parts are plain counts."""

    paint: str
    parts_count: float
