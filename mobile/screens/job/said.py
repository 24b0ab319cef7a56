"""A wait as one reads it off a label."""

from core.waits.pair import Wait
from mobile.session.view import View
from mobile.words import job as words


def wait_said(wait: Wait, view: View) -> str:
    """Say a wait, and its limit if there is one."""
    most = view.show("maximum_s", wait.maximum_s) if wait.maximum_s is not None else ""
    return words.wait(view.show("minimum_s", wait.minimum_s), most)
