"""A seal around a document: what is cut short or changed by a single bit no longer opens.

    magic 4 | sequence 8 | length 4 | crc32 4 | document   (bytes, little-endian)

The checksum covers all that stands before it and the document. Whatever follows the document is
left over from an older, longer one and does not matter.
"""

import struct
import zlib
from dataclasses import dataclass

MAGIC = b"DSK1"
_HEADER = struct.Struct("<4sQI")  # magic, sequence, length of the document
_SUM = struct.Struct("<I")
_START = _HEADER.size + _SUM.size


@dataclass(frozen=True, slots=True)
class State:
    """A document as of one commit; the sequence counts the commits."""

    sequence: int
    document: bytes


def sealed(state: State) -> bytes:
    """Seal a state."""
    header = _HEADER.pack(MAGIC, state.sequence, len(state.document))
    checksum = zlib.crc32(state.document, zlib.crc32(header))
    return b"".join((header, _SUM.pack(checksum), state.document))


def unsealed(data: bytes) -> State | None:
    """Open a seal; None if it is broken or was never there."""
    if len(data) < _START or not data.startswith(MAGIC):
        return None
    _, sequence, length = _HEADER.unpack_from(data)
    document = data[_START : _START + length]
    state = State(sequence, document)
    return state if data.startswith(sealed(state)) else None
