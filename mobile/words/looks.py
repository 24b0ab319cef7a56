"""The two looks of a colour in words, for whoever hears the screen."""

from colorsys import rgb_to_hls

from mobile.words.places import UNKNOWN

BY_DAY, UNDER_LAMP, NOT_KNOWN = "By day", "Under the lamp", "not known"
LIKE = "Write a colour like #ff7a1a, or tap one."

# Where each hue ends on the colour circle, degrees; the names are everyday ones.
HUES = (
    (15, "red"),
    (42, "orange"),
    (70, "yellow"),
    (160, "green"),
    (195, "turquoise"),
    (250, "blue"),
    (292, "violet"),
    (345, "pink"),
    (361, "red"),
)
GREY_BELOW, STRONG_FROM = 0.09, 0.75
DARK_BELOW, PALE_FROM = 0.28, 0.75


def colour(look: str) -> str:
    """Name a colour given as `#rrggbb`.

    >>> colour("#ff7a1a"), colour("#4b3350"), colour("#f4f2ea"), colour("")
    ('strong orange', 'dark violet', 'white', 'not known yet')
    """
    if not look:
        return UNKNOWN
    red, green, blue = (int(look[at : at + 2], 16) / 255 for at in (1, 3, 5))
    hue, light, strength = rgb_to_hls(red, green, blue)
    spread = max(red, green, blue) - min(red, green, blue)
    name = next(name for end, name in HUES if hue * 360 < end)
    grey, how = "grey", "strong " if strength > STRONG_FROM else ""
    if light < DARK_BELOW:
        grey, how = "black", "dark "
    elif light > PALE_FROM:
        grey, how = "white", "pale "
    return grey if spread < GREY_BELOW else how + name


def label(light: str) -> str:
    """Label the field of a look in one light."""
    return f"{light}, a colour like #ff7a1a"


def two_lights(name: str, day: str, lamp: str) -> str:
    """Say a colour's look by day and under the lamp."""
    return f"{name}, by day {colour(day)}, under the lamp {colour(lamp)}"
