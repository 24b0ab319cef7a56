"""Rules for names: units at their ends, and none of the words that say nothing."""

import ast
import re
from collections.abc import Iterator

from tests.house.source import Found, Source

# A share is a part of one; a price is in the job's own money, whichever that is.
UNIT = re.compile(
    r"(.*_)?(m|mm|um|m2|m3|l|ml|kg|g|s|ms|min|h|c|k|pa|rh|pct|ratio|nm|kwh|j|mj|w|deg|rad|de|count|dp|share|shares|price)"
    r"(_per_(m|m2|m3|l|ml|kg|g|s|min|h))?|.*_g_(ml|m2)|.*_per_(m|m2|m3|l|ml|kg|g|s|min|h)"
)
EMPTY_WORDS = {"manager", "helper", "helpers", "util", "utils", "misc", "common", "stuff"}


def floats(source: Source) -> Iterator[tuple[int, str, str]]:
    """Yield line, name and docstring of each float field, argument, constant and result."""
    for node in source.nodes:
        if isinstance(node, ast.AnnAssign) and is_float(node.annotation):
            yield node.lineno, ast.unparse(node.target), ""
        if isinstance(node, ast.Assign) and is_number(node.value):
            yield node.lineno, ast.unparse(node.targets[0]), ""
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
            every = [*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs]
            yield from ((a.lineno, a.arg, "") for a in every if is_float(a.annotation))
            if is_float(node.returns):
                yield node.lineno, node.name, ast.get_docstring(node) or ""


def is_float(annotation: ast.expr | None) -> bool:
    """Say whether an annotation is a float, one or nothing, or a row of them."""
    if annotation is None:
        return False
    rows = {"float", "float | None", "None | float", "tuple[float, ...]", "Sequence[float]"}
    return ast.unparse(annotation).strip("'\"") in rows


def is_number(value: ast.expr) -> bool:
    """Say whether a constant is a number with a point."""
    return isinstance(value, ast.Constant) and isinstance(value.value, float)


def no_unit(source: Source) -> Found:
    """Find floats whose names don't end in their unit (a result may have it in its docstring)."""
    for line, name, doc in floats(source):
        last = name.rpartition(".")[2].lower()
        if not UNIT.fullmatch(last) and not re.search(r"\[[^\]]+\]", doc):
            yield line, f"{name} has no unit"


def empty_name(source: Source) -> Found:
    """Find names with a word that says nothing, the file's own among them."""
    for line, name in [(1, source.path.removesuffix(".py").replace("/", "_")), *given(source)]:
        parts = set(re.sub(r"([a-z])([A-Z])", r"\1_\2", name).lower().split("_"))
        for word in sorted(parts & EMPTY_WORDS):
            yield line, f"{name}: '{word}' says nothing"


def given(source: Source) -> Iterator[tuple[int, str]]:
    """Yield every name that the file gives to something."""
    for node in source.nodes:
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)):
            yield node.lineno, node.name
        if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store):
            yield node.lineno, node.id
        if isinstance(node, ast.arg):
            yield node.lineno, node.arg
