"""What importing core costs, and that it works with its docstrings and asserts dropped."""

import ast
import inspect
import json
import subprocess
import sys
from importlib import import_module
from pathlib import Path
from types import FunctionType

import pytest

from tests.core.test_tables import TABLES, result_of, rows

ROOT = Path(__file__).parents[2]
MODULES = sorted(
    ".".join(path.relative_to(ROOT).with_suffix("").parts)
    for path in (ROOT / "core").rglob("*.py")
    if path.stem != "__init__"
)
# What Python's own `dataclasses`, `enum`, `re` and `fractions` bring along, and nothing else.
HEAVY = {
    *("pint", "flet", "tinydb", "asyncio", "json", "random", "logging", "datetime", "unicodedata"),
    *("subprocess", "socket", "statistics", "tempfile", "urllib", "js", "pyodide"),
}
# Take any text, number or shape: nothing is out of their range.
TAKE_ANYTHING = {
    *("tidied", "value", "decimal", "trimmed", "significant", "amounts", "feet", "hours"),
    *("kind_of", "unit_of", "warm", "step", "coats_left", "coats_before", "waits_before"),
    *("kept_waits", "absorption_ratio", "look_of", "lab_of", "difference_de"),
}
needs_processes = pytest.mark.skipif(sys.platform == "emscripten", reason="has no processes")


def in_a_new_python(*arguments: str) -> str:
    """Run Python afresh from the project's folder and give back what it prints."""
    command = [sys.executable, *arguments]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, timeout=60, check=True)
    return done.stdout


def public_functions() -> dict[str, FunctionType]:
    """Find every function that others may call, by name."""
    return {
        name: thing
        for module in MODULES
        for name, thing in vars(import_module(module)).items()
        if isinstance(thing, FunctionType)
        and thing.__module__ == module
        and not name.startswith("_")
    } | {
        name: thing.__wrapped__
        for module in MODULES
        for name, thing in vars(import_module(module)).items()
        if hasattr(thing, "__wrapped__") and not name.startswith("_")
    }


@needs_processes
def test_importing_core_loads_nothing_heavy() -> None:
    code = f"import sys, {', '.join(MODULES)}; print(*sys.modules)"
    loaded = {name.partition(".")[0] for name in in_a_new_python("-S", "-c", code).split()}
    bare = {
        name.partition(".")[0]
        for name in in_a_new_python(
            "-S", "-c", "import sys, dataclasses, enum, re, fractions, typing; print(*sys.modules)"
        ).split()
    }
    assert not loaded & HEAVY
    assert loaded - bare == {"core"}


@needs_processes
def test_plain_metric_numbers_do_not_load_pint() -> None:
    code = (
        "import sys; from core.units import *; "
        "[read(n, t) for n, t in (('width_m', '3,5'), ('net_g', '12.4 g'), ('wait_s', '1 h 30'),"
        " ('loss_ratio', '12 %'), ('air_c', '18 °C'), ('area_m2', '14 m²'), ('label_l', '2 l'))];"
        "[(show(n, 12.4), typed(n, 12.4)) for n in ('width_m', 'net_g', 'wait_s', 'air_c')];"
        "print('pint' in sys.modules); read('width_m', '12 ft'); print('pint' in sys.modules)"
    )
    assert in_a_new_python("-c", code).split() == ["False", "True"]


@needs_processes
def test_core_gives_the_same_without_docstrings_and_asserts() -> None:
    code = (
        "import json; from tests.core import test_tables as t; "
        "print(json.dumps([repr(t.result_of(r)) for p in t.TABLES if p.stem != 'refused'"
        " for r in t.rows(p) if r['expected'] != 'Refused']))"
    )
    stripped = json.loads(in_a_new_python("-OO", "-W", "ignore", "-c", code))
    whole = [
        repr(result_of(row))
        for path in TABLES
        if path.stem != "refused"
        for row in rows(path)
        if row["expected"] != "Refused"
    ]
    assert stripped == whole


@pytest.mark.parametrize("module", MODULES)
def test_a_module_has_neither_assert_nor_use_for_its_docstrings(module: str) -> None:
    tree = ast.parse(inspect.getsource(import_module(module)))
    asked = {node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
    assert not any(isinstance(node, ast.Assert) for node in ast.walk(tree))
    assert "__doc__" not in asked


@pytest.mark.skipif(sys.flags.optimize > 1, reason="docstrings are dropped")
@pytest.mark.parametrize("name", sorted(public_functions()))
def test_a_public_function_shows_how_it_is_called(name: str) -> None:
    text = inspect.getdoc(public_functions()[name])
    assert text
    assert ">>> " in text
    assert f"{name}(" in text


def test_every_public_function_is_asked_for_something_out_of_its_range() -> None:
    table = next(path for path in TABLES if path.stem == "refused")
    asked = {row["function"].partition("(")[0] for row in rows(table)}
    assert asked | TAKE_ANYTHING == set(public_functions())
    assert not asked & TAKE_ANYTHING
