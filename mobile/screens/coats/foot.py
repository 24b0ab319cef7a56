"""The foot of a wall's board: its waits with their patterns, and what can be said of the coat."""

import flet as ft

from mobile import theme as t
from mobile.parts.buttons import outline_button, second_button
from mobile.parts.icons import icon
from mobile.parts.tap import Action, grow, spread
from mobile.parts.waits import wait_fact
from mobile.screens.coats.scene import Hands, Scene
from mobile.session.address import HOW, go
from mobile.session.coats.standing import CoatNow
from mobile.session.times import when
from mobile.words import coats as words
from mobile.words import places


def foot_of(coat: CoatNow, scene: Scene, hands: Hands) -> list[ft.Control]:
    """Say the label's wait, the longer one, the limit; offer what can be said of the coat."""
    stands = coat.state(scene.now_s)
    if coat.drying is None:
        return []
    facts = facts_of(coat, scene)
    how = outline_button(
        Action(places.HOW, lambda: go(places.COATS, coat.id, HOW), key=f"how {coat.name}")
    )
    main: Action | None = None
    if stands == "ready":
        main = Action(words.STILL_TACKY, lambda: hands.tacky(coat), key=f"tacky {coat.name}")
    elif stands == "too late" and coat.step:
        again = words.again(coat.step.name)
        main = Action(again, lambda: hands.again(coat), key=f"again {coat.name}")
    rows = limits(stands, scene, coat)
    if main is None:
        ring = Action(words.CALENDAR, lambda: hands.calendar(coat), key=f"calendar {coat.name}")
        buttons = ft.Row([outline_button(ring), how], spacing=t.GAP, tight=True)
        return [spread([*facts, buttons]), *rows]
    if scene.view.text_ratio >= t.STACKED_FROM:
        return [spread(facts), *rows, second_button(main), how]
    return [spread(facts), *rows, ft.Row([grow(second_button(main)), how], spacing=t.GAP)]


def facts_of(coat: CoatNow, scene: Scene) -> list[ft.Control]:
    """Say the waits, each with the pattern that it has on the strip."""
    if coat.drying is None or coat.wait is None:
        return []
    label = scene.view.show("wait_s", coat.wait.minimum_s)
    usual = coat.wait.usual
    facts = [wait_fact(label, "drying", words.USUAL_WAIT if usual else words.LABEL_WAIT)]
    if coat.tacky:
        longer = scene.view.show("wait_s", coat.wait_s)
        facts = [
            wait_fact(label, "label", words.USUAL if usual else words.LABEL),
            wait_fact(longer, "drying", words.WITH_TACKY),
        ]
    if coat.drying.late_at_s is not None:
        limit = when(coat.drying.late_at_s, scene.now_s)
        facts.append(wait_fact(limit, "too late", words.BEFORE))
    return facts


def limits(stands: str, scene: Scene, coat: CoatNow) -> list[ft.Control]:
    """Say what else holds: a limit that has passed, a phone that may not ring."""
    start = [line("clock", words.STARTS[coat.start])] if coat.start else []
    if stands == "too late":
        return [line("warning", words.LIMIT_GONE, t.CAUTION), *start]
    if scene.soonest != coat.id:
        return start
    return [*start, line("bell", places.NO_RING) if scene.bell else line("silent", words.NO_BELL)]


def line(sign: str, said: str, color: ft.ColorValue = t.SOFT) -> ft.Control:
    """Set a small line with its sign."""
    return ft.Row([icon(sign, 18, color), grow(t.say(said, t.CAPTION, color))], spacing=8)
