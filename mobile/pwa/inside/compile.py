"""Find the modules that the app can reach, and compile them; runs inside the shipped Python.

`/input` is a zip of sources under one folder an archive (`app/mobile/main.py`), with `roots.txt`
and `left_out.txt`; `/output` is a zip of the reached modules as bytecode (`app/mobile/main.pyc`).
Nothing else of the project is at hand here.
"""

import ast
import importlib.util
import zipfile
from collections.abc import Iterator
from importlib._bootstrap_external import (  # type: ignore[attr-defined]  # private, steady
    _code_to_hash_pyc,
)

BLOCKS = ("body", "orelse", "finalbody", "handlers", "cases")

Sources = dict[str, tuple[str, bytes]]
"""Module name -> (its path in the zip, its source)."""


def module_name(path: str) -> str:
    """Name the module of a path such as `app/mobile/screens/__init__.py`."""
    parts = path.removesuffix(".py").split("/")[1:]
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def statements(tree: ast.Module) -> Iterator[ast.AST]:
    """Walk a module's statements without what only type checkers, or only a command line, run."""
    ahead: list[ast.AST] = [tree]
    while ahead:
        node = ahead.pop()
        yield node
        for block in ("orelse",) if isinstance(node, ast.If) and never(node.test) else BLOCKS:
            ahead += getattr(node, block, ())


def never(test: ast.expr) -> bool:
    """Say whether a condition is one that never holds on a phone."""
    if isinstance(test, ast.Compare):
        return ast.unparse(test) == "__name__ == '__main__'"
    return "TYPE_CHECKING" in {getattr(test, "id", ""), getattr(test, "attr", "")}


def imported(node: ast.Import | ast.ImportFrom, package: str) -> Iterator[str]:
    """Name what an import may load; a name that is no module does no harm."""
    if isinstance(node, ast.Import):
        yield from (alias.name for alias in node.names)
        return
    base = node.module or ""
    if node.level:
        base = importlib.util.resolve_name("." * node.level + base, package)
    yield base
    yield from (f"{base}.{alias.name}" for alias in node.names)


def lazy_names(tree: ast.Module) -> dict[str, str]:
    """Read the table of Flet's late imports: public name -> module."""
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "_LAZY":
            table: dict[str, str] = ast.literal_eval(node.value)
            return table
    return {}


def wanted(name: str, path: str, tree: ast.Module, late: dict[str, str]) -> Iterator[str]:
    """Name all modules that one module may load while it runs."""
    package = name if path.endswith("/__init__.py") else name.rpartition(".")[0]
    flets: set[str] = set()
    for node in statements(tree):
        if isinstance(node, ast.Import | ast.ImportFrom):
            yield from imported(node, package)
        if isinstance(node, ast.Import):
            flets |= {alias.asname or "flet" for alias in node.names if alias.name == "flet"}
        if isinstance(node, ast.ImportFrom) and node.module == "flet":
            yield from (late.get(alias.name, "") for alias in node.names)
    for part in ast.walk(tree) if flets else ():
        if isinstance(part, ast.Attribute) and isinstance(part.value, ast.Name):
            module = late.get(part.attr, "") if part.value.id in flets else ""
            yield from (module, f"{module}.{part.attr}")


def reached(sources: Sources, roots: list[str]) -> dict[str, ast.Module]:
    """Find, and parse, every module of the sources that can be imported from the roots."""
    late = lazy_names(ast.parse(sources["flet"][1])) if "flet" in sources else {}
    found: dict[str, ast.Module] = {}
    ahead = [name for name in sources for pattern in roots if under(name, pattern)]
    while ahead:
        name = ahead.pop()
        if name in found or name not in sources:
            continue
        path, source = sources[name]
        found[name] = ast.parse(source, path.partition("/")[2])
        ahead += [name.rpartition(".")[0], *wanted(name, path, found[name], late)]
    return found


def under(name: str, pattern: str) -> bool:
    """Say whether a pattern names a module: itself, or `package.*` with all below a package."""
    return name == pattern or (pattern.endswith(".*") and f"{name}.".startswith(pattern[:-1]))


def compiled(tree: ast.Module, path: str, source: bytes) -> bytes:
    """Compile as the import system would, to bytecode that is never checked against a source."""
    code = compile(tree, path.partition("/")[2], "exec", dont_inherit=True, optimize=2)
    return bytes(_code_to_hash_pyc(code, importlib.util.source_hash(source), False))


def without(sources: Sources, patterns: list[str]) -> Sources:
    """Take away what is left out; refuse where the app's own modules ask for it."""
    away = {name for name in sources for pattern in patterns if under(name, pattern)}
    for name, (path, source) in sources.items():
        if not path.startswith("app/"):
            continue
        missing = sorted(away.intersection(wanted(name, path, ast.parse(source), {})))
        if missing:
            raise ImportError(f"{path} needs {missing}, which LEFT_OUT in bytecode.py leaves out")
    return {name: found for name, found in sources.items() if name not in away}


def main() -> None:
    """Read, reach, compile, write."""
    with zipfile.ZipFile("/input") as given:
        paths = [path for path in given.namelist() if path.endswith(".py")]
        sources: Sources = {module_name(path): (path, given.read(path)) for path in paths}
        roots, left_out = (
            given.read(name).decode().split() for name in ("roots.txt", "left_out.txt")
        )
    sources = without(sources, left_out)
    with zipfile.ZipFile("/output", "w") as made:
        for name, tree in sorted(reached(sources, roots).items()):
            path, source = sources[name]
            made.writestr(f"{path}c", compiled(tree, path, source))


if __name__ == "__main__":
    main()
