"""The fields of how much a mix takes: a coat, losses, tools, cups, the kit, its walls."""

from dataclasses import replace
from functools import partial

import flet as ft

from core.coats.places import ZONED
from core.coats.rate import LOSS_RATIO
from mobile import theme as t
from mobile.parts.choice import any_of, segmented
from mobile.parts.fields import Field, Fields
from mobile.screens.mix.amount.form import RATES, TOOLS, USUAL, AmountForm
from mobile.session.forms import Edit
from mobile.session.known import Known
from mobile.session.view import View
from mobile.store.records import Mix
from mobile.words import amounts as words


def rate_fields(form: AmountForm, edit: Edit[AmountForm], view: View) -> list[ft.Control]:
    """Ask what one coat takes, and what is lost on the way."""

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))  # type: ignore[arg-type]

    kinds = [
        segmented(pair, form.kind, partial(typed, "kind"), 1.0, "rate")
        for pair in (words.RATES[:2], words.RATES[2:])
    ]
    wrong = view.error("loss_ratio", form.loss, LOSS_RATIO)
    loss = Field("loss", view.label(words.LOSS, "loss_ratio"), form.loss, wrong)
    asked: list[Field] = []
    if form.kind != USUAL:
        name, limits = RATES[form.kind]
        label = view.label(dict(words.RATES)[form.kind], name)
        asked.append(Field("rate", label, form.rate, view.error(name, form.rate, limits)))
    lost = [loss] if form.kind in {"spread_m2_l", "dft_um"} else []
    fields = (
        Fields((*asked, *lost), typed, key=form.kind)
        if asked
        else t.say(words.RATE_USUAL, t.CAPTION, t.SOFT)
    )
    return [t.say(words.ONE_COAT, t.SMALL, t.SOFT), *kinds, fields]


def tool_fields(form: AmountForm, edit: Edit[AmountForm], view: View) -> list[ft.Control]:
    """Ask how often each tool is wetted, how many cups there are, and for the kit."""

    def typed(name: str, text: str) -> None:
        def changed(now: AmountForm) -> AmountForm:
            tools = tuple((tool, text if tool == name else n) for tool, n in now.tools)
            return replace(now, tools=tools)

        edit(changed)

    def other(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))  # type: ignore[arg-type]

    tools = tuple(
        Field(tool, words.TOOL_NAMES[tool], n, view.error("wettings_count", n, (0, 1000)))
        for tool, n in form.tools
        if tool in TOOLS
    )
    cups = Field("cups", words.CUPS, form.cups, view.error("wettings_count", form.cups, (0, 1000)))
    kit = segmented(words.KITS, form.kit, partial(other, "kit"), view.text_ratio, "kit")
    return [
        t.say(words.WETTINGS, t.SMALL, t.SOFT),
        Fields(tools, typed, key="tools"),
        Fields((cups,), other, key="cups"),
        t.say(words.WETTINGS_MORE, t.CAPTION, t.SOFT),
        t.say(words.KIT, t.SMALL, t.SOFT),
        kit,
    ]


def walls(known: Known, mix: Mix, form: AmountForm, edit: Edit[AmountForm]) -> list[ft.Control]:
    """Offer the walls that a mix for whole walls goes on: none chosen is all of them."""
    options = tuple((wall.id, wall.name) for wall in known.job_walls)
    if mix.use in ZONED or len(options) == 1 or not options:
        return []

    def choose(ids: tuple[str, ...]) -> None:
        edit(lambda now: replace(now, walls=tuple((one,) for one in ids)))

    chosen = tuple(wall for (wall,) in form.walls)
    return [t.say(words.ON_WALLS, t.SMALL, t.SOFT), any_of(options, chosen, choose)]
