"""Every rule holds in every file where it should, and can fail."""

import subprocess
from functools import cache
from pathlib import Path

import pytest

from tests.house.rules import RULES, Rule
from tests.house.source import ROOT, Source, read

TEXTS = {".py", ".js", ".mjs", ".html", ".md", ".toml", ".txt", ".csv", ".json", ".svg", ".css", ""}


@cache
def sources() -> tuple[Source, ...]:
    """Read every text of the house that git knows or would add."""
    asked = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    names = subprocess.run(asked, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    paths = sorted({ROOT / name for name in names.split("\0") if name})
    return tuple(read(path) for path in paths if path.is_file() and path.suffix in TEXTS)


def short(rule: Rule) -> str:
    """Name a test by its rule."""
    return rule.says


@pytest.mark.parametrize("rule", RULES, ids=short)
def test_the_rule_holds(rule: Rule) -> None:
    under = [source for source in sources() if rule.holds_in(source.path)]
    assert under, "the rule holds nowhere"
    found = [f"{each.path}:{line}: {what}" for each in under for line, what in rule.find(each)]
    assert not found, "\n".join(found)


@pytest.mark.parametrize(
    ("rule", "text"),
    [
        pytest.param(rule, text, id=f"{rule.says}: {text[:30]}")
        for rule in RULES
        for text in rule.bad
    ],
)
def test_the_rule_can_fail(rule: Rule, text: str) -> None:
    assert rule.holds_in(rule.at)
    assert list(rule.find(Source(rule.at, text)))


@pytest.mark.parametrize("rule", RULES, ids=short)
def test_the_rule_lets_a_plain_file_be(rule: Rule) -> None:
    plain = '"""A wall."""\n\n\ndef area_m2(width_m: float, height_m: float) -> float:\n    ...\n'
    assert not list(rule.find(Source(rule.at, plain)))


def test_the_house_is_found() -> None:
    assert Path(ROOT, "pyproject.toml").is_file()
    assert len(sources()) > 50
