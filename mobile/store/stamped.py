"""What every record has: an id, the instant of its writing, the device that wrote it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Stamped:
    """The first three fields of a record: its id, POSIX seconds, the device."""

    id: str
    at_s: float
    device: str
