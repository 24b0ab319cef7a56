"""What a mixture of paints looks like, by day and under the lamp: a model, for ranking only."""

from dataclasses import dataclass

from core.colours.look import Light, light_of
from core.errors import require

LEAST_R, MOST_R = 0.01, 0.97  # a look is no measurement: no paint is quite black or white
SHARES_COUNT = 1, 24
SHARE_RATIO = 0.0, 1.0
# What a paint sends back of the UV where nobody measured it: from memory, to be calibrated.
GLOWING_UV_RATIO, DULL_UV_RATIO = 0.10, 0.07
GLOWS_FROM_RATIO = 0.5  # of full light in its brightest band: this project's planning model


@dataclass(frozen=True, slots=True)
class Looks:
    """How a paint looks: by day and under the lamp, linear light, and what it sends back of UV."""

    day: Light
    lamp: Light
    uv_ratio: float


def looks_of(day: str, lamp: str) -> Looks:
    """Give the two looks of a paint as light; of the UV it sends back what is usual.

    Parameters
    ----------
    day, lamp
        `#rrggbb`.

    Returns
    -------
        0.10 of the UV for a paint that glows, 0.07 for one that doesn't.

    Source: IEC 61966-2-1; the shares of UV are from memory.

    >>> looks_of("#f2ee2c", "#eaff3d").uv_ratio, looks_of("#101010", "#000000").uv_ratio
    (0.1, 0.07)
    """
    under = light_of(lamp)
    uv_ratio = GLOWING_UV_RATIO if max(under) >= GLOWS_FROM_RATIO else DULL_UV_RATIO
    return Looks(light_of(day), under, uv_ratio)


def mixed(shares: tuple[float, ...], looks: tuple[Looks, ...]) -> tuple[Light, Light]:
    """Find both looks of a mixture.

    Parameters
    ----------
    shares
        By mass, one a paint, adding up to 1.
    looks
        One a paint.

    Returns
    -------
        By day and under the lamp, linear light.

    Source: `day_light` and `lamp_light`.

    >>> one = looks_of("#ccff00", "#ccff00")
    >>> day, lamp = mixed((1.0,), (one,))
    >>> round(lamp[1], 6)
    1.0
    """
    days, lamps = tuple(one.day for one in looks), tuple(one.lamp for one in looks)
    uvs = tuple(one.uv_ratio for one in looks)
    return day_light(shares, days), lamp_light(shares, lamps, days, uvs)


def absorption_ratio(reflected_ratio: float) -> float:
    """Find the ratio of absorption to scattering of an opaque paint.

    Parameters
    ----------
    reflected_ratio
        0 to 1; taken no darker than 0.01 and no lighter than 0.97.

    Returns
    -------
        K/S.

    Source: Kubelka and Munk 1931, (1 - R)² / 2R.

    >>> absorption_ratio(0.5)
    0.25
    """
    bounded = _bounded(reflected_ratio)
    return (1 - bounded) ** 2 / (2 * bounded)


def reflected_ratio(absorbed_ratio: float) -> float:
    """Find the reflectance of an opaque paint from its ratio of absorption to scattering.

    Parameters
    ----------
    absorbed_ratio
        K/S, 0 to 10 000.

    Returns
    -------
        0 to 1.

    Source: Kubelka and Munk 1931, 1 + q - sqrt(q² + 2q).

    >>> reflected_ratio(0.25)
    0.5
    """
    require("absorbed_ratio", absorbed_ratio, 0.0, 1e4)
    return float(1 + absorbed_ratio - (absorbed_ratio**2 + 2 * absorbed_ratio) ** 0.5)


def day_light(shares: tuple[float, ...], days: tuple[Light, ...]) -> Light:
    """Find how a mixture looks by day.

    Parameters
    ----------
    shares
        By mass, one a paint, adding up to 1.
    days
        The light of each by day, linear.

    Returns
    -------
        Red, green and blue, linear.

    Source: single-constant mixing, K/S adds by share (Duncan 1940), band by band; by mass and on
    a look instead of a spectrum: this project's planning model.

    >>> white, black = (0.9, 0.9, 0.9), (0.05, 0.05, 0.05)
    >>> [round(one, 6) for one in day_light((0.9, 0.1), (white, black))]
    [0.283137, 0.283137, 0.283137]
    """
    _require(shares, days)
    red, green, blue = (
        reflected_ratio(
            sum(
                share * absorption_ratio(day[band]) for share, day in zip(shares, days, strict=True)
            )
        )
        for band in range(3)
    )
    return red, green, blue


def lamp_light(
    shares: tuple[float, ...],
    lamps: tuple[Light, ...],
    days: tuple[Light, ...],
    uvs_ratio: tuple[float, ...],
) -> Light:
    """Find how a mixture glows under the lamp.

    Each paint glows by its share of the UV that the mixture takes up, and what it sends out passes
    through the others: bands that the mixture swallows by day it swallows of the glow.

    Parameters
    ----------
    shares
        By mass, one a paint, adding up to 1.
    lamps
        The light of each under the lamp, linear.
    days
        The light of each by day, linear.
    uvs_ratio
        What each sends back of the UV, 0 to 1; taken as reflectances by day are.

    Returns
    -------
        Red, green and blue, linear; a paint alone glows as it was given.

    Source: emission of an opaque layer from the two-flux equations of Kubelka and Munk, its share
    that leaves (1 - R0) (1 + R) / 2 / (1 + beta); by mass, on looks instead of spectra, and without
    paints lighting each other: this project's planning model.

    >>> yellow, black = (0.3, 1.0, 0.05), (0.0, 0.0, 0.0)
    >>> days = (0.603827, 1.0, 0.0), (0.012983, 0.012983, 0.012983)
    >>> [round(one, 3) for one in lamp_light((0.99, 0.01), (yellow, black), days, (0.1, 0.04))]
    [0.227, 0.599, 0.049]
    """
    _require(shares, lamps)
    _require(shares, days)
    require("uvs_count", len(uvs_ratio), len(shares), len(shares))
    for uv_ratio in uvs_ratio:
        require("uv_ratio", uv_ratio, *SHARE_RATIO)
    takes = tuple(absorption_ratio(uv_ratio) for uv_ratio in uvs_ratio)
    taken = sum(share * one for share, one in zip(shares, takes, strict=True))
    whole = day_light(shares, days)
    red, green, blue = (
        sum(
            lamp[band] * share * one / taken * _leaves(taken, whole[band]) / _leaves(one, day[band])
            for share, lamp, day, one in zip(shares, lamps, days, takes, strict=True)
        )
        for band in range(3)
    )
    return red, green, blue


def _leaves(taken: float, reflected: float) -> float:
    """Find the share of a layer's glow that leaves it, from K/S in the UV and R of the band."""
    sent = absorption_ratio(reflected)
    beta = (sent * (sent + 2) / (taken * (taken + 2))) ** 0.5
    return float((1 - reflected_ratio(taken)) * (1 + _bounded(reflected)) / 2 / (1 + beta))


def _bounded(reflected: float) -> float:
    return min(max(reflected, LEAST_R), MOST_R)


def _require(shares: tuple[float, ...], lights: tuple[Light, ...]) -> None:
    require("paints_count", len(shares), *SHARES_COUNT)
    require("lights_count", len(lights), len(shares), len(shares))
    for share in shares:
        require("share_ratio", share, *SHARE_RATIO)
    require("shares_ratio", sum(shares), 1 - 1e-9, 1 + 1e-9)
