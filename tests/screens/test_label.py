"""A pot's label on the screen, and as a picture in the downloads."""

import asyncio
from dataclasses import replace

import pytest

from mobile.screens.mix.place import MixPlace
from mobile.session.begin import start_pot
from mobile.session.cups import keep_leftover
from mobile.session.label import address_of, label_of
from mobile.session.pots import pots
from mobile.session.weigh_out import on_the_mark, stirred
from mobile.words import label as words
from tests.screens.mix_place import now
from tests.screens.seen import OnPlace, tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


def test_a_label_says_number_mix_day_grams_who_lots_and_jar(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    saved: list[tuple[str, bytes]] = []
    monkeypatch.setattr(
        "mobile.session.label.save_file", lambda name, data, _: saved.append((name, data))
    )

    async def story() -> None:
        session = await job.at_moth_cellar()
        await session.keep(
            replace(session.known.settings, who="Ro"),
            replace(job.can(session.known, 7), lot="L-2031"),
        )
        await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
        while now(session).target:
            await on_the_mark(session, now(session))
        await stirred(session, now(session))
        pot = pots(session.known)[-1]
        await keep_leftover(session, pot, (("", 40.0),), None, 4.0)
        label = label_of(session.known, pots(session.known)[-1])
        assert label.number == f"Pot {pot.started.number}"
        assert {"ember wing", "by Ro", "lots L-2031", "jar 1, 40.0 g"} <= set(label.lines)
        assert label.says == address_of(pot) == f"http://127.0.0.1/#/mix/pots/{pot.id}"
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/label")
        assert {label.number, *label.lines} <= set(said(screen))
        await tap(screen, "save")
        [(name, data)] = saved
        assert (name, data[:4]) == (words.file(pot.started.number), b"<svg")

    asyncio.run(story())
