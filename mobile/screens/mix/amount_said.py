"""What a mix needs in large, where it goes, and what stands in."""

import flet as ft

from core.coats.places import ZONED
from mobile import theme as t
from mobile.parts.boards import Fact, Row, answer, board, facts, row, rows
from mobile.parts.buttons import outline_button
from mobile.parts.tap import Action
from mobile.session.address import HOW, go
from mobile.session.amounts import Amount
from mobile.session.view import View
from mobile.store.records import Mix
from mobile.words import grams as in_grams
from mobile.words import mix as words
from mobile.words import places


def said(amount: Amount | None, mix: Mix, view: View) -> list[ft.Control]:
    """Say what is needed in large, where it goes, and what stands in."""
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
        row(Row(name, words.coats(patch.coats_count), view.show("area_m2", patch.area_m2)))
        for name, patch in amount.patches
    ]
    lines: list[ft.Control] = [
        answer(in_grams.whole(grams)),
        t.say(litres, t.SMALL, t.SOFT),
        facts(several, view.text_ratio),
    ]
    if amount.stands_in:
        lines.append(t.say(words.stands_in(amount.stands_in), t.SMALL, t.CAUTION))
    return [board([*lines, ft.Row([outline_button(how_to)])], key="need"), rows(where)]
