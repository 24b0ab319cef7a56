"""Cups of a pot: for people, or for walls and zones."""

from dataclasses import dataclass
from string import ascii_lowercase

from core.errors import Refused, require
from core.mixing.cups import cups_g
from mobile.session.known import Known, found
from mobile.session.session import Session, Undo
from mobile.session.walls.amounts import amount_of
from mobile.store.entries import CupFilled, WeighedBack
from mobile.store.pot import Pot
from mobile.words import cups as words

CUPS_COUNT = 2, len(ascii_lowercase)
HAIR_G = 0.05
CUP_ACROSS_M = 0.08  # a usual cup: common practice, no published source


@dataclass(frozen=True, slots=True)
class Cup:
    """A cup of a pot: its letter, for whom or where, what went in, what was weighed back."""

    id: str
    label: str
    whom: str
    net_g: float
    left_g: float | None

    @property
    def now_g(self) -> float:
        """What is in it as far as is known."""
        return self.net_g if self.left_g is None else self.left_g


def cups_of(known: Known, pot: Pot) -> tuple[Cup, ...]:
    """Give the cups that were split off a pot."""
    back = {e.cup: e.net_g for e in known.of(WeighedBack) if e.pot == pot.id}
    return tuple(
        Cup(e.id, e.label, e.whom, e.net_g, back.get(e.id))
        for e in known.of(CupFilled)
        if e.pot == pot.id
    )


def in_pot_and_cups_g(known: Known, pot: Pot) -> float:
    """Give what is in a pot and in its cups, as far as is known."""
    return pot.left_g + sum(cup.now_g for cup in cups_of(known, pot))


def places_of(known: Known, pot: Pot) -> tuple[tuple[str, float], ...]:
    """Give what a pot's mix goes on, each with its square metres times coats."""
    mix = found(known.mixes, pot.started.mix)
    patches = amount_of(known, mix).patches if mix else ()
    return tuple((name, patch.area_m2 * patch.coats_count) for name, patch in patches)


def for_people(pot: Pot, people: tuple[tuple[str, float], ...]) -> tuple[tuple[str, float], ...]:
    """Split what is in a pot over people, each with a share of it."""
    require("cups_count", len(people), *CUPS_COUNT)
    grams = cups_g(pot.left_g, tuple(share for _, share in people), pot.plan.scale_step_g)
    return tuple((name, net_g) for (name, _), net_g in zip(people, grams, strict=True))


def even_count(count: float) -> int:
    """Give a count of cups; refuse half cups."""
    require("cups_count", count, *CUPS_COUNT)
    if not float(count).is_integer():
        raise Refused("cups_count", count, int(count), int(count) + 1)
    return int(count)


def even(pot: Pot, count: float) -> tuple[tuple[str, float], ...]:
    """Split what is in a pot into so many cups alike; nobody is named."""
    grams = cups_g(pot.left_g, (1.0,) * even_count(count), pot.plan.scale_step_g)
    return tuple(("", net_g) for net_g in grams)


def by_area(known: Known, pot: Pot) -> tuple[tuple[str, float], ...]:
    """Split what is in a pot over its walls and zones."""
    places = places_of(known, pot)
    require("cups_count", len(places), *CUPS_COUNT)
    grams = cups_g(pot.left_g, tuple(share for _, share in places), pot.plan.scale_step_g)
    return tuple((name, net_g) for (name, _), net_g in zip(places, grams, strict=True))


async def fill_cups(session: Session, pot: Pot, cups: tuple[tuple[str, float], ...]) -> None:
    """Log that a pot was split; each cup gets the next letter."""
    taken = len(cups_of(session.known, pot))
    require("cups_count", taken + len(cups), 1, CUPS_COUNT[1])
    require("in_pot_g", sum(net_g for _, net_g in cups), 0.0, pot.left_g + HAIR_G)
    letters = ascii_lowercase[taken:]
    entries = tuple(
        CupFilled(*session.stamp(), pot.id, letter, whom, net_g)
        for letter, (whom, net_g) in zip(letters, cups, strict=False)
    )
    await session.keep(*entries, forget=(f"mix/pots/{pot.id}/cups",))
    said = words.split(len(cups), pot.started.number)
    session.tell(said, Undo(entries=tuple(entry.id for entry in entries)))
