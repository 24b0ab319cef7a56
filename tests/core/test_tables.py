"""Every row of the tables: published values, the reference job, forms of writing, refusals.

A row calls `function` with `inputs` and compares what `expected` says, within `tolerance`; both
are Python. `source` says who else says so; the reference job was worked by hand for this project.
"""

import csv
from math import inf, nan
from pathlib import Path

import pytest

from core.cans.buying import basket
from core.cans.drying import Air, dried_off
from core.cans.ledger import balance, doubt, gap, speak_above
from core.cans.price import Size, require_sizes, worth
from core.cans.weighing import fill, net, tare_from_unopened, volume
from core.coats.need import Coats, HoldUp, Kit, Patch, need, require_coats
from core.coats.places import Coat, Place, coats_before, coats_left, coats_of, waits_before
from core.coats.rate import goes_over_m2, rate_of_film, rate_of_spreading
from core.coats.schedule import PlannedStep, kept_waits, require_schedule
from core.colours.look import difference_de, lab_of, light_of, look_of
from core.colours.mixture import (
    Looks,
    absorption_ratio,
    day_light,
    lamp_light,
    looks_of,
    mixed,
    reflected_ratio,
)
from core.errors import Refused, require
from core.mixing.account import Used, account
from core.mixing.band import bands
from core.mixing.check_weight import scale_error, suffers
from core.mixing.correct import Lack, correct
from core.mixing.cups import cups_g, more_of_it
from core.mixing.least import batch_for_g, least_part_g, let_down
from core.mixing.limit import limit, most_in_cup_g
from core.mixing.loads import loads
from core.mixing.over_pour import answers
from core.mixing.plan import Plan, Pour, band_of_g, each_in_cup_g, since_tare_g, targets_g
from core.mixing.portions import Portion, portions, pouring_order, small_below_g
from core.mixing.pot import Cup, contents, holds_l, level_ratio, levels, total_g
from core.mixing.restart import offset_after_restart
from core.mixing.scale import band_g, on_step_g, shown_g, steps_count
from core.mixing.spill import reads_below, spilt
from core.mixing.stray import stray
from core.mixing.use_up import use_up
from core.mixing.weigh_out import next_pour, over, poured_g
from core.paints.blend import blend, solids
from core.paints.recipe import Part, require_recipe, shares
from core.units import System, number, read, show, typed, unit_of
from core.waits.hand_over import Task, hand_over
from core.waits.pair import PairWait, Wait, after, require_wait, state, strictest
from core.walls.area import painted_area
from core.walls.shape import Opening, Wall

NAMES = {
    thing.__name__: thing
    for thing in (
        require_wait,
        *(Opening, Part, Plan, PlannedStep, Portion, Pour, Cup, Wait, Wall, System, Refused),
        *(painted_area, shares, require_recipe, blend, portions, pouring_order, small_below_g),
        *(steps_count, on_step_g, shown_g, band_g, next_pour, poured_g, over),
        *(offset_after_restart, answers, contents, total_g, holds_l, level_ratio, levels),
        *(tare_from_unopened, net, volume, fill, balance, gap, doubt, speak_above, after, state),
        *(strictest, kept_waits, require_schedule, read, show, number, typed, unit_of, require),
        *(Coats, HoldUp, Kit, Patch, PairWait, Size, Task, Coat, Place, Air, tuple),
        *(
            need,
            require_coats,
            each_in_cup_g,
            since_tare_g,
            targets_g,
            loads,
            worth,
            require_sizes,
            solids,
        ),
        *(goes_over_m2, rate_of_film, rate_of_spreading, hand_over, basket, dried_off),
        *(coats_of, coats_left, coats_before, waits_before, frozenset),
        *(
            light_of,
            look_of,
            lab_of,
            difference_de,
            Looks,
            bands,
            Lack,
            correct,
            spilt,
            stray,
            reads_below,
        ),
        *(
            day_light,
            lamp_light,
            absorption_ratio,
            reflected_ratio,
            least_part_g,
            batch_for_g,
            let_down,
        ),
        *(
            Used,
            account,
            looks_of,
            mixed,
            use_up,
            band_of_g,
            limit,
            scale_error,
            suffers,
            cups_g,
            more_of_it,
        ),
        *(most_in_cup_g, str, range, list),
    )
} | {"nan": nan, "inf": inf}
TABLES = sorted(Path(__file__).with_name("tables").glob("*.csv"))
COLUMNS = ["case", "function", "inputs", "expected", "tolerance", "source"]

Row = dict[str, str]


def rows(path: Path) -> list[Row]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def cases(refusals: bool) -> list[object]:
    return [
        pytest.param(row, id=f"{path.stem}: {row['case']}")
        for path in TABLES
        if (path.stem == "refused") is refusals
        for row in rows(path)
    ]


def result_of(row: Row) -> object:
    """Call the function, then follow the dots after its brackets."""
    call = row["function"].replace("()", f"({row['inputs']})", 1)
    return eval(call, NAMES | {"__builtins__": {}})


def figures(value: object) -> object:
    """Leave the figures of portions, which is what a table can say."""
    if isinstance(value, tuple):
        return tuple(figures(one) for one in value)
    return value.net_g if isinstance(value, Portion) else value


@pytest.mark.parametrize("row", cases(refusals=False))
def test_a_row_comes_out_as_its_source_says(row: Row) -> None:
    expected = eval(row["expected"], NAMES | {"__builtins__": {}})
    if expected is Refused:
        with pytest.raises(Refused):
            result_of(row)
        return
    found = figures(result_of(row))
    if isinstance(expected, str) or expected is None:
        assert found == expected
    else:
        assert found == pytest.approx(expected, rel=0, abs=float(row["tolerance"]))


@pytest.mark.parametrize("row", cases(refusals=True))
def test_what_is_out_of_range_is_refused_with_its_name(row: Row) -> None:
    with pytest.raises(Refused) as refusal:
        result_of(row)
    facts = refusal.value
    assert facts.name == eval(row["expected"])
    if isinstance(facts.value, float):
        assert not facts.low <= facts.value <= facts.high


@pytest.mark.parametrize("path", TABLES, ids=lambda path: path.stem)
def test_a_table_is_whole(path: Path) -> None:
    found = rows(path)
    assert found
    assert all(list(row) == COLUMNS for row in found)
    assert all(all(row[column] for column in COLUMNS if column != "inputs") for row in found)
    assert len({row["case"] for row in found}) == len(found)


def test_the_number_parser_is_held_to_sixty_forms() -> None:
    path = next(path for path in TABLES if path.stem == "numbers")
    assert len({row["inputs"] for row in rows(path)}) >= 60
