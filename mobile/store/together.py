"""What records must be to each other: names that lead somewhere, pots and cans that add up.

Much may lead nowhere in a good book: a zone's wall, a mix's wall, a pot's recipe, a coat's place
and step can have been taken off the job since. What is asked here always holds in one.
"""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from typing import Any, Final, get_args

from core.cans.drying import Air, dried_off
from core.cans.ledger import balance
from core.coats.places import PLACES_COUNT
from core.errors import Refused, require
from core.mixing.over_pour import answers
from core.mixing.plan import NET_G, targets_g
from core.mixing.weigh_out import next_pour
from mobile.store import entries as e
from mobile.store.errors import Astray, Senseless
from mobile.store.pot import Pot
from mobile.store.pot_of import OfAPot, pot_of
from mobile.store.records import Can, Job, Mix, Paint, Record, Wall, Zone
from mobile.store.sense import name_of

_ENTRIES: Final = get_args(e.Entry)
COATS_COUNT: Final = 0, 20_000  # of a job: with more the phone would stand still
_COUNTS: Final[tuple[tuple[Any, tuple[str, ...]], ...]] = (
    (Wall | Zone, ("job",)),
    (e.Poured, ("pot", "can")),
    (e.CanWeighed | e.LidOff, ("can",)),
    (
        e.MadeMore | e.KeptOver | e.ScaleRestarted | e.AimChanged | e.Spilt,
        ("pot",),
    ),
    (e.StrayPoured, ("pot", "can")),
    (e.CupFilled | e.WeighedBack, ("pot",)),
)
Found = Mapping[str, Record]


def require_leads(records: Iterable[Record]) -> None:
    """Raise `Astray` for the first record whose name of another leads nowhere.

    An entry that was taken back may: what it names went with it.
    """
    found = {record.id: record for record in records}
    undone = {record.entry for record in found.values() if isinstance(record, e.Undone)}
    for record in found.values():
        field = "" if record.id in undone else _astray(record, found)
        if field:
            raise Astray(type(record).__name__, name_of(record), field)


def _is(kind: type, field: str) -> Callable[[Any, Found], bool]:
    """Ask whether a field names a record of some kind."""
    return lambda record, found: isinstance(found.get(getattr(record, field)), kind)


def _on_its_wall(zone: Zone, found: Found) -> bool:
    wall = found.get(zone.wall)
    return not isinstance(wall, Wall) or wall.job == zone.job


def _of_paints(mix: Mix, found: Found) -> bool:
    return all(isinstance(found.get(part.paint), Paint | e.LeftoverKept) for part in mix.parts)


def _into_or_out_of(pour: e.Poured | e.StrayPoured, found: Found) -> bool:
    """Ask for the pot or the can: a pour into another job's pot comes with its can alone."""
    into = isinstance(found.get(pour.pot), e.PotStarted)
    return into or isinstance(found.get(pour.can), Can)


def _of_an_entry(undone: e.Undone, found: Found) -> bool:
    return isinstance(found.get(undone.entry), _ENTRIES)


_LEADS: Final[tuple[tuple[Any, str, Callable[[Any, Found], bool]], ...]] = (
    (Wall | Zone | Mix | e.PotStarted | e.CoatFinished, "job", _is(Job, "job")),
    (Zone, "wall", _on_its_wall),
    (Mix, "parts", _of_paints),
    (Can, "paint", _is(Paint, "paint")),
    (e.CanWeighed | e.LidOff | e.CanStirred, "can", _is(Can, "can")),
    (e.Poured | e.StrayPoured, "pot", _into_or_out_of),
    (
        e.MadeMore
        | e.KeptOver
        | e.ScaleRestarted
        | e.TippedOut
        | e.Stirred
        | e.AimChanged
        | e.Spilt
        | e.CupFilled
        | e.WeighedBack
        | e.StoodOpen
        | e.ThrownAway
        | e.LeftoverKept,
        "pot",
        _is(e.PotStarted, "pot"),
    ),
    (e.StillTacky, "coat", _is(e.CoatFinished, "coat")),
    (e.Undone, "entry", _of_an_entry),
)


def _astray(record: Record, found: Found) -> str:
    """Give the field that leads nowhere; "" where all are well."""
    asked = (
        field
        for kinds, field, leads in _LEADS
        if isinstance(record, kinds) and not leads(record, found)
    )
    return next(asked, "")


def require_drawable(records: Iterable[Record]) -> None:
    """Raise `Senseless` for a pot, a can or a job that no place could draw, taken together.

    Core is asked as the places ask it; what was taken back counts for nothing.
    """
    records = tuple(records)
    undone = {record.entry for record in records if isinstance(record, e.Undone)}
    own: dict[str, list[Record]] = defaultdict(list)
    for record in records:
        if record.id not in undone:
            for owner in _owners(record):
                own[owner].append(record)
    checks: dict[type, Callable[..., None]] = {Job: _job, Can: _can, e.PotStarted: _pot}
    for record in records:
        check = checks.get(type(record))
        if check and record.id not in undone:
            try:
                check(record, own[record.id])
            except Refused as refusal:
                raise Senseless(type(record).__name__, name_of(record), refusal) from None


def _owners(record: Record) -> tuple[str, ...]:
    """Give what a record counts for: its job, its pot, its can."""
    fields = next((fields for kinds, fields in _COUNTS if isinstance(record, kinds)), ())
    return tuple(getattr(record, field) for field in fields)


def _job(job: Job, places: list[Record]) -> None:
    require("places_count", len(places), *PLACES_COUNT)
    require("coats_in_all_count", len(places) * len(job.steps), *COATS_COUNT)


def _can(_: Can, happened: list[Record]) -> None:
    """Reckon what should be in a can, from its last weighing on."""
    net_g: float | None = None
    poured_g: list[float] = []
    bound_g = 0.0
    for entry in happened:
        match entry:
            case e.CanWeighed():
                net_g, bound_g = entry.net_g, 0.0
                poured_g.clear()
            case e.Poured() | e.StrayPoured():
                poured_g.append(entry.net_g)
            case e.LidOff():
                air = Air(entry.air_c, entry.rh_ratio, entry.air_m_per_s)
                bound_g += dried_off(entry.open_s, entry.across_m, air).bound_g
    balance(net_g, tuple(poured_g), bound_g)


def _pot(started: e.PotStarted, happened: list[Record]) -> None:
    """Weigh a pot out: what is to be poured next, what is over, what that costs."""
    pot = pot_of(started, tuple(entry for entry in happened if isinstance(entry, OfAPot)))
    _whole(pot)
    for index, entry in enumerate(happened):
        if isinstance(entry, e.AimChanged | e.Spilt):  # what was left then must be so too
            before = tuple(one for one in happened[:index] if isinstance(one, OfAPot))
            _whole(pot_of(started, before))


def _whole(pot: Pot) -> None:
    plan, in_all_g = pot.plan, sum(targets_g(pot.plan))
    next_pour(plan, pot.poured)
    require("batch_g", in_all_g, 0.0, NET_G[1] + plan.scale_step_g)
    require("in_cup_g", pot.in_cup_g, *NET_G)
    if pot.over:
        answers(plan, pot.poured, (None,) * len(plan.portions), None, pot.kept)
