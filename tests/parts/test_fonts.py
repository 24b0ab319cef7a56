"""The app's font: no glyph missing, one width for all digits, a name of its own."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from mobile.parts import measure

ROOT = Path(__file__).parents[2]
FONTS = tuple(sorted((ROOT / "assets/fonts").glob("*.woff2")))
LETTERED = ("mobile/words", "mobile/parts", "mobile/screens", "mobile/session", "mobile/store")


def strings(folder: str) -> Iterator[tuple[Path, str]]:
    """Find every text constant of a folder's modules, documentation left out."""
    for path in sorted((ROOT / folder).rglob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        notes = {
            id(node.body[0].value)
            for node in ast.walk(tree)
            if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef)
            and node.body
            and isinstance(node.body[0], ast.Expr)
        }
        for node in ast.walk(tree):
            text = node.value if isinstance(node, ast.Constant) else None
            if isinstance(text, str) and id(node) not in notes:
                yield path, text


def test_there_are_three_weights() -> None:
    assert [path.name for path in FONTS] == [
        f"figures-{weight}.woff2" for weight in (400, 500, 600)
    ]
    assert [TTFont(path)["OS/2"].usWeightClass for path in FONTS] == [400, 500, 600]


@pytest.mark.parametrize("path", FONTS, ids=lambda path: path.stem)
def test_no_word_of_the_app_lacks_a_glyph(path: Path) -> None:
    known = TTFont(path).getBestCmap()
    lacking = {
        (where.relative_to(ROOT).as_posix(), sign)
        for folder in LETTERED
        for where, text in strings(folder)
        for sign in text
        if sign.isprintable() and ord(sign) not in known
    }
    assert not lacking


@pytest.mark.parametrize("path", FONTS, ids=lambda path: path.stem)
def test_digits_have_one_width_and_lines_do_not_change(path: Path) -> None:
    font = TTFont(path)
    widths = {font["hmtx"][font.getBestCmap()[ord(digit)]][0] for digit in "0123456789"}
    assert widths == {600}
    assert (font["head"].unitsPerEm, font["hhea"].ascent, font["hhea"].descent) == (
        1000,
        1025,
        -275,
    )


@pytest.mark.parametrize("path", FONTS, ids=lambda path: path.stem)
def test_the_reserved_name_is_not_used(path: Path) -> None:
    names = TTFont(path)["name"].names
    family = {str(name) for name in names if name.nameID in {1, 4, 16}}
    assert family == {"Figures"}
    assert not [str(name) for name in names if "plex" in str(name).lower()]
    assert 'Reserved Font Name "Plex"' in (ROOT / "assets/fonts/OFL.txt").read_text("utf-8")


def test_widths_of_drawn_text_are_near_the_font_s_own() -> None:
    font = TTFont(ROOT / "assets/fonts/figures-600.woff2")
    cmap, widths = font.getBestCmap(), font["hmtx"]
    for words in ("can 12", "now 12:54", "5.62 m", "12′ 6″", "Use 81.9 g", "fluorescent orange"):
        own = sum(widths[cmap[ord(sign)]][0] for sign in words) / 1000
        assert measure.text_width(words, 1.0) == pytest.approx(own, rel=0.06), words
