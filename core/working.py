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


def step(name: str, formula: str, value: float, source: str, **inputs: float) -> Step:
    """Write down one step of a working.

    Parameters
    ----------
    name
        What comes out, with its SI unit.
    formula
        A template over the names of the inputs.
    value
        What came out.
    source
        Where the formula is from.
    **inputs
        What went in, by name.

    Returns
    -------
        The step.

    >>> step("net_g", "{gross_g} − {tare_g}", 3.0, "definition", gross_g=5.0, tare_g=2.0).inputs
    (('gross_g', 5.0), ('tare_g', 2.0))
    """
    return Step(name, formula, tuple(inputs.items()), value, source)
