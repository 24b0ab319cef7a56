"""The Python of the site: standard library, packages and app as bytecode in stored archives."""

import io
import subprocess
import tempfile
import zipfile
from pathlib import Path

from mobile.pwa import packages
from mobile.pwa.packages import Client, Unfit

HERE = Path(__file__).parent
EPOCH = (1980, 1, 1, 0, 0, 0)  # the first date that a zip can hold: the same inputs, the same bytes
PATIENCE_S = 600

ICONS = "flet/controls/material/icons.pyc"
ICONS_MEND = "Draw the icon as mobile/parts/icons.py does."

ROOTS = (
    "mobile.main",
    "mobile.device.*",
    "core.*",
    # asked for by name, in making a calendar
    "_sysconfigdata__emscripten_wasm32-emscripten",
    "tzdata.zoneinfo",
    # what Pyodide itself imports as it starts, and what its C code asks for by name
    "pyodide.*",
    "_pyodide.*",
    "asyncio",
    "importlib.abc",
    "site",
    "_strptime",
    "annotationlib",
    "collections.abc",
    "copyreg",
    "encodings.aliases",
    "encodings.ascii",
    "encodings.cp437",
    "encodings.idna",
    "encodings.latin_1",
    "encodings.utf_8",
    "encodings.utf_8_sig",
    "io",
    "locale",
    "numbers",
    "traceback",
    "typing",
    "warnings",
)

LEFT_OUT = (
    # other machines' event loops, processes, sockets and folders: a browser has none of them
    "asyncio.proactor_events",
    "asyncio.windows_events",
    "asyncio.windows_utils",
    "concurrent.futures.interpreter",
    "concurrent.futures.process",
    "concurrent.interpreters.*",
    "ctypes.*",
    "ftplib",
    "http.cookiejar",
    "http.server",
    "multiprocessing.*",
    "socketserver",
    "webbrowser",
    "xmlrpc.*",
    "platformdirs.android",
    "platformdirs.ios",
    "platformdirs.macos",
    "platformdirs.windows",
    "flet.messaging.flet_dart_bridge_server",
    "flet.messaging.flet_socket_server",
    # tools of developers and command lines
    "_pyrepl.*",
    "argparse",
    "bdb",
    "cmd",
    "difflib",
    "doctest",
    "getopt",
    "gettext",
    "pdb",
    "py_compile",
    "pydoc",
    "pydoc_data.*",
    "pyodide.console",
    "rlcompleter",
    "tracemalloc",
    "unittest.*",
    "flet.testing.*",
    # signing in, and formats that nothing here reads or writes
    "flet.auth.providers.*",
    "plistlib",
    "statistics",
    "tarfile",
    "xml.*",
    "pint.matplotlib",
    "dateutil.parser.*",
    "dateutil.tz.win",
    "icalendar.timezone.pytz",
    # pictures of codes: the app draws its own
    "qrcode.image.pil",
    "qrcode.image.styledpil",
    "qrcode.image.styles.colormasks",
    "qrcode.image.styles.moduledrawers.pil",
    "qrcode.image.styles.moduledrawers.svg",
    # stands in for a C module that is there
    "_pydatetime",
)
"""Modules that imports name and that nothing here ever runs; a test imports all the others."""

ALONG = ("_sysconfigdata", "sysconfig/", "zoneinfo/")
"""Paths of the standard library that only what comes later asks for: they come with it."""


def archives(client: Client, app: dict[str, bytes]) -> dict[str, bytes]:
    """Make the archives of the browser's Python: `library`, `packages`, `app`, and `later`.

    Parameters
    ----------
    client : Client
        Flet's web client with its Pyodide.
    app : dict of str to bytes
        Sources of `core` and `mobile` by path.

    Returns
    -------
    dict of str to bytes
        Archive name -> bytes: stored, names sorted, dates fixed, only what the app can reach.
    """
    given = {"library": library(client), "app": app}
    for archive, names in (("packages", packages.SHIPPED), ("later", packages.LATER)):
        given[archive] = {}
        for package in names:
            given[archive] |= packages.sources(package)
    made = compiled(client, given)
    for path in [path for path in made["library"] if path.startswith(ALONG)]:
        made["later"][path] = made["library"].pop(path)
    if ICONS in made["packages"]:
        raise Unfit("The app uses ft.Icons, and the site has no font for them.", ICONS_MEND)
    for name, files in made.items():  # data belongs to the module of its name; the app's all goes
        data = {path: text for path, text in given[name].items() if not path.endswith(".py")}
        own = name == "app"
        kept = {path for path in data if own or f"{path[:-5]}.pyc" in files} | {packages.UTC}
        files |= {path: text for path, text in data.items() if path in kept}
    return {f"{name}.zip": stored(files) for name, files in sorted(made.items())}


def library(client: Client) -> dict[str, bytes]:
    """Read the sources of the standard library that Pyodide brings."""
    try:
        with zipfile.ZipFile(io.BytesIO(client.read("pyodide/python_stdlib.zip"))) as zipped:
            files = {name: zipped.read(name) for name in zipped.namelist() if name.endswith(".py")}
    except zipfile.BadZipFile as problem:
        raise Unfit(f"flet-web {client.release}: python_stdlib.zip: {problem}.") from problem
    if "os.py" not in files or "pyodide/__init__.py" not in files:
        raise Unfit(f"flet-web {client.release}: python_stdlib.zip holds no os.py or no pyodide.")
    return files


def compiled(client: Client, given: dict[str, dict[str, bytes]]) -> dict[str, dict[str, bytes]]:
    """Compile what the app can reach, in the Python that the site ships."""
    every = {
        f"{archive}/{path}": text
        for archive, files in given.items()
        for path, text in files.items()
        if path.endswith(".py")
    }
    every |= {"roots.txt": "\n".join(ROOTS).encode(), "left_out.txt": "\n".join(LEFT_OUT).encode()}
    answer = ran(client, "compile.py", stored(every))
    made: dict[str, dict[str, bytes]] = {archive: {} for archive in given}
    with zipfile.ZipFile(io.BytesIO(answer)) as zipped:
        for name in zipped.namelist():
            archive, _, path = name.partition("/")
            made[archive][path] = zipped.read(name)
    return made


def ran(client: Client, script: str, given: bytes) -> bytes:
    """Run a script of `inside/` in Pyodide under Node; return what it leaves."""
    with tempfile.TemporaryDirectory(prefix="duskcoat-") as name:
        before, after = Path(name) / "input", Path(name) / "output"
        before.write_bytes(given)
        inside = HERE / "inside"
        command = [packages.node(), inside / "run.mjs", client.folder / "pyodide"]
        done = subprocess.run(
            [*command, inside / script, before, after],
            capture_output=True,
            text=True,
            timeout=PATIENCE_S,
            check=False,
        )
        if done.returncode or not after.exists():
            raise Unfit(f"The shipped Python could not run {script}:\n{done.stderr[-2000:]}")
        return after.read_bytes()


def stored(files: dict[str, bytes]) -> bytes:
    """Zip files without compression (hosts compress), the same files to the same bytes."""
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w", zipfile.ZIP_STORED) as zipped:
        for path, data in sorted(files.items()):
            zipped.writestr(zipfile.ZipInfo(path, EPOCH), data)
    return whole.getvalue()
