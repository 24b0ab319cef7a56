"""Run core's tests in the built app's own Python; this runs inside it.

The app's archives come first, so that `core` is the bytecode that a phone runs. What pytest needs
of the standard library and the site has left out is found last, in the whole library.
"""

import importlib
import json
import sys
import zipfile
import zipimport
from importlib.machinery import ModuleSpec

TOOLS, HOUSE, WHOLE = "/tools", "/house", "/stdlib.zip"


class LeftOut:
    """Find modules that the site has left out of the standard library."""

    @staticmethod
    def find_spec(name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        """Look into the whole library, below the folder of the module's package."""
        folder = name.rpartition(".")[0].replace(".", "/")
        place = f"{WHOLE}/{folder}" if folder else WHOLE
        return zipimport.zipimporter(place).find_spec(name)


class Count:
    """Count what passed, and keep what did not."""

    def __init__(self) -> None:
        self.passed: list[str] = []
        self.others: list[str] = []

    def pytest_runtest_logreport(self, report) -> None:  # type: ignore[no-untyped-def]
        """Note the outcome of a test."""
        if report.when == "call" and report.passed:
            self.passed.append(report.nodeid)
        elif not report.passed:
            self.others.append(f"{report.nodeid}: {report.outcome}\n{report.longrepr}")


def main() -> None:
    """Lay the tools and the tests out, run, and leave the report."""
    with zipfile.ZipFile("/given.zip") as given:
        given.extractall("/")
    sys.path += ["/packages.zip", "/app.zip", TOOLS, HOUSE]
    sys.meta_path.append(LeftOut)
    pytest = importlib.import_module("pytest")
    count = Count()
    asked = ["-q", "-p", "no:cacheprovider", "--rootdir", HOUSE, "-c", f"{HOUSE}/pytest.ini"]
    with open(f"{HOUSE}/not_there.txt", encoding="utf-8") as names:
        asked += [f"--ignore={HOUSE}/{name}" for name in names.read().split()]
    ended = pytest.main([*asked, f"{HOUSE}/tests/core"], plugins=[count])
    core = importlib.import_module("core.units")
    told = {
        "ended": int(ended),
        "passed": count.passed,
        "others": count.others,
        "core": str(core.__file__),
        "python": sys.version,
        "pint": "pint" in sys.modules and str(sys.modules["pint"].__file__),
    }
    with open("/report", "w", encoding="utf-8") as report:
        json.dump(told, report)


if __name__ == "__main__":
    main()
