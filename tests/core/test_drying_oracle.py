"""Humidity and evaporation against a library of the ASHRAE Handbook's formulas (psychrolib)."""

import pytest

psychrolib = pytest.importorskip("psychrolib")

from core.cans.drying import Air, dried_off  # noqa: E402

AIR_PA = 101325.0


@pytest.mark.parametrize("air_c", [5.0, 12.0, 18.0, 23.0, 30.0, 35.0])
@pytest.mark.parametrize("rh_ratio", [0.2, 0.5, 0.6, 0.8, 0.95])
def test_open_water_loses_what_the_handbooks_humidities_say(air_c: float, rh_ratio: float) -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)
    full = psychrolib.GetHumRatioFromRelHum(air_c, 1.0, AIR_PA)
    there = psychrolib.GetHumRatioFromRelHum(air_c, rh_ratio, AIR_PA)
    # (25 + 19 v) A (xs - x), common practice, no published source: a cup 80 mm across, one hour
    area_m2 = 3.14159265358979 * 0.08**2 / 4
    expected_g = 25 * area_m2 * (full - there) * 1000
    found = dried_off(3600.0, 0.08, Air(air_c, rh_ratio)).bound_g
    assert found == pytest.approx(expected_g, rel=0.006)  # the Magnus form is good to 0.6 %
