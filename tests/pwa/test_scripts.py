"""The page's scripts under Node: tests beside them in `scripts/`, and a look at their form."""

import subprocess
from pathlib import Path

import pytest

from mobile.pwa import packages, page

HERE = Path(__file__).parent / "scripts"
SCRIPTS = sorted((*page.WEB.rglob("*.js"), page.WEB.parent / "inside" / "run.mjs"))


@pytest.mark.parametrize("path", sorted(HERE.glob("*.test.mjs")), ids=lambda path: path.stem)
def test_a_script_does_what_it_says(path: Path) -> None:
    done = subprocess.run(
        [packages.node(), "--test", path], capture_output=True, text=True, timeout=100, check=False
    )
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-2000:]


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_a_script_can_be_read_and_begins_with_its_purpose(path: Path) -> None:
    assert path.read_text("utf-8").startswith("// ")
    kind = "commonjs" if path.name in {"lost.js", "old.js", "sw.js"} else "module"
    done = subprocess.run(
        [packages.node(), f"--input-type={kind}", "--check"],
        input=path.read_text("utf-8"),
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
