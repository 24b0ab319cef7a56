"""A package that is not laid out as known is told by name, with the mend."""

import io
import json
import shutil
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest

from mobile.pwa import bytecode, flutter, packages
from mobile.pwa.packages import Client, Unfit

FONTS = {"figures-400.woff2": b"font", flutter.SIGNS: b"signs"}


@pytest.fixture
def web(tmp_path: Path) -> Client:
    """A copy of Flet's web client that may be spoilt; its large files are links."""
    real = packages.client()
    copy = tmp_path / "web"
    shutil.copytree(real.folder, copy, copy_function=lambda one, two: Path(two).symlink_to(one))
    return Client(copy, real.release)


def spoil(web: Client, path: str, data: bytes) -> None:
    """Put other bytes in the place of a file."""
    (web.folder / path).unlink()
    (web.folder / path).write_bytes(data)


def test_the_client_as_installed_will_do(web: Client) -> None:
    made = flutter.files(web, FONTS)
    assert made["main.dart.js"].count(flutter.NO_ANIMATIONS) == 1
    assert flutter.ANIMATIONS not in made["main.dart.js"]


@pytest.mark.parametrize("path", flutter.AS_THEY_ARE)
def test_a_missing_file_is_named(web: Client, path: str) -> None:
    (web.folder / path).unlink()
    with pytest.raises(Unfit, match=f"flet-web {web.release} holds no {path}") as told:
        flutter.files(web, FONTS)
    assert packages.MEND in str(told.value)


@pytest.mark.parametrize(
    ("path", "data", "says"),
    [
        ("flutter.js", b"", "flutter.js has 0 bytes"),
        ("main.dart.js", b"// no address", "0 times"),
        ("main.dart.js", flutter.ANIMATIONS * 2, "2 times"),
        ("pyodide/pyodide-lock.json", b"{}", "pyodide-lock.json has no info"),
        ("pyodide/pyodide-lock.json", b"[", "pyodide-lock.json has no info"),
        ("assets/FontManifest.json", b"[]", "lists no MaterialIcons"),
    ],
)
def test_a_strange_file_is_named(web: Client, path: str, data: bytes, says: str) -> None:
    spoil(web, path, data)
    with pytest.raises(Unfit, match=says) as told:
        flutter.files(web, FONTS)
    assert "\n" in str(told.value)  # the second line is the mend


@pytest.mark.parametrize("inside", [{}, {"os.py": b""}, {"pyodide/__init__.py": b""}])
def test_a_strange_standard_library_is_told(web: Client, inside: dict[str, bytes]) -> None:
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w") as zipped:
        for name, data in (inside or {"nothing.txt": b""}).items():
            zipped.writestr(name, data)
    spoil(web, "pyodide/python_stdlib.zip", whole.getvalue())
    with pytest.raises(Unfit, match=r"python_stdlib\.zip holds no os\.py or no pyodide"):
        bytecode.library(web)


def test_a_library_that_is_no_archive_is_told(web: Client) -> None:
    spoil(web, "pyodide/python_stdlib.zip", b"no zip")
    with pytest.raises(Unfit, match=r"python_stdlib\.zip"):
        bytecode.library(web)


def test_a_font_without_its_weight_is_named(web: Client) -> None:
    with pytest.raises(Unfit, match=r"figures-bold\.woff2 doesn't end with its weight"):
        flutter.files(web, FONTS | {"figures-bold.woff2": b""})


@pytest.mark.parametrize(("flet", "web"), [("1.1.0", "1.1.0"), ("1.0.6", "1.0.5"), ("2.0", "1.0")])
def test_another_release_of_flet_is_refused(
    monkeypatch: pytest.MonkeyPatch, flet: str, web: str
) -> None:
    releases = {"flet": flet, "flet-web": web}
    monkeypatch.setattr(packages, "release", releases.__getitem__)
    with pytest.raises(Unfit, match=f"flet {flet} and flet-web {web}"):
        packages.client()


def test_a_package_that_is_not_there_is_named() -> None:
    with pytest.raises(Unfit, match="no_such_package is not installed"):
        packages.release("no_such_package")
    with pytest.raises(Unfit, match="no_such_package is not installed"):
        packages.sources("no_such_package")


def given(out: dict[str, dict[str, bytes]]) -> Callable[..., dict[str, dict[str, bytes]]]:
    """Stand in for the compiler."""
    return lambda _client, _given: out


def test_flets_icons_are_refused_as_the_site_has_no_font_for_them(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    made = {"library": {}, "packages": {bytecode.ICONS: b""}, "app": {}}
    monkeypatch.setattr(bytecode, "compiled", given(made))
    with pytest.raises(Unfit, match=r"uses ft\.Icons"):
        bytecode.archives(packages.client(), {})


def test_a_python_that_can_not_run_is_told_by_its_last_words(tmp_path: Path) -> None:
    (tmp_path / "pyodide").mkdir()
    (tmp_path / "pyodide" / "pyodide.mjs").write_text("throw new Error('no wasm here')")
    with pytest.raises(Unfit, match="no wasm here"):
        bytecode.ran(Client(tmp_path, "0"), "compile.py", b"")


def test_the_lock_keeps_only_what_pyodide_compares() -> None:
    kept = json.loads(flutter.empty_lock(packages.client()))
    assert kept.keys() == {"info", "packages"}
    assert kept["packages"] == {}
    assert kept["info"]["python"].startswith("3.14.")
