"""The trail behind a figure: each step with its inputs, its value and its source."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Step:
    """One step of a working.

    `name` says what comes out and ends in its SI unit (`gross_m2`); `formula` is a template over
    the names of `inputs`, which carry their units in the same way; `words` puts both into the
    person's language and units. `source` is a standard, a handbook, the label, common practice or
    this project's planning model.

    >>> Step("gross_m2", "{width_m} × {height_m}", (("width_m", 5.0), ("height_m", 2.0)),
    ...      10.0, "geometry").name
    'gross_m2'
    """

    name: str
    formula: str
    inputs: tuple[tuple[str, float], ...]
    value: float
    source: str


Working = tuple[Step, ...]
