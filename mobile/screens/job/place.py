"""*Job*: from the address to its screen."""

from collections.abc import Callable

import flet as ft

from core.coats.schedule import PlannedStep
from mobile.screens.job.check import CheckScreen
from mobile.screens.job.files import Files
from mobile.screens.job.home import Home
from mobile.screens.job.how_much import HowMuch
from mobile.screens.job.jobs import Jobs, NameScreen
from mobile.screens.job.ready_made import ReadyMadeSchedules
from mobile.screens.job.scale import ScaleScreen
from mobile.screens.job.settings import SettingsScreen
from mobile.screens.job.step import StepScreen
from mobile.screens.job.tools import ToolsScreen
from mobile.screens.job.wait import WaitScreen
from mobile.session.known import Known

DRAWERS: dict[str, Callable[..., ft.Control]] = {
    "settings": SettingsScreen,
    "scale": ScaleScreen,
    "check": CheckScreen,
    "tools": ToolsScreen,
    "how-much": HowMuch,
    "jobs": Jobs,
    "files": Files,
    "ready-made": ReadyMadeSchedules,
}


@ft.component
def JobPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show the schedule, a step or a wait of it, or one of the job's drawers."""
    first, _, rest = at.partition("/")
    if first in DRAWERS:
        # Other units make its fields anew: what stands in them is in the old ones.
        return DRAWERS[first](known, key=f"{first} {known.settings.units}")
    if first in {"new", "name"}:
        return NameScreen(known, first == "new", key=first)
    return on_the_line(known, first, rest)


def on_the_line(known: Known, first: str, rest: str) -> ft.Control:
    """Show a step, the wait between two, or the whole schedule."""
    if first == "steps" and rest:
        return StepScreen(known, rest, key=f"step {rest}")
    pair = pair_of(known, rest) if first == "waits" else None
    return WaitScreen(known, *pair, key=f"wait {rest}") if pair else Home(known, key="home")


def pair_of(known: Known, rest: str) -> tuple[PlannedStep, PlannedStep] | None:
    """Find the two steps whose wait an address names."""
    steps = {step.id: step for step in known.job.steps} if known.job else {}
    first, _, then = rest.partition("/")
    return (steps[first], steps[then]) if {first, then} <= steps.keys() else None
