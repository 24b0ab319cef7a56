"""One zone: its name, its typed area, its mix, how many coats of it."""

from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.coats.need import COATS_COUNT
from core.coats.places import ZONED
from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import NEW, ZONES, go
from mobile.session.forms import Edit, use_form
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.session.walls.walls import area_of
from mobile.session.walls.zones import LEAST_M2, keep_zone, next_zone_name, remove_zone
from mobile.store.records import Wall, Zone
from mobile.words import places
from mobile.words import walls as words


@dataclass(frozen=True, slots=True)
class ZoneForm:
    """What has been typed, untouched; `mix` is an id."""

    name: str = ""
    area: str = ""
    mix: str = ""
    coats: str = "1"

    def area_m2(self, view: View) -> float:
        """Read the area."""
        return view.read("zone_area_m2", self.area)

    def coats_count(self, view: View) -> int:
        """Read how many coats; nothing typed is one."""
        count = view.read("coats_count", self.coats or "1")
        if count != int(count):
            raise Refused("coats_count", self.coats, *COATS_COUNT)
        return int(count)


def form_of(zone: Zone | None, view: View) -> ZoneForm:
    """Write a kept zone as one would type it."""
    if zone is None:
        return ZoneForm()
    area = view.typed("zone_area_m2", zone.area_m2)
    return ZoneForm(zone.name, area, zone.mix, str(zone.coats_count))


@ft.component
def ZoneScreen(
    known: Known, wall: Wall, zone: Zone | None, *, key: str | None = None
) -> ft.Control:
    """Mark a zone, or change it."""
    session, view = use_session(), use_view()
    address = f"walls/{wall.id}/{ZONES}/{zone.id if zone else NEW}"
    form, edit, earlier = use_form(address, form_of(zone, view))
    name = form.name.strip() or called(known, form) or next_zone_name(known, wall)

    async def keep() -> None:
        now = edit.now
        try:
            sizes = now.area_m2(view), now.mix, now.coats_count(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        stamp = session.stamp(zone.id if zone else edit.id)
        said = now.name.strip() or called(known, now) or next_zone_name(known, wall)
        made = Zone(*stamp, wall.job, wall.id, said, *sizes)
        await session.attempt(keep_zone(session, made), then=lambda _: go(places.WALLS, wall.id))

    async def remove() -> None:
        if zone:
            verb = remove_zone(session, zone)
            await session.attempt(verb, then=lambda _: go(places.WALLS, wall.id))

    back = Action(places.BACK, lambda: go(places.WALLS, wall.id), key="back")
    lines: list[ft.Control] = [
        header(name, places.DRAFT if earlier else wall.name, outline_button(back, "back")),
        *fields(known, wall, form, edit, view),
        *mixes(known, form, edit),
    ]
    if zone:
        lines.append(second_button(Action(words.REMOVE_ZONE, remove, key="remove")))
    return screen(lines, [main_button(Action(words.keep(name), keep, key="keep"))])


def called(known: Known, form: ZoneForm) -> str:
    """Call a zone that was given no name by its mix."""
    return next((mix.name for mix in known.job_mixes if mix.id == form.mix), "")


def fields(
    known: Known, wall: Wall, form: ZoneForm, edit: Edit[ZoneForm], view: View
) -> list[ft.Control]:
    """Ask for the name, the area and the coats."""

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    whole = area_of(known, wall.shape)
    most_m2 = whole.gross_m2
    wrong = view.error("zone_area_m2", form.area, (LEAST_M2, most_m2))
    label = view.label(words.AREA, "zone_area_m2")
    several = (
        Field("name", words.NAME, form.name, number=False),
        Field("area", label, form.area, wrong),
        Field("coats", words.COATS, form.coats, view.error("coats_count", form.coats, COATS_COUNT)),
    )
    over = not wrong and form.area.strip() and form.area_m2(view) > whole.net_m2
    said = (words.AREA_OVER, t.CAUTION) if over else (words.AREA_MORE, t.SOFT)
    return [Fields(several, typed), t.say(said[0], t.CAPTION, said[1])]


def mixes(known: Known, form: ZoneForm, edit: Edit[ZoneForm]) -> list[ft.Control]:
    """Offer the mixes that are painted inside the picture."""

    def choose(mix_id: str) -> None:
        edit(lambda now: replace(now, mix="" if now.mix == mix_id else mix_id))

    several = [mix for mix in known.job_mixes if mix.use in ZONED]
    if not several:
        new = Action(words.NEW_MIX, partial(go, places.MIX, NEW), key="new mix")
        return [t.say(words.NO_MIXES, t.SMALL, t.SOFT), second_button(new)]
    offered = [
        segmented(((mix.id, mix.name),), form.mix if form.mix == mix.id else "", choose, 1.0, "mix")
        for mix in several
    ]
    return [t.say(words.ITS_MIX, t.SMALL, t.SOFT), *offered]
