"""*Job*: from the address to its screen."""

import flet as ft

from core.coats.schedule import PlannedStep
from mobile.screens.job.home import Home
from mobile.screens.job.how_much import HowMuch
from mobile.screens.job.jobs import Jobs, NameScreen
from mobile.screens.job.ready_made import ReadyMadeSchedules
from mobile.screens.job.settings import SettingsScreen
from mobile.screens.job.step import StepScreen
from mobile.screens.job.wait import WaitScreen
from mobile.session.known import Known


@ft.component
def JobPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show the schedule, a step of it, the settings, or the other jobs."""
    first, _, rest = at.partition("/")
    match first:
        case "steps" if rest:
            screen = StepScreen(known, rest, key=at)
        case "waits" if pair := pair_of(known, rest):
            screen = WaitScreen(known, *pair, key=at)
        case "how-much":
            screen = HowMuch(known, key=first)
        case "ready-made":
            screen = ReadyMadeSchedules(key=first)
        case "settings":
            screen = SettingsScreen(known, key="settings")
        case "jobs":
            screen = Jobs(known, key="jobs")
        case "new" | "name":
            screen = NameScreen(known, first == "new", key=first)
        case _:
            screen = Home(known, key="home")
    return screen


def pair_of(known: Known, rest: str) -> tuple[PlannedStep, PlannedStep] | None:
    """Find the two steps whose wait an address names."""
    steps = {step.id: step for step in known.job.steps} if known.job else {}
    first, _, then = rest.partition("/")
    return (steps[first], steps[then]) if {first, then} <= steps.keys() else None
