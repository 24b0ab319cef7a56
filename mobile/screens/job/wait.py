"""The wait between two steps: at least, and at most; what each is counted from is asked."""

from dataclasses import dataclass, replace
from functools import partial

import flet as ft

from core.coats.schedule import PlannedStep
from core.errors import Refused
from core.waits.pair import WAIT_S, PairWait, Wait
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.forms import Edit, use_form
from mobile.session.job.label_waits import LabelSays, label_wait
from mobile.session.job.schedule import drop_wait, keep_wait, wait_between
from mobile.session.known import Known
from mobile.session.session import use_session
from mobile.session.view import View, use_view
from mobile.words import job as words
from mobile.words import places, trouble

NONE, MOST = "none", "most"


@dataclass(frozen=True, slots=True)
class WaitForm:
    """What has been typed, untouched; "" is what was not answered."""

    wait: str = ""
    least_from: str = "end"
    limit: str = ""
    most: str = ""
    most_from: str = ""

    def read(self, view: View) -> Wait:
        """Read the form; raise `Refused` at the first thing that is missing or wrong."""
        minimum_s = view.read("minimum_s", self.wait)
        if not self.limit:
            raise Refused("limit", "", 0, 0)
        if self.limit == NONE:
            return Wait(minimum_s, None, self.least_from)
        maximum_s = view.read("maximum_s", self.most)
        if not self.most_from:
            raise Refused("limit_from", "", 0, 0)
        if self.most_from == self.least_from and maximum_s <= minimum_s:
            raise Refused("limit_before_wait", maximum_s, minimum_s, minimum_s)
        return Wait(minimum_s, maximum_s, self.least_from, self.most_from)


def form_of(wait: Wait | None, view: View) -> WaitForm:
    """Write a kept wait as one would type it; of a usual one the limit is not answered yet."""
    if wait is None:
        return WaitForm()
    least = view.typed("minimum_s", wait.minimum_s)
    if wait.maximum_s is None:
        return WaitForm(least, wait.minimum_from, "" if wait.usual else NONE)
    most = view.typed("maximum_s", wait.maximum_s)
    return WaitForm(least, wait.minimum_from, MOST, most, wait.maximum_from)


@ft.component
def WaitScreen(
    known: Known, first: PlannedStep, then: PlannedStep, *, key: str | None = None
) -> ft.Control:
    """Ask for the wait between two steps."""
    session, view = use_session(), use_view()
    kept = wait_between(known.job, first.id, then.id)
    says = label_wait(known, first, then)
    asked = kept if kept and not (kept.usual and says) else says.wait if says else None
    blank = form_of(asked, view)
    form, edit, earlier = use_form(f"job/waits/{first.id}/{then.id}", blank)
    tried, mark_tried = ft.use_state(False)

    async def keep() -> None:
        try:
            pair = PairWait(first.id, then.id, edit.now.read(view))
        except Refused as refusal:
            mark_tried(True)
            session.refuse(refusal)
            return
        await session.attempt(keep_wait(session, pair), then=lambda _: go(places.JOB))

    async def drop() -> None:
        if kept:
            pair = PairWait(first.id, then.id, kept)
            await session.attempt(drop_wait(session, pair), then=lambda _: go(places.JOB))

    small = places.DRAFT if earlier else words.wait_small(then.name)
    back = outline_button(Action(places.BACK, lambda: go(places.JOB), key="back"), "back")
    lines = [
        header(words.wait_title(first.name), small, back),
        t.say(whence(kept, says), t.SMALL, t.SOFT),
        *fields(form, edit, view, tried),
    ]
    if kept:
        lines.append(second_button(Action(words.DROP_WAIT, drop, key="drop")))
    return screen(lines, [main_button(Action(words.KEEP_WAIT, keep, key="keep"))])


def whence(kept: Wait | None, says: LabelSays | None) -> str:
    """Say where what stands in the fields comes from."""
    if says and (kept is None or kept.usual):
        return words.label_of(says.paint)
    return words.USUAL_MORE if kept and kept.usual else words.OFF_LABEL_MORE


def fields(form: WaitForm, edit: Edit[WaitForm], view: View, tried: bool) -> list[ft.Control]:
    """Ask for the wait and its limit; once *Keep* was tried, say what lacks."""

    def wrong(name: str, text: str) -> str:
        if tried and not text.strip():
            return trouble.refused(Refused(name, text, 0, 0), view.show)
        return view.error(name, text, WAIT_S)

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    def choice(options: tuple[tuple[str, str], ...], name: str, chosen: str) -> ft.Control:
        return segmented(options, chosen, partial(typed, name), view.text_ratio, name)

    label = view.label(words.WAIT, "minimum_s")
    wait = Field("wait", label, form.wait, wrong("minimum_s", form.wait))
    label = view.label(words.RECOAT, "maximum_s")
    most = Field("most", label, form.most, wrong("maximum_s", form.most))
    limited = [
        Fields((most,), typed, key="most"),
        t.say(words.LIMIT_COUNTED, t.SMALL, t.SOFT),
        choice(words.LIMIT_FROM, "most_from", form.most_from),
    ]
    return [
        Fields((wait,), typed, key="least"),
        t.say(words.COUNTED, t.SMALL, t.SOFT),
        choice(words.FROM, "least_from", form.least_from),
        t.say(words.LIMIT, t.SMALL, t.SOFT),
        choice(words.LIMITS, "limit", form.limit),
        *(limited if form.limit == MOST else []),
    ]
