"""Cups and jars of pots, each with what is in it; a line leads to its label."""

from functools import partial

import flet as ft

from mobile.parts.boards import Row, State, row, rows
from mobile.session.address import go
from mobile.session.known import Known
from mobile.session.mix.cups import Cup, cups_of
from mobile.session.mix.jars import left_g
from mobile.session.mix.leftovers import doubt_of, jars_of
from mobile.session.view import View
from mobile.store.entries import LeftoverKept
from mobile.store.pot import Pot
from mobile.words import cups as words
from mobile.words import grams as in_grams
from mobile.words import places


def vessels(known: Known, pot: Pot, view: View) -> list[ft.Control]:
    """List a pot's cups and jars; nothing where it has none."""
    lines = [cup_line(pot, one, view) for one in cups_of(known, pot)]
    lines += [jar_line(known, one, "", view) for one in jars_of(known, pot)]
    return [rows(lines)] if lines else []


def cup_line(pot: Pot, cup: Cup, view: View) -> ft.Control:
    """Show a cup: whose it is, what is in it, what was."""
    now = in_grams.grams(cup.now_g)
    was = words.filled_with(cup.net_g) if cup.left_g is not None else ""
    said = Row(words.cup(cup.label, ""), cup.whom, now, was)
    return row(said, partial(to_label, pot.id, cup.id), text_ratio=view.text_ratio)


def jar_line(known: Known, jar: LeftoverKept, mix: str, view: View) -> ft.Control:
    """Show a jar: its mix, how it keeps, what is still in it."""
    coldest = "" if jar.coldest_c is None else view.show("coldest_c", jar.coldest_c)
    keeps = words.jar_small(jar.use_by_day, coldest)
    small = f"{mix}, {keeps}" if mix else keeps
    doubt = doubt_of(jar)
    state: State = "caution" if doubt else ""
    grams = in_grams.grams(left_g(known, jar))
    said = Row(words.jar(jar.number), small, grams, doubt, state)
    return row(said, partial(to_label, jar.pot, jar.id), text_ratio=view.text_ratio)


def to_label(pot_id: str, vessel_id: str) -> None:
    """Go to the label of a cup or a jar."""
    go(places.MIX, "pots", pot_id, "label", vessel_id)
