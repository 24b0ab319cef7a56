"""*Job*: from the address to its screen."""

import flet as ft

from mobile.screens.job.home import Home
from mobile.screens.job.jobs import Jobs, NameScreen
from mobile.screens.job.settings import SettingsScreen
from mobile.screens.job.step import StepScreen
from mobile.session.known import Known


@ft.component
def JobPlace(known: Known, at: str, *, key: str | None = None) -> ft.Control:
    """Show the schedule, a step of it, the settings, or the other jobs."""
    first, _, rest = at.partition("/")
    match first:
        case "steps" if rest:
            screen = StepScreen(known, rest, key=at)
        case "settings":
            screen = SettingsScreen(known, key="settings")
        case "jobs":
            screen = Jobs(known, key="jobs")
        case "new" | "name":
            screen = NameScreen(known, first == "new", key=first)
        case _:
            screen = Home(known, key="home")
    return screen
