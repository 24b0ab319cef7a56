"""A look, `#rrggbb`: its light, and how different two looks are."""

import re
from math import sqrt

from core.errors import Refused

LOOK = re.compile(r"#[0-9a-fA-F]{6}")
KNEE, BEND = 0.04045, 12.92  # IEC 61966-2-1
WHITE_XYZ = 0.9505, 1.0, 1.0890  # sums of the rows below: D65 as sRGB has it
TO_XYZ = (  # IEC 61966-2-1, from memory
    (0.4124, 0.3576, 0.1805),
    (0.2126, 0.7152, 0.0722),
    (0.0193, 0.1192, 0.9505),
)
DARK = 216 / 24389  # CIE 15: below it the cube root gives way to a line
SLOPE = 24389 / 27

Light = tuple[float, float, float]  # red, green, blue, linear
Lab = tuple[float, float, float]  # CIELAB, D65: lightness, red-green, yellow-blue


def light_of(look: str) -> Light:
    """Find the light of a look.

    Parameters
    ----------
    look
        `#rrggbb`.

    Returns
    -------
        Red, green and blue, linear, each 0 to 1.

    Source: the transfer function of sRGB, IEC 61966-2-1.

    >>> [round(part, 4) for part in light_of("#808000")]
    [0.2159, 0.2159, 0.0]
    """
    if not LOOK.fullmatch(look):
        raise Refused("look", look, 0.0, 1.0)
    red, green, blue = (_linear(int(look[at : at + 2], 16) / 255) for at in (1, 3, 5))
    return red, green, blue


def look_of(light: Light) -> str:
    """Find the look of a light; what a screen can't show is cut off.

    Parameters
    ----------
    light
        Red, green and blue, linear.

    Returns
    -------
        `#rrggbb`.

    Source: the transfer function of sRGB, IEC 61966-2-1.

    >>> look_of((0.2158605, 0.2158605, 0.0))
    '#808000'
    """
    return "#" + "".join(f"{round(255 * _encoded(min(max(one, 0.0), 1.0))):02x}" for one in light)


def lab_of(light: Light) -> Lab:
    """Find a light's place in CIELAB.

    Parameters
    ----------
    light
        Red, green and blue, linear; up to 4 for what glows.

    Returns
    -------
        Lightness, red-green and yellow-blue.

    Source: CIE 15, with the white of sRGB, IEC 61966-2-1.

    >>> [round(part, 2) for part in lab_of(light_of("#ff0000"))]
    [53.23, 80.11, 67.22]
    """
    x, y, z = (
        _cube_root(sum(part * one for part, one in zip(row, light, strict=True)) / white)
        for row, white in zip(TO_XYZ, WHITE_XYZ, strict=True)
    )
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def difference_de(one: Lab, other: Lab) -> float:
    """Find how far apart two colours are.

    Parameters
    ----------
    one, other
        Two colours in CIELAB.

    Returns
    -------
        The distance, CIE 1976: 1 is about what an eye sees side by side.

    Source: colour difference of CIE 1976, CIE 15.

    >>> difference_de((50.0, 3.0, 4.0), (50.0, 0.0, 0.0))
    5.0
    """
    return sqrt(sum((a - b) ** 2 for a, b in zip(one, other, strict=True)))


def _linear(value: float) -> float:
    return value / BEND if value <= KNEE else ((value + 0.055) / 1.055) ** 2.4


def _encoded(light: float) -> float:
    return light * BEND if light <= KNEE / BEND else 1.055 * light ** (1 / 2.4) - 0.055


def _cube_root(value: float) -> float:
    return float(value ** (1 / 3)) if value > DARK else (SLOPE * value + 16) / 116
