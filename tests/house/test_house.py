"""What holds for the house as a whole: its rooms, its papers, its fonts, its light core."""

import ast
import doctest
import re
import subprocess
import tomllib
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from core import units
from tests.house.source import ROOT, Source, read

ROOMS = {"README.md", "DEVELOPERS.md", "pyproject.toml", "mobile", "core", "tests", "assets"}
INSIDE_UNITS = {"core/amounts.py", "core/numerals.py", "core/quantities.py"}  # tested through units
FENCE = re.compile(r"^```(?P<kind>\w*)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)
FONTS = sorted((ROOT / "assets" / "fonts").glob("*.woff2"))
SHOWN = ("mobile/words", "mobile/screens", "mobile/parts", "mobile/session")
QUANTITIES = ("width_m", "net_m2", "fill_l", "net_g", "air_c", "wet_um", "wait_s", "density_g_ml")


def blocks(paper: str, kind: str) -> list[str]:
    """Read the code blocks of one kind in a paper."""
    text = (ROOT / paper).read_text(encoding="utf-8")
    return [found["text"] for found in FENCE.finditer(text) if found["kind"] == kind]


def python(*folders: str) -> list[Source]:
    """Read the Python files of some folders."""
    paths = [path for folder in folders for path in sorted((ROOT / folder).rglob("*.py"))]
    assert paths
    return [read(path) for path in paths]


def test_the_house_has_its_seven_rooms_and_no_other() -> None:
    asked = ["git", "ls-files"]
    told = subprocess.run(asked, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    top = {name.partition("/")[0] for name in told.splitlines()}
    assert {name for name in top if not name.startswith(".")} == ROOMS


def test_readme_has_its_two_commands() -> None:
    run, check = blocks("README.md", "sh")[:2]
    for command in (run, check):
        assert command.startswith("python3 -m venv .venv && .venv/bin/python -m pip install")
        assert len(command.splitlines()) == 1
    assert run.rstrip().endswith("-m mobile")
    assert check.rstrip().endswith("-m tests --all")


@pytest.mark.parametrize("paper", ["README.md", "DEVELOPERS.md"])
def test_commands_in_the_papers_name_what_is_there(paper: str) -> None:
    text = "\n".join([*blocks(paper, "sh"), *re.findall(r"`([^`\n]+)`", read(ROOT / paper).text)])
    modules = re.findall(r"python3? -m ([\w.]+)", text)
    assert modules
    known = {"venv", "pip", "pytest"}
    for module in set(modules) - known:
        place = ROOT / module.replace(".", "/")
        assert place.with_suffix(".py").is_file() or (place / "__main__.py").is_file(), module


@pytest.mark.parametrize("paper", ["README.md", "DEVELOPERS.md"])
def test_paths_in_the_papers_are_there(paper: str) -> None:
    names = re.findall(r"`((?:core|mobile|tests|assets|\.ci)/[\w./-]*)`", read(ROOT / paper).text)
    lost = [name for name in names if not (ROOT / name).exists()]
    assert not lost, lost


@pytest.mark.parametrize("paper", ["README.md", "DEVELOPERS.md"])
def test_python_in_the_papers_runs(paper: str) -> None:
    for text in blocks(paper, "python"):
        if ">>>" not in text:
            ast.parse(text)
    found = doctest.testfile(str(ROOT / paper), module_relative=False, verbose=False)
    assert not found.failed


@pytest.mark.parametrize("font", FONTS, ids=[font.stem for font in FONTS])
def test_every_glyph_that_is_shown_is_in_the_font(font: Path) -> None:
    with TTFont(font) as opened:
        known = set(opened.getBestCmap())
    assert len(known) > 200
    lost = {
        f"{source.path}: {sign!r} in {text!r}"
        for source in python(*SHOWN)
        for _, text in source.strings
        for sign in text
        if ord(sign) not in known and sign.isprintable()
    }
    assert not lost, "\n".join(sorted(lost))


@pytest.mark.parametrize("font", FONTS, ids=[font.stem for font in FONTS])
def test_every_figure_that_core_shows_is_in_the_font(font: Path) -> None:
    with TTFont(font) as opened:
        known = set(opened.getBestCmap())
    values = (0.0, 0.05, 0.37, 1.0, 3.81, 12.34, 400.0, 5400.0, 123456.7)
    said = "".join(
        units.show(name, value, system)
        + units.unit_of(name, system)
        + units.typed(name, value, system)
        for name in (*QUANTITIES, "share_ratio", "parts_count")
        for value in values
        for system in units.System
    )
    assert len(set(said)) > 20
    assert {sign for sign in said if ord(sign) not in known} == set()


def test_the_fonts_are_there_in_three_weights() -> None:
    assert [font.stem.rpartition("-")[2] for font in FONTS] == ["400", "500", "600"]


def test_every_public_function_of_core_is_in_a_test() -> None:
    tested = "\n".join(path.read_text("utf-8") for path in (ROOT / "tests/core").rglob("*.*sv"))
    tested += "\n".join(source.text for source in python("tests/core"))
    lost = [
        f"{source.path}: {node.name}"
        for source in python("core")
        if source.path not in INSIDE_UNITS
        for node in source.tree.body
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
        if not re.search(rf"\b{node.name}\b", tested)
    ]
    assert not lost, "\n".join(lost)


def test_the_limits_of_the_linter_stand() -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    lint = settings["tool"]["ruff"]["lint"]
    assert lint["pylint"] == {"max-args": 5, "max-statements": 25, "max-returns": 4}
    assert lint["mccabe"]["max-complexity"] == 8
    assert {"D", "PL", "C90", "ANN", "DTZ"} <= set(lint["select"])
    assert settings["tool"]["mypy"]["strict"] is True
    assert settings["tool"]["pytest"]["ini_options"]["filterwarnings"] == ["error"]
