"""The check command counts right: a failure is never lost, a missing browser never hidden."""

import sys

import pytest

from tests.__main__ import PYTHON, Outcome, Step, close, main, run

PYTEST = Step("unit tests", (PYTHON, "-m", "pytest"))
LINT = Step("lint", ("ruff",))
BROWSERS = Step("browsers", (PYTHON, "-m", "pytest"))
ALL_THREE = "browsers run: Chromium, Firefox ESR, WebKitGTK\n"


@pytest.mark.parametrize(
    ("words", "ended", "counts"),
    [
        ("84 passed in 17.96s", 0, (84, 0, 0)),
        ("1 failed, 83 passed, 2 skipped in 3.00s (0:01:00)", 1, (83, 1, 2)),
        ("3 passed, 1 error in 0.30s", 1, (3, 1, 0)),
        ("2 failed, 3 passed, 2 errors in 0.30s", 1, (3, 4, 0)),
        ("no tests ran in 0.01s", 5, (0, 1, 0)),
        ("32 deselected in 0.01s", 5, (0, 1, 0)),
        ("ModuleNotFoundError: No module named 'core'", 4, (0, 1, 0)),
        ("3 passed in 1.00s\nSegmentation fault", 139, (0, 1, 0)),
        ("", 1, (0, 1, 0)),
    ],
)
def test_the_last_line_of_pytest_is_counted(
    words: str, ended: int, counts: tuple[int, int, int]
) -> None:
    assert Outcome(PYTEST, f"9 passed earlier\ndots\n{words}\n", ended, 1.0).counts() == counts


def test_any_other_step_counts_as_one() -> None:
    assert Outcome(LINT, "3 failed", 0, 1.0).counts() == (1, 0, 0)
    assert Outcome(LINT, "3 passed", 1, 1.0).counts() == (0, 1, 0)


def test_the_sum_stands_alone_on_a_line(capsys: pytest.CaptureFixture[str]) -> None:
    good = Outcome(PYTEST, "4 passed, 1 skipped in 1s", 0, 1.0)
    assert close([good, Outcome(LINT, "", 0, 1.0)], browsers=False) == 0
    told = capsys.readouterr().out.splitlines()
    assert told[-2] == "5 passed, 0 failed, 1 skipped"
    assert told[-1].startswith("browsers not run: Chromium, Firefox ESR, WebKitGTK")


ONE, TWO = "browsers run: Chromium\n", "browsers run: Chromium, WebKitGTK\n"
GOOD = "2 passed, 0 failed, 0 skipped"
NOT_RUN = "browsers not run: "


@pytest.mark.parametrize(
    ("ran", "ends", "last"),
    [
        (("true", ALL_THREE), 0, GOOD),
        (("", ALL_THREE), 0, GOOD),
        (("", ONE), 0, f"{NOT_RUN}Firefox ESR, WebKitGTK"),
        (("true", TWO), 1, f"{NOT_RUN}Firefox ESR"),
        (("true", ""), 1, f"{NOT_RUN}Chromium, Firefox ESR, WebKitGTK"),
    ],
)
def test_a_browser_that_is_missing_is_named_and_fails_in_ci(
    ran: tuple[str, str],
    ends: int,
    last: str,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setenv("CI", ran[0])
    outcome = Outcome(BROWSERS, f"{ran[1]}2 passed in 1s", 0, 1.0)
    assert close([outcome], browsers=True) == ends
    assert capsys.readouterr().out.splitlines()[-1] == last


def test_it_goes_on_past_a_failure_and_says_what_failed(capsys: pytest.CaptureFixture[str]) -> None:
    bad = Step("bad", (PYTHON, "-c", "print('a sad word'); raise SystemExit(3)"))
    good = Step("good", (PYTHON, "-c", "print('nothing of note')"))
    outcomes = list(run((bad, good), 1))
    told = capsys.readouterr().out
    assert [outcome.ended for outcome in outcomes] == [3, 0]
    assert "a sad word" in told
    assert "nothing of note" not in told
    assert close(outcomes, browsers=False) == 1


def test_help_says_what_can_be_asked(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "argv", ["tests", "--help"])
    assert main() == 0
    assert "--all" in capsys.readouterr().out
