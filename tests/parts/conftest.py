"""For tests of parts: each has a look of its own, so that none hears another's change."""

import pytest

from mobile import theme as t


@pytest.fixture(autouse=True)
def shown(monkeypatch: pytest.MonkeyPatch) -> t.Shown:
    one = t.Shown()
    monkeypatch.setattr(t.LOOK, "default_value", one)
    return one
