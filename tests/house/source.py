"""A file as the house rules read it."""

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

ROOT = Path(__file__).parents[2]
Found = Iterator[tuple[int, str]]
"""What a rule finds: the line, and what is wrong there."""


@dataclass(frozen=True)
class Source:
    """The text of a file and its path from the top of the house."""

    path: str
    text: str

    @cached_property
    def tree(self) -> ast.Module:
        """Parse it as Python."""
        return ast.parse(self.text)

    @cached_property
    def nodes(self) -> tuple[ast.AST, ...]:
        """Walk it."""
        return tuple(ast.walk(self.tree))

    @cached_property
    def lines(self) -> tuple[tuple[int, str], ...]:
        """Number its lines."""
        return tuple(enumerate(self.text.splitlines(), 1))

    @cached_property
    def strings(self) -> tuple[tuple[int, str], ...]:
        """Find every text that is no docstring, pieces of f-strings among them."""
        silent = set(docstrings(self.tree))
        return tuple(
            (node.lineno, node.value)
            for node in self.nodes
            if isinstance(node, ast.Constant)
            and isinstance(node.value, str)
            and id(node) not in silent
        )


def docstrings(tree: ast.Module) -> Iterator[int]:
    """Mark each text that stands alone as a statement: docstrings of whatever kind."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            yield id(node.value)


def read(path: Path) -> Source:
    """Read a file of the house."""
    return Source(path.relative_to(ROOT).as_posix(), path.read_text(encoding="utf-8"))


def last_name(node: ast.expr) -> str:
    """Name what is called or named: `b` of `a.b` and of `a.b()`."""
    if isinstance(node, ast.Call):
        return last_name(node.func)
    if isinstance(node, ast.Attribute):
        return node.attr
    return node.id if isinstance(node, ast.Name) else ""
