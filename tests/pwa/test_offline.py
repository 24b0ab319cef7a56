"""The built site in a real browser: alone with its host, without it, damaged, renewed."""

import pytest
from playwright.sync_api import Error

from mobile.pwa import page
from mobile.pwa.page import ABOUT
from tests.browser.engine import until
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.pwa.conftest import Files, changed, laid

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]

SPOIL = """async (path) => {
  const cache = await caches.open((await caches.keys())[0]), kept = `${document.baseURI}.kept`;
  const version = await (await cache.match(`${kept}/version`)).json();
  await cache.put(`${kept}/${version.seal}/${version.files[path][0]}`, new Response('spoilt'));
}"""
SPLASH = "() => document.getElementById('splash')?.innerText"
LICENCES = "async () => (await fetch('licences.txt')).text()"
AGAIN = """() => {
  const { left, top, width, height } = document.getElementById('again').getBoundingClientRect();
  return [left + width / 2, top + height / 2];
}"""


def newer(files: Files) -> Files:
    """Make a newer version: its page says so."""
    index = files["index.html"].replace(ABOUT.encode(), b"second")
    return changed(files, "index.html", index)


def edition(phone: Phone) -> str:
    """Read which version the page is."""
    told = str(phone.engine.ask("() => document.querySelector('[name=description]').content"))
    return "first" if told == ABOUT else told


def comes(phone: Phone, words: str, of: str = "first") -> None:
    """Wait for words on a page that starts anew by itself: for a moment nothing answers."""

    def there() -> bool:
        try:
            return edition(phone) == of and words in phone.words()
        except Error:
            return False

    until(there, 90, lambda: f"no {words!r} of the {of} edition")


def test_a_first_visit_asks_nobody_else_and_the_app_then_starts_without_its_host(
    opened: Phone, host: Served
) -> None:
    opened.tap("More", "button")
    opened.see("count 1")
    host.stop()
    opened.cut()
    opened.reload()
    opened.see("count 0")
    opened.tap("More", "button")
    opened.see("count 1")
    opened.kill()
    opened.start()
    opened.open(host.address)
    opened.see("first edition")
    assert opened.asked_elsewhere(host.address) == ()
    assert opened.engine.troubles() == ()


def test_it_lives_under_a_path_of_its_host(
    hand: Phone, files: Files, tmp_path_factory: pytest.TempPathFactory
) -> None:
    folder = tmp_path_factory.mktemp("under")
    index = page.files("/night/garden/")["index.html"]
    served = Served(laid(folder, changed(files, "index.html", index)))
    assert served.address.endswith("/night/garden/")
    hand.open(served.address)
    hand.see("kept True")
    served.stop()
    hand.cut()
    hand.reload()
    hand.see("first edition")
    assert hand.engine.troubles() == ()


def test_a_damaged_file_is_put_right_where_there_is_signal(opened: Phone) -> None:
    opened.engine.ask(SPOIL, "python/packages.zip")
    opened.reload()
    comes(opened, "first edition")


def test_a_damaged_file_is_told_without_signal_and_mended_by_one_tap_with_it(
    opened: Phone, host: Served
) -> None:
    opened.engine.ask(SPOIL, "python/packages.zip")
    host.stop()
    opened.reload()
    until(lambda: "is damaged" in str(opened.engine.ask(SPLASH)), 90, lambda: "it started")
    told = str(opened.engine.ask(SPLASH))
    assert "did not start" in told
    assert "What you kept is still on this phone" in told
    host.start()
    opened.engine.touch(*opened.engine.ask(AGAIN))
    comes(opened, "first edition")


def test_a_damaged_file_is_put_right_in_an_idle_moment(opened: Phone) -> None:
    opened.engine.ask(SPOIL, "licences.txt")
    opened.reload()
    opened.see("first edition")
    assert opened.engine.ask(LICENCES) == "spoilt"
    until(lambda: "tinydb" in opened.engine.ask(LICENCES), 120, lambda: "still spoilt")


def test_a_newer_version_waits_until_it_is_asked_for_whatever_the_browser_does(
    opened: Phone, host: Served, files: Files
) -> None:
    laid(host.folder, newer(files))
    opened.reload()
    opened.see("newer True")
    assert edition(opened) == "first"
    opened.kill()  # no tab is left: now the browser swaps its service worker
    opened.start()
    opened.open(host.address)
    opened.see("newer True")
    assert edition(opened) == "first"
    opened.tap("Renew", "button")
    comes(opened, "newer False", "second")
    host.stop()
    opened.cut()
    opened.reload()
    opened.see("newer False")
    assert edition(opened) == "second"


def test_paint_on_the_scale_holds_a_newer_version_back(
    opened: Phone, host: Served, files: Files
) -> None:
    laid(host.folder, newer(files))
    opened.reload()
    opened.see("newer True")
    opened.tap("More", "button")
    opened.tap("Weigh", "button")
    opened.tap("Renew", "button")
    opened.tap("More", "button")
    opened.see("count 2")  # nothing was started anew
    opened.tap("Stirred", "button")
    opened.tap("Renew", "button")
    comes(opened, "newer False", "second")


def test_a_newer_version_fetches_only_what_it_changes(
    opened: Phone, host: Served, files: Files
) -> None:
    before = len(opened.line.asked)
    laid(host.folder, newer(files))
    opened.reload()
    opened.see("newer True")
    asked = {url for url in opened.line.asked[before:] if url.startswith(host.address)}
    assert asked == {host.address, f"{host.address}sw.js"}


def test_a_damaged_newer_version_changes_nothing(opened: Phone, host: Served, files: Files) -> None:
    made = newer(files)
    laid(host.folder, made | {"index.html": made["index.html"] + b" "})
    opened.reload()
    opened.see("first edition")
    opened.see("newer False")
    opened.reload()
    opened.see("kept True, newer False")
    assert edition(opened) == "first"


def test_coming_back_to_the_page_starts_it_afresh(opened: Phone, host: Served) -> None:
    opened.tap("More", "button")
    opened.see("count 1")
    opened.open(f"{host.address}licences.txt")
    opened.back()
    comes(opened, "count 0")
