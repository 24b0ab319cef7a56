"""Where the steps are done: a coat is one step in one place, a whole wall or a zone of one."""

from dataclasses import dataclass

from core.coats.schedule import HAND_OVER, PlannedStep
from core.errors import require
from core.waits.pair import PairWait

ZONED = "glaze", "opaque"  # what is painted inside the picture; the rest is on whole walls
COATS_COUNT = 1, 20
PLACES_COUNT = 0, 1000


@dataclass(frozen=True, slots=True)
class Place:
    """A whole wall, or a zone of one; `wall` is the wall's own key, and a whole wall's `id`.

    A zone has the use of its mix, and so many coats of it; a whole wall has neither.
    """

    id: str
    wall: str
    use: str = ""
    coats_count: int = 1

    @property
    def whole(self) -> bool:
        """Whether it is a whole wall."""
        return self.id == self.wall


@dataclass(frozen=True, slots=True)
class Coat:
    """One step in one place; `coats_count` above 1 where the step is done more than once there."""

    step: str
    place: str
    wall: str
    coats_count: int = 1


Done = frozenset[tuple[str, str]]  # (step, place) of the coats that are finished


def coats_of(steps: tuple[PlannedStep, ...], places: tuple[Place, ...]) -> tuple[Coat, ...]:
    """Find all coats of a job, in the order of its schedule.

    A step of the picture (`ZONED`) is done in the zones of its use, in the first so many as the
    zone has coats; what is left over falls to the last of them. While the job has no zone of that
    use it is done on whole walls, as every other step is.

    Parameters
    ----------
    steps
        The schedule; the hand-over is no coat.
    places
        Up to 1000 walls and zones, 1 to 20 coats each.

    Returns
    -------
        One coat a step and place.

    Source: this project's planning model.

    >>> glaze = PlannedStep("g1", "glaze 1", "glaze"), PlannedStep("g2", "glaze 2", "glaze")
    >>> wall, leaf = Place("w", "w"), Place("leaf", "w", "glaze", 1)
    >>> [(coat.step, coat.place) for coat in coats_of(glaze, (wall, leaf))]
    [('g1', 'leaf')]
    """
    require("places_count", len(places), *PLACES_COUNT)
    for place in places:
        require("coats_count", place.coats_count, *COATS_COUNT)
    return tuple(
        coat
        for step in steps
        if step.use != HAND_OVER
        for place in places
        for coat in _coats(step, place, steps, places)
    )


def _coats(
    step: PlannedStep, place: Place, steps: tuple[PlannedStep, ...], places: tuple[Place, ...]
) -> tuple[Coat, ...]:
    """Give the coat of a step in a place, or none."""
    if step.walls and place.wall not in step.walls:
        return ()
    zoned = step.use in ZONED and any(not p.whole and p.use == step.use for p in places)
    if zoned == place.whole or (zoned and place.use != step.use):
        return ()
    if not zoned:
        return (Coat(step.id, place.id, place.wall),)
    alike = [s.id for s in steps if s.use == step.use and (not s.walls or place.wall in s.walls)]
    number, last = alike.index(step.id), len(alike) - 1
    count = place.coats_count - number if number == last else int(place.coats_count > number)
    return (Coat(step.id, place.id, place.wall, count),) if count > 0 else ()


def coats_left(coats: tuple[Coat, ...], done: Done, place: str) -> tuple[Coat, ...]:
    """Find what is still to do in a place.

    A coat that lies under a finished one can't be laid any more: it was left out.

    Parameters
    ----------
    coats
        All of the job, in the order of its schedule.
    done
        The step and place of each that is finished.
    place
        The key of a wall or a zone.

    Returns
    -------
        The coats of that place after the last finished one.

    Source: this project's planning model.

    >>> base = Coat("b1", "w", "w"), Coat("b2", "w", "w"), Coat("b3", "w", "w")
    >>> [coat.step for coat in coats_left(base, frozenset({("b2", "w")}), "w")]
    ['b3']
    """
    own = tuple(coat for coat in coats if coat.place == place)
    laid = [number for number, coat in enumerate(own, 1) if (coat.step, coat.place) in done]
    return own[max(laid, default=0) :]


def coats_before(coats: tuple[Coat, ...], coat: Coat) -> tuple[Coat, ...]:
    """Find the coats under one: those of earlier steps in its place, on its wall or in its zones.

    Zones of one wall lie beside each other: none waits for another.

    Parameters
    ----------
    coats
        All of the job, in the order of its schedule.
    coat
        One of them.

    Returns
    -------
        The coats that have to be finished first, in their order.

    Source: this project's planning model.

    >>> base, film, leaf = Coat("b", "w", "w"), Coat("f", "w", "w"), Coat("g", "leaf", "w")
    >>> [under.step for under in coats_before((base, film, leaf), leaf)]
    ['b', 'f']
    """
    steps = list(dict.fromkeys(one.step for one in coats))
    earlier = set(steps[: steps.index(coat.step)])
    return tuple(
        one
        for one in coats
        if one.step in earlier
        and one.wall == coat.wall
        and (one.place == coat.place or coat.wall in {one.place, coat.place})
    )


def waits_before(
    coats: tuple[Coat, ...], waits: tuple[PairWait, ...], coat: Coat
) -> tuple[tuple[Coat, PairWait], ...]:
    """Find the waits that a coat has to keep, each with the coat that it runs from.

    Parameters
    ----------
    coats
        All of the job, in the order of its schedule.
    waits
        Between steps.
    coat
        One of the coats.

    Returns
    -------
        A wait for each coat under it whose step has one before this step.

    Source: this project's planning model: a wait joins steps, and runs from each coat's own end.

    >>> from core.waits.pair import Wait
    >>> base, film = Coat("b", "w", "w"), Coat("f", "w", "w")
    >>> day = PairWait("b", "f", Wait(86400.0))
    >>> waits_before((base, film), (day,), film)[0][0].step
    'b'
    """
    asked = {pair.after: pair for pair in waits if pair.before == coat.step}
    under = coats_before(coats, coat)
    return tuple((one, asked[one.step]) for one in under if one.step in asked)
