"""Stands in for `mobile.main` in a site of its own."""

import time
from collections.abc import Callable
from typing import Any

import flet as ft

from mobile.device import calendar
from mobile.device import page as device

WORDS = "first edition"  # a test changes it to make a newer version
REMINDER = ("base 1", "Base 1 is due", 1_936_884_960.0, 1_936_870_560.0)


def remind() -> None:
    """Save a calendar file."""
    device.save_file("base 1.ics", calendar.calendar_file(*REMINDER), calendar.MIME)


@ft.component
def Sample() -> ft.Control:  # noqa: N802  components are PascalCase
    """Show a count, and the last news of each kind."""
    count, set_count = ft.use_state(0)
    news, set_news = ft.use_state(dict[str, str]())

    def hear(kind: str, words: str) -> None:
        set_news(lambda known: {**known, kind: words})

    def listen() -> None:
        device.on_version(lambda now: hear("version", f"kept {now.kept}, newer {now.newer}"))
        device.on_due(lambda name: hear("due", f"{name} is due"))
        device.on_picked(lambda name, data: hear("picked", f"{name}: {len(data)}, {sum(data)}"))
        device.on_text(lambda ratio: hear("text", f"text is {ratio:.2f}"))

    ft.use_effect(listen, [])
    verbs: dict[str, Callable[[], None]] = {
        "More": lambda: set_count(lambda known: known + 1),
        "Ring": lambda: device.set_alarms((("base 1", time.time() + 1),)),
        "Silence": device.silence,
        "Save": lambda: device.save_file("night garden.txt", b"moths", "text/plain"),
        "Pick": lambda: device.pick_file(".txt"),
        "Remind": remind,
        "Weigh": lambda: device.weighing(on=True),
        "Stirred": lambda: device.weighing(on=False),
        "Larger": lambda: device.text_ratio(1.5),
        "Renew": device.use_update,
    }
    said = [ft.Text(words) for words in (WORDS, f"count {count}")]
    heard = [ft.Text(words) for words in news.values()]  # below, so that no button moves
    buttons = [ft.Button(name, on_click=lambda _, do=do: do()) for name, do in verbs.items()]
    grams = ft.TextField(label="Grams", keyboard_type=ft.KeyboardType.NUMBER)
    return ft.Column([*said, grams, *buttons, *heard], scroll=ft.ScrollMode.AUTO)


def main(page: ft.Page) -> None:
    """Show it; a bug as words that a test can read, unlike Flet's own page of errors."""
    flet: Any = page.session
    flet.error = lambda report: page.add(ft.Text(report))
    page.render(Sample)
    device.shown("#0E1014", "#ECE7DC")


def start() -> None:
    """Run it; the page's worker calls this."""
    ft.run(main)
