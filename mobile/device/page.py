"""What only the page can do: ring, save and choose files, stay awake, keep the app, renew it.

On any Python but the browser's the calls do nothing, so that the app also runs under Flet's server.
"""

from collections.abc import Callable
from dataclasses import dataclass

from mobile.device.bridge import call, listen


@dataclass(frozen=True, slots=True)
class Version:
    """Whether the whole app is kept on this phone, and whether a newer version waits for use."""

    kept: bool
    newer: bool


def set_alarms(alarms: tuple[tuple[str, float], ...]) -> None:
    """Have the page ring at these instants, (id, POSIX seconds), and forget all earlier ones.

    The page keeps the time, so a busy Python is no reason to be late. An alarm that has rung rings
    again only at another instant.
    """
    call("alarms", alarms=[{"id": name, "atMs": at_s * 1000} for name, at_s in alarms])


def on_due(heard: Callable[[str], None]) -> None:
    """Call `heard` with the id of each alarm as it begins to ring."""
    listen("due", lambda news: heard(news.id))


def silence() -> None:
    """Stop the ringing; by itself it stops after a minute."""
    call("silence")


def save_file(name: str, data: bytes, mime: str) -> None:
    """Put a file into the phone's downloads."""
    call("save", name=name, bytes=data, mime=mime)


def print_picture(data: bytes, mime: str) -> None:
    """Ask the phone to print a picture, and nothing else of the page."""
    call("print", bytes=data, mime=mime)


def pick_file(accept: str) -> None:
    """Let the person choose a file of the phone, of kinds as in `.json,image/*`.

    To be called at once after a touch: browsers ask nobody otherwise. Asked again before a file is
    chosen, it is still one file that is heard of; where nothing is chosen nothing is.
    """
    call("pick", accept=accept)


def on_picked(heard: Callable[[str, bytes], None]) -> None:
    """Call `heard` with name and content of each file that is chosen.

    The kinds that were asked for don't bind the person. There is no content where the file is
    empty, larger than 64 MB, or can't be read.
    """
    listen("picked", lambda news: heard(news.name, news.bytes.to_bytes()))


def say(text: str) -> None:
    """Speak by the phone's own voice, where it has one; what is being said gives way."""
    call("say", text=text)


def keep_awake(on: bool) -> None:
    """Keep the screen on, where the phone allows it."""
    call("awake", on=on)


def persist() -> None:
    """Ask the browser not to clear the book when the phone runs full."""
    call("persist")


def text_ratio(ratio: float) -> None:
    """Scale all text, on top of the phone's own text size; 1 is as the phone has it."""
    call("text", ratio=ratio)


def shown(ground: str, ink: str) -> None:
    """Lift the page's own first picture; the next start begins in these colours (`#rrggbb`)."""
    call("shown", ground=ground, ink=ink)


def failed(reason: str) -> None:
    """Have the page say for good that the app did not start, with what the person can do."""
    call("failed", reason=reason)


def weighing(on: bool) -> None:
    """Hold back newer versions, in every tab, while paint is on the scale."""
    call("weighing", on=on)


def on_version(heard: Callable[[Version], None]) -> None:
    """Call `heard` now and whenever it changes what is kept, and whether a newer version waits."""
    listen("version", lambda news: heard(Version(kept=news.kept, newer=news.newer)))
    call("watch")


def use_update() -> None:
    """Start the newer version now, unless some tab is weighing; nothing kept is touched."""
    call("renew")


def on_hidden(heard: Callable[[], None]) -> None:
    """Call `heard` when the person turns to something else: the time to keep drafts."""
    listen("hidden", lambda _news: heard())
    call("hidden")


def on_text(heard: Callable[[float], None]) -> None:
    """Call `heard` now and whenever it changes with the size of text on the page; 1 is usual."""
    listen("text", lambda news: heard(news.ratio))
    call("sized")


def reload() -> None:
    """Start the app anew."""
    call("reload")
