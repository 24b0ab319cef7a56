"""Where the facts of a weighing step stand: the figure is on the screen, whatever else is."""

import flet as ft

from mobile import theme as t
from mobile.parts.tap import grow
from mobile.screens.mix.at_scale import large, lowered
from mobile.screens.mix.room import CUP_WIDE, NARROW, beside, low
from mobile.session.view import View

STRETCH = ft.CrossAxisAlignment.STRETCH


def laid_out(
    above: ft.Control, facts: list[ft.Control], cup: ft.Control, view: View
) -> list[ft.Control]:
    """Stack it all; on a laptop the cup stands beside, with large text the facts are first."""
    if beside(view) and low(view):
        name, said, figure, limits = facts
        right = ft.Column([name, limits], spacing=t.GAP, tight=True, width=CUP_WIDE)
        return [above, ft.Row([grow(figure), right], spacing=t.MARGIN), said, cup]
    if beside(view):
        left = grow(ft.Column(facts, spacing=t.GAP, tight=True, horizontal_alignment=STRETCH))
        return [above, ft.Row([left, cup], spacing=t.MARGIN)]
    if large(view):
        if view.width < NARROW:  # the figure must stand on the screen, whatever else does
            name, said, figure, limits = facts
            facts = [figure, name, said, limits]
        first, *others = facts
        return [lowered(first), *others, above, cup]
    return [above, *facts, cup]
