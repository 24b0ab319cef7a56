"""Where the facts of a weighing step stand: the figure is on the screen, whatever else is."""

import flet as ft

from mobile import theme as t
from mobile.parts.tap import grow
from mobile.screens.mix.at_scale import large, lowered
from mobile.screens.mix.room import NARROW, beside, low
from mobile.session.view import View

STRETCH = ft.CrossAxisAlignment.STRETCH


def laid_out(
    above: ft.Control, facts: list[ft.Control], cup: ft.Control, view: View
) -> list[ft.Control]:
    """Stack it all; on a laptop the cup stands beside, where room is short the facts are first."""
    if beside(view):
        left = grow(ft.Column(facts, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH))
        return [above, ft.Row([left, cup], spacing=t.MARGIN)]
    if large(view) or low(view):
        if view.width < NARROW or low(view):  # the figure must stand there, whatever else does
            name, said, figure, limits = facts
            facts = [figure, name, said, limits]
        first, *others = facts
        return [lowered(first), *others, above, cup]
    return [above, *facts, cup]
