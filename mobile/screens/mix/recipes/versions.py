"""How a recipe was before: each version with its shares, newest first."""

import flet as ft

from core.paints.recipe import shares
from mobile import clock
from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.session.known import Known
from mobile.session.mix.from_cans import paint_of
from mobile.session.times import when
from mobile.session.view import View
from mobile.store.records import Mix, Version
from mobile.words import mix as words


def versions(known: Known, mix: Mix, view: View) -> list[ft.Control]:
    """List what the recipe was; pots keep their own composition."""
    if not mix.versions:
        return []
    lines = [line(known, one, view) for one in reversed(mix.versions)]
    return [t.say(words.EARLIER_VERSIONS, t.NAME, weight=t.MEDIUM), rows(lines)]


def line(known: Known, version: Version, view: View) -> ft.Control:
    """Show a version."""
    parts = tuple(
        (paint_of(known, part.paint).name, view.show("share_ratio", share))
        for part, share in zip(version.parts, shares(version.parts), strict=True)
    )
    said = words.until(when(version.until_s, clock.now_s()), version.why)
    return row(Row(said, words.version(parts)), text_ratio=view.text_ratio)
