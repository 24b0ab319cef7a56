"""What is chosen of a brush-out: what each paint lacks, by day and under the lamp."""

from dataclasses import dataclass, replace

from core.mixing.correct import Lack

RIGHT = "0"
DAY, LAMP = 0, 1


@dataclass(frozen=True, slots=True)
class LackForm:
    """What was chosen: a row a paint, its steps by day and under the lamp."""

    steps: tuple[tuple[str, ...], ...] = ()

    @property
    def lacks(self) -> tuple[Lack, ...]:
        """Read the steps."""
        return tuple(Lack(int(row[DAY]), int(row[LAMP])) for row in self.steps)

    def of_paints(self, count: int) -> "LackForm":
        """Give so many rows: what came into the pot since it was chosen is right so far."""
        rows = (*self.steps, *((RIGHT, RIGHT),) * count)
        return replace(self, steps=rows[:count])

    def chosen(self, at: int, light: int, step: str) -> "LackForm":
        """Give it with one paint's step in one light."""
        row = list(self.steps[at])
        row[light] = step
        return replace(self, steps=(*self.steps[:at], tuple(row), *self.steps[at + 1 :]))
