"""Core's own tests pass in the Python of the built app: its interpreter, library and bytecode."""

import io
import json
import re
import subprocess
import sys
import zipfile
from collections.abc import Iterator
from importlib.metadata import version
from pathlib import Path

import pytest

from mobile.pwa import packages

ROOT = Path(__file__).parents[2]
HERE = Path(__file__).parent / "inside"
TOOLS = ("pytest", "hypothesis")
PHONE = ("pyemscripten_2026_0_wasm32", "any")


def not_there() -> tuple[str, ...]:
    """Name the tests that can't be on a phone: they read sources, or ask libraries like SciPy."""
    tests = sorted((ROOT / "tests/core").glob("test_*.py"))
    asking = [path for path in tests if "importorskip(" in path.read_text(encoding="utf-8")]
    return ("tests/core/test_import.py", *(path.relative_to(ROOT).as_posix() for path in asking))


def wheels() -> list[Path]:
    """Bring the test tools for the phone's Python, once for each release that is installed here."""
    asked = [f"{tool}=={version(tool)}" for tool in TOOLS]
    folder = ROOT / ".build" / "wheels" / "-".join(asked).replace("==", "-")
    if not list(folder.glob("*.whl")):
        platforms = [word for name in PHONE for word in ("--platform", name)]
        command = [sys.executable, "-m", "pip", "download", "--quiet", "--dest", str(folder)]
        command += [*platforms, "--python-version", "3.14", "--only-binary=:all:", *asked]
        subprocess.run(command, check=True, timeout=300, capture_output=True)
    return sorted(folder.glob("*.whl"))


def files() -> Iterator[tuple[str, bytes]]:
    """Lay out the tools and the tests, as the phone's Python shall find them."""
    for wheel in wheels():
        with zipfile.ZipFile(wheel) as zipped:
            for name in zipped.namelist():
                if not name.endswith("/"):
                    yield f"tools/{name}", zipped.read(name)
    for path in (*(ROOT / "tests/core").rglob("*"), *(ROOT / "tests").glob("*.py")):
        if path.is_file() and path.suffix in {".py", ".csv", ".json"}:
            yield f"house/{path.relative_to(ROOT).as_posix()}", path.read_bytes()
    yield "house/not_there.txt", "\n".join(not_there()).encode()
    yield "house/pytest.ini", b"[pytest]\nfilterwarnings = error\n"


def given() -> bytes:
    """Zip them."""
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w") as zipped:
        for name, data in files():
            zipped.writestr(name, data)
    return whole.getvalue()


def collected_here() -> set[str]:
    """Name the tests that this machine's Python finds in `tests/core`."""
    command = [sys.executable, "-m", "pytest", "tests/core", "--collect-only", "-p", "no:randomly"]
    told = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    found = set(re.findall(r"^tests/core/\S+::.*$", told, re.MULTILINE))
    return {name for name in found if not name.startswith(not_there())}


@pytest.mark.timeout(900)
def test_core_passes_its_tests_in_the_built_apps_python(built: Path, tmp_path: Path) -> None:
    here = collected_here()
    whole = packages.client().folder / "pyodide" / "python_stdlib.zip"
    (tmp_path / "given.zip").write_bytes(given())
    report = tmp_path / "report.json"
    ways = [built, whole, tmp_path / "given.zip", HERE / "core_tests.py", report]
    done = subprocess.run(
        [packages.node(), HERE / "run.mjs", *ways],
        capture_output=True,
        text=True,
        timeout=800,
        check=False,
    )
    assert report.exists(), f"{done.stdout[-4000:]}\n{done.stderr[-4000:]}"
    told = json.loads(report.read_text(encoding="utf-8"))
    assert told["others"] == [], "\n".join(told["others"])
    assert told["ended"] == 0, done.stdout[-4000:]
    assert told["core"].startswith("/app.zip/core/")
    assert told["pint"].startswith("/packages.zip/pint/")
    assert told["python"].startswith("3.14.")
    assert set(told["passed"]) == here
