"""The root: five places, kept mounted, in one tree for phone and laptop."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace

import flet as ft

from core.units import System
from mobile import theme as t
from mobile.device import page as device
from mobile.parts.bar import LockedLine, Place, PlaceBar, PlaceRail
from mobile.screens.cans.place import CansPlace
from mobile.screens.coats.place import CoatsPlace
from mobile.screens.job.place import JobPlace
from mobile.screens.lines import Notices, ToldLine
from mobile.screens.mix.place import MixPlace
from mobile.screens.walls.place import WallsPlace
from mobile.session.address import WEIGH_OUT, address, at_keypad, place_of
from mobile.session.coats.due import alarms
from mobile.session.known import Known
from mobile.session.mix.pots import under_way
from mobile.session.mix.spoken import spoken_step
from mobile.session.session import SESSION, Session, use_session
from mobile.session.view import VIEW, View, lies, view_of
from mobile.store.pot import Pot
from mobile.words import places as words
from mobile.words.grams import whole

SCREENS: dict[str, Callable[..., ft.Control]] = {
    words.COATS: CoatsPlace,
    words.MIX: MixPlace,
    words.CANS: CansPlace,
    words.WALLS: WallsPlace,
    words.JOB: JobPlace,
}
STRETCH = ft.CrossAxisAlignment.STRETCH


@dataclass
class Seen:
    """What each place was last drawn with: a place that is not on the screen costs nothing."""

    places: dict[str, tuple[Known, str, View]] = field(default_factory=dict)
    other: str = words.COATS  # what stands beside Job on a laptop


def first_address(known: Known, route: str) -> str:
    """Say what opens: a weigh-out in progress at its step, else what the address says."""
    if under_way(known):
        return WEIGH_OUT
    return address(*place_of(route))


def weighing(known: Known, route: str) -> Pot | None:
    """Give the pot whose weigh-out is on the screen: the places are locked then."""
    place, at = place_of(route)
    return under_way(known) if place == words.MIX and at.partition("/")[0] == "weigh" else None


@ft.component
def App(session: Session, phone_ratio: float, still: bool = False) -> ft.Control:
    """Show one place, or two beside each other where there is room."""
    shown, _ = ft.use_state(session.shown)
    known = shown.known
    route, size = use_page(known)
    seen, _set = ft.use_state(Seen())
    use_device(session, known)
    use_look(known, phone_ratio, still)
    pot = weighing(known, route)
    place, _at = place_of(route)
    wide = size[0] >= t.WIDE and size[1] >= t.TALL and pot is None
    if place != words.JOB:
        seen.other = place
    here = (seen.other, words.JOB) if wide else (place,)
    pad = at_keypad(route) and not wide
    aside = not wide and lies(size, phone_ratio)
    t.LOOK.default_value.sideways = aside  # as with the text size: what is drawn now asks for it
    view = view_of(size, phone_ratio, System(known.settings.units), aside=aside)
    use_room(session, route, view)
    look_again(seen, known, route, here, view)
    return SESSION(session, lambda: frame(seen, here, pot, pad, view))


def use_page(known: Known) -> tuple[str, tuple[float, float]]:
    """Follow the address and the size of the page."""
    page = ft.context.page
    route, set_route = ft.use_state(first_address(known, page.route or ""))
    size, set_size = ft.use_state((page.width or 412.0, page.height or 915.0))

    def listen() -> None:
        page.on_route_change = lambda event: set_route(event.route)
        page.on_resize = lambda event: set_size((event.width, event.height))
        if (page.route or "").strip("/") != route.strip("/"):
            page.navigate(route)

    ft.use_effect(listen, [])
    return route, size


def use_device(session: Session, known: Known) -> None:
    """Let the page ring, hold updates back while paint is on the scale, and follow the settings."""
    settings = known.settings

    def ring() -> None:
        rings = alarms(known)
        device.set_alarms(tuple((name, at_s) for name, at_s, _ in rings))
        said = {name: words_said for name, _, words_said in rings}
        device.on_due(lambda name: session.tell(said[name]) if name in said else None)

    ft.use_effect(ring, [known])
    ft.use_effect(lambda: device.weighing(under_way(known) is not None), [known])
    pot = under_way(known) if settings.awake else None
    ft.use_effect(lambda: device.keep_awake(pot is not None), [pot is not None])
    spoken = spoken_step(known) if settings.voice else ""
    ft.use_effect(lambda: device.say(spoken) if spoken else None, [spoken])
    ft.use_effect(lambda: device.text_ratio(settings.text_ratio), [settings.text_ratio])


def use_look(known: Known, ratio: float, still: bool) -> None:
    """Dress the page as this person has it: look, text size, motion."""
    page, look = ft.context.page, known.settings.look
    if t.LOOK.default_value.text_ratio != ratio:  # what is drawn now asks for it already
        t.LOOK.default_value.text_ratio = ratio
    ft.use_effect(lambda: t.dress(page, t.look_of(look), ratio, still), [look, ratio, still])


def use_room(session: Session, route: str, view: View) -> None:
    """Let what was told give way on the next screen; its *Undo* in another place, or for room."""
    short = view.height / view.text_ratio < t.SHORT
    place = place_of(route)[0]
    last = ft.use_ref(place)

    def give_way() -> None:
        session.hush_if_read(undo_too=short or last.current != place)
        last.current = place

    ft.use_effect(give_way, [route])


def look_again(seen: Seen, known: Known, route: str, here: tuple[str, ...], view: View) -> None:
    """Let the places on the screen have the newest state; the others keep their last."""
    place, at = place_of(route)
    for name in here:
        width = view.width
        if len(here) > 1:
            width = t.PANE if name == words.JOB else view.width - t.RAIL - t.PANE
        last_at = seen.places[name][1] if name in seen.places else ""
        here_at = at if name == place else last_at
        seen.places[name] = (known, here_at, replace(view, width=width))


def frame(seen: Seen, here: tuple[str, ...], pot: Pot | None, pad: bool, view: View) -> ft.Control:
    """Lay out rail, places, lines and bar; nothing moves in the tree, so nothing typed is lost."""
    wide = len(here) > 1
    places = tuple(
        Place(name, name.lower(), address(name, *address_rest(seen, name, here)))
        for name in words.PLACES
    )
    kept = [kept_place(seen, name, here) for name in words.PLACES]
    rail = ft.Container(PlaceRail(places, here), visible=wide)
    bar = ft.Container(
        PlaceBar(places, here, view.width, view.text_ratio), visible=not wide and pot is None
    )
    title = words.on_the_scale(pot.started.name, whole(pot.shown_g)) if pot else ""
    locked = ft.Container(LockedLine(title, words.LOCKED), visible=pot is not None)
    told = ToldLine(pad or pot is not None, t.large() and not t.sideways(), key="told")
    middle = ft.Row(kept, spacing=0, expand=True, vertical_alignment=STRETCH)
    column = ft.Column(
        [Notices(key="notices"), middle, told, bar, locked],
        spacing=0,
        expand=True,
        horizontal_alignment=STRETCH,
    )
    row = ft.Row([rail, column], spacing=0, expand=True, vertical_alignment=STRETCH)
    return ft.SafeArea(row, expand=True)


def address_rest(seen: Seen, name: str, here: tuple[str, ...]) -> tuple[str, ...]:
    """Say where a place is come back to: where one was; once there, at its beginning."""
    return () if name in here or name not in seen.places else (seen.places[name][1],)


def kept_place(seen: Seen, name: str, here: tuple[str, ...]) -> ft.Control:
    """Keep a place mounted from its first visit on."""
    pane = len(here) > 1 and name == words.JOB
    content = Host(name, *seen.places[name], key=f"host {name}") if name in seen.places else None
    return ft.Container(
        content,
        key=f"at {name}",
        visible=name in here,
        expand=not pane,
        width=t.PANE if pane else None,
        border=ft.Border(left=ft.BorderSide(1.5, t.LINE)) if pane else None,
    )


@ft.component
def _Host(name: str, known: Known, at: str, view: View, *, key: str | None = None) -> ft.Control:
    # A place that is skipped outlives what stood above it: it gets the session from right here.
    session = use_session()
    return SESSION(session, lambda: VIEW(view, lambda: SCREENS[name](known, at)))


Host = ft.memo(_Host)
