"""What tests of screens share."""

from itertools import count

import pytest

from mobile import clock


@pytest.fixture
def no_haste(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let each look at the clock find it a second later: no touch is taken for a bounce."""
    seconds = count(1_900_000_000)
    monkeypatch.setattr(clock, "now_s", lambda: float(next(seconds)))
