"""How long a start takes, from the navigation to the first useful frame.

That frame is the second animation frame after the message that carries the first screen's words has
reached the page. The app starts from its own service worker with its server stopped; the counter,
which can't, starts from its server with a warm browser cache.
"""

import statistics
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import urlsplit

from tests.benchmarks import counter
from tests.browser.chromium import Chromium
from tests.browser.engine import Screen, until
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.wire import wire

PATIENCE_S = 300.0
FIRST_WORDS = "Measure the first wall"
WATCH = """((words) => {
  const sought = new TextEncoder().encode(words);
  const holds = (bytes) => {
    for (let at = bytes.indexOf(sought[0]); at >= 0; at = bytes.indexOf(sought[0], at + 1))
      if (sought.every((byte, n) => bytes[at + n] === byte)) return true;
    return false;
  };
  globalThis.Worker = class extends Worker {
    constructor(...given) {
      super(...given);
      this.addEventListener('message', ({ data }) => {
        if (globalThis.usefulMs || !(data instanceof Uint8Array) || !holds(data)) return;
        requestAnimationFrame(() => requestAnimationFrame(() => {
          globalThis.usefulMs ??= performance.now();
        }));
      });
    }
  };
})(%r)"""


@contextmanager
def browser(home: Path) -> Iterator[Phone]:
    """Start a browser with the profile in `home`, which stays for the next."""
    with wire() as line:
        phone = Phone(Chromium, home, line, Screen())
        try:
            yield phone
        finally:
            phone.engine.close()


def useful_ms(phone: Phone, address: str, words: str) -> float:
    """Start at an address in this browser; return when its first useful frame was there."""
    phone.engine.context.add_init_script(WATCH % words)  # type: ignore[attr-defined]
    phone.open(address)
    ask = "() => globalThis.usefulMs ?? 0"
    return float(until(lambda: phone.engine.ask(ask), PATIENCE_S, lambda: f"no {words!r}"))


def kept(home: Path, served: Served) -> None:
    """Have the app kept on the phone."""
    with browser(home) as phone:
        useful_ms(phone, served.address, FIRST_WORDS)
        active = "async () => (await navigator.serviceWorker.ready).active.state"
        until(lambda: phone.engine.ask(active) == "activated", PATIENCE_S, lambda: "not kept")


def fetched_by(home: Path, address: str) -> frozenset[str]:
    """Start the counter for the first time; return the paths that it asked its host for."""
    with browser(home) as phone:
        useful_ms(phone, address, counter.WORDS)
        host = urlsplit(address).netloc
        return frozenset(urlsplit(u).path for u in phone.line.asked if urlsplit(u).netloc == host)


def again_ms(home: Path, address: str, words: str) -> float:
    """Start once more in a new browser process."""
    with browser(home) as phone:
        return useful_ms(phone, address, words)


def measured(
    built: Path, bare: Path, home: Path, rounds: int, tell: Callable[[str], None]
) -> frozenset[str]:
    """Measure both in turns and print; return which files the counter's first start fetched."""
    served = Served(built)
    kept(home / "app", served)
    served.stop()
    with counter.hosted(bare) as bare_at:
        fetched = fetched_by(home / "plain", bare_at)
        took: dict[str, list[float]] = {"app, offline": [], "counter, warm cache": []}
        for _ in range(rounds):
            took["app, offline"].append(again_ms(home / "app", served.address, FIRST_WORDS))
            took["counter, warm cache"].append(again_ms(home / "plain", bare_at, counter.WORDS))
    tell("Start to first useful frame, ms      median     least      most")
    for name, all_ms in took.items():
        tell(f"  {name:30}{statistics.median(all_ms):11.0f}{min(all_ms):10.0f}{max(all_ms):10.0f}")
    one, other = (statistics.median(all_ms) for all_ms in took.values())
    tell(f"  the app takes {one / other:.2f} of the counter's time")
    return fetched
