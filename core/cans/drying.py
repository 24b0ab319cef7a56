"""What dries off while a lid is off: an upper bound."""

from dataclasses import dataclass
from math import exp, pi

from core.errors import require
from core.working import Step, Working, step

OPEN_S = 0.0, 7.2e6
ACROSS_M = 0.01, 1.0
AIR_C = 5.0, 35.0
RH_RATIO = 0.2, 0.95
AIR_M_PER_S = 0.0, 1.0

AIR_PA = 101325.0  # standard atmosphere, ISO 2533
WATER_TO_AIR_RATIO = 0.62198  # of molar masses, ASHRAE Handbook, Fundamentals
STILL_KG, MOVING_KG = 25.0, 19.0  # kg/(m² h), and the same for each m/s of air
S_PER_H, G_PER_KG = 3600.0, 1000.0

MAGNUS = "WMO-No. 8, Annex 4.B"
HUMIDITY = "humidity ratio, ASHRAE Handbook, Fundamentals"
OPEN_WATER = "evaporation of open water, common practice, no published source"
DISC = "area of a circle, geometry"
LOST = (
    "(25 + 19 × {air_m_per_s}) × {opening_m2} × ({full_kg_per_kg} − {air_kg_per_kg})"
    " × {open_s} ÷ 3600 × 1000"
)


@dataclass(frozen=True, slots=True)
class Air:
    """The air over a can: its temperature, its relative humidity, how fast it moves."""

    air_c: float
    rh_ratio: float
    air_m_per_s: float = 0.0


@dataclass(frozen=True, slots=True)
class DriedOff:
    """At most so much dried off, g."""

    bound_g: float
    working: Working


def dried_off(open_s: float, across_m: float, air: Air) -> DriedOff:
    """Find how much can have dried off an open can at the most.

    The paint is taken as free water up to the rim; under a skin, or deep below the rim, it is less.

    Parameters
    ----------
    open_s
        How long the lid was off, s, 0 to 7 200 000.
    across_m
        The can's inside diameter, m, 0.01 to 1.
    air
        5 to 35 °C, humidity 0.2 to 0.95, moving at 0 to 1 m/s.

    Returns
    -------
        The bound, g, with its working.

    Source: (25 + 19 v) A (xs - x) kg/h for open water, common practice, no published source;
    saturation by the Magnus form of WMO-No. 8, Annex 4.B, at standard pressure.

    >>> round(dried_off(5400.0, 0.085, Air(air_c=18.0, rh_ratio=0.6)).bound_g, 4)
    1.1117
    """
    require("open_s", open_s, *OPEN_S)
    require("across_m", across_m, *ACROSS_M)
    require("air_c", air.air_c, *AIR_C)
    require("rh_ratio", air.rh_ratio, *RH_RATIO)
    require("air_m_per_s", air.air_m_per_s, *AIR_M_PER_S)
    saturated_hpa = 6.112 * exp(17.62 * air.air_c / (243.12 + air.air_c))
    full, there = _humidity(saturated_hpa), _humidity(air.rh_ratio * saturated_hpa)
    area_m2 = pi * across_m**2 / 4
    speed_kg = STILL_KG + MOVING_KG * air.air_m_per_s
    bound_g = speed_kg * area_m2 * (full.value - there.value) * open_s / S_PER_H * G_PER_KG
    disc = step("opening_m2", "π × {across_m}² ÷ 4", area_m2, DISC, across_m=across_m)
    inputs = {"air_m_per_s": air.air_m_per_s, "opening_m2": area_m2, "open_s": open_s}
    inputs |= {"full_kg_per_kg": full.value, "air_kg_per_kg": there.value}
    lost = step("bound_g", LOST, bound_g, OPEN_WATER, **inputs)
    return DriedOff(bound_g, (*_water(air, saturated_hpa, full, there), disc, lost))


def _humidity(vapour_hpa: float) -> Step:
    ratio = WATER_TO_AIR_RATIO * vapour_hpa / (AIR_PA / 100 - vapour_hpa)
    formula = "0.62198 × {vapour_hpa} ÷ (1013.25 − {vapour_hpa})"
    return step("humidity_kg_per_kg", formula, ratio, HUMIDITY, vapour_hpa=vapour_hpa)


def _water(air: Air, saturated_hpa: float, full: Step, there: Step) -> Working:
    formula = "6.112 × exp(17.62 × {air_c} ÷ (243.12 + {air_c}))"
    saturated = step("vapour_hpa", formula, saturated_hpa, MAGNUS, air_c=air.air_c)
    inputs = {"rh_ratio": air.rh_ratio, "saturated_hpa": saturated_hpa}
    vapour_hpa = air.rh_ratio * saturated_hpa
    in_air = step("vapour_hpa", "{rh_ratio} × {saturated_hpa}", vapour_hpa, HUMIDITY, **inputs)
    return saturated, full, in_air, there
