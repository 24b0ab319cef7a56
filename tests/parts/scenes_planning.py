"""Scenes of what is planned and typed: mixes, walls, the job, forms, notices."""

# ruff: noqa: N802  components are PascalCase

import flet as ft

from core.walls.shape import Opening, Wall
from mobile import theme as t
from mobile.parts.boards import (
    Fact,
    Row,
    facts,
    row,
    rows,
    tile,
    tiles,
)
from mobile.parts.buttons import (
    main_button,
    outline_button,
    second_button,
)
from mobile.parts.can import Can, CanFace
from mobile.parts.chip import TwoLight
from mobile.parts.choice import segmented
from mobile.parts.elevation import Dimensions, Elevation
from mobile.parts.fields import Field, Fields
from mobile.parts.icons import icon
from mobile.parts.notices import Busy, caution, empty, notice, told
from mobile.parts.page import header, screen
from mobile.parts.schedule import Stop, schedule
from mobile.parts.sheet import How, HowStep, how_sheet
from mobile.parts.tap import Action, grow
from tests.parts.scenes_how import nothing

MIXES = (
    ("base", "base, 3 coats", "2 × 4484 g", "likely", "", "#55405C", "#5A35D8"),
    ("ember wing", "glaze, 2 coats", "232 g", "enough", "good", "#E79B67", "#FF7A1C"),
    ("rose wing", "glaze, 2 coats", "201 g", "enough", "good", "#DA8299", "#FF3A82"),
    ("hot orange", "opaque", "261 g", "can 7: 1.00 of 1.90 m²", "caution", "#EE6E33", "#FF5A12"),
    ("unknown", "glaze", "66 g", "likely", "", "#8E6BA5", ""),
)


@ft.component
def Mix(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    lines = [
        row(
            Row(name, small, value, under, state),  # type: ignore[arg-type]
            nothing,
            TwoLight(day, lamp, f"{name}, by day and under the lamp", 46),
            ratio,
        )
        for name, small, value, under, state, day, lamp in MIXES
    ]
    return screen(
        [
            header(
                "8 mixes to weigh",
                "Moth Cellar, north stair",
                outline_button(Action("New mix", nothing)),
            ),
            rows(lines),
        ],
        [main_button(Action("Weigh base, load 1 of 2", nothing))],
    )


WALL = Wall(5.62, 2.80, 2.80, (Opening("door", 0.82, 1.84), Opening("vent", 0.4, 0.3)))
SLOPED = Wall(3.20, 2.35, 4.05, (Opening("hatch", 0.6, 0.5, 2), Opening("door", 0.9, 2.1)))


@ft.component
def Walls(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    light, choose = ft.use_state("lamp")
    return screen(
        [
            header(
                "Wall 1",
                "Moth Cellar, north stair",
                segmented((("day", "Day"), ("lamp", "Lamp")), light, choose),
            ),
            Elevation(
                WALL,
                Dimensions("5.62 m", "2.80 m", "2.80 m", "Wall 1, 5.62 by 2.80 m"),
                (width, 200),
                "#2A1566",
            ),
            facts(
                (
                    Fact("14.28 m²", "base, under the film too"),
                    Fact("8.71 m²", "film"),
                    Fact("38 %", "offcut"),
                ),
                ratio,
            ),
            Elevation(
                SLOPED,
                Dimensions("3.20 m", "2.35 m", "4.05 m", "Wall 2"),
                (width, 260),
            ),
        ],
        [
            ft.Row(
                [
                    second_button(Action("Measure", nothing), height=68),
                    grow(main_button(Action("Mark a zone", nothing))),
                ],
                spacing=t.GAP,
                intrinsic_height=True,
                vertical_alignment=ft.CrossAxisAlignment.STRETCH,
            )
        ],
    )


STOPS = (
    Stop("1", "wash", "done", "1 h", "09:00", "day 1"),
    Stop("2", "promoter", "done", "30 min, at most 4 h", "11:00"),
    Stop("3", "base 1", "now", "15 min", "12:15"),
    Stop("4", "base 2", "to come", "15 min", "13:30"),
    Stop("5", "base 3", "to come", "24 h before film", "14:30", ends_visit=True),
    Stop("6", "film", "to come", "2 h", "09:00", "day 3"),
    Stop("7", "glaze 1", "to come", "30 min", "14:00", ends_visit=True),
    Stop("8", "hand-over", "hand-over", "", "13:00 to 13:30", "day 9"),
)
WORKING = How(
    "Wall 1, base 1",
    "finished 12:50, ready at 13:21",
    (
        HowStep(
            "Drying power at the label",
            "es(23 °C) 28.03 × (1 − 0.50)",
            "14.01 hPa",
            "WMO Magnus form",
        ),
        HowStep(
            "Slower here",
            "14.01 ÷ 6.98; still air, film as on the label",
            "× 2.008",
            "planning model of this project",
        ),
        HowStep("Wait", "15 min × 2.008 = 30.1, rounded up", "31 min", "label"),
    ),
    (Fact("15 min", "label, 23 °C, 50 % RH"), Fact("31 min", "reckoned, slow here")),
    "Early drying only. The label and a touch test decide.",
)


@ft.component
def Job(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    page = ft.context.page
    up, lift = ft.use_state(False)
    ft.use_dialog(how_sheet(WORKING, lambda: lift(False), height) if up else None)
    names = (
        ("site", "Site", "18 °C, 60 % RH"),
        ("lamps", "Lamps", "up to 142 min left"),
        ("crew", "Crew and days", "4 people, 6 visits"),
        ("quote", "Quote", "cans 510.50"),
        ("paper", "Paperwork", "data sheets, lots"),
        ("photo", "Photo record", "3 lights a wall"),
    )
    return screen(
        [
            header(
                "Hand-over day 9, 13:30",
                "Moth Cellar, north stair",
                outline_button(Action("How?", lambda: lift(True))),
            ),
            schedule(
                STOPS,
                lambda _: page.show_dialog(told("Base 1 finished on Wall 2 at 12:54.", nothing)),
                ratio,
            ),
            tiles(
                [tile(sign, name, small, nothing) for sign, name, small in names], text_ratio=ratio
            ),
        ]
    )


@ft.component
def Notices(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    return ft.Column(
        [
            notice(
                "A new version is here. Nothing you kept changes.",
                (Action("Use it now", nothing), Action("Later", nothing)),
            ),
            notice(
                "A damaged book was put aside.", (Action("Save it as a file", nothing),), "caution"
            ),
            screen(
                [
                    caution(
                        "Before the wipe-down",
                        ("Solvent vapour is heavy and burns.", "Gloves on."),
                        "The label and its data sheet decide.",
                        Action("I have read it", nothing),
                    ),
                    Busy("Reading the file", 0.4, nothing),
                    ft.Row(
                        [
                            icon(name)
                            for name in (
                                "check",
                                "bell",
                                "silent",
                                "gear",
                                "download",
                                "upload",
                                "clock",
                                "drop",
                                "pencil",
                                "bin",
                                "lamp",
                                "day",
                            )
                        ],
                        wrap=True,
                    ),
                    ft.Row(
                        [TwoLight("#E79B67", "#FF7A1C", "a", size) for size in (34, 40, 54)]
                        + [
                            TwoLight("", "", "b", 54),
                            Can(CanFace(12, "", None), "can"),
                            Can(CanFace(3, "#22FF66", 1.0), "can"),
                        ],
                        wrap=True,
                    ),
                ]
            ),
        ],
        spacing=0,
        expand=True,
    )


@ft.component
def Forms(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    form, set_form = ft.use_state((("width", "5.62"), ("left", "2,8x"), ("name", "Wall 1")))

    def change(name: str, text: str) -> None:
        set_form(lambda now: tuple((k, text if k == name else v) for k, v in now))

    values = dict(form)
    error = (
        ""
        if values["left"].replace(",", ".").replace(".", "").isdigit()
        else "Not a length. Right would be 2.80 or 9' 2\"."
    )
    return screen(
        [
            header("New wall"),
            Fields(
                (
                    Field("name", "Name", values["name"], number=False),
                    Field("width", "Width, m", values["width"]),
                    Field("left", "Height, m", values["left"], error),
                ),
                change,
                nothing,
            ),
        ],
        [main_button(Action("Keep the wall", nothing if not error else None))],
    )


@ft.component
def Empty(width: float, ratio: float, height: float, *, key: str | None = None) -> ft.Control:
    return empty(
        "No job yet.",
        "A job holds its walls, its mixes and its coats.",
        Action("Make a job", nothing),
        Action("Look at the demo job", nothing),
    )
