"""What the app knows: the book's records, sorted by kind, as one value that is replaced whole."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TypeVar, get_args

from mobile.store.entries import Entry, Undone
from mobile.store.records import Can, Draft, Job, Mix, Paint, Record, Settings, Wall, Zone

T = TypeVar("T", bound=Record)
SETTINGS = Settings(id="settings", at_s=0.0, device="")
_ENTRIES = get_args(Entry)


@dataclass(frozen=True, slots=True, eq=False)
class Known:
    """One state of the book; two are the same only if they are one (they are compared often)."""

    settings: Settings = SETTINGS
    jobs: tuple[Job, ...] = ()
    walls: tuple[Wall, ...] = ()
    zones: tuple[Zone, ...] = ()
    paints: tuple[Paint, ...] = ()
    cans: tuple[Can, ...] = ()
    mixes: tuple[Mix, ...] = ()
    drafts: tuple[Draft, ...] = ()
    entries: tuple[Entry, ...] = ()  # in the order in which they were written, less the undone

    def after(self, records: Iterable[Record], forget: tuple[str, ...] = ()) -> "Known":
        """Give the state after records were kept and others forgotten."""
        known = self
        for record in records:
            known = _with(known, record)
        return _without(known, forget) if forget else known

    @property
    def job(self) -> Job | None:
        """The job that is open."""
        chosen = found(self.jobs, self.settings.job)
        if chosen and not chosen.away:
            return chosen
        return next((job for job in self.jobs if not job.away), None)

    @property
    def job_walls(self) -> tuple[Wall, ...]:
        """The open job's walls."""
        return tuple(wall for wall in self.walls if self.job and wall.job == self.job.id)

    @property
    def job_zones(self) -> tuple[Zone, ...]:
        """The open job's zones, on walls that are still there."""
        walls = {wall.id for wall in self.job_walls}
        return tuple(zone for zone in self.zones if zone.wall in walls)

    @property
    def job_mixes(self) -> tuple[Mix, ...]:
        """The open job's mixes."""
        return tuple(mix for mix in self.mixes if self.job and mix.job == self.job.id)

    def of(self, kind: type[T]) -> tuple[T, ...]:
        """Give the entries of one kind, oldest first."""
        return tuple(entry for entry in self.entries if isinstance(entry, kind))

    def draft(self, form: str) -> dict[str, str]:
        """Give what was typed into a form and not kept; empty if nothing."""
        draft = found(self.drafts, form)
        return dict(draft.fields) if draft else {}


def found(things: tuple[T, ...], thing_id: str) -> T | None:
    """Find a thing by its id."""
    return next((thing for thing in things if thing.id == thing_id), None)


def known_of(records: Iterable[Record]) -> Known:
    """Sort a whole book."""
    records = tuple(records)
    undone = {record.entry for record in records if isinstance(record, Undone)}
    first = Known(
        entries=tuple(r for r in records if isinstance(r, _ENTRIES) and r.id not in undone),
    )
    return first.after(r for r in records if not isinstance(r, _ENTRIES))


_FIELDS = {
    Job: "jobs",
    Wall: "walls",
    Zone: "zones",
    Paint: "paints",
    Can: "cans",
    Mix: "mixes",
    Draft: "drafts",
}


def _with(known: Known, record: Record) -> Known:
    if isinstance(record, Settings):
        return replace(known, settings=record)
    if isinstance(record, Undone):
        kept = tuple(e for e in known.entries if e.id != record.entry)
        return replace(known, entries=(*kept, record))
    name = _FIELDS.get(type(record), "entries")
    things: tuple[Record, ...] = getattr(known, name)
    if any(thing.id == record.id for thing in things):
        changed = tuple(record if thing.id == record.id else thing for thing in things)
    else:
        changed = (*things, record)
    return replace(known, **{name: changed})  # type: ignore[arg-type]


def _without(known: Known, forget: tuple[str, ...]) -> Known:
    left = {
        name: tuple(thing for thing in getattr(known, name) if thing.id not in forget)
        for name in (*_FIELDS.values(), "entries")
    }
    return replace(known, **left)  # type: ignore[arg-type]
