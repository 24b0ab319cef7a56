"""The gauge, as laws: target, band and reading are in its window, and nothing is below zero."""

import flet.canvas as cv
from hypothesis import assume, given
from hypothesis import strategies as st

from mobile.parts.gauge import TICKS_MOST, WINDOW_G, Reading, step_g, tick_shapes, window


@given(st.floats(0.5, 5000), st.floats(-200, 200))
def test_the_gauge_shows_target_band_and_reading(target: float, off: float) -> None:
    assume(target + off >= 0)
    band = max(0.1, target / 100)
    reading = Reading(target, target - band, target + band, target + off, "#FF0000", "")
    begins, ends = window(reading)
    assert ends - begins >= WINDOW_G
    assert begins <= target + off <= ends
    assert begins <= target + band <= ends
    assert (ends - begins) / step_g(begins, ends) <= TICKS_MOST


@given(st.floats(0.5, 5000), st.floats(0, 9000))
def test_the_gauge_never_goes_below_zero(target: float, reads: float) -> None:
    reading = Reading(target, target * 0.99, target * 1.01, reads, "#FF0000", "")
    assert window(reading)[0] >= 0


def test_the_gauge_s_figures_have_the_sign_of_the_reading() -> None:
    reading = Reading(58.0, 57.4, 58.6, 258.0, "#FF0000", "58.0", "\u2212")
    shapes = tick_shapes(reading, 380.0, window(reading))
    said = {one.value for one in shapes if isinstance(one, cv.Text)}
    assert "\u221258.0" in said
    assert all(one.startswith("\u2212") or one == "0" for one in said if one)


def test_the_gauge_of_the_design_is_15_g_wide() -> None:
    begins, ends = window(Reading(77.3, 76.7, 77.9, 81.9, "#FF7F1F", "77.3"))
    assert (begins, ends) == (70, 85)
    assert step_g(begins, ends) == 1
