"""What the generator makes: the same bytes each time, nothing foreign, nothing missing."""

import hashlib
import io
import json
import os
import re
import subprocess
import sys
import zipfile
from pathlib import Path
from typing import Any

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

from mobile import theme
from mobile.pwa import bytecode, packages, page, site
from mobile.pwa.packages import Unfit
from tests.pwa.conftest import ROOT, Files, checkout, laid
from tests.pwa.make_icons import CUT, SIGNS, WHOLE

ARCHIVES = tuple(f"python/{name}.zip" for name in ("app", "later", "library", "packages"))
FOREIGN = re.compile(rb"""["'`(=\s](?:https?:)?//([a-z0-9-]+(?:\.[a-z0-9-]+)+)""")
INERT = {
    "www.w3.org": "names of XML vocabularies",
    "api.flutter.dev": "words of an error",
    "developer.android.com": "words of an error",
    "developer.mozilla.org": "words of an error",
    "docs.flutter.dev": "words of an error",
    "flutter.dev": "words of an error",
    "github.com": "words of an error",
    "pub.dev": "words of an error",
    "flet.dev": "words of an error",
    "fonts.gstatic.com": "Flutter's fall-back fonts: the page names our own folder instead",
    "www.gstatic.com": "Flutter's CanvasKit: the page names our own folder instead",
    "raw.githubusercontent.com": "a sample in a font's documentation",
    "cdn.jsdelivr.net": "Pyodide's packages: the list of them is empty",
}
AGAIN = """
import sys
from pathlib import Path
from mobile.pwa import site
site.build(Path(sys.argv[1]), "/", lambda line: None, Path(sys.argv[2]))
"""


def version_of(files: Files) -> dict[str, Any]:
    """Read the table in the service worker."""
    script = files["sw.js"].decode()
    start = script.index("const VERSION = ") + len("const VERSION = ")
    read: dict[str, Any] = json.JSONDecoder().raw_decode(script, start)[0]
    return read


def test_the_same_inputs_give_the_same_bytes_and_a_changed_line_changes_one_archive(
    files: Files, tmp_path: Path
) -> None:
    edited = checkout(tmp_path / "checkout")
    main = edited / "mobile" / "main.py"
    main.write_text(main.read_text("utf-8").replace("first edition", "second edition"), "utf-8")
    again = tmp_path / "again"
    other_order = os.environ | {"PYTHONHASHSEED": "7"}
    command = [sys.executable, "-c", AGAIN, str(again), str(edited)]
    subprocess.run(command, cwd=ROOT, env=other_order, check=True, timeout=600)
    paths = [path for path in again.rglob("*") if path.is_file()]
    made = {path.relative_to(again).as_posix(): path.read_bytes() for path in paths}
    assert made.keys() == files.keys()
    changed = {path for path in files if files[path] != made[path]}
    assert changed == {"python/app.zip", "sw.js"}
    one, other = zipped(files, "python/app.zip"), zipped(made, "python/app.zip")
    assert one.namelist() == other.namelist()
    assert [n for n in one.namelist() if one.read(n) != other.read(n)] == ["mobile/main.pyc"]
    assert site.fresh(again, "/", edited)
    assert not site.fresh(again, "/elsewhere/", edited)


def test_the_table_names_every_file_with_its_content(files: Files) -> None:
    version = version_of(files)
    assert version["csp"] == page.CSP
    assert version["files"].keys() == files.keys() - {"sw.js"}
    for path, (hashed, _type) in version["files"].items():
        assert hashed == hashlib.sha256(files[path]).hexdigest(), path


def test_every_file_that_the_page_names_is_there(files: Files) -> None:
    index = files["index.html"].decode()
    named = set(re.findall(r'(?:href|src)="([^"#]+)"', index)) - {"/"}
    named |= {icon["src"] for icon in json.loads(files["manifest.webmanifest"])["icons"]}
    fonts = json.loads(files["assets/FontManifest.json"])
    named |= {f"assets/{font['asset']}" for family in fonts for font in family["fonts"]}
    assert named
    assert named <= files.keys()


def test_scripts_import_only_what_is_there(files: Files) -> None:
    own = {path: text.decode() for path, text in files.items() if path.startswith("page/")}
    named = {name for text in own.values() for name in re.findall(r"from '\./([a-z]+\.js)'", text)}
    assert {f"page/{name}" for name in named} <= own.keys()
    assert {"page/start.js", "page/worker.js"} <= own.keys()


def test_the_page_runs_no_script_of_its_own_and_says_so(files: Files) -> None:
    index = files["index.html"].decode()
    assert re.findall(r"<script(?![^>]*\ssrc=)", index) == []
    assert re.findall(r"\son[a-z]+=", index) == []
    assert "javascript:" not in index
    assert f'http-equiv="Content-Security-Policy" content="{page.CSP}"' in index
    rules = dict(rule.split(" ", 1) for rule in page.CSP.split("; "))
    assert rules["default-src"] == "'none'"
    assert rules["script-src"] == "'self' 'wasm-unsafe-eval'"
    assert rules["connect-src"] == rules["worker-src"] == "'self'"


@pytest.mark.parametrize("suffix", [".js", ".mjs", ".html", ".json", ".webmanifest", ".svg"])
def test_no_script_or_page_holds_an_address_of_another_host(files: Files, suffix: str) -> None:
    looked = {path: data for path, data in files.items() if path.endswith(suffix)}
    found = {
        (path, host.decode())
        for path, data in looked.items()
        for host in FOREIGN.findall(data)
        if host.decode() not in INERT
    }
    assert looked
    assert found == set()


def test_the_page_begins_in_the_colours_of_the_dark_look(files: Files) -> None:
    assert (theme.DARK.ground, theme.DARK.text) == (page.GROUND, page.INK)
    assert f'<meta name="theme-color" content="{page.GROUND}">' in files["index.html"].decode()


def test_the_page_turns_away_from_the_hosts_that_flutter_would_ask(files: Files) -> None:
    script = files["page/flutter.js"].decode()
    assert "canvasKitBaseUrl: `${base}canvaskit/`" in script
    assert "fontFallbackBaseUrl: 'assets/fonts/'" in script
    assert json.loads(files["pyodide/pyodide-lock.json"])["packages"] == {}


def test_the_demo_job_ships(files: Files) -> None:
    demo = "assets/demo/moth-cellar.json"
    assert zipped(files, "python/app.zip").read(demo) == (ROOT / demo).read_bytes()


def test_what_the_start_does_without_lies_in_an_archive_of_its_own(files: Files) -> None:
    tops = {
        path: {name.split("/")[0].split(".")[0] for name in zipped(files, path).namelist()}
        for path in ARCHIVES
    }
    later = tops.pop("python/later.zip")
    assert {"icalendar", "dateutil", "tzdata", "zoneinfo"} <= later
    assert not later & set().union(*tops.values())
    assert "later.zip" not in files["page/worker.js"].decode()  # which starts the Python
    data = [n for n in zipped(files, "python/later.zip").namelist() if not n.endswith(".pyc")]
    assert data == [packages.UTC]


def zipped(files: Files, path: str) -> zipfile.ZipFile:
    """Open an archive of the site."""
    return zipfile.ZipFile(io.BytesIO(files[path]))


@pytest.mark.parametrize("path", ARCHIVES)
def test_archives_are_stored_in_order_with_one_date(files: Files, path: str) -> None:
    entries = zipped(files, path).infolist()
    names = [entry.filename for entry in entries]
    assert names == sorted(set(names))
    assert {entry.compress_type for entry in entries} == {zipfile.ZIP_STORED}
    assert {entry.date_time for entry in entries} == {bytecode.EPOCH}


@pytest.mark.parametrize("path", ARCHIVES)
def test_bytecode_is_of_the_shipped_python_and_never_checked(files: Files, path: str) -> None:
    archive = zipped(files, path)
    headers = {archive.read(name)[:8] for name in archive.namelist() if name.endswith(".pyc")}
    python = json.loads(files["pyodide/pyodide-lock.json"])["info"]["python"]
    assert python.startswith("3.14.")
    magic = (3627).to_bytes(2, "little") + b"\r\n"  # CPython 3.14's, from its own source
    assert headers == {magic + (0b01).to_bytes(4, "little")}  # PEP 552: hash, unchecked


def test_the_whole_of_core_and_device_is_shipped_and_the_generator_is_not(files: Files) -> None:
    shipped = set(zipped(files, "python/app.zip").namelist())
    own = [*(ROOT / "core").rglob("*.py"), *(ROOT / "mobile" / "device").rglob("*.py")]
    assert {f"{path.relative_to(ROOT).as_posix()}c" for path in own} <= shipped
    assert not [name for name in shipped if "pwa" in name or "__main__" in name]


def test_licences_of_all_packages_are_there(files: Files) -> None:
    told = files["licences.txt"].decode()
    for package in (*packages.SHIPPED, *packages.LATER):
        assert f"\n{package} {packages.release(package)}: " in told
    assert "SIL Open Font License" in told
    assert b"Flutter" in files["assets/NOTICES"]


def test_the_signs_are_cut_from_flets_own_font() -> None:
    cut, whole = TTFont(CUT), TTFont(packages.client().folder / WHOLE)
    codes = {code: name for code, name in cut.getBestCmap().items() if code > 0x20}
    assert {name.removesuffix("_baseline") for name in codes.values()} == set(SIGNS)
    for code, name in codes.items():
        assert whole.getBestCmap()[code] == name
        assert cut.getGlyphSet()[name].width == whole.getGlyphSet()[name].width


def test_a_folder_that_holds_something_else_is_left_alone(tmp_path: Path, files: Files) -> None:
    laid(tmp_path / "mine", {"letters.txt": b"dear"})
    with pytest.raises(Unfit, match="empty or new folder"):
        site.replace(tmp_path / "mine", files, "")
    assert [path.name for path in (tmp_path / "mine").iterdir()] == ["letters.txt"]
    site.replace(tmp_path / "new", files, "")
    site.replace(tmp_path / "new", files, "")  # a site may be replaced
    assert (tmp_path / "new" / "index.html").exists()


def test_outside_a_checkout_the_message_says_so(tmp_path: Path) -> None:
    with pytest.raises(Unfit, match="checkout of the project"):
        site.whole("/", lambda _line: None, tmp_path)
