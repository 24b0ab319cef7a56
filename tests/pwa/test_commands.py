"""`python -m mobile`: help, exit codes, messages that say the mend, a clean Ctrl-C."""

import signal
import subprocess
import sys
import urllib.request
from collections.abc import Iterator
from pathlib import Path

import pytest

from mobile import __main__ as commands
from mobile.pwa import bytecode, site
from tests.pwa.conftest import ROOT, Files, laid

MOBILE = (sys.executable, "-m", "mobile")


def ran(*words: str) -> subprocess.CompletedProcess[str]:
    """Run a command to its end."""
    return subprocess.run(
        [*MOBILE, *words], cwd=ROOT, capture_output=True, text=True, timeout=60, check=False
    )


def test_help_names_every_command_and_what_it_ends_with() -> None:
    done = ran("--help")
    assert done.returncode == 0
    for word in ("build", "serve", "--port", "--no-browser", "Ends with 0"):
        assert word in done.stdout
    assert "--base" in ran("build", "--help").stdout
    assert "--dir" in ran("serve", "--help").stdout


@pytest.mark.parametrize(
    "words",
    [
        ("paint",),
        ("build", "--base", "https://moth.example/"),
        ("--port", "many"),
        ("--port", "99999"),
    ],
)
def test_a_wrong_command_line_ends_with_2(words: tuple[str, ...]) -> None:
    done = ran(*words)
    assert done.returncode == 2
    assert "usage:" in done.stderr


def test_a_folder_without_a_site_ends_with_1_and_the_mend(tmp_path: Path) -> None:
    done = ran("serve", "--dir", str(tmp_path))
    assert done.returncode == 1
    assert "python -m mobile build --out" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_file_where_the_site_should_go_is_left_alone_before_anything_is_made(
    tmp_path: Path,
) -> None:
    letter = tmp_path / "letter.txt"
    letter.write_text("dear", "utf-8")
    done = ran("build", "--out", str(letter))
    assert done.returncode == 1
    assert "is a file" in done.stderr
    assert done.stdout == ""
    assert letter.read_text("utf-8") == "dear"


def test_a_place_that_can_not_be_written_is_named(tmp_path: Path) -> None:
    done = ran("build", "--out", "/proc/nowhere/site")
    assert done.returncode == 1
    assert "/proc/nowhere" in done.stderr
    assert "Traceback" not in done.stderr


def test_the_port_is_the_same_each_time_as_the_book_is_kept_under_it() -> None:
    assert f"default: {commands.PORT}" in ran("--help").stdout


@pytest.fixture
def ctrl_c() -> Iterator[None]:
    """Have what is started hear Ctrl-C, even where these tests themselves don't."""
    before = signal.signal(signal.SIGINT, signal.default_int_handler)
    yield
    signal.signal(signal.SIGINT, before)


@pytest.mark.usefixtures("ctrl_c")
def test_ctrl_c_ends_it_cleanly(tmp_path: Path, files: Files) -> None:
    folder = laid(tmp_path / "site", files)
    command = [*MOBILE, "serve", "--port", "0", "--dir", str(folder)]
    with subprocess.Popen(
        command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as process:
        assert process.stdout is not None
        address = process.stdout.readline().split()[1]
        with urllib.request.urlopen(address, timeout=20) as answer:
            assert b"Duskcoat" in answer.read()
        process.send_signal(signal.SIGINT)
        _, told = process.communicate(timeout=20)
    assert process.returncode == 0
    assert told == ""


@pytest.mark.parametrize(
    ("typed", "read"),
    [("/", "/"), ("phone", "/phone/"), ("/phone", "/phone/"), ("/a/b-c/", "/a/b-c/"), ("", "/")],
)
def test_a_base_is_read_as_people_write_it(typed: str, read: str) -> None:
    assert commands.base(typed) == read


def test_nothing_is_built_again_while_nothing_changed(
    tmp_path: Path, sample: Path, files: Files, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = tmp_path / "site"
    assert not site.fresh(folder, "/", sample)
    site.replace(folder, files, site.stamp("/", sample))

    def never(*_given: object) -> bytes:
        raise AssertionError("the compiler ran")

    monkeypatch.setattr(bytecode, "ran", never)
    assert site.fresh(folder, "/", sample)


def test_a_changed_source_is_seen(tmp_path: Path, sample: Path, files: Files) -> None:
    folder = tmp_path / "site"
    before = site.stamp("/", sample)
    site.replace(folder, files, before)
    written = sample / "mobile" / "main.py"
    text = written.read_text("utf-8")
    written.write_text(text.replace("first edition", "second edition"), "utf-8")
    try:
        assert site.stamp("/", sample) != before
        assert not site.fresh(folder, "/", sample)
    finally:
        written.write_text(text, "utf-8")
