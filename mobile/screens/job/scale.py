"""The scale and the bucket: how it is weighed, what they take."""

from dataclasses import dataclass, replace

import flet as ft

from core.errors import Refused
from mobile import theme as t
from mobile.parts.buttons import main_button, outline_button, second_button
from mobile.parts.choice import segmented
from mobile.parts.fields import Field, Fields
from mobile.parts.page import header, screen
from mobile.parts.tap import Action
from mobile.session.address import go
from mobile.session.forms import use_form
from mobile.session.job import jobs as verbs
from mobile.session.known import Known
from mobile.session.mix.scale import BUCKET_L, FORM, check_of_today, set_scale
from mobile.session.session import Session, use_session
from mobile.session.view import View, use_view
from mobile.words import places
from mobile.words import scale as words

ON, OFF = "on", "off"


@dataclass(frozen=True, slots=True)
class ScaleForm:
    """What has been typed, untouched."""

    capacity: str = ""
    bucket: str = ""

    def takes(self, view: View) -> tuple[float, float | None]:
        """Read what scale and bucket take; no bucket where nothing is typed."""
        bucket_l = view.read("bucket_l", self.bucket) if self.bucket.strip() else None
        return view.read("capacity_g", self.capacity), bucket_l


def form_of(known: Known, view: View) -> ScaleForm:
    """Write what is kept as one would type it."""
    settings = known.settings
    bucket = view.typed("bucket_l", settings.bucket_l)
    return ScaleForm(view.typed("capacity_g", settings.scale_capacity_g), bucket)


@ft.component
def ScaleScreen(known: Known, *, key: str | None = None) -> ft.Control:
    """Choose how it is weighed; type what scale and bucket take."""
    session, view = use_session(), use_view()
    form, edit, _ = use_form(FORM, form_of(known, view))
    settings = known.settings

    async def weigh(way: str) -> None:
        after = replace(verbs.settings_now(session), way=way)
        await session.attempt(verbs.set_settings(session, after))

    async def shows(step: str) -> None:
        after = replace(verbs.settings_now(session), scale_step_g=float(step))
        await session.attempt(verbs.set_settings(session, after))

    async def keep() -> None:
        try:
            takes = edit.now.takes(view)
        except Refused as refusal:
            session.refuse(refusal)
            return
        done = set_scale(session, *takes)
        await session.attempt(done, then=lambda _: go(places.JOB, "settings"))

    def typed(name: str, text: str) -> None:
        edit(lambda now: replace(now, **{name: text}))

    back = Action(places.BACK, lambda: go(places.JOB, "settings"), key="back")
    step = str(settings.scale_step_g)
    lines: list[ft.Control] = [
        header(words.TITLE, "", outline_button(back, "back")),
        t.say(words.WEIGHING, t.SMALL, t.SOFT),
        segmented(words.WAYS, settings.way, weigh, view.text_ratio),
        t.say(words.WAYS_MORE[settings.way], t.CAPTION, t.SOFT),
        t.say(words.STEP, t.SMALL, t.SOFT),
        segmented(words.STEPS_G, step, shows, view.text_ratio),
        Fields(fields(form, view), typed),
        check_button(known),
        *hands_free(session, known, view),
    ]
    return screen(lines, [main_button(Action(places.KEEP, keep, key="keep"))])


def fields(form: ScaleForm, view: View) -> tuple[Field, ...]:
    """Ask what scale and bucket take."""
    wrong = view.error("capacity_g", form.capacity, verbs.CAPACITY_G)
    bucket = view.error("bucket_l", form.bucket, BUCKET_L)
    return (
        Field("capacity", view.label(words.CAPACITY, "capacity_g"), form.capacity, wrong),
        Field("bucket", view.label(words.BUCKET, "bucket_l"), form.bucket, bucket),
    )


def check_button(known: Known) -> ft.Control:
    """Lead to the check weight; say whether the scale was checked today."""
    check = check_of_today(known)
    said = words.checked(check.reads_g - check.known_g, check.scale_step_g) if check else ""
    to = Action(words.CHECK, lambda: go(places.JOB, "check"), said or words.NOT_TODAY, "check")
    return second_button(to)


def hands_free(session: Session, known: Known, view: View) -> list[ft.Control]:
    """Offer spoken steps, and a screen that stays on while weighing; both are off at first."""
    settings = known.settings

    async def speak(key: str) -> None:
        after = replace(verbs.settings_now(session), voice=key == ON)
        await session.attempt(verbs.set_settings(session, after))

    async def stay(key: str) -> None:
        after = replace(verbs.settings_now(session), awake=key == ON)
        await session.attempt(verbs.set_settings(session, after))

    voice, awake = (ON if on else OFF for on in (settings.voice, settings.awake))
    return [
        t.say(words.SPOKEN, t.SMALL, t.SOFT),
        segmented(words.ON_OFF, voice, speak, view.text_ratio, "speak"),
        t.say(words.AWAKE, t.SMALL, t.SOFT),
        segmented(words.AWAKES, awake, stay, view.text_ratio, "stay"),
    ]
