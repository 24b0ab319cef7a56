"""Every computed result explains itself: each step's formula, filled in, gives its value."""

import math
import re
from collections.abc import Iterator

import pytest

from core.working import Step, Working, step
from tests.core.test_tables import NAMES, TABLES, rows

# The names that steps have; `words` says them, so a change here is a change there.
STEP_NAMES = {
    *("gross_m2", "opening_m2", "opening_deducted_m2", "deducted_m2", "net_m2"),
    *("density_g_ml", "volume_l", "cup_l", "layer_l", "top_ratio"),
    *("target_g", "band_g", "deficit_g", "reads_g", "over_g", "net_g", "missed_g", "offset_g"),
    *("factor_ratio", "add_g", "total_g", "extra_g", "extra_price"),
    *("planned_ratio", "share_ratio", "lost_g", "lost_price"),
    *("paint_g", "tare_g", "full_ratio", "poured_since_g", "should_be_g", "gap_g", "speak_above_g"),
    *("wft_um", "rate_g_m2", "wall_g", "kept_g", "kit_m2", "kit_g", "need_g", "need_l"),
    *("load_g", "batch_g", "price_per_g", "solids_ratio", "hand_over_s"),
    *("label_ready_at_s", "ready_at_s", "late_at_s", "coated_m2", "u_g", "wanted_l", "holds_l"),
    *("vapour_hpa", "humidity_kg_per_kg", "opening_m2", "bound_g"),
    *("band_ratio", "tint_g", "carrier_g", "use_g", "carrier_left_g", "most_g", "left_ratio"),
    *("kept_ratio", "hidden_g", "error_g", "used_g"),
    *("gone_g", "dried_g", "tools_g", "walls_g"),
}
AS_PYTHON = {"×": "*", "÷": "/", "−": "-", "²": "**2", "³": "**3", "∛": "cbrt", "π": "pi"}
AS_PYTHON |= {"√": "sqrt", "≤": "<=", "⌈": "ceil(", "⌉": ")"}
MATHS = {
    "max": max,
    "min": min,
    "ceil": math.ceil,
    "pi": math.pi,
    "exp": math.exp,
    "sqrt": math.sqrt,
    "cbrt": lambda x: x ** (1 / 3),
    "__builtins__": {},
}


def workings() -> Iterator[Working]:
    """Yield the working of every result that a table asks for."""
    for path in TABLES:
        if path.stem in {"refused", "numbers", "shown"}:
            continue
        for row in rows(path):
            function = row["function"].partition("(")[0]
            result = eval(f"{function}({row['inputs']})", NAMES | {"__builtins__": {}})
            if hasattr(result, "working"):
                yield result.working


STEPS = [line for working in workings() for line in working]


def worked_out(line: Step) -> float:
    """Fill in the formula and let Python work it out."""
    filled = line.formula.format(**{name: repr(value) for name, value in line.inputs})
    for sign, python in AS_PYTHON.items():
        filled = filled.replace(sign, python)
    return float(eval(filled, MATHS))


def test_there_are_workings_of_every_kind() -> None:
    assert {line.name for line in STEPS} == STEP_NAMES - {"top_ratio", "cup_l", "layer_l"}


@pytest.mark.parametrize("name", sorted({line.name for line in STEPS}))
def test_a_step_gives_the_value_that_it_says(name: str) -> None:
    for line in STEPS:
        if line.name == name:
            found = worked_out(line)
            if "≤" in line.formula:
                assert found
                assert line.value == 0
            else:
                assert line.value == pytest.approx(found, rel=1e-9, abs=2e-6)


def test_layers_in_a_cup_are_worked_out_too() -> None:
    call = "levels((Portion('a', 120.0), Portion('b', 60.0)), (1.2, 1.0), Cup({}))"
    for sizes in ("0.068, 0.084, 0.066", "0.1, 0.1, 0.1"):
        result = eval(call.format(sizes), NAMES | {"__builtins__": {}})
        assert {line.name for line in result.working} == {"cup_l", "layer_l", "top_ratio"}
        for line in result.working:
            assert line.value == pytest.approx(worked_out(line), rel=1e-9)


def test_a_formula_uses_its_inputs_and_no_others() -> None:
    for line in STEPS:
        used = set(re.findall(r"{(\w+)}", line.formula))
        assert used == {name for name, _ in line.inputs}
        assert len(line.inputs) == len(dict(line.inputs))


def test_a_step_names_its_source_and_says_finite_figures() -> None:
    for line in STEPS:
        assert line.source
        assert all(math.isfinite(value) for value in (line.value, *dict(line.inputs).values()))
        assert not re.search(r"[A-Za-z]{4,}", re.sub(r"{\w+}", "", line.formula))  # no words


def test_the_last_step_of_a_working_is_the_result() -> None:
    for function, inputs, last in (
        ("painted_area", "Wall(5.62, 2.8, 2.8)", "net_m2"),
        ("next_pour", "Plan((Portion('a', 58.0),)), ()", "reads_g"),
        ("net", "257.7, 56.6", "net_g"),
        ("after", "0.0, Wait(900.0)", "label_ready_at_s"),
    ):
        result = eval(f"{function}({inputs})", NAMES | {"__builtins__": {}})
        assert result.working[-1].name == last


def test_a_step_keeps_its_inputs_in_order() -> None:
    line = step("net_g", "{gross_g} − {tare_g}", 3.0, "definition", gross_g=5.0, tare_g=2.0)
    assert line.inputs == (("gross_g", 5.0), ("tare_g", 2.0))
    assert (line.name, line.value, line.source) == ("net_g", 3.0, "definition")
