"""A label's code against an independent decoder (zxing-cpp), and the picture of it."""

import re

import pytest

from mobile.device.label import CHIP, MIME, MODULE, QUIET, TEXT_WIDE, Label, picture, signs_of

zxing = pytest.importorskip("zxingcpp")
numpy = pytest.importorskip("numpy")

ADDRESS = "https://example.org/mural/#/mix/pots/3f2b8c1e-7d54-4a0e-9a51-6f0f5b6c2d11"


def drawn(signs: tuple[tuple[bool, ...], ...], module: int = 6) -> object:
    """Draw the signs with their white margin, as bytes of light."""
    side = len(signs) + 2 * QUIET
    field = numpy.full((side, side), 255, numpy.uint8)
    for y, row in enumerate(signs):
        for x, sign in enumerate(row):
            field[QUIET + y, QUIET + x] = 0 if sign else 255
    return field.repeat(module, 0).repeat(module, 1)


@pytest.mark.parametrize("says", [ADDRESS, "http://127.0.0.1/#/mix/pots/a"])
def test_another_library_reads_what_the_code_says(says: str) -> None:
    [read] = zxing.read_barcodes(drawn(signs_of(says)))
    assert (read.text, read.format.name) in {(says, "QRCode"), (says, "QRCodeModel2")}


def test_the_picture_holds_the_same_code_and_its_words_are_no_markup() -> None:
    label = Label("Pot 7", ("ember <wing> & co", "2031-05-08, 232.0 g"), ADDRESS)
    said = picture(label).decode()
    assert MIME == "image/svg+xml"
    assert "ember &lt;wing&gt; &amp; co" in said
    corners = re.findall(r"M(\d+),(\d+)h6", said)
    signs = signs_of(ADDRESS)
    assert len(corners) == sum(sign for row in signs for sign in row)
    left = min(int(x) for x, _ in corners)
    top = min(int(y) for _, y in corners)
    margin = QUIET * MODULE
    assert (left - TEXT_WIDE, top - CHIP) == (
        margin,
        margin,
    )


def test_the_picture_shows_the_looks_that_are_known() -> None:
    said = picture(Label("Pot 7", (), ADDRESS, "#ff7a1a")).decode()
    assert said.count('fill="#ff7a1a"') == 1
    assert said.count('fill="none"') == said.count("dasharray") == 1
