"""A seal opens whole or not at all."""

from hypothesis import given
from hypothesis import strategies as st

from mobile.store.seal import State, sealed, unsealed

STATE = State(7, b'{"pours":{"1":{"n":1}}}')
SEALED = sealed(STATE)


@given(st.integers(0, 2**64 - 1), st.binary(max_size=300), st.binary(max_size=300))
def test_what_is_sealed_comes_out_whatever_lies_behind_it(
    sequence: int, document: bytes, behind: bytes
) -> None:
    state = State(sequence, document)
    assert unsealed(sealed(state) + behind) == state


def test_every_shorter_length_is_refused_alone_or_filled_with_zeros() -> None:
    for length in range(len(SEALED)):
        assert unsealed(SEALED[:length]) is None
        assert unsealed(SEALED[:length].ljust(len(SEALED), b"\0")) is None


def test_every_flipped_bit_is_refused() -> None:
    for bit in range(8 * len(SEALED)):
        flipped = bytearray(SEALED)
        flipped[bit // 8] ^= 1 << bit % 8
        assert unsealed(bytes(flipped)) is None


def test_every_mix_of_two_states_is_refused() -> None:
    newer = State(8, b'{"pours":{"1":{"n":2}}}')
    whole = {SEALED: STATE, sealed(newer): newer}
    for first, second in (whole, reversed(whole)):
        for at in range(len(SEALED)):
            mixed = first[:at] + second[at:]
            assert unsealed(mixed) == whole.get(mixed)


@given(st.binary(max_size=400))
def test_chance_bytes_are_refused(data: bytes) -> None:
    assert unsealed(data) is None
