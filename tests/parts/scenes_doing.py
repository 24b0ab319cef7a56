"""Scenes of what is done with wet hands: coats, the weigh-out, a can on the scale."""

# ruff: noqa: N802  components are PascalCase

import flet as ft

from mobile import theme as t
from mobile.parts.boards import (
    BoardToCome,
    Fact,
    answer,
    board,
    facts,
    head,
)
from mobile.parts.bucket import Bucket, Cup, Layer
from mobile.parts.buttons import (
    main_button,
    option,
    outline_button,
    pair,
    second_button,
    stack_or_row,
    thumb_block,
)
from mobile.parts.can import Can, CanFace
from mobile.parts.choice import pills
from mobile.parts.figure import BigFigure
from mobile.parts.gauge import OverGauge, Reading
from mobile.parts.keypad import Keypad, Typing, pad_height, press
from mobile.parts.page import header, inset, screen, standing
from mobile.parts.tap import Action, grow, spread
from mobile.parts.waits import Clock, Strip, Tick, TimeAxis, WaitStrip, axis_of, wait_fact
from tests.parts.scenes_how import how_button, nothing

MIN = 60.0
NOON = 12 * 60 * MIN


@ft.component
def Coats(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    now = NOON + 54 * MIN
    two = Strip(NOON - 15 * MIN, NOON + 46 * MIN, NOON + 15 * MIN, NOON + 180 * MIN)
    one = Strip(NOON + 50 * MIN, NOON + 81 * MIN, NOON + 65 * MIN)
    clock = Clock(axis_of((two, one), now), now, width - 35)
    ticks = tuple(
        Tick(NOON + 30 * n * MIN, "" if n % 2 else f"{12 + n // 2}:00") for n in range(-2, 10)
    )
    ready = ft.Column(
        [answer("Ready", "good", t.STATE), t.say_right("since 12:46", t.SMALL)],
        spacing=0,
        tight=True,
        horizontal_alignment=ft.CrossAxisAlignment.END,
    )
    at = ft.Column(
        [
            ft.Row(
                [t.say("ready at", t.SMALL), t.say("13:21", t.STATE)],
                tight=True,
                vertical_alignment=ft.CrossAxisAlignment.END,
            ),
            t.say_right("in 27 min, will ring", t.SMALL),
        ],
        spacing=0,
        tight=True,
        horizontal_alignment=ft.CrossAxisAlignment.END,
    )
    waits_two = spread(
        [
            wait_fact("30 min", "label", "label"),
            wait_fact("61 min", "drying", "reckoned"),
            wait_fact("15:00", "too late", "recoat before"),
        ]
    )
    waits_one = spread(
        [wait_fact("15 min", "label", "label"), wait_fact("31 min", "drying", "reckoned, slow")]
    )
    upper = (
        Action("Weigh next", nothing, "base, load 2 of 2"),
        Action("Weigh a can", nothing, "shortest first"),
    )
    large = ratio >= t.STACKED_FROM
    tacky = stack_or_row([second_button(Action("Still tacky: 10 min more", nothing))], 1.0)
    return screen(
        [
            header("Hand-over day 9, 13:30", right=t.say("6 visits", t.NAME), size=t.HEADING),
            inset(TimeAxis(clock, ticks, "now 12:54")),
            board(
                [
                    head("Wall 2", "base 1 next, all four", ready),
                    WaitStrip(two, clock, "Wall 2: ready since 12:46, recoat before 15:00"),
                    waits_two,
                    ft.Row([grow(tacky), how_button()], spacing=t.GAP),
                ],
                "good",
            ),
            board(
                [
                    head("Wall 1", "base 1 of 3, drying", at),
                    WaitStrip(one, clock, "Wall 1: drying, ready at 13:21", True),
                    ft.Row([grow(waits_one), how_button()], spacing=t.GAP),
                ]
            ),
            BoardToCome("Film, Wall 1", "24 h after base 3, label only", "day 3, 09:00"),
            *([pair(upper, ratio)] if large else []),
        ],
        [
            thumb_block(
                () if large else upper,
                Action("Base 1 finished", nothing, "Wall 2"),
                Action("−5", nothing, "min"),
                Action("+5", nothing, "min"),
                ratio,
            )
        ],
    )


LAYERS = (
    Layer(0, 0.075, "#F4F02A", "in", "can 8"),
    Layer(0.075, 0.26, "#FF7F1F", "pour now", "can 7"),
    Layer(0.26, 0.75, "#CFD8DC", "to come", "can 12"),
)


def is_low(ratio: float, height: float) -> bool:
    return ratio >= t.STACKED_FROM or height < 800


@ft.component
def Weigh(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    leave = outline_button(Action("Leave", nothing), "back")
    off = second_button(Action("Scale went off", nothing), t.SMALL)
    which = pills(2, 3, "Part 2 of 3")
    narrow = width < 360 or ratio >= t.STACKED_FROM
    top = (
        ft.Column([spread([leave, off]), which], spacing=t.GAP, tight=True)
        if narrow
        else ft.Row([leave, grow(which), off], spacing=12)
    )
    can = ft.Row(
        [
            Can(CanFace(7, "#FF7F1F", 0.6), "can 7, 201 of 285 g"),
            grow(t.say("fluorescent orange", t.ZONE)),
        ],
        spacing=16,
    )
    mark, reads = Action("On the mark", nothing), Action("Scale reads", nothing)
    stacked = ft.Column(
        [second_button(reads), main_button(mark)],
        spacing=t.GAP,
        horizontal_alignment=ft.CrossAxisAlignment.STRETCH,
        tight=True,
    )
    block = ft.Row(
        [
            grow(main_button(mark, size=38), 5),
            grow(second_button(reads, t.HEADING), 2),
        ],
        spacing=t.GAP,
        vertical_alignment=ft.CrossAxisAlignment.STRETCH,
    )
    return standing(
        [
            top,
            can,
            t.say("the scale should read", t.NAME, t.SOFT),
            BigFigure("77.3", "g", width),
            t.say("band 76.7 to 77.9 g", t.FACT),
            Bucket(LAYERS, "cup", Cup(width=width)),
        ],
        stacked if is_low(ratio, height) else block,
        is_low(ratio, height),
    )


@ft.component
def Pad(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    typing, set_typing = ft.use_state(Typing("81.9", True))

    def pressed(sign: str) -> None:
        set_typing(lambda now: press(now, sign))

    try:
        reads = float(typing.text)
    except ValueError:
        reads = None
    reading = Reading(77.3, 76.7, 77.9, reads, "#FF7F1F", "77.3")
    top = spread([pills(2, 3, "Part 2 of 3"), outline_button(Action("Back", nothing), "back")])
    names = [t.say("fluorescent orange", t.FACT), t.say("the scale reads", t.NAME, t.SOFT)]
    can = ft.Row(
        [Can(CanFace(7, "#FF7F1F", 0.6), "can 7"), grow(ft.Column([*names], spacing=2))],
        spacing=16,
    )
    high = pad_height(height)
    pad = Keypad(Action(f"Use {typing.text} g", nothing), pressed, width, high, ratio)
    return screen(
        [
            ft.Container(top, padding=ft.Padding(0, 12, 0, 0)),
            can,
            BigFigure(typing.text, "g", width, t.TYPED, True),
            spread([t.say("4.6 g over", t.ANSWER, t.CAUTION), t.say("not 77.3", t.FACT)]),
            OverGauge(reading, "4.6 g over the band", width),
        ],
        [pad],
    )


@ft.component
def Over(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    yellow, orange = Layer(0, 0.075, "#F4F02A", "in"), Layer(0.075, 0.3, "#FF7F1F", "in")
    full = (yellow, orange, Layer(0.3, 0.78, "#CFD8DC", "in"))
    cup = Cup(78, labels=False)
    return screen(
        [
            header("4.6 g over", right=outline_button(Action("Back", nothing), "back")),
            option(
                Action("Make 250.4 g instead", nothing, "18.4 g more, worth 0.47"),
                "1.5 g more of can 8, then 167.0 g of can 12. Cans and cup hold it.",
                Bucket(full, "cup", cup),
                True,
                ratio,
            ),
            option(
                Action("Keep it, a touch stronger", nothing, "no paint lost, 236.6 g in all"),
                "26.5 % orange, where the recipe has 25.0 %.",
                Bucket(full, "cup", cup),
                text_ratio=ratio,
            ),
            option(
                Action("Tip it out, start again", nothing, "lose 81.9 g, worth 3.40"),
                "Yellow and orange go to the waste tub, never to a drain.",
                Bucket((), "cup", cup),
                text_ratio=ratio,
            ),
        ]
    )


@ft.component
def Cans(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    typing, set_typing = ft.use_state(Typing("257.7"))

    def pressed(sign: str) -> None:
        set_typing(lambda now: press(now, sign))

    top = ft.Row(
        [
            Can(CanFace(7, "#FF7F1F", 0.7), "can 7", True),
            ft.Column(
                [
                    t.say("fluorescent orange", t.FACT),
                    BigFigure(typing.text, "g", width - 102, t.CAN, True),
                ],
                spacing=0,
                expand=True,
            ),
        ],
        spacing=16,
    )
    return screen(
        [
            ft.Container(top, padding=ft.Padding(4, 16, 0, 0)),
            board(
                [
                    answer("Short 79 g", "caution"),
                    t.say("Wall 1, plan order; enough = 9 times in 10", t.CAPTION, t.SOFT),
                ]
            ),
            facts(
                (
                    Fact("201.1 g", "net"),
                    Fact("212.9 g", "should be"),
                    Fact("11.8 g", "gap, missing", "caution"),
                ),
                ratio,
            ),
            ft.Row(
                [
                    grow(t.say("tare 56.6 g, from weighing it unopened", t.CAPTION, t.SOFT)),
                    how_button(),
                ]
            ),
        ],
        [
            Keypad(
                Action("Next can", nothing),
                pressed,
                width,
                pad_height(height),
                ratio,
            )
        ],
    )
