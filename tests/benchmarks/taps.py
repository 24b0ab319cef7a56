"""What a tap costs the Python worker, in CPU time of its thread (Linux only).

The scheduler's own account (`/proc/PID/task/TID/schedstat`) is steadier than any clock on a busy
machine; what the worker does by itself in the same time is taken off.
"""

import os
import time
from collections.abc import Callable
from pathlib import Path

from tests.benchmarks import counter
from tests.benchmarks.starts import FIRST_WORDS, PATIENCE_S, browser
from tests.browser.phone import Phone
from tests.browser.site import Served
from tests.browser.tour import Walk

THREAD = "DedicatedWorker"
TAPS, REST_S = 12, 0.8


def worker_ms(leader: int) -> float:
    """Add up the CPU time of all worker threads of a browser, in ms."""
    spent_ns = 0
    for process in filter(str.isdecimal, os.listdir("/proc")):
        try:
            if os.getpgid(int(process)) != leader:
                continue
            for task in Path(f"/proc/{process}/task").iterdir():
                if (task / "comm").read_text().startswith(THREAD):
                    spent_ns += int((task / "schedstat").read_text().split()[0])
        except OSError:  # it has ended meanwhile
            continue
    return spent_ns / 1e6


def a_tap_ms(phone: Phone, names: tuple[str, ...]) -> float:
    """Tap buttons in turns; return what one tap costs."""
    leader = phone.engine.leader  # type: ignore[attr-defined]
    places = [phone.one(name, "button") for name in names]
    before = worker_ms(leader)
    time.sleep(TAPS * REST_S)
    idle = worker_ms(leader) - before
    before = worker_ms(leader)
    for number in range(TAPS):
        phone.touch(places[number % len(places)])
        time.sleep(REST_S)
    return (worker_ms(leader) - before - idle) / TAPS


def counter_ms(bare: Path, home: Path) -> float:
    """Measure the counter's one button."""
    with counter.hosted(bare) as address, browser(home) as phone:
        phone.open(address)
        phone.see(counter.WORDS, PATIENCE_S)
        return a_tap_ms(phone, ("More",))


def app_ms(built: Path, home: Path) -> dict[str, float]:
    """Measure taps in the demo job."""
    served = Served(built)
    with browser(home) as phone:
        phone.open(served.address)
        phone.see(FIRST_WORDS, PATIENCE_S)
        walk = Walk(phone)
        walk.tap("Look at the demo job", "Weigh next")
        costs = {"app: from place to place": a_tap_ms(phone, ("Walls", "Coats"))}
        walk.to("cans/pick", "emptiest first")
        walk.tap("fluorescent orange", "Keep, next can")
        costs["app: a digit on the keypad"] = a_tap_ms(phone, ("1", "delete"))
    served.stop()
    return costs


def measured(built: Path, bare: Path, home: Path, tell: Callable[[str], None]) -> None:
    """Measure taps of the app and of the counter, and print."""
    costs = {"counter: one more": counter_ms(bare, home / "plain taps")}
    costs |= app_ms(built, home / "app taps")
    tell("Worker CPU per tap, ms")
    for name, cost_ms in costs.items():
        tell(f"  {name:30}{cost_ms:11.1f}")
