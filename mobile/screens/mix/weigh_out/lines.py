"""Lines that stand on every screen of a weigh-out."""

import flet as ft

from core.mixing.weigh_out import Target
from mobile import theme as t
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.can import Can
from mobile.parts.choice import pills
from mobile.parts.tap import Action, Do, grow
from mobile.screens.mix.weigh_out.drawn import face
from mobile.screens.mix.weigh_out.room import NARROW, one_line
from mobile.session.address import go
from mobile.session.mix.from_cans import FromCan
from mobile.session.view import View
from mobile.store.entries import Poured
from mobile.store.pot import Pot
from mobile.words import mix as words
from mobile.words import places
from mobile.words import weigh_out as weigh_words

OFF_WIDE, OFF_HIGH = 90.0, 30.0  # its two lines make it higher
ABOVE = ft.Padding(0, 12, 0, 0)
APART = ft.MainAxisAlignment.SPACE_BETWEEN


def large(view: View) -> bool:
    """Tell whether the text is so large that the figure has to come first."""
    return view.text_ratio >= t.STACKED_FROM


def narrow(view: View) -> bool:
    """Tell whether lines stand under each other."""
    return view.width < NARROW or large(view)


def name_size(view: View, usual: float) -> float:
    """Find the size of a paint's name that breaks no word, yet is read at the bucket."""
    if not large(view):
        return usual
    return t.SMALL if view.width < NARROW else t.HEADING


def which(pot: Pot, target: Target) -> ft.Control:
    """Say which part of how many this is."""
    at, of = target.index + 1, len(pot.plan.portions)
    return pills(at, of, words.part_of(at, of))


def corners(pot: Pot, target: Target, view: View) -> ft.Control:
    """Put *Leave* and *Scale went off* out of the knuckle's way; between them, part n of m.

    On a phone on its side *Scale went off* is in the corner over the main action.
    """
    leave = outline_button(Action(weigh_words.LEAVE, lambda: go(places.MIX), key="leave"), "back")
    part = which(pot, target)
    if t.sideways():
        return ft.Container(ft.Row([leave, grow(part)], spacing=12), padding=ABOVE)
    if one_line(words.part_of(target.index + 1, len(pot.plan.portions)), view):
        sides = [leave, grow(part), went_off(OFF_HIGH, OFF_WIDE)]
        return ft.Container(ft.Row(sides, spacing=t.GAP), padding=ABOVE)
    return parted([leave, went_off()], part)


def went_off(high: float = t.BUTTON, wide: float | None = None) -> ft.Control:
    """Offer *Scale went off*."""
    off = Action(weigh_words.WENT_OFF, lambda: go(places.MIX, "weigh", "scale"), key="went off")
    return second_button(off, t.SMALL, high, wide)


def back_corner(left: ft.Control, back: Do, view: View) -> ft.Control:
    """Put *Back* at the right of what a screen is about."""
    button = outline_button(Action(places.BACK, back, key="back"), "back")
    if large(view):
        return parted([button], left)
    return ft.Container(ft.Row([grow(left), button], spacing=12), padding=ABOVE)


def lowered(first: ft.Control) -> ft.Control:
    """Keep what stands first off the screen's edge."""
    return ft.Container(first, padding=ABOVE)


def parted(sides: list[ft.Control], under: ft.Control) -> ft.Control:
    """Put buttons at both sides, wrapping where they must, and the rest under them."""
    line = ft.Row(sides, spacing=t.GAP, run_spacing=t.GAP, wrap=True, alignment=APART)
    both = ft.Column(
        [line, under],
        spacing=t.GAP,
        tight=True,
        horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
    )
    return ft.Container(both, padding=ABOVE)


def poured_from(one: FromCan, under: str = "", size: float = t.ZONE) -> ft.Control:
    """Show the can and name its paint."""
    drawn = face(one)
    lines: list[ft.Control] = [t.say(one.paint.name, size)]
    if under:
        lines.append(t.say(under, t.NAME, t.SOFT))
    name = grow(ft.Column(lines, spacing=2, tight=True))
    can: list[ft.Control] = [Can(*drawn)] if drawn else []
    return ft.Row([*can, name], spacing=16)


def undo_words(pot: Pot) -> str:
    """Say what *Undo* takes back."""
    each_g = [entry.net_g for entry in pot.last if isinstance(entry, Poured)]  # one a can
    return weigh_words.undo_pour(sum(each_g)) if each_g else places.UNDO
