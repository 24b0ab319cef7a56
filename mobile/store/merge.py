"""Put the records of a file beside those of the book: what is new, what is newer, what stays.

- A record that is here already and equal is passed over.
- A thing that differs is replaced only if the file's was kept later; else the phone's stays.
- An entry is written once: one with the same id and other contents is refused (`Clash`).
- A can's number is painted on its lid. Where another can of this phone, not gone, has the number, a
  can that is new here gets the next free one, and one that is known here keeps the number it has.
- Entries fall in between those of the book by their instants, so that a weighing settles what was
  poured before it, on whichever phone; each phone's own entries keep their order.
"""

from collections import deque
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Final, get_args

from mobile.store.entries import Entry
from mobile.store.errors import Clash
from mobile.store.records import Can, Record
from mobile.store.sense import CAN_NUMBER, name_of

_ENTRIES: Final = get_args(Entry)
Records = tuple[Record, ...]


@dataclass(frozen=True, slots=True)
class TakenIn:
    """What became of the records of a file.

    `added` are new here; `before` are the things that were changed, as they were; `same_count`
    were here already, `stay_count` stay as this phone has them, being newer. `moved` are the cans
    that got another number than on their lid: from, to.
    """

    added: Records = ()
    before: Records = ()
    same_count: int = 0
    stay_count: int = 0
    moved: tuple[tuple[int, int], ...] = ()


@dataclass(frozen=True, slots=True)
class Merged:
    """The records of a book with a file taken in, in their order, and what became of the file's."""

    records: Records
    taken: TakenIn


def merged(here: Records, file: Records) -> Merged:
    """Take a file's records into those of a book; raise `Clash` where that can't be."""
    known = {record.id: record for record in here}
    numbered = _numbered(known, file)
    met = [record for record in numbered if record.id in known]
    other = [record for record in met if known[record.id] != record]
    for record in other:
        if type(known[record.id]) is not type(record) or isinstance(record, _ENTRIES):
            raise Clash(type(record).__name__, name_of(record))
    newer = {record.id: record for record in other if record.at_s > known[record.id].at_s}
    added = tuple(record for record in numbered if record.id not in known)
    lids = {can.id: can.number for can in file if isinstance(can, Can)}
    moved = (can for can in (*added, *newer.values()) if isinstance(can, Can))
    taken = TakenIn(
        added,
        tuple(known[key] for key in newer),
        len(met) - len(other),
        len(other) - len(newer),
        tuple((lids[can.id], can.number) for can in moved if can.number != lids[can.id]),
    )
    in_order = tuple(_in_order(here, numbered))
    return Merged(tuple(newer.get(record.id, record) for record in in_order), taken)


def _numbered(known: dict[str, Record], file: Records) -> Records:
    """Give the file's records, its cans with numbers that no other can of this phone has."""
    cans = {record.id: record for record in known.values() if isinstance(record, Can)}
    coming = [record for record in file if isinstance(record, Can)]
    ids = {can.id for can in coming}
    taken = {can.number for key, can in cans.items() if key not in ids and not can.gone}
    used = {can.number for can in (*cans.values(), *coming)}
    numbers: dict[str, int] = {}
    for can in coming:
        number = can.number
        if number in taken and not can.gone:
            number = cans[can.id].number if can.id in cans else _free(used)
        taken |= set() if can.gone else {number}
        used.add(number)
        numbers[can.id] = number
    return tuple(replace(r, number=numbers[r.id]) if isinstance(r, Can) else r for r in file)


def _free(used: set[int]) -> int:
    """Give the next number above all that are in use; where that is too high, the lowest free."""
    low, high = CAN_NUMBER
    above = 1 + max(used, default=0)
    return above if above <= high else next(n for n in range(low, high + 2) if n not in used)


def _in_order(here: Records, file: Records) -> Iterator[Record]:
    """Let the file's new records fall in between the book's.

    A record that both have is a mark: what follows it in the file follows it here.
    """
    known, given = {record.id for record in here}, set[str]()
    waiting = deque(file)

    def due(before_s: float) -> Iterator[Record]:
        while waiting:
            head = waiting[0]
            if head.id in known:
                if head.id not in given:
                    return
            elif isinstance(head, _ENTRIES) and head.at_s >= before_s:
                return
            else:
                yield head
            waiting.popleft()

    for record in here:
        if isinstance(record, _ENTRIES):
            yield from due(record.at_s)
        yield record
        given.add(record.id)
    yield from due(float("inf"))
