"""How a wait was found: the label's, what tacky added, the limit."""

from dataclasses import replace

from mobile.parts.boards import Fact
from mobile.parts.sheet import How
from mobile.session.coats.standing import CoatNow
from mobile.session.how import how_of
from mobile.session.times import when
from mobile.session.view import View
from mobile.words import coats as words


def how(coats: tuple[CoatNow, ...], wall_id: str, now_s: float, view: View) -> How | None:
    """Give the sheet for a wall's wait; None where none is asked for, or nothing dries."""
    coat = next((coat for coat in coats if coat.id == wall_id), None)
    if coat is None or coat.drying is None or coat.step is None or coat.wait is None:
        return None
    dried, usual = coat.drying, coat.wait.usual
    label = words.USUAL_WAIT if usual else words.LABEL_WAIT
    facts = [Fact(view.show("wait_s", coat.wait.minimum_s), label)]
    if coat.tacky:
        facts.append(Fact(view.show("wait_s", coat.wait_s), words.WITH_TACKY))
    title = words.how_title(coat.name, coat.step.name)
    small = words.how_small(when(dried.finished_at_s, now_s), when(dried.ready_at_s, now_s))
    sheet = how_of(title, small, dried.working, view)
    return replace(
        sheet, answers=tuple(facts), note=words.HOW_NOTE_USUAL if usual else words.HOW_NOTE
    )
