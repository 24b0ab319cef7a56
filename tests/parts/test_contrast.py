"""Contrast of the tokens: WCAG 2.2, success criteria 1.4.6 (7:1) and 1.4.3, 1.4.11 (4.5:1 here).

The formula is WCAG 2.2's "relative luminance" and "contrast ratio"; its two ends and one published
pair check our reading of it. 1.4.11 asks 3:1 of what can be tapped; this project asks 4.5:1.
"""

import pytest

from mobile import theme as t
from mobile.theme import DARK, DIM, LIGHT, LOOKS, Look, contrast

BODY, MEANING = 7.0, 4.5
look_by_look = pytest.mark.parametrize("look", LOOKS, ids=lambda look: look.name)


def test_the_formula_gives_the_published_ends() -> None:
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)  # WCAG 2.2, "contrast ratio"
    assert contrast("#777777", "#777777") == pytest.approx(1.0)
    # The greys that Understanding SC 1.4.3 and 1.4.6 are usually shown with, from memory.
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.005)
    assert contrast("#595959", "#FFFFFF") == pytest.approx(7.0, abs=0.005)


@look_by_look
def test_body_text_stands_out(look: Look) -> None:
    pairs = {
        "text": (look.text, (look.ground, look.board, look.raised)),
        "soft": (look.soft, (look.ground, look.board)),
        "soft2": (look.soft2, (look.raised,)),
        "good": (look.good, (look.ground, look.board)),
        "caution": (look.caution, (look.ground, look.board)),
        "main action": (look.ink, (look.fill,)),
        "chosen segment and now": (look.ground, (look.text,)),
    }
    low = {
        (name, under): round(contrast(color, under), 2)
        for name, (color, unders) in pairs.items()
        for under in unders
        if contrast(color, under) < BODY
    }
    assert not low


@look_by_look
def test_what_is_tapped_or_carries_meaning_stands_out(look: Look) -> None:
    pairs = {
        "edge": (look.edge, (look.ground, look.board, look.raised)),
        "drying": (look.drying, (look.board,)),
        "ready": (look.ready, (look.board,)),
        "too late": (look.too_late, (look.board,)),
    }
    low = {
        (name, under): round(contrast(color, under), 2)
        for name, (color, unders) in pairs.items()
        for under in unders
        if contrast(color, under) < MEANING
    }
    assert not low


@pytest.mark.parametrize("look", [DIM, LIGHT], ids=lambda look: look.name)
def test_the_main_action_has_a_rim_where_its_fill_does_not_tell_it(look: Look) -> None:
    assert contrast(look.rim, look.ground) >= MEANING


def test_amber_tells_the_main_action_in_the_dark() -> None:
    assert contrast(DARK.fill, DARK.ground) >= MEANING
    fills = [look.fill for look in (DARK, LIGHT)]
    others = {
        value
        for look in (DARK, LIGHT)
        for name in Look.__dataclass_fields__
        if name not in {"fill", "rim", "name"}
        for value in [getattr(look, name)]
    }
    assert not others & set(fills)


def test_dim_shows_amber_alone() -> None:
    for name in Look.__dataclass_fields__:
        if name != "name":
            _amber_or_black(getattr(DIM, name))
    for color in ("#FF0000", "#00FF00", "#0000FF", "#FFFFFF", "#55405C", "#000000"):
        _amber_or_black(t.paint(color, "dim"))
        assert t.paint(color, "dark") == t.paint(color, "light") == color


def _amber_or_black(color: str) -> None:
    red, green, blue = (int(color[at : at + 2], 16) for at in (1, 3, 5))
    assert red >= green >= blue, color
    assert blue <= 0.3 * red, color


def test_a_brighter_paint_is_brighter_in_dim() -> None:
    greys = [f"#{level:02X}{level:02X}{level:02X}" for level in range(0, 256, 5)]
    light = [t.luminance(t.paint(grey, "dim")) for grey in greys]
    assert light == sorted(light)


def test_every_token_is_a_role_of_the_theme() -> None:
    names = [name for name in Look.__dataclass_fields__ if name != "name"]
    for look in LOOKS:
        scheme = t.page_theme(look).color_scheme
        assert scheme is not None
        for name in names:
            role = getattr(t, name.upper())
            assert getattr(scheme, role.name.lower()) == getattr(look, name), name
