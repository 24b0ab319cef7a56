"""A cup's or a jar's label: the signs of its QR code, and a picture that any viewer prints."""

from dataclasses import dataclass
from functools import lru_cache
from html import escape
from textwrap import wrap

from mobile.device.bridge import bring

MIME = "image/svg+xml"
QUIET = 4  # modules of white about the code, ISO/IEC 18004
MODULE, LINE, LEFT, CHIP = 6, 34, 24, 72  # of the picture, in its own units
BIG, TEXT, TEXT_WIDE, LETTERS_MOST = 84, 26, 560, 38
NOT_KNOWN = ' stroke-dasharray="4 3"'

Signs = tuple[tuple[bool, ...], ...]  # rows of the code, True for dark


@dataclass(frozen=True, slots=True)
class Label:
    """What stands on a label: its number, large, its lines, and what its code says."""

    number: str
    lines: tuple[str, ...]
    says: str
    day: str = ""  # `#rrggbb`, "" where nobody knows it
    lamp: str = ""


@lru_cache(maxsize=8)
def signs_of(says: str) -> Signs:
    """Write a QR code; raise `OSError` where the library for it can't be had.

    Source: ISO/IEC 18004, error correction M, by a library.
    """
    bring("later.zip")
    import qrcode  # noqa: PLC0415  the start does without it

    code = qrcode.QRCode(error_correction=qrcode.ERROR_CORRECT_M, border=0)
    code.add_data(says)
    code.make(fit=True)
    return tuple(tuple(bool(sign) for sign in row) for row in code.get_matrix())


def picture(label: Label) -> bytes:
    """Draw a label as an SVG file: black on white, the looks and the code at its right."""
    signs = signs_of(label.says)
    side = (len(signs) + 2 * QUIET) * MODULE
    wide = TEXT_WIDE + side
    lines = [part for line in label.lines for part in wrap(line, LETTERS_MOST)]
    high = max(CHIP + side, BIG + LINE * (len(lines) + 1) + LEFT)
    said = [f'<text x="{LEFT}" y="{BIG}" font-size="{BIG}">{escape(label.number)}</text>']
    said += [
        f'<text x="{LEFT}" y="{BIG + LINE * (at + 1)}" font-size="{TEXT}">{escape(line)}</text>'
        for at, line in enumerate(lines)
    ]
    size = f'width="{wide}" height="{high}"'
    head = f'<svg xmlns="http://www.w3.org/2000/svg" {size} viewBox="0 0 {wide} {high}"'
    drawn = f'<rect {size} fill="#fff"/>{_code(signs)}{_chip(label, TEXT_WIDE + side // 2)}'
    return f'{head} font-family="sans-serif">{drawn}{"".join(said)}</svg>\n'.encode()


def _code(signs: Signs) -> str:
    """Draw the code, a small square for each dark sign."""
    square = f"h{MODULE}v{MODULE}h-{MODULE}z"
    dark = (
        f"M{TEXT_WIDE + (QUIET + x) * MODULE},{CHIP + (QUIET + y) * MODULE}{square}"
        for y, row in enumerate(signs)
        for x, sign in enumerate(row)
        if sign
    )
    return f'<path d="{"".join(dark)}"/>'


def _chip(label: Label, middle: int) -> str:
    """Draw a split disc: by day on the left, under the lamp on the right; dashed if not known."""
    half, top, bottom = CHIP // 2 - 8, 8, CHIP - 8
    sides = (0, label.day or "none"), (1, label.lamp or "none")
    halves = (
        f'<path d="M{middle},{top}A{half},{half} 0 0 {side} {middle},{bottom}z" fill="{look}"'
        f' stroke="#000" stroke-width="2"{NOT_KNOWN if look == "none" else ""}/>'
        for side, look in sides
    )
    return "".join(halves)
