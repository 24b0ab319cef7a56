"""What a mixture of paints looks like, by day and under the lamp: a model, for ranking only."""

from core.colours.look import Light
from core.errors import require

LEAST_R, MOST_R = 0.01, 0.97  # a look is no measurement: no paint is quite black or white
SHARES_COUNT = 1, 24
SHARE_RATIO = 0.0, 1.0


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
    shares: tuple[float, ...], lamps: tuple[Light, ...], days: tuple[Light, ...]
) -> Light:
    """Find how a mixture glows under the lamp.

    Each paint glows by its share, and what it sends out passes through the others: bands that the
    mixture swallows by day it swallows of the glow. All paints are taken to swallow UV alike.

    Parameters
    ----------
    shares
        By mass, one a paint, adding up to 1.
    lamps
        The light of each under the lamp, linear.
    days
        The light of each by day, linear.

    Returns
    -------
        Red, green and blue, linear.

    Source: this project's planning model, after the opaque two-flux film of Kubelka and Munk: the
    share (1 + R) / 2 of what is sent out inside leaves, R that of the band.

    >>> yellow, black = (0.6, 1.0, 0.0), (0.0, 0.0, 0.0)
    >>> [round(one, 2) for one in lamp_light((0.9, 0.1), (yellow, black), (yellow, black))]
    [0.37, 0.5, 0.0]
    """
    _require(shares, lamps)
    _require(shares, days)
    mixed = day_light(shares, days)
    red, green, blue = (
        sum(
            share * lamp[band] * (1 + mixed[band]) / (1 + _bounded(day[band]))
            for share, lamp, day in zip(shares, lamps, days, strict=True)
        )
        for band in range(3)
    )
    return red, green, blue


def _bounded(reflected: float) -> float:
    return min(max(reflected, LEAST_R), MOST_R)


def _require(shares: tuple[float, ...], lights: tuple[Light, ...]) -> None:
    require("paints_count", len(shares), *SHARES_COUNT)
    require("lights_count", len(lights), len(shares), len(shares))
    for share in shares:
        require("share_ratio", share, *SHARE_RATIO)
    require("shares_ratio", sum(shares), 1 - 1e-9, 1 + 1e-9)
