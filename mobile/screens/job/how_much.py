"""How much of everything: by paint with its cans, by mix, by step."""

from functools import partial

import flet as ft

from mobile import theme as t
from mobile.parts.boards import Row, row, rows
from mobile.parts.buttons import outline_button
from mobile.parts.choice import segmented
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import PAINTS, go
from mobile.session.job.shopping import (
    Wanted,
    assumed,
    on_shelf_g,
    on_steps,
    price_of_all,
    unmixed,
    wanted,
)
from mobile.session.known import Known
from mobile.session.mix.to_weigh import amount_or_none
from mobile.session.view import View, use_view
from mobile.words import grams as in_grams
from mobile.words import how_much as words
from mobile.words import places


@ft.component
def HowMuch(known: Known, *, key: str | None = None) -> ft.Control:
    """Show what the whole job needs."""
    view = use_view()
    by, show = ft.use_state("paint")
    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    lists = {"paint": by_paint, "mix": by_mix, "step": by_step}
    lines = [
        header(words.TITLE, known.job.name if known.job else "", back),
        segmented(words.BY, by, show, view.text_ratio, "by"),
        *lists[by](known, view),
    ]
    return screen(lines)


def by_paint(known: Known, view: View) -> list[ft.Control]:
    """List each paint with its grams, litres and cans, and what all of them cost."""
    several = wanted(known)
    if not several:
        return [t.say(words.NOTHING, t.NAME, t.SOFT)]
    price = price_of_all(several)
    total = words.PRICE_UNKNOWN if price is None else words.cans_cost(in_grams.money(price))
    margin = view.show("margin_ratio", known.settings.margin_ratio, 0)
    return [
        rows([paint_row(known, one, view) for one in several]),
        t.say(total, t.FACT),
        *uncounted(known),
        t.say(words.margin(margin), t.CAPTION, t.SOFT),
    ]


def uncounted(known: Known) -> list[ft.Control]:
    """Say which steps have no mix yet: nobody should go shopping without them."""
    steps = unmixed(known)
    return [t.say(words.no_mix_yet(steps), t.SMALL, t.CAUTION)] if steps else []


def paint_row(known: Known, one: Wanted, view: View) -> ft.Control:
    """Show a paint: the cans that hold it on the left, grams and litres on the right."""
    cans = words.NO_SIZES
    if one.basket:
        counts = zip(one.basket.counts, one.paint.sizes, strict=True)
        sizes = tuple((n, view.show("size_l", size.label_l, 2)) for n, size in counts if n)
        price = "" if one.basket.price is None else in_grams.money(one.basket.price)
        cans = words.cans(sizes, price)
    shelf_g = on_shelf_g(known, one.paint)
    notes = (
        words.shelf(in_grams.whole(round(shelf_g, 1))) if shelf_g else "",
        words.ASSUMED if assumed(known, one.paint) else "",
    )
    small = "\n".join(note for note in (cans, *notes) if note)
    said = Row(
        one.paint.name, small, in_grams.grams(one.net_g), view.show("volume_l", one.volume_l, 2)
    )
    to = partial(go, places.CANS, PAINTS, one.paint.id)  # there its sizes and prices are typed
    return row(said, to, text_ratio=view.text_ratio)


def by_mix(known: Known, view: View) -> list[ft.Control]:
    """List each mix with what it needs; a tap says how."""
    lines: list[ft.Control] = []
    for mix in known.job_mixes:
        amount = amount_or_none(known, mix)
        if amount is None or amount.loads is None:
            continue
        said = Row(
            mix.name,
            words.parts_of(view.show("need_l", amount.need.need_l), amount.loads.loads_count),
            in_grams.whole(amount.loads.batch_g),
            words.ASSUMED if amount.stands_in else "",
        )
        to = partial(go, places.MIX, mix.id, "amount")
        lines.append(row(said, to, text_ratio=view.text_ratio))
    return [rows(lines)] if lines else [t.say(words.NOTHING, t.NAME, t.SOFT)]


def by_step(known: Known, view: View) -> list[ft.Control]:
    """List what each step puts on the walls, mix by mix."""
    lines: list[ft.Control] = [
        row(
            Row(
                one.step,
                words.of_mix(one.mix, view.show("area_m2", one.coated_m2, 2)),
                in_grams.grams(one.wall_g),
                words.ASSUMED if one.assumed else "",
            ),
            partial(go, places.MIX, one.mix_id, "amount"),
            text_ratio=view.text_ratio,
        )
        for one in on_steps(known)
    ]
    more = t.say(words.ON_WALL_ONLY, t.CAPTION, t.SOFT)
    return (
        [rows(lines), *uncounted(known), more] if lines else [t.say(words.NOTHING, t.NAME, t.SOFT)]
    )
