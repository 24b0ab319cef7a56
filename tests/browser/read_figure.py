"""Read a figure off a shrunken screenshot by machine, as an eye reads it across a table.

Each digit is compared with all ten, drawn in the app's own font and shrunken alike: the figure is
readable if the digit that is there is the one that looks most like it.
"""

import io
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont

from tests.browser.phone import Box

FONT = Path(__file__).parents[2] / "assets" / "fonts" / "figures-600.woff2"
QUARTER = 0.25
LARGE = 200  # px: candidates are drawn so and shrunken
INK = 0.3  # of the way from ground to ink

Pixels = NDArray[np.float64]


@lru_cache(maxsize=1)
def font() -> Any:
    """Unpack the app's font for figures."""
    whole = TTFont(FONT)
    whole.flavor = None
    plain = io.BytesIO()
    whole.save(plain)
    return ImageFont.truetype(io.BytesIO(plain.getvalue()), LARGE)


def light(picture: Any) -> Pixels:
    """Give the light of each pixel, from 0 (ground) to 1 (ink)."""
    grey = np.asarray(picture.convert("L"), dtype=np.float64)
    ground = np.median(grey)
    away = np.abs(grey - ground)
    return np.asarray(away / max(away.max(), 1.0))


def digits_at_a_quarter(path: Path, box: Box, wide_dp: float) -> Pixels:
    """Cut a figure's digits out of a screenshot that is shrunken to a quarter."""
    whole = Image.open(path)
    small = whole.resize(
        (round(whole.width * QUARTER), round(whole.height * QUARTER)), Image.Resampling.BOX
    )
    scale = small.width / wide_dp
    left, top = box.left * scale, box.top * scale
    right, bottom = left + box.width * scale, top + box.height * scale
    seen = light(small.crop((round(left), round(top), round(right), round(bottom))))
    rows = np.flatnonzero((seen > INK).any(axis=1))
    above = seen[rows[0] : rows[0] + (rows[-1] - rows[0]) // 2]  # the unit does not reach so high
    columns = np.flatnonzero((above > INK).any(axis=0))
    figure = seen[:, columns[0] : columns[-1] + 1]
    rows = np.flatnonzero((figure > INK).any(axis=1))
    return figure[rows[0] : rows[-1] + 1]


def drawn(text: str, like: Pixels) -> Pixels:
    """Draw a figure as large as one that was cut out."""
    face = font()
    left, top, right, bottom = face.getbbox(text)
    page = Image.new("L", (right - left, bottom - top), 0)
    ImageDraw.Draw(page).text((-left, -top), text, fill=255, font=face)
    high, wide = like.shape
    return np.asarray(page.resize((wide, high), Image.Resampling.BOX), dtype=np.float64) / 255


def read(cut: Pixels, pattern: str) -> str:
    """Read the digits of a figure of which only is known where its point stands, as in `00.0`."""
    best = pattern
    places = [at for at, sign in enumerate(pattern) if sign.isdigit()]
    for at in (*places, *places):  # twice: at first the others are not read yet
        candidates = [f"{best[:at]}{digit}{best[at + 1 :]}" for digit in "0123456789"]
        best = min(candidates, key=lambda text: float(((drawn(text, cut) - cut) ** 2).mean()))
    return best
