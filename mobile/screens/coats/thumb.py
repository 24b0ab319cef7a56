"""What the thumb does: finish the planned coat or the chosen one, weigh the next mix or a can."""

from dataclasses import dataclass

from mobile.parts.tap import Action, Do
from mobile.session.coats.due import planned, soonest
from mobile.session.coats.standing import CoatNow
from mobile.session.times import when
from mobile.words import cautions
from mobile.words import coats as words


@dataclass(frozen=True, slots=True)
class Aim:
    """Which wall the person chose, and how far the instant of finishing was moved."""

    wall: str = ""
    nudge_s: float = 0.0


def aimed(coats: tuple[CoatNow, ...], aim: Aim, now_s: float) -> CoatNow | None:
    """Give the wall that the main button finishes: the chosen one, else the planned one."""
    chosen = next((coat for coat in coats if coat.id == aim.wall and coat.next), None)
    return chosen or planned(coats, now_s)


def finish_action(coat: CoatNow, aim: Aim, now_s: float, do: Do) -> Action:
    """Say what the main button finishes, where, and when if not just now."""
    return Action(finish_words(coat), do, small_line(coat, aim, now_s), key="finish")


def read_action(coat: CoatNow, do: Do) -> Action:
    """Let the caution before a step be read first."""
    return Action(cautions.READ, do, words.then(finish_words(coat)), key="caution read")


def finish_words(coat: CoatNow) -> str:
    """Say what is finished next on a wall."""
    return words.finish(coat.next.name if coat.next else "")


def small_line(coat: CoatNow, aim: Aim, now_s: float) -> str:
    """Name the wall, and what is unusual about finishing there now."""
    if aim.nudge_s:
        return words.ends_at(coat.name, when(now_s + aim.nudge_s, now_s))
    return coat.name


def warning(coat: CoatNow, now_s: float) -> str:
    """Say what speaks against finishing a coat there now, "" if nothing does."""
    match coat.state(now_s):
        case "drying" | "rolling":
            usual = coat.wait is not None and coat.wait.usual
            return words.STILL_WET_USUAL if usual else words.STILL_WET
        case "too late":
            return words.LATE_HERE
        case _:
            return ""


def waiting_action(coats: tuple[CoatNow, ...], now_s: float) -> Action:
    """Say honestly that nothing can be finished yet."""
    wet = soonest(coats, now_s)
    if wet is None or wet.drying is None:
        return Action(words.ALL_DONE, key="finish")
    if wet.state(now_s) == "rolling":
        said = words.rolls_until(wet.name, when(wet.drying.finished_at_s, now_s))
    else:
        said = words.ready_at(wet.name, when(wet.drying.ready_at_s, now_s))
    return Action(said, None, words.TAP_A_WALL, key="finish")
