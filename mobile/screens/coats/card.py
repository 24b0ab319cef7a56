"""A wall's board: where its coat stands, its wait on the one clock, what can be said of it."""

import flet as ft

from mobile import theme as t
from mobile.parts.boards import BoardToCome, State, board, head
from mobile.parts.icons import icon
from mobile.parts.tap import tap
from mobile.parts.waits import WaitStrip
from mobile.screens.coats.clock import strip_of
from mobile.screens.coats.foot import foot_of
from mobile.screens.coats.scene import Hands, Scene
from mobile.screens.coats.standing import standing_side
from mobile.session.coats.due import on_clock
from mobile.session.coats.standing import CoatNow
from mobile.session.times import when
from mobile.words import coats as words

CLOSE = 5.0  # between what stands on a board: a strip brings air of its own
RIMS: dict[str, State] = {"ready": "good", "too late": "caution"}


def coat_board(coat: CoatNow, scene: Scene, hands: Hands) -> ft.Control:
    """Show a wall; what is still to come is dashed until it is chosen."""
    stands = coat.state(scene.now_s)
    if stands == "done":
        return done_board(coat, scene)
    waits_long = stands == "drying" and not on_clock(coat, scene.now_s)
    if stands == "waiting":
        held = words.after_others(coat.holds)
        name = words.long_wait(coat.next.name if coat.next else "", coat.name)
        return BoardToCome(name, held, words.WAITS_FOR)
    if (stands == "to start" or waits_long) and scene.chosen != coat.id:
        return tap(ft.Container(to_come(coat, scene)), lambda: hands.choose(coat), key=key_of(coat))
    rows: list[ft.Control] = [head_of(coat, scene, hands)]
    if coat.drying and scene.clock and on_clock(coat, scene.now_s):
        late_s = coat.drying.late_at_s
        late = when(late_s, scene.now_s) if late_s else ""
        said = words.strip(coat.name, when(coat.drying.ready_at_s, scene.now_s), late)
        last = scene.last == coat.id
        rows.append(WaitStrip(strip_of(coat.drying), scene.clock, said, last, key="strip"))
    rows += foot_of(coat, scene, hands)
    # Boards change places, so they bear no key: Flet 1.0.5 breaks when keyed siblings are swapped.
    face = board(rows, RIMS.get(stands, ""), CLOSE)
    if scene.chosen == coat.id and isinstance(face, ft.Container):
        face.border = ft.Border.all(3, t.TEXT)
    return face


def key_of(coat: CoatNow) -> str:
    """Name the button that chooses a wall."""
    return f"wall {coat.name}"


def to_come(coat: CoatNow, scene: Scene) -> ft.Control:
    """Show a wall with nothing on it yet, or a wait too long for the clock."""
    coming = coat.next.name if coat.next else ""
    name = words.long_wait(coming, coat.name)
    if coat.drying is None or coat.step is None:
        return BoardToCome(name, words.UNASKED if coat.unasked else small_of(coat), words.TO_START)
    long = scene.view.show("wait_s", coat.wait_s)
    wait = words.after_step(long, coat.step.name, usual=bool(coat.wait and coat.wait.usual))
    return BoardToCome(name, wait, when(coat.drying.ready_at_s, scene.now_s))


def small_of(coat: CoatNow) -> str:
    """Say on which wall a zone lies."""
    return coat.wall_name if coat.wall_name != coat.name else ""


def done_board(coat: CoatNow, scene: Scene) -> ft.Control:
    """Show a wall that has all its steps."""
    small = words.DONE
    if coat.drying and coat.step and coat.drying.ready_at_s > scene.now_s:
        small = words.last_dries(coat.step.name, when(coat.drying.ready_at_s, scene.now_s))
    return board([head(coat.name, small, icon("check", 28, t.GOOD, heavy=True), t.HEADING)])


def head_of(coat: CoatNow, scene: Scene, hands: Hands) -> ft.Control:
    """Say which wall, what is on it and how it stands; a tap chooses it."""
    stands = coat.state(scene.now_s)
    side = standing_side(coat, scene)
    coming = words.next_up(coat.next.name) if coat.next else ""
    step = coat.step.name if coat.step else ""
    says = {"drying": words.drying(step), "rolling": words.rolling(step)}
    small = words.on_wall(says.get(stands, coming), small_of(coat))
    content = head(coat.name, small, side)
    chosen = scene.chosen == coat.id
    return tap(ft.Container(content), lambda: hands.choose(coat), chosen=chosen, key=key_of(coat))
