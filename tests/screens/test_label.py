"""A pot's label on the screen, and as a picture in the downloads."""

import asyncio
from dataclasses import replace

import pytest

from mobile.screens.mix.place import MixPlace
from mobile.session.mix.begin import start_pot
from mobile.session.mix.cups import fill_cups
from mobile.session.mix.label import address_of, label_of, vessels_of
from mobile.session.mix.leftovers import Back, jars_of, keep_leftover, weigh_back
from mobile.session.mix.pots import pots
from mobile.session.mix.weigh_out import on_the_mark, stirred
from mobile.session.session import Session
from mobile.session.view import View
from mobile.store.pot import Pot
from tests.screens.mix_place import now
from tests.screens.seen import OnPlace, tap
from tests.screens.seen import words as said
from tests.session import moth_cellar as job


async def ember_in_a_jar() -> tuple[Session, Pot]:
    """Weigh ember wing out, by Ro, of a can with a lot; keep 40 g of it in a jar."""
    session = await job.at_moth_cellar()
    lot = replace(job.can(session.known, 7), lot="L-2031")
    await session.keep(replace(session.known.settings, who="Ro"), lot)
    await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
    while now(session).target:
        await on_the_mark(session, now(session))
    await stirred(session, now(session))
    await keep_leftover(session, pots(session.known)[-1], Back((("", 40.0),)), None, 4.0)
    return session, pots(session.known)[-1]


def test_a_pots_label_says_number_mix_day_grams_who_and_lots() -> None:
    async def story() -> None:
        session, pot = await ember_in_a_jar()
        label = label_of(session.known, pot, None, View())
        assert label.number == f"Pot {pot.started.number}"
        assert {"ember wing", "by Ro", "lots L-2031"} <= set(label.lines)
        assert label.says == address_of(pot) == f"http://127.0.0.1/#/mix/pots/{pot.id}"
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/label")
        assert {label.number, "Jar 1", *label.lines} <= set(said(screen))

    asyncio.run(story())


def test_a_jars_label_is_its_own_and_is_saved_and_printed(monkeypatch: pytest.MonkeyPatch) -> None:
    saved: list[tuple[str, bytes]] = []
    printed: list[bytes] = []
    of_label = "mobile.session.mix.label"
    monkeypatch.setattr(f"{of_label}.save_file", lambda name, data, _: saved.append((name, data)))
    monkeypatch.setattr(f"{of_label}.print_picture", lambda data, _: printed.append(data))

    async def story() -> None:
        session, pot = await ember_in_a_jar()
        [jar] = jars_of(session.known, pot)
        label = label_of(session.known, pot, jar, View())
        assert (label.number, label.says) == ("Jar 1", address_of(pot))
        assert label.lines[1].endswith(", 40.0 g")
        assert label.lines[2] == "coldest night 4.0 °C"
        screen = OnPlace(session, MixPlace, f"/mix/pots/{pot.id}/label/{jar.id}")
        assert {"Jar 1", f"Pot {pot.started.number}", *label.lines} <= set(said(screen))
        await tap(screen, "save")
        await tap(screen, "print")
        [(name, data)] = saved
        assert (name, data[:4], printed) == ("jar-1.svg", b"<svg", [data])

    asyncio.run(story())


def test_a_cups_label_says_for_whom() -> None:
    async def story() -> None:
        session, pot = await ember_in_a_jar()
        await weigh_back(session, pot, Back((("", 100.0),)))
        await fill_cups(session, pots(session.known)[-1], (("Di", 30.0),))
        cup = vessels_of(session.known, pot)[1]
        label = label_of(session.known, pot, cup, View())
        assert label.number == f"Pot {pot.started.number} a"
        assert label.lines[1] == "for Di"
        assert label.lines[2].endswith(", 30.0 g")
        assert (label.day, label.lamp) != ("", "")

    asyncio.run(story())
