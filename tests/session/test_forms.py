"""What is typed and not kept survives, and is not offered again once it was kept."""

import asyncio
from dataclasses import dataclass

from hypothesis import given
from hypothesis import strategies as st

from mobile.session.drafts import PAUSE_S
from mobile.session.forms import as_fields, restored
from mobile.session.known import known_of
from mobile.session.session import Session
from tests.session.shelf import Shelf


@dataclass(frozen=True, slots=True)
class Form:
    name: str = ""
    width: str = ""
    openings: tuple[tuple[str, ...], ...] = ()


rows = st.lists(st.tuples(st.text(), st.text(), st.text()), max_size=4).map(tuple)


@given(st.builds(Form, st.text(), st.text(), rows))
def test_a_form_comes_back_as_it_was_typed(form: Form) -> None:
    assert restored(Form(), dict(as_fields(form))) == form


def test_names_that_a_form_does_not_know_are_passed_over() -> None:
    assert restored(Form(), {"height": "3", "name": "stair", "openings.x.1": "?"}) == Form("stair")


def test_a_draft_is_kept_soon_and_gone_when_the_form_is_kept() -> None:
    async def run() -> None:
        session = Session(Shelf(), "phone")
        session.drafts.typed("walls/new", (("width", "12."),))
        await asyncio.sleep(PAUSE_S * 2)
        assert known_of(session.shelf.records()).draft("walls/new") == {"width": "12."}
        session.drafts.typed("walls/new", (("width", "12.5"),))
        await session.keep(forget=("walls/new",))
        await asyncio.sleep(PAUSE_S * 2)
        assert session.known.draft("walls/new") == {}
        assert known_of(session.shelf.records()).drafts == ()

    asyncio.run(run())


def test_leaving_keeps_at_once_and_draws_nothing_anew() -> None:
    async def run() -> None:
        session = Session(Shelf(), "phone")
        drawn: list[object] = []

        def follow(_sender: object, field: str | None) -> None:
            drawn.append(field)

        session.shown.subscribe(follow)  # type: ignore[attr-defined]  # Flet mixes it in
        session.drafts.typed("weigh", (("reads", "81."),))
        await session.drafts.flush()
        assert session.known.draft("weigh") == {"reads": "81."}
        assert drawn == []

    asyncio.run(run())


def test_a_full_phone_leaves_what_is_typed_on_the_screen() -> None:
    async def run() -> None:
        shelf = Shelf()
        shelf.full = True
        session = Session(shelf, "phone")
        session.drafts.typed("weigh", (("reads", "81."),))
        await session.drafts.flush()
        assert session.drafts.waiting() == {"weigh": (("reads", "81."),)}

    asyncio.run(run())
