"""Rules for the shape of code: small, frozen, plain, and with one clock."""

import ast
import re

from tests.house.source import Found, Source, last_name

LONGEST = 300
LONGEST_SCREEN = 150
SAYS_WHY = re.compile(r"^# Longer than \d+ lines: \w", re.MULTILINE)
CLOCKS = {
    ("datetime", "now"),
    ("datetime", "utcnow"),
    ("datetime", "today"),
    ("date", "today"),
    ("time", "time"),
    ("time", "time_ns"),
    ("time", "localtime"),
    ("time", "gmtime"),
    ("time", "monotonic"),
    ("time", "strftime"),
    ("Date", "now"),
    ("Date", "new"),
}
RECKONS = (ast.Mult, ast.Div, ast.FloorDiv, ast.Pow)
QUANTITY = re.compile(r"_(m|mm|um|m2|m3|l|ml|kg|g|s|ms|min|h|c|g_ml|g_m2|per_g|per_l)$")
THEME = re.compile(r"\bt(heme)?\.[A-Z]")
MAGIC = {"__getattr__", "__getattribute__", "__setattr__", "__class_getitem__", "__init_subclass__"}


def too_long(source: Source) -> Found:
    """Find a file that wants two rooms and does not say why it is one."""
    most = LONGEST_SCREEN if source.path.startswith("mobile/screens/") else LONGEST
    count = len(source.lines)
    if count > most and not SAYS_WHY.search(source.text):
        yield count, f"{count} lines, at most {most}"


def not_frozen(source: Source) -> Found:
    """Find dataclasses that can change, or that grow fields on the way."""
    for node in source.nodes:
        if not isinstance(node, ast.ClassDef):
            continue
        for mark in node.decorator_list:
            if last_name(mark) != "dataclass":
                continue
            said = mark.keywords if isinstance(mark, ast.Call) else []
            set_true = {
                word.arg
                for word in said
                if isinstance(word.value, ast.Constant) and word.value.value
            }
            if not {"frozen", "slots"} <= set_true:
                yield node.lineno, f"{node.name} is not frozen with slots"


def asserts(source: Source) -> Found:
    """Find what the app's bytecode drops: asserts, and docstrings that are read."""
    for node in source.nodes:
        if isinstance(node, ast.Assert):
            yield node.lineno, "assert is not there at run time"
        if isinstance(node, ast.Attribute) and node.attr == "__doc__":
            yield node.lineno, "__doc__ is not there at run time"
        if isinstance(node, ast.Name) and node.id in {"__doc__", "__debug__"}:
            yield node.lineno, f"{node.id} is not there at run time"


def magic(source: Source) -> Found:
    """Find metaclasses, attributes out of the air, and keywords passed through."""
    for node in source.nodes:
        if isinstance(node, ast.ClassDef) and any(
            word.arg == "metaclass" for word in node.keywords
        ):
            yield node.lineno, f"{node.name} has a metaclass"
        if isinstance(node, ast.FunctionDef) and node.name in MAGIC:
            yield node.lineno, f"{node.name} is magic"
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef)) and passes_through(node):
            yield node.lineno, f"{node.name} passes its keywords through"
        if isinstance(node, ast.Call) and last_name(node) in {"setattr", "exec", "eval", "globals"}:
            yield node.lineno, f"{last_name(node)}() is magic"


def passes_through(node: ast.FunctionDef | ast.AsyncFunctionDef) -> bool:
    """Say whether a function hands the keywords that it was given to another."""
    name = node.args.kwarg.arg if node.args.kwarg else ""
    handed = [
        word.value
        for call in ast.walk(node)
        if isinstance(call, ast.Call)
        for word in call.keywords
        if word.arg is None
    ]
    return any(
        isinstance(part, ast.Name) and part.id == name for each in handed for part in ast.walk(each)
    )


def clock(source: Source) -> Found:
    """Find readers of the time."""
    for node in source.nodes:
        if isinstance(node, ast.Attribute):
            pair = (last_name(node.value), node.attr)
            if pair in CLOCKS:
                yield node.lineno, f"{'.'.join(pair)} reads the time"
        if isinstance(node, ast.ImportFrom) and node.module == "time":
            yield node.lineno, "names of time hide who reads the time"


def thinks(source: Source) -> Found:
    """Find reckoning with quantities in a screen, and ways to lose what was typed."""
    for node in source.nodes:
        if isinstance(node, ast.BinOp) and isinstance(node.op, RECKONS) and of_quantities(node):
            yield node.lineno, f"{ast.unparse(node)}: a screen does not reckon"
        if isinstance(node, ast.Call) and from_an_old_form(node):
            yield node.lineno, f"{ast.unparse(node)} loses an edit: give a function of the form"
        if isinstance(node, ast.Call) and ast.unparse(node).endswith(".update()"):
            yield node.lineno, "nothing can be updated in a component: set its state"


def of_quantities(node: ast.expr) -> bool:
    """Say whether an expression has a quantity in it: a name that ends in an SI unit."""
    named = [part for part in ast.walk(node) if isinstance(part, (ast.Name, ast.Attribute))]
    return any(QUANTITY.search(last_name(part)) for part in named)


def from_an_old_form(node: ast.Call) -> bool:
    """Say whether this sets a form to a changed copy of the one that was rendered."""
    given = [last_name(part) for part in node.args if isinstance(part, ast.Call)]
    return last_name(node).startswith("set_") and "replace" in given


def component_reckons(source: Source) -> Found:
    """Find multiplying in a component, but for multiples of the theme's own measures."""
    for part in source.nodes:
        if isinstance(part, ast.FunctionDef) and "component" in map(last_name, part.decorator_list):
            for node in ast.walk(part):
                reckons = isinstance(node, ast.BinOp) and isinstance(node.op, RECKONS)
                if reckons and not THEME.search(words := ast.unparse(node)):
                    yield part.lineno, f"{words} in the component {part.name}"
