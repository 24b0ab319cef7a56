"""Whatever the site ships can be imported in its Python: nothing that is needed is left out."""

import json
import subprocess
from pathlib import Path

import pytest

from mobile.pwa import packages
from tests.pwa.conftest import ROOT, Files, laid

RUN = ROOT / "tests" / "browser" / "inside" / "run.mjs"


@pytest.mark.timeout(300)
def test_every_module_of_the_site_can_be_imported_in_its_python(
    files: Files, tmp_path: Path
) -> None:
    folder, report = laid(tmp_path / "site", files), tmp_path / "report.json"
    script = Path(__file__).parent / "inside" / "import_all.py"
    given = folder / "python" / "app.zip"  # the driver wants a zip more than this needs
    done = subprocess.run(
        [packages.node(), RUN, folder, given, given, script, report],
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )
    assert report.exists(), done.stderr[-2000:]
    assert json.loads(report.read_text("utf-8")) == {}
