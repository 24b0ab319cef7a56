"""The site of a tab that has a book and no app, put together from what is installed."""

import shutil
import zipfile
from pathlib import Path

import flet_web  # type: ignore[import-untyped]
import tinydb

HERE = Path(__file__).parent
ROOT = Path(__file__).parents[3]
OURS = ("core", "mobile/__init__.py", "mobile/store", "tests/__init__.py", "tests/store")


def assemble(folder: Path) -> Path:
    """Put the page, its worker, Python and the store into a folder."""
    folder.mkdir(parents=True)
    for name in ("index.html", "page.js", "worker.js"):
        shutil.copy(HERE / name, folder)
    shutil.copytree(Path(flet_web.get_package_web_dir()) / "pyodide", folder / "pyodide")
    with zipfile.ZipFile(folder / "app.zip", "w") as archive:
        for part in OURS:
            _add(archive, ROOT / part, ROOT)
        package = Path(tinydb.__file__).parent
        _add(archive, package, package.parent)
    return folder


def _add(archive: zipfile.ZipFile, part: Path, root: Path) -> None:
    files = [part] if part.is_file() else sorted(part.rglob("*.py"))
    for path in files:
        archive.write(path, path.relative_to(root))
