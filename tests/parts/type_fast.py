"""Type fast: `python -m tests.parts.type_fast [SLOW_MS [BUSY]]` types 40 texts at four speeds.

Three fields and an answer, under Flet's own server in Chromium, touched like a phone. With SLOW_MS
each painting takes so long, as in a phone's browser; with BUSY so many processes keep the machine
busy. What the page's input holds, the form and the answer have to agree after each text.
"""

import json
import random
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from threading import Thread

import flet as ft
from playwright.sync_api import Page, sync_playwright

from mobile import theme as t
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from tests.parts.contact import FLAGS, free_port
from tests.parts.stage import serve

NAMES = ("width", "left", "right")
DELAYS_MS = (0, 5, 20, 60)
TEXTS = 40
FOCUSED = "document.activeElement?.tagName === 'INPUT' ? document.activeElement.value : null"


def answer(form: tuple[str, ...]) -> str:
    """Give an answer that changes with each key."""
    return " | ".join(form)


@ft.component
def Bench(slow_s: float) -> ft.Control:  # noqa: N802  components are PascalCase
    form, set_form = ft.use_state(("",) * len(NAMES))

    def change(name: str, text: str) -> None:
        at = NAMES.index(name)
        set_form(lambda now: (*now[:at], text, *now[at + 1 :]))

    time.sleep(slow_s)
    print(json.dumps([form, answer(form)]), flush=True)  # noqa: T201
    fields = tuple(
        Field(name, name, text, "Right would be 2.80." if text.count(".") > 1 else "")
        for name, text in zip(NAMES, form, strict=True)
    )
    return screen([header("Type"), Fields(fields, change), t.say(answer(form), t.NAME)])


def bench(port: int, slow_ms: int) -> None:
    """Serve the bench; tell the form and the answer at each painting."""

    def main(page: ft.Page) -> None:
        t.dress(page, t.DARK)
        page.render(lambda: Bench(slow_ms / 1000))

    serve(main, port)


class Told:
    """What the bench told last."""

    def __init__(self, server: subprocess.Popen[str]) -> None:
        self.form: list[str] = []
        self.answer = ""
        self.server = server
        Thread(target=self.listen, daemon=True).start()

    def listen(self) -> None:
        """Follow the paintings."""
        for line in self.server.stdout or ():
            self.form, self.answer = json.loads(line)


@contextmanager
def running(*words: str) -> Iterator[subprocess.Popen[str]]:
    """Run Python in a process of its own; end it afterwards."""
    process = subprocess.Popen(
        [sys.executable, "-W", "ignore", *words], stdout=subprocess.PIPE, text=True
    )
    try:
        yield process
    finally:
        process.kill()
        process.wait()


def places(page: Page) -> list[tuple[float, float]]:
    """Find where to touch the fields; then load the page anew, as people have it."""
    page.wait_for_selector("flt-semantics-placeholder", state="attached", timeout=60_000)
    page.wait_for_timeout(2000)
    page.evaluate("document.querySelector('flt-semantics-placeholder').click()")
    found = []
    for name in NAMES:
        box = page.get_by_label(name, exact=True).first.bounding_box(timeout=60_000)
        assert box
        found.append((box["x"] + 60, box["y"] + box["height"] / 2))
    page.reload()
    page.wait_for_selector("flt-semantics-placeholder", state="attached", timeout=60_000)
    page.wait_for_timeout(3000)
    return found


def enter(page: Page, spot: tuple[float, float]) -> None:
    """Leave the field that one is in, and touch another, until it has the focus."""
    page.touchscreen.tap(200, 700)
    page.wait_for_function("document.activeElement?.tagName !== 'INPUT'")
    page.touchscreen.tap(*spot)
    page.wait_for_function("document.activeElement?.tagName === 'INPUT'")
    page.wait_for_timeout(100)


def wrong(page: Page, told: Told, at: int, text: str) -> str:
    """Wait until page, form and answer agree on a typed text; if they never do, say so."""
    want = list(told.form)
    want[at] = text
    until = time.monotonic() + 60
    while time.monotonic() < until:
        seen = page.evaluate(FOCUSED)
        if (seen, told.form, told.answer) == (text, want, answer(tuple(want))):
            return ""
        page.wait_for_timeout(100)
    return f"{text!r} typed into {NAMES[at]}: the page has {seen!r}, the form {told.form}"


def drive(page: Page, told: Told, delay_ms: int, spots: list[tuple[float, float]]) -> int:
    """Type all texts at one speed; count those that got lost."""
    chance, lost = random.Random(delay_ms), 0
    for number in range(TEXTS):
        at = number % len(NAMES)
        text = "".join(chance.choices("0123456789,.", k=chance.randint(1, 9)))
        enter(page, spots[at])
        page.keyboard.type(text, delay=delay_ms)
        if said := wrong(page, told, at, text):
            lost += 1
            print(said)  # noqa: T201
    return lost


def main(slow_ms: int = 0, busy: int = 0) -> int:
    """Type at each speed; tell how much got lost."""
    port, lost = free_port(), 0
    with ExitStack() as stack:
        words = ("-m", "tests.parts.type_fast", "serve", str(port), str(slow_ms))
        told = Told(stack.enter_context(running(*words)))
        time.sleep(6)
        play = stack.enter_context(sync_playwright())
        browser = play.chromium.launch(executable_path="/usr/bin/chromium", args=FLAGS)
        stack.callback(browser.close)
        view = {"width": 412, "height": 915}
        page = browser.new_context(viewport=view, has_touch=True, is_mobile=True).new_page()  # type: ignore[arg-type]
        page.goto(f"http://127.0.0.1:{port}/")
        spots = places(page)
        for _ in range(busy):
            stack.enter_context(running("-c", "while True: pass"))
        for delay_ms in DELAYS_MS:
            failed = drive(page, told, delay_ms, spots)
            print(f"{delay_ms} ms a key, {slow_ms} ms a painting: {failed} of {TEXTS} lost")  # noqa: T201
            lost += failed
    return lost


if __name__ == "__main__":
    asked = sys.argv[1:]
    if asked[:1] == ["serve"]:
        bench(int(asked[1]), int(asked[2]))
    else:
        sys.exit(main(*map(int, asked)) > 0)
