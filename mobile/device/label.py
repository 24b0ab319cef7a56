"""A cup's or a jar's label: the signs of its QR code, and a picture that any viewer prints."""

from dataclasses import dataclass
from functools import lru_cache
from html import escape

from mobile.device.bridge import bring

MIME = "image/svg+xml"
QUIET = 4  # modules of white about the code, ISO/IEC 18004
MODULE, LINE, LEFT = 6, 34, 24  # of the picture, in its own units
BIG, TEXT = 84, 26

Signs = tuple[tuple[bool, ...], ...]  # rows of the code, True for dark


@dataclass(frozen=True, slots=True)
class Label:
    """What stands on a label: its number, large, its lines, and what its code says."""

    number: str
    lines: tuple[str, ...]
    says: str


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
    """Draw a label as an SVG file: black on white, the code at its right."""
    signs = signs_of(label.says)
    side = (len(signs) + 2 * QUIET) * MODULE
    high = max(side, BIG + LINE * (len(label.lines) + 1) + LEFT)
    text_wide = 560
    dark = "".join(
        f"M{text_wide + (QUIET + x) * MODULE},{(QUIET + y) * MODULE}h{MODULE}v{MODULE}h-{MODULE}z"
        for y, row in enumerate(signs)
        for x, sign in enumerate(row)
        if sign
    )
    said = [f'<text x="{LEFT}" y="{BIG}" font-size="{BIG}">{escape(label.number)}</text>']
    said += [
        f'<text x="{LEFT}" y="{BIG + LINE * (at + 1)}" font-size="{TEXT}">{escape(line)}</text>'
        for at, line in enumerate(label.lines)
    ]
    size = f'width="{text_wide + side}" height="{high}"'
    view = f'viewBox="0 0 {text_wide + side} {high}"'
    body = f'<rect {size} fill="#fff"/><path d="{dark}"/>{"".join(said)}'
    head = f'<svg xmlns="http://www.w3.org/2000/svg" {size} {view} font-family="sans-serif">'
    return f"{head}{body}</svg>\n".encode()
