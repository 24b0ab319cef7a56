"""Every figure of a first whole job to 6 digits, and what moves when one input does."""

import json
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from core.paints.recipe import Part
from core.waits.pair import PairWait
from mobile.session.known import Known
from mobile.store.entries import LidOff
from mobile.store.records import Record
from tests.reference.figures import figures
from tests.session import moth_cellar as job

EXPECTED: dict[str, object] = json.loads(
    Path(__file__).with_name("first_whole_job.json").read_text(encoding="utf-8")
)
KNOWN = job.moth_cellar().known
FOUND = figures(KNOWN)


@pytest.mark.parametrize("name", EXPECTED)
def test_a_figure_comes_out_as_it_was_worked_by_hand(name: str) -> None:
    expected = EXPECTED[name]
    if isinstance(expected, list):
        assert FOUND[name] == expected
    else:
        assert FOUND[name] == pytest.approx(expected, rel=1e-6, abs=1e-9)


def test_no_figure_is_found_that_was_not_worked_by_hand() -> None:
    assert set(FOUND) == set(EXPECTED)


def a_door_10_cm_wider(known: Known) -> Record:
    wall = job.wall(known, "Wall 1")
    [door] = wall.shape.openings
    wider = replace(door, width_m=door.width_m + 0.1)
    return replace(wall, shape=replace(wall.shape, openings=(wider,)))


def base_loss_3_more(known: Known) -> Record:
    mix = job.mix(known, "base")
    return replace(mix, loss_ratio=mix.loss_ratio + 0.03)


def one_more_part_of_medium(known: Known) -> Record:
    mix = job.mix(known, "ember wing")
    *others, medium = mix.parts
    return replace(mix, parts=(*others, Part(medium.paint, medium.parts_count + 1)))


def film_to_glaze_an_hour_shorter(known: Known) -> Record:
    assert known.job is not None
    names = {step.id: step.name for step in known.job.steps}

    def shorter(pair: PairWait) -> PairWait:
        if (names[pair.after], names[pair.before]) != ("film", "glaze 1"):
            return pair
        return replace(pair, wait=replace(pair.wait, minimum_s=pair.wait.minimum_s - 3600))

    return replace(known.job, waits=tuple(map(shorter, known.job.waits)))


def moved(change: Callable[[Known], Record]) -> tuple[set[str], dict[str, object]]:
    """Change one input; give the groups of figures that move, and all of them."""
    after = figures(KNOWN.after((change(KNOWN),)))
    names = {name for name in FOUND if after[name] != pytest.approx(FOUND[name], rel=1e-9)}
    groups = {".".join(n.split(".")[: 2 if n.startswith(("buy", "area")) else 1]) for n in names}
    return groups, after


@pytest.mark.parametrize(
    ("change", "groups", "name", "value"),
    [
        (
            a_door_10_cm_wider,
            {
                *("area.W1", "area.total", "base", "split", "clear", "promoter"),
                *("buy.BF", "buy.BS", "buy.CC", "buy.PR"),
            },
            "area.total",
            24.338,
        ),
        (
            base_loss_3_more,
            {"base", "split", "buy.BF", "buy.BS", "buy.total_minor"},
            "base.batch_g",
            9276,
        ),
        (
            one_more_part_of_medium,
            {"G1", "buy.CM", "buy.FO", "buy.FY", "over", "weigh"},
            "over.make.total",
            251.948,
        ),
        (film_to_glaze_an_hour_shorter, {"wait"}, "wait.waits_only_h", 148.0),
    ],
)
def test_one_input_moves_what_it_must_and_nothing_else(
    change: Callable[[Known], Record], groups: set[str], name: str, value: float
) -> None:
    found, after = moved(change)
    assert found - {"buy.total_minor"} == groups - {"buy.total_minor"}
    assert after[name] == pytest.approx(value, rel=1e-5)


def test_drier_air_moves_the_ledger_alone() -> None:
    [lid] = KNOWN.of(LidOff)
    entries = tuple(replace(e, rh_ratio=0.5) if e is lid else e for e in KNOWN.entries)
    after = figures(replace(KNOWN, entries=entries))
    names = {name for name in FOUND if after[name] != pytest.approx(FOUND[name], rel=1e-9)}
    assert names
    assert {name.split(".")[0] for name in names} == {"ledger"}
