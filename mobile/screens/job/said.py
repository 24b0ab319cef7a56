"""A wait as one reads it off a label."""

from core.waits.pair import Wait
from mobile.session.view import View
from mobile.words import job as words


def wait_said(wait: Wait, view: View) -> str:
    """Say a wait, and its limit if there is one."""
    least = words.counted(view.show("minimum_s", wait.minimum_s), wait.minimum_from)
    most = ""
    if wait.maximum_s is not None:
        most = words.counted(view.show("maximum_s", wait.maximum_s), wait.maximum_from)
    return words.wait(least, most)
