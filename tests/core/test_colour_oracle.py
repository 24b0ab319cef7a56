"""Colour against a general-purpose library: sRGB of IEC 61966-2-1, CIELAB of CIE 15."""

import random

import pytest

coloraide = pytest.importorskip("coloraide")

from core.colours.look import difference_de, lab_of, light_of, look_of  # noqa: E402

SAME = 2e-2  # the four-digit matrix of IEC 61966-2-1 against one of full length


def looks() -> list[str]:
    chance = random.Random(1)
    return [f"#{chance.randrange(1 << 24):06x}" for _ in range(300)]


@pytest.mark.parametrize("look", looks()[:60])
def test_the_light_of_a_look(look: str) -> None:
    other = coloraide.Color(look).convert("srgb-linear")
    assert light_of(look) == pytest.approx(tuple(other.coords()), abs=1e-6)


@pytest.mark.parametrize("look", looks()[:60])
def test_its_place_in_cielab(look: str) -> None:
    found, other = lab_of(light_of(look)), coloraide.Color(look).convert("lab-d65").coords()
    assert found == pytest.approx(other, abs=SAME)


def test_how_far_two_looks_are_apart() -> None:
    several = looks()
    for one, two in zip(several[::2], several[1::2], strict=True):
        found = difference_de(lab_of(light_of(one)), lab_of(light_of(two)))
        other = coloraide.Color(one).delta_e(two, method="76", space="lab-d65")
        assert found == pytest.approx(other, abs=2 * SAME)


def test_a_look_comes_back_from_its_light() -> None:
    assert all(look_of(light_of(look)) == look for look in looks())
