"""Cut from Flet's icon font the signs that Flutter's own controls draw.

`python -m tests.pwa.make_icons` (needs fonttools) writes `assets/icons/material-icons.woff2`. The
app draws its own icons; the whole font would be a twentieth of the first download.
"""

import sys
from pathlib import Path

from fontTools import subset  # type: ignore[import-untyped]
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from mobile.pwa import packages

CUT = Path(__file__).parents[2] / "assets" / "icons" / "material-icons.woff2"
WHOLE = "assets/fonts/MaterialIcons-Regular.otf"
SIGNS = (
    "access_time",
    "arrow_back",
    "arrow_back_ios",
    "arrow_back_ios_new",
    "arrow_downward",
    "arrow_drop_down",
    "arrow_drop_up",
    "arrow_forward",
    "arrow_left",
    "arrow_right",
    "arrow_upward",
    "calendar_today",
    "cancel",
    "check",
    "chevron_left",
    "chevron_right",
    "clear",
    "close",
    "drag_handle",
    "edit",
    "error",
    "expand_less",
    "expand_more",
    "first_page",
    "keyboard",
    "keyboard_arrow_down",
    "keyboard_arrow_left",
    "keyboard_arrow_right",
    "keyboard_arrow_up",
    "last_page",
    "menu",
    "more_horiz",
    "more_vert",
    "search",
    "unfold_more",
    "warning",
)


def main() -> None:
    """Cut and write."""
    options = subset.Options(flavor="woff2", layout_features=[], name_IDs=[0, 1, 2, 13, 14])
    font = TTFont(packages.client().folder / WHOLE, recalcTimestamp=False)
    cutter = subset.Subsetter(options)
    cutter.populate(glyphs=[f"{sign}_baseline" for sign in SIGNS])
    cutter.subset(font)
    subset.save_font(font, str(CUT), options)
    sys.stdout.write(f"{CUT}: {CUT.stat().st_size} bytes\n")


if __name__ == "__main__":
    main()
