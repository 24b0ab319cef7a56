"""Make the app's font files: `python -m tests.parts.make_fonts PACKAGE assets/fonts`.

PACKAGE is the unpacked npm package `@ibm/plex-sans` 1.1.0, IBM Plex Sans. The licence (OFL 1.1)
reserves the name "Plex", so the subset's family is "Figures".
"""

import sys
from pathlib import Path
from shutil import copyfile

from fontTools.subset import Options, Subsetter, load_font, save_font  # type: ignore[import-untyped]
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

FAMILY = "Figures"
WEIGHTS = {"Regular": "figures-400", "Medium": "figures-500", "SemiBold": "figures-600"}
LATIN = "".join(map(chr, [*range(0x20, 0x7F), *range(0xA0, 0x180)]))  # Latin-1, Extended-A
SPACES = "\u2007\u2009\u202f"  # figure, thin, narrow without a break
DASHES = "\u2010\u2011–—−"
MARKS = "\u2018\u2019\u201a“”„…′″†‡•\u2039\u203a‰"  # the first three are quotes
FIGURES = "⅓⅔⅛⅜⅝⅞⁰⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉"
SIGNS = "≤≥≈≠±√∞∑ΔΩμπσ€№™ȘșȚț"
ARROWS = "←↑→↓✓"
CHARACTERS = "".join(sorted({*(LATIN + SPACES + DASHES + MARKS + FIGURES + SIGNS + ARROWS)}))
NAMES = {1: FAMILY, 4: FAMILY, 6: FAMILY, 16: FAMILY}
DROPPED = {3, 7, 17, 18, 19, 21, 22, 25}  # ids of names that would still say "Plex"


def options() -> Options:
    """Give the subset's settings: kerning and ligatures stay, hints go (no phone uses them)."""
    chosen = Options()
    chosen.flavor = "woff2"
    chosen.layout_features = ["kern", "liga", "ccmp", "locl", "mark", "mkmk"]
    chosen.hinting = False
    chosen.notdef_outline = True
    chosen.name_IDs = [0, 1, 2, 4, 5, 6, 8, 9, 13, 14, 16]
    return chosen


def rename(font: TTFont, weight: str) -> None:
    """Give the font its own family name, as the licence asks of a changed version."""
    names = font["name"]
    names.names = [name for name in names.names if name.nameID not in DROPPED]
    for name in names.names:
        if name.nameID in NAMES:
            tail = f"-{weight}" if name.nameID == 6 else ""
            name.string = NAMES[name.nameID] + tail


def subset(source: Path, target: Path, weight: str) -> None:
    """Write one weight, with the same bytes for the same input."""
    chosen = options()
    font = load_font(str(source), chosen)
    cutter = Subsetter(chosen)
    cutter.populate(text=CHARACTERS)
    cutter.subset(font)
    rename(font, weight)
    font.recalcTimestamp = False
    save_font(font, str(target), chosen)


def main(package: Path, target: Path) -> None:
    """Write the three weights and the licence."""
    for weight, name in WEIGHTS.items():
        source = package / "fonts/complete/woff2" / f"IBMPlexSans-{weight}.woff2"
        subset(source, target / f"{name}.woff2", weight)
    copyfile(package / "LICENSE.txt", target / "OFL.txt")


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:]))
