"""What is due: the order of the walls, what the thumb finishes, what rings and when."""

from mobile import clock
from mobile.session.coats.standing import CoatNow, coats_now
from mobile.session.known import Known
from mobile.session.times import next_minute_s
from mobile.words import coats as words

BEFORE_LATE_S = 1800.0  # the second ring, half an hour before the recoat limit
LATE_BY_S = 0.001  # at its limit a coat is still ready, just after it is too late
AHEAD_S = 3600.0  # the furthest that "done in five" goes
MISSED_S = 60.0
CLOCK_S = 6 * 3600.0  # the longest wait that is drawn as a strip
RANK = {
    "too late": 0,
    "ready": 1,
    "rolling": 2,
    "drying": 2,
    "to start": 3,
    "waiting": 4,
    "done": 5,
}
Ring = tuple[str, float, str]


def in_order(coats: tuple[CoatNow, ...], now_s: float) -> tuple[CoatNow, ...]:
    """Sort for the screen: too late and ready first, then the soonest, then the rest."""

    def key(coat: CoatNow) -> tuple[int, float]:
        return RANK[coat.state(now_s)], coat.drying.ready_at_s if coat.drying else 0.0

    return tuple(sorted(coats, key=key))


def planned(coats: tuple[CoatNow, ...], now_s: float) -> CoatNow | None:
    """Give the wall whose next coat the main button finishes: nothing that still dries."""
    due = [c for c in in_order(coats, now_s) if c.state(now_s) in ("too late", "ready", "to start")]
    return due[0] if due else None


def on_clock(coat: CoatNow, now_s: float) -> bool:
    """Tell whether a wait is drawn on the one clock: a short one that was begun not long ago."""
    drying = coat.drying
    if drying is None or coat.state(now_s) in {"done", "waiting"}:
        return False
    return coat.wait_s <= CLOCK_S and now_s - drying.finished_at_s <= CLOCK_S - BEFORE_LATE_S


def soonest(coats: tuple[CoatNow, ...], now_s: float) -> CoatNow | None:
    """Give the wall that is ready next, of those that still dry."""
    wet = [c for c in in_order(coats, now_s) if c.state(now_s) in ("rolling", "drying")]
    return wet[0] if wet else None


def next_change_s(coats: tuple[CoatNow, ...], now_s: float) -> float:
    """Give the instant at which something on the screen changes next: a minute, or a state."""
    due = [next_minute_s(now_s)]
    for coat in coats:
        if coat.drying:
            dried = coat.drying
            late = () if dried.late_at_s is None else (dried.late_at_s + LATE_BY_S,)
            due += [at_s for at_s in (dried.finished_at_s, dried.ready_at_s, *late) if at_s > now_s]
    return min(due)


def nudged(coat: CoatNow, nudge_s: float, by_s: float, now_s: float) -> float:
    """Move the instant of finishing: at most an hour ahead, and not before the step before it."""
    earliest_s = coat.drying.finished_at_s - now_s if coat.drying else -clock.DAY_S
    return min(max(nudge_s + by_s, min(earliest_s, 0.0)), AHEAD_S)


def alarms(known: Known) -> tuple[Ring, ...]:
    """Give what is to ring: each coat when it is ready, and half an hour before its limit.

    Several zones that one coat keeps waiting ring once, in the name of their wall. What was due
    more than a minute ago has rung, or was missed: then the screen says it.
    """
    if not known.settings.bell:
        return ()
    rings: dict[str, Ring] = {}
    for coat in coats_now(known):
        for key, at_s, said in _rings(coat, coat.name):
            rings[key] = (key, at_s, said if key not in rings else _named(coat, key))
    missed_s = clock.now_s() - MISSED_S
    return tuple(ring for ring in rings.values() if ring[1] > missed_s)


def _named(coat: CoatNow, key: str) -> str:
    """Say a ring that is for several zones of one wall."""
    return next(said for own, _, said in _rings(coat, coat.wall_name) if own == key)


def _rings(coat: CoatNow, name: str) -> tuple[Ring, ...]:
    if coat.drying is None or coat.next is None or coat.coat is None or coat.holds:
        return ()
    key = f"{coat.coat.id}:{coat.next.id}"
    ready = (key, coat.drying.ready_at_s, words.ring(name, coat.next.name))
    late_s = coat.drying.late_at_s
    if late_s is None or late_s - BEFORE_LATE_S <= coat.drying.ready_at_s:
        return (ready,)
    late = words.ring_late(name, clock.hour(late_s))
    return ready, (f"{key}:late", late_s - BEFORE_LATE_S, late)
