"""What a mix needs in large, where it goes, and what stands in."""

from functools import partial

import flet as ft

from core.coats.need import Patch
from core.coats.places import ZONED
from mobile import theme as t
from mobile.parts.boards import Fact, Row, answer, board, facts, row, rows
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.tap import Action
from mobile.session.address import HOW, PAINTS, go
from mobile.session.known import Known
from mobile.session.view import View
from mobile.session.walls.amounts import Amount, lacking_paints, patch_g
from mobile.store.records import Mix
from mobile.words import amounts as words
from mobile.words import grams as in_grams
from mobile.words import places


def said(
    known: Known, amount: Amount | None, mix: Mix, view: View, *, wrong: bool
) -> list[ft.Control]:
    """Say what is needed in large, where it goes, and what stands in.

    While something typed is `wrong` the last answer keeps its room, so that no field moves away
    from under the cursor.
    """
    if amount is None:
        return [t.say(words.AMOUNT_UNKNOWN, t.NAME, t.CAUTION)]
    if not amount.patches:
        nowhere = words.NO_ZONE if mix.use in ZONED else words.NO_STEP
        return [t.say(nowhere, t.NAME, t.SOFT)]
    need = amount.need
    grams = amount.loads.batch_g if amount.loads else need.need_g
    several = (
        Fact(in_grams.whole(round(need.wall_g, 1)), words.ON_WALL),
        Fact(in_grams.whole(round(need.kept_g, 1)), words.IN_TOOLS),
        Fact(in_grams.whole(round(need.kit_g, 1)), words.FOR_KIT),
    )
    litres = words.litres_and_rate(
        view.show("need_l", need.need_l), view.show("rate_g_m2", amount.rate.g_m2)
    )
    how_to = Action(places.HOW, lambda: go(places.MIX, mix.id, "amount", HOW), key="how")
    where: list[ft.Control] = [
        row(zone_line(name, patch, amount, view), text_ratio=view.text_ratio)
        for name, patch in amount.patches
    ]
    lines: list[ft.Control] = [
        answer(words.NO_ANSWER if wrong else in_grams.whole(grams)),
        t.say(words.AMOUNT_UNKNOWN, t.SMALL, t.CAUTION)
        if wrong
        else t.say(litres, t.SMALL, t.SOFT),
        facts(several, view.text_ratio),
    ]
    if amount.stands_in:
        lines.append(t.say(words.stands_in(amount.stands_in), t.SMALL, t.CAUTION))
    return [
        board([*lines, ft.Row([outline_button(how_to)])], key="need"),
        *lacking(known, mix, amount),
        rows(where),
    ]


def zone_line(name: str, patch: Patch, amount: Amount, view: View) -> Row:
    """Say what one wall or zone takes, without what tools and cups keep."""
    grams = in_grams.grams(patch_g(patch, amount))
    small = words.on_so_much(view.show("area_m2", patch.area_m2, 2), patch.coats_count)
    return Row(name, small, grams)


def lacking(known: Known, mix: Mix, amount: Amount) -> list[ft.Control]:
    """Lead to each paint whose label is asked for now."""
    several = lacking_paints(known, mix, amount)
    return [
        second_button(
            Action(
                words.ask_label(paint.name),
                partial(go, places.CANS, PAINTS, paint.id),
                key=f"label {paint.name}",
            )
        )
        for paint in several
    ]
