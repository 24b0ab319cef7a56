"""People as they are typed: a name for each, and how much of it is theirs."""

import re

from core.errors import Refused
from mobile.session.view import View

SHARE = re.compile(r"^(?P<name>.*?)\s+(?P<share>[-−+]?[\d.,]+)$")


def people_of(text: str, view: View) -> tuple[tuple[str, float], ...]:
    """Read names with a comma between, or a semicolon; a number after a name is their share.

    Raise `Refused` where a share is no number.
    """
    between = ";" if ";" in text else ","
    return tuple(_one(said.strip(), view) for said in text.split(between) if said.strip())


def _one(said: str, view: View) -> tuple[str, float]:
    found = SHARE.match(said)
    if found is None:
        return said, 1.0
    share = view.read("share_count", found["share"])
    if share <= 0:
        raise Refused("share_of_one", said, 0.0, float("inf"))
    return found["name"], share
