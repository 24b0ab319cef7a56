"""Import every module of a built site's archives; this runs inside its Python.

Leaves what failed in `/report`: module -> what it said.
"""

import importlib
import json
import sys
import types
import zipfile

EARLY = ("/lib/python314.zip", "/packages.zip", "/app.zip")
LATE = "/later.zip"  # whatever the start imports must not need it


def modules(archive: str) -> list[str]:
    """Name the modules of an archive."""
    with zipfile.ZipFile(archive) as zipped:
        paths = [name.removesuffix(".pyc") for name in zipped.namelist() if name.endswith(".pyc")]
    return [path.removesuffix("/__init__").replace("/", ".") for path in paths]


def main() -> None:
    """Import one after the other."""
    sys.path += EARLY[1:]
    sys.modules["flet_js"] = types.ModuleType("flet_js")  # the worker gives it
    failed = {}
    for archive in (*EARLY, LATE):
        if archive == LATE:
            sys.path.append(LATE)
        for name in modules(archive):
            try:
                importlib.import_module(name)
            except BaseException as problem:  # noqa: BLE001  the test judges
                failed[name] = f"{type(problem).__name__}: {problem}"
    with open("/report", "w", encoding="utf-8") as report:
        json.dump(failed, report)


if __name__ == "__main__":
    main()
