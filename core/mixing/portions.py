"""Split a batch into portions that the scale can show."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Portion:
    """So many grams of one paint; `paint` is its key."""

    paint: str
    net_g: float
