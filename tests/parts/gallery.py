"""Look at the parts: `python -m tests.parts.gallery PORT` serves them, one page an address.

Addresses: /coats, /weigh, /keypad, /over, /cans, /mix, /wall, /job, /notices, /fields, each with
?look=dim&text=2 in the query of the address.
"""

# ruff: noqa: N802  components are PascalCase

import sys
from urllib.parse import parse_qs, urlsplit

import flet as ft

from mobile import theme as t
from mobile.parts.bar import LockedLine, Place, PlaceBar, PlaceRail
from tests.parts import scenes
from tests.parts.stage import serve

PLACES = tuple(
    Place(words, words.lower(), f"/{words.lower()}")
    for words in ("Coats", "Mix", "Cans", "Walls", "Job")
)


def asked(route: str) -> tuple[str, str, float]:
    """Read scene, look and text ratio from the address."""
    parts = urlsplit(route)
    query = parse_qs(parts.query)
    look, ratio = query.get("look", ["dark"])[0], float(query.get("text", ["1"])[0])
    return parts.path.strip("/") or "coats", look, ratio


@ft.component
def Gallery() -> ft.Control:
    page = ft.context.page
    route, set_route = ft.use_state(page.route)
    size, set_size = ft.use_state((page.width or 412, page.height or 915))

    def listen() -> None:
        page.on_route_change = lambda event: set_route(event.route)
        page.on_resize = lambda event: set_size((event.width, event.height))

    ft.use_effect(listen, [])
    scene, look, ratio = asked(route)
    width, height = size
    wide = width >= t.WIDE

    ft.use_memo(lambda: t.dress(page, t.look_of(look), ratio), [look, ratio])
    inside = min(width - (t.RAIL if wide else 0), 752) - 2 * t.MARGIN
    shown = scenes.SCENES[scene](inside, ratio, height, key=scene)
    current = {"weigh": "Mix", "keypad": "Mix"}.get(scene, scene.title())
    locked = scene in {"weigh", "keypad", "over"}
    bar: ft.Control = (
        LockedLine("Ember wing, 232 g", "places locked until it is stirred")
        if locked
        else PlaceBar(PLACES, (current,), width, ratio)
    )
    middle = ft.Column([ft.Container(shown, expand=True), *([] if wide else [bar])], spacing=0)
    middle.expand = True
    rail = [PlaceRail(PLACES, (current,))] if wide else []
    return ft.Row(
        [*rail, middle],
        spacing=0,
        expand=True,
        vertical_alignment=ft.CrossAxisAlignment.STRETCH,
    )


def main(page: ft.Page) -> None:
    t.dress(page, t.DARK)
    page.render(Gallery)


if __name__ == "__main__":
    serve(main, int(sys.argv[1]))
