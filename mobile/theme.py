"""Colours, sizes and spacing (dp): the only place that names them.

A token such as `TEXT` is the *name* of a colour in the page's theme, so the three looks share one
tree: `dress(page, look)` swaps the theme, and every control and drawing follows without a line of
Python running. Only the job's own paints are real colours; parts that show them read `LOOK`, for in
Dim they turn to amber brightness.
"""

from dataclasses import dataclass
from typing import Final

import flet as ft


@dataclass(frozen=True, slots=True)
class Look:
    """The colours of one look, as `#rrggbb`."""

    name: str
    ground: str
    board: str
    raised: str
    text: str
    soft: str  # on ground and board only
    soft2: str  # on raised
    good: str
    caution: str
    edge: str  # outlines and icons
    drying: str
    ready: str
    too_late: str
    line: str  # division only, never meaning
    fill: str  # the one main action: fill, ink, rim
    ink: str
    rim: str


DARK: Final = Look(
    name="dark",
    ground="#0E1014",
    board="#171B21",
    raised="#222832",
    text="#ECE7DC",
    soft="#A0A9B3",
    soft2="#B8C0C9",
    good="#78D796",
    caution="#FF8270",
    edge="#8A939F",
    drying="#9C874C",
    ready="#4FA06E",
    too_late="#FF8270",
    line="#2E3540",
    fill="#FFB627",
    ink="#14110A",
    rim="#FFB627",
)
DIM: Final = Look(
    name="dim",
    ground="#000000",
    board="#000000",
    raised="#1A1206",
    text="#FFB627",
    soft="#C68E22",
    soft2="#DDA02A",
    good="#FFB627",
    caution="#FFB627",
    edge="#A67A22",
    drying="#A67A22",
    ready="#C68E22",
    too_late="#FFB627",
    line="#4A350F",
    fill="#3A2806",
    ink="#FFB627",
    rim="#FFB627",
)
LIGHT: Final = Look(
    name="light",
    ground="#F6F3EC",
    board="#FFFFFF",
    raised="#ECE7DB",
    text="#1B1E23",
    soft="#4A525C",
    soft2="#3F4650",
    good="#165C31",
    caution="#9C2115",
    edge="#5C6570",
    drying="#8A6E1E",
    ready="#2F7D4C",
    too_late="#9C2115",
    line="#D9D3C6",
    fill="#FFB627",
    ink="#14110A",
    rim="#8A5200",
)
LOOKS: Final = (DARK, DIM, LIGHT)

# The tokens, by the role of the theme that carries each.
GROUND: Final = ft.Colors.SURFACE
BOARD: Final = ft.Colors.SURFACE_CONTAINER
RAISED: Final = ft.Colors.SURFACE_CONTAINER_HIGHEST
TEXT: Final = ft.Colors.ON_SURFACE
SOFT: Final = ft.Colors.ON_SURFACE_VARIANT
SOFT2: Final = ft.Colors.SECONDARY
GOOD: Final = ft.Colors.TERTIARY
CAUTION: Final = ft.Colors.ERROR
EDGE: Final = ft.Colors.OUTLINE
DRYING: Final = ft.Colors.TERTIARY_FIXED
READY: Final = ft.Colors.TERTIARY_FIXED_DIM
TOO_LATE: Final = ft.Colors.ON_TERTIARY_FIXED
LINE: Final = ft.Colors.OUTLINE_VARIANT
FILL: Final = ft.Colors.PRIMARY_CONTAINER
INK: Final = ft.Colors.ON_PRIMARY_CONTAINER
RIM: Final = ft.Colors.PRIMARY_FIXED
CLEAR: Final = ft.Colors.TRANSPARENT

# Sizes of text.
CAPTION, SMALL, NAME, HEADING, FACT, ZONE = 15, 17, 20, 22, 26, 30
ANSWER, STATE, CAN, TYPED, READS = 36, 44, 86, 144, 176

# Spacing and heights; heights are minimums.
MARGIN, GAP, HEADER = 16, 8, 20  # side of the page, between boards, side of a header
BAR, RAIL, WIDE = 76, 104, 900
TALL = 560  # a phone on its side is wide, but has no room for two panes
SHORT = 480  # height at the usual text size below which a line of words is in the way
ASIDE_FROM = 520  # width of such a low screen from which its main action stands beside the rest
TARGET, BUTTON, MAIN = 48, 52, 68
BOARD_RADIUS, BUTTON_RADIUS, KEY_RADIUS, HOW_RADIUS = 20, 18, 16, 14
PANE, PANE_PADDING = 424, 24
STACKED_FROM = 1.5  # text ratio from which rows of facts and buttons stand under each other
TILES_FROM = 400.0  # width from which two tiles stand side by side with whole words
GROWN_MOST = 1.5  # large text (26 up) grows at most by half, so that its words stay whole

FONT: Final = "Figures"  # own subset; its digits are tabular
NORMAL, MEDIUM, STRONG = ft.FontWeight.W_400, ft.FontWeight.W_500, ft.FontWeight.W_600


@ft.observable
class Shown:
    """What is on the screen now: the look, the text size, whether all holds still."""

    def __init__(self) -> None:
        self.name = DARK.name
        self.text_ratio = 1.0
        self.still = False  # reduced motion
        self.sideways = False  # the phone lies on its side


LOOK: Final = ft.create_context(Shown())


def look_of(name: str) -> Look:
    """Give the look of that name; Dark where there is none."""
    return next((look for look in LOOKS if look.name == name), DARK)


def page_theme(look: Look) -> ft.Theme:
    """Give the theme that carries a look's tokens."""
    scheme = ft.ColorScheme(
        surface=look.ground,
        surface_container=look.board,
        surface_container_low=look.board,
        surface_container_high=look.board,
        surface_container_highest=look.raised,
        on_surface=look.text,
        on_surface_variant=look.soft,
        secondary=look.soft2,
        on_secondary=look.ground,
        tertiary=look.good,
        error=look.caution,
        on_error=look.ground,
        outline=look.edge,
        outline_variant=look.line,
        tertiary_fixed=look.drying,
        tertiary_fixed_dim=look.ready,
        on_tertiary_fixed=look.too_late,
        primary=look.text,
        on_primary=look.ground,
        primary_container=look.fill,
        on_primary_container=look.ink,
        primary_fixed=look.rim,
        inverse_surface=look.raised,
        on_inverse_surface=look.text,
        inverse_primary=look.text,
        surface_tint=look.ground,
    )
    return ft.Theme(
        color_scheme=scheme,
        font_family=FONT,
        scaffold_bgcolor=look.ground,
        visual_density=ft.VisualDensity.STANDARD,
    )


def dress(page: ft.Page, look: Look, text_ratio: float = 1.0, still: bool = False) -> None:
    """Put a look on the page: at the start, and whenever the person chooses another."""
    page.theme = page.dark_theme = page_theme(look)
    page.theme_mode = ft.ThemeMode.LIGHT if look is LIGHT else ft.ThemeMode.DARK
    page.bgcolor, page.padding = GROUND, 0
    shown = LOOK.default_value
    shown.name, shown.text_ratio, shown.still = look.name, text_ratio, still


def luminance(color: str) -> float:
    """Find the relative luminance of `#rrggbb`, 0 to 1 (WCAG 2.2, "relative luminance")."""
    red, green, blue = (_linear(int(color[at : at + 2], 16) / 255) for at in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Find the contrast of two colours, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def paint(color: str, look: str) -> str:
    """Show a paint's colour in a look: itself, or in Dim amber of its brightness."""
    if look != DIM.name:
        return color
    share = luminance(color)
    return "#" + "".join(
        f"{round(255 * _encoded(share * _linear(int(DIM.text[at : at + 2], 16) / 255))):02X}"
        for at in (1, 3, 5)
    )


BEND: Final = 0.04045  # of sRGB's curve, IEC 61966-2-1, which WCAG 2.2 took over


def _linear(value: float) -> float:
    return value / 12.92 if value <= BEND else ((value + 0.055) / 1.055) ** 2.4


def _encoded(light: float) -> float:
    return light * 12.92 if light <= BEND / 12.92 else 1.055 * light ** (1 / 2.4) - 0.055


def line_height(size: float) -> float:
    """Give a text's line height as a multiple of its size."""
    return 1.08 if size >= NAME else 1.25


def tracking(size: float) -> float:
    """Give a text's letter spacing, dp."""
    return -0.04 * size if size >= CAN else -0.01 * size if size >= FACT else 0.0


def grown(size: float) -> float:
    """Give the size to ask for, so that large text grows less with the phone's text size."""
    ratio = LOOK.default_value.text_ratio
    return size * min(ratio, GROWN_MOST) / ratio if size >= FACT else size


def large() -> bool:
    """Tell whether the text is so large that rows stand under each other."""
    return LOOK.default_value.text_ratio >= STACKED_FROM


def sideways() -> bool:
    """Tell whether the phone lies on its side, so that the main action stands beside the rest."""
    return LOOK.default_value.sideways


def style(
    size: float = NAME, color: ft.ColorValue = TEXT, weight: ft.FontWeight = NORMAL
) -> ft.TextStyle:
    """Give the style of a text."""
    size = grown(size)
    return ft.TextStyle(
        size=size,
        color=color,
        weight=weight,
        height=line_height(size),
        letter_spacing=tracking(size),
        font_family=FONT,
    )


def say(
    text: str,
    size: float = NAME,
    color: ft.ColorValue = TEXT,
    weight: ft.FontWeight | None = None,
    key: str | None = None,
) -> ft.Text:
    """Set a text; from 26 up it is semibold where nothing else is asked."""
    weight = weight or (STRONG if size >= FACT else NORMAL)
    return ft.Text(text, style=style(size, color, weight), key=key)


def say_right(
    text: str,
    size: float = NAME,
    color: ft.ColorValue = TEXT,
    weight: ft.FontWeight | None = None,
    key: str | None = None,
) -> ft.Text:
    """Set a text against the right side."""
    weight = weight or (STRONG if size >= FACT else NORMAL)
    return ft.Text(text, style=style(size, color, weight), text_align=ft.TextAlign.RIGHT, key=key)
