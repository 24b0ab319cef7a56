"""The wait between two steps on one wall."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Wait:
    """From the end of a step to the start of the next: at least, and at most if the label says.

    Both in s.
    """

    minimum_s: float
    maximum_s: float | None = None
