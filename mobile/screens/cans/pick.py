"""Which can stands on the scale: large tiles, the emptiest first."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import tiles
from mobile.parts.buttons import outline_button
from mobile.parts.can import Can
from mobile.parts.page import header, screen
from mobile.parts.tap import Action, grow, surface, tap
from mobile.screens.cans.drawn import face_of, grams_of, name_of, spoken
from mobile.session.address import go
from mobile.session.cans.can import CanNow, cans_now
from mobile.session.known import Known
from mobile.session.view import View, use_view
from mobile.words import cans as words
from mobile.words import places


@ft.component
def Pick(known: Known, *, key: str | None = None) -> ft.Control:
    """Offer each can as a tile that a knuckle hits."""
    view = use_view()
    several = [_tile(now, view) for now in cans_now(known)]
    back = outline_button(Action(places.BACK, lambda: go(places.CANS), key="back"), "back")
    return screen(
        [header(words.PICK, words.SHORTEST, back), tiles(several, view.width, view.text_ratio)]
    )


def _tile(now: CanNow, view: View) -> ft.Control:
    can = Can(face_of(now, now.level_ratio), spoken(now, now.level_ratio, view))
    said: list[ft.Control] = [
        t.say(name_of(now), t.SMALL, weight=t.STRONG),
        t.say(grams_of(now, view), t.SMALL, t.SOFT2),
    ]
    content = ft.Row([can, grow(ft.Column(said, spacing=2, tight=True))], spacing=12)
    edge = ft.BorderSide(1.5, t.EDGE)
    face = surface(content, fill=t.RAISED, edge=edge, radius=t.KEY_RADIUS, padding=PADDING)
    return tap(face, lambda: go(places.CANS, now.can.id), key=f"can {now.can.number}")


PADDING = ft.Padding(12, 12, 8, 12)
